import { attribute, documentOf, native, parentOf, tagOf } from './dom.ts';

/** Names that look made for one page or one build: digits, or a jumble of letters. */
const passing = /\d|^[a-z]+[A-Z].*[A-Z]|__|^css-|^sc-/;
const lasting = (name: string) => name.length > 1 && name.length < 60 && !passing.test(name);
const mostSteps = 30;

/**
 * A selector for an element that holds on other pages of the same shop too: lasting ids and classes first,
 * its place among its kind only where they do not tell it apart.
 */
export function selectorOf(element: Element): string {
  const parts: string[] = [];
  const root = documentOf(element);
  const top = native(root, 'documentElement');
  for (let at: Element | null = element; at && at !== top && parts.length < mostSteps; at = parentOf(at)) {
    const id = attribute(at, 'id');
    if (lasting(id)) {
      parts.unshift(`#${CSS.escape(id)}`);
      break;
    }
    const [tag, parent] = [tagOf(at), parentOf(at)];
    const classes = [...native(at, 'classList')].filter(lasting).slice(0, 2);
    const part = tag + classes.map((name) => `.${CSS.escape(name)}`).join('');
    const alike = parent ? [...native(parent, 'children')].filter((each) => tagOf(each) === tag) : [at];
    const plain = alike.filter((each) => native(each, 'matches')(part)).length === 1;
    parts.unshift(plain ? part : `${part}:nth-of-type(${alike.indexOf(at) + 1})`);
    if (native(root, 'querySelectorAll')(parts.join(' > ')).length === 1) break;
  }
  return parts.join(' > ') || ':root';
}
