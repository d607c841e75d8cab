import type { Market } from '../core/amounts/market.ts';
import type { Head } from '../core/hair/head.ts';
import type { SizesBy } from '../core/judge/practice.ts';
import type { Wish } from '../core/plan/wish.ts';
import type { Product, ProductFacts, ProductKind } from '../core/product/product.ts';
import type { ReadAs } from '../core/reading/reading.ts';
import type { LogEntry, Routine } from '../core/wash-day/routine.ts';

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
  /** The user was told what reading a shelf asks the shop, and pressed. */
  shelfTold?: boolean;
  /** Products keep a small picture of the page they are kept from; absent: they do. */
  pictures?: boolean;
  /** Written by earlier versions alone: the place last looked at in the panel. */
  place?: string;
  headInUse?: string;
  routineInUse?: string;
  /** Products pinned for comparison while browsing. */
  pinned?: Pin[];
  /** What is looked for while shopping, oldest first. */
  wishes?: Wish[];
  /** Most that 100 ml or g may cost on a shelf. */
  shelfPrice?: PriceLimit;
  /** Market whose ceilings hold, where the user said so; absent: what the page says. */
  market?: Market;
  /** Part of a rinse-off that is taken to stay on the hair, where the user said so: 0…1. */
  rinseOffStays?: number;
  /** What a protein counts as where trade and measurement disagree on its size, where the user said so. */
  sizesBy?: SizesBy;
};

/** Most that 100 ml or g may cost, in a currency (ISO 4217). */
export type PriceLimit = { most: number; currency: string };

/** What is pinned: a product that is kept, or one that was met and is not. */
export type Pin = { product: string } | { met: { text: string; facts: ProductFacts } };

/** What the user taught of a site: paused, texts that are no lists, elements that hold one, kinds of products. */
export type Site = {
  origin: string;
  paused: boolean;
  notLists: string[];
  listsAt: string[];
  /** By page (without query) and bare name of the product. */
  kinds?: { page: string; name: string; kind: ProductKind }[];
};

/** A product's page that was read: its label as printed, and what the page said of the product. */
export type LabelMet = {
  /** Canonical; one product has one. */
  address: string;
  text: string;
  product: ProductFacts;
  /** By the words of its page it is for rooms, dishes or cloth. */
  elsewhere?: true;
  /** ISO date-time. */
  readOn: string;
};

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

/** Letters of a product's small picture as a data URL, at most. */
export const mostOfPicture = 4000;

export const things = ['heads', 'products', 'routines', 'log', 'sites'] as const;
export type Thing = (typeof things)[number];
export type ThingOf = { heads: Head; products: Product; routines: Routine; log: LogEntry; sites: Site };

/**
 * One change asked of the one writer. Ids are made by the asker, so a repeated change is harmless. With `was`, a
 * value says what it changes: only that is changed of what stands there by then.
 */
export type Change =
  | { [T in Thing]: { do: 'put'; thing: T; value: ThingOf[T]; was?: ThingOf[T] } }[Thing]
  | { do: 'remove'; thing: Thing; id: string }
  | { do: 'set'; settings: Partial<Settings>; unset?: string[] }
  | { do: 'read-as'; printed: string; name: ReadAs[string] | null }
  /** A picture of the log or of a product as a data URL, under a key of its own; null removes it. */
  | { do: 'photo'; key: string; data: string | null }
  /** A label met while browsing; null forgets it. */
  | { do: 'label-met'; address: string; entry: LabelMet | null }
  /** Keeps a copy of everything but photos as it was before this batch; comes first in an import. */
  | { do: 'snapshot' };

/**
 * `undo` holds the changes that take this one back. `nearlyFull`: the browser's room for the store is almost
 * used up. A `reason` is a word key under `keeping.`; nothing was changed then.
 */
export type Outcome =
  | { ok: true; undo?: Change[]; nearlyFull?: true }
  | { ok: false; reason: `keeping.${string}` | (string & {}) };

/** A stored value that does not parse: left where it is or set aside, never overwritten. */
export type Reject = { key: string; value: unknown; why: string; when: string };

export const defaultSettings: Settings = {
  units: 'metric',
  underline: { protein: true, moisture: true },
  glyphSize: 'medium',
  reach: 'press',
  welcomed: false,
};

/** What is remembered before anything is. */
export const nothingRemembered = (): Remembered => ({
  heads: [],
  products: [],
  routines: [],
  log: [],
  sites: [],
  readAs: {},
  settings: defaultSettings,
});
