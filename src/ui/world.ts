import type { Acted, KnownName, ListRef, PictureRef, TabPage } from '../contract/messages.ts';
import type { ShelfRow } from '../contract/shelf.ts';
import type { Practice } from '../core/judge/practice.ts';
import type { PictureProblem, PictureRead } from '../core/picture/check-names.ts';
import type { Wish } from '../core/plan/wish.ts';
import type { ReadFor } from '../core/product/read-as.ts';
import type { Reading } from '../core/reading/reading.ts';
import type { PanelStore } from '../store/files/panel-store.ts';
import type { Change, Remembered } from '../store/remembered.ts';
import type { Removed } from '../store/undo-stack.ts';
import type { Act } from '../use/acts/acts.ts';
import type { Met } from '../use/knowing.ts';
import type { Translate } from './words/index.ts';

export type PlaceName = 'page' | 'compare' | 'routine' | 'products' | 'log' | 'hair' | 'settings';

/** What a place is opened for. */
export type Detail =
  /** A list of the page in view: shown, or set beside what is pinned; `whom`, to choose whom its answers are for. */
  | { list: ListRef; whom?: true }
  /** A picture of the page in view, to read. */
  | { picture: PictureRef }
  /** A product to add to the routine. */
  | { add: Met }
  /** A kept product, or a wash day of the log, to open. */
  | { product: string }
  | { entry: string }
  /** Something new to begin. */
  | { begin: 'product' | 'entry' }
  /** The kind of product that is looked for. */
  | { wish: Wish };

/** What the browser lets us read, and the buttons that ask for it. */
export type Reach = {
  /** Origin of the page in view, where it is a web page. */
  origin?: string;
  /** Pages of that origin are read by themselves. */
  here: boolean;
  everywhere: boolean;
  /** Other origins that were allowed one by one. */
  origins: string[];
  /** Must be called straight from a click: the browser asks the user. False when refused. */
  allow(what: 'here' | 'everywhere'): Promise<boolean>;
  withdraw(what: string): Promise<boolean>;
  /** Reads the page in view now; false where the browser does not let us. */
  readNow(): Promise<boolean>;
  /** Lets the user point at the element that holds the list. */
  pickList(): Promise<boolean>;
  /** What closed parts of the page that look like an ingredient list are called. */
  closedParts?(): Promise<string[]>;
};

/** Print in pictures; what reads it is loaded when a picture is first read, and nothing of it is kept. */
export type PictureReader = {
  read(
    picture: PictureSource,
    how: { signal: AbortSignal; onProgress(done: number): void },
  ): Promise<PictureShown | PictureProblem>;
};
/** With the picture itself, for a user who wishes to keep it. */
export type PictureShown = PictureRead & { file: Blob };
/** A file of the user's, or a picture that the page in view shows. */
export type PictureSource = { file: Blob } | { onPage: PictureRef };

/**
 * All that a view may know or ask: views take it as a prop and touch neither browser nor storage.
 * The entrypoint makes the real one; tests and the gallery hand in their own.
 */
export type World = {
  t: Translate;
  /** Dictionary data of the rules, by argument. */
  practice: Practice;
  /** Today, ISO date. */
  today: string;
  /** This moment, ISO date-time; where it is absent, `today` stands in. */
  now?(): string;
  remembered: Remembered;
  /** The page of the tab in view, or null where nothing was read. */
  page: TabPage | null;
  /** A reading at once if it is known; otherwise it is asked for and the view drawn again. */
  reading(text: string, as?: ReadFor): Reading | undefined;
  /** Present while labels could not be read: asks for them once more. */
  unread?: { again(): void };
  close(names: string[]): Promise<string[][]>;
  /** Names of the dictionary like what is typed, best first. */
  lookUp(typed: string): Promise<KnownName[]>;
  /** Does an act, and says what came of it, with an undo. */
  act(act: Act): Promise<Acted>;
  /** Changes that need no words; what could not be kept is said. */
  change(...changes: Change[]): Promise<Acted>;
  /** Takes back the act whose undo has this key; false when it could not. */
  undo(key: string): Promise<boolean>;
  /** Says something to the user (live region). */
  say(words: string): void;
  go(place: PlaceName, detail?: Detail): void;
  /** What `go` was given, for the place in view. */
  detail?: Detail;
  /** The place from which the product in view was opened, where that is another. */
  from?: PlaceName;
  /** Hands the user a file. */
  save(name: string, type: string, content: string | Blob): void;
  newId(): string;
  /** Forgets everything that is kept, for good; false when it could not. */
  forget?(): Promise<boolean>;
  /** What was removed in this session and is not back, newest first. */
  removed?: Removed[];
  /** Files in and out, photos, and how the store stands; loaded when first asked for. */
  store?(): Promise<PanelStore>;
  /** Titles of the dictionary's sources by key. */
  sources?: Record<string, { title: string }>;
  /** Absent where there is no browser to ask (a plain page, a test). */
  reach?: Reach;
  pictures?: PictureReader;
  /** The shelf of the page in view; absent where there is no browser to ask. */
  shelf?: {
    /** Its products as they stand; null where the page is no shelf. */
    rows(): Promise<ShelfRow[] | null>;
    /** Reads on, as a press in the page would. */
    read(): Promise<void>;
    save(rows: ShelfRow[]): Promise<void>;
  };
  /** Labels met while browsing; absent where there is no browser to ask. */
  labelsMet?: { count(): Promise<number>; forget(): Promise<unknown> };
  /** Opens the panel as a whole page, where there is room for four products and charts. */
  openWide?(): void;
};
