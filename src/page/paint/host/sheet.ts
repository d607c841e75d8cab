import tokens from '../../../ui/tokens.css?inline';
import host from './host.css?inline';
import strip from './paint.css?inline';
import picker from './picker.css?inline';
import shelf from './shelf.css?inline';

// Said in place: a page can register a custom property of any name, and so change what it holds in our shadow.
// A face of the page answers to any name of a font but the generic ones.
const values = new Map([...tokens.matchAll(/--(\w+):\s*([^;}]+)/g)].map(([, name, value]) => [name, value]));
const inPlace = (_: string, name: string) => (name === 'serif' ? name : values.get(name)!);

/** All rules of our shadow in a page. The background brings them: no page's script need hold them. */
export const sheet = (host + strip + picker + shelf).replace(/var\(--(\w+)\)/g, inPlace);
