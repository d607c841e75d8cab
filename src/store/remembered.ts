import type { Head } from '../core/head.ts';
import type { Product } from '../core/product.ts';
import type { ReadAs } from '../core/reading.ts';
import type { LogEntry, Routine } from '../core/wash-day.ts';

export type Settings = {
  /** BCP 47, or absent for the browser's language. */
  language?: string;
  units: 'metric' | 'imperial';
  /** What is underlined on pages. */
  underline: { protein: boolean; moisture: boolean };
  glyphSize: 'small' | 'medium' | 'large';
  /** Where pages are read: on a press only, on the shops allowed one by one, or on all sites. */
  reach: 'press' | 'shops' | 'everywhere';
  welcomed: boolean;
  /** Currency-free: the place last looked at in the panel. */
  place?: string;
  headInUse?: string;
  routineInUse?: string;
  /** Product pinned for comparison while browsing. */
  pinned?: string[];
};

/** A site's own choices: paused, text that is not a list, an element that holds one. */
export type Site = { origin: string; paused: boolean; notLists: string[]; listsAt: string[] };

/** Everything kept, as read from the store: each value has been parsed. */
export type Remembered = {
  heads: Head[];
  products: Product[];
  routines: Routine[];
  log: LogEntry[];
  sites: Site[];
  readAs: ReadAs;
  settings: Settings;
};

export const things = ['heads', 'products', 'routines', 'log', 'sites'] as const;
export type Thing = (typeof things)[number];
export type ThingOf = { heads: Head; products: Product; routines: Routine; log: LogEntry; sites: Site };

/** One change asked of the one writer. Ids are made by the asker, so a repeated change is harmless. */
export type Change =
  | { [T in Thing]: { do: 'put'; thing: T; value: ThingOf[T] } }[Thing]
  | { do: 'remove'; thing: Thing; id: string }
  | { do: 'set'; settings: Partial<Settings> }
  | { do: 'read-as'; printed: string; name: string | null };

export type Outcome = { ok: true } | { ok: false; reason: string };
