import type { Use } from '../names/entry.ts';
import type { ProductKind } from '../product/product.ts';

/**
 * How often a step is done: each wash, every n-th wash, or every n days. `from` (1 … n) is its turn among steps of
 * the same n: two of n 2 with 1 and 2 take turns.
 */
export type Cadence =
  | { every: 'wash' }
  | { every: 'nth-wash'; n: number; from?: number }
  | { every: 'days'; n: number };

export type Step = {
  id: string;
  kind: ProductKind;
  use: Use;
  /** Product on hand; a step may stand empty. */
  product?: string;
  optional: boolean;
  cadence: Cadence;
  /** Grams used; absent means the published amount for the kind. */
  grams?: number;
};

export type Routine = {
  id: string;
  head: string;
  name: string;
  steps: Step[];
  added: string;
  /** Days between wash days. */
  washEvery: number;
  /** Words of whoever made it, for whoever it is handed to. */
  note?: string;
};

/** How it felt when dry: −2 … 2, the first word of each pair at 2. */
export type Feel = {
  soft?: number; // soft – rough
  springy?: number; // springy – limp
  defined?: number; // defined – frizzy
  dry?: number; // dry – greasy (balanced at 0)
  elastic?: number; // elastic – brittle
};

export type LogEntry = {
  id: string;
  head: string;
  /** ISO date. */
  date: string;
  /** Frozen copy: the routine as done, with label texts. */
  done: { name: string; steps: (Step & { productName?: string; label?: string })[] };
  weather?: { celsius: number; humidity: number };
  feel: Feel;
  notes: string;
  /** Key of a local photo, if any. */
  photo?: string;
  /** What this day spoke for was done, or left alone: it is not proposed again. */
  answered?: 'changed' | 'left';
};
