import type { TellingWorld } from './paint/notice.ts';
import type { Painter } from './paint/painter.ts';
import type { Shelf } from './shelf/shelf.ts';

/** What our files in one document leave for each other. */
type Ours = {
  /** Elements of ours in the page. They carry no mark of their own: only we know them. */
  hosts: WeakSet<Node>;
  /** Begins the names of our highlights; made up anew for each document. */
  seed: string;
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

const letter = (byte: number) => String.fromCharCode(97 + (byte % 26));

// A symbol: a page's elements and frames shadow globals by their names, and never by one of these.
const world = globalThis as { [key: symbol]: Partial<Ours> | undefined };
const key = Symbol.for('strandline');
world[key] ??= {};
const there = world[key];
there.hosts ??= new WeakSet();
there.seed ??=
  import.meta.env?.MODE === 'localhost'
    ? 'strandline-'
    : [...crypto.getRandomValues(new Uint8Array(9))].map(letter).join('');
export const ours = there as Ours;
