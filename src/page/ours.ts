import type { TellingWorld } from './paint/notice.ts';
import type { Painter } from './paint/painter.ts';
import type * as Dom from './read/dom.ts';
import type { Shelf } from './shelf/shelf.ts';

/** What our files in one document leave for each other; `begin-ours.ts` begins it. */
type Ours = {
  /** Elements of ours in the page. They carry no mark of their own: only we know them. */
  hosts: WeakSet<Node>;
  /** Begins the names of our highlights; made up anew for each document. */
  seed: string;
  /** What paints reads the document by, too. */
  dom: Pick<typeof Dom, 'native' | 'parentOf' | 'tagOf'>;
  /** The reader that stands in this document. */
  reader?: AbortController;
  shelf?: (signal: AbortSignal, told: boolean) => Shelf;
  painter?: (world: TellingWorld) => Painter;
  /** Something was taught of this site: its reader asks the background what. */
  taught?: boolean;
  /** Rules of what we draw (paint/sheet.ts), left by the background with what draws it. */
  sheet?: string;
  /** What the picker tells the reader; left likewise. */
  pick?: string;
};

// A symbol: a page's elements and frames shadow globals by their names, and never by one of these.
const world = globalThis as { [key: symbol]: Partial<Ours> | undefined };
const key = Symbol.for('strandline');
world[key] ??= {};
export const ours = world[key] as Ours;
