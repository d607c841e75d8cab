import type { Said } from '../core/judge/finding.ts';
import type { Practice } from '../core/judge/practice.ts';
import type { ProductFacts } from '../core/product/product.ts';
import type { ReadFor } from '../core/product/read-as.ts';
import type { Reading } from '../core/reading/reading.ts';
import type { Change, Remembered } from '../store/remembered.ts';

/** All that a judgement may look at. A world of the panel is one; the background makes one of its lookup. */
export type Knowing = {
  remembered: Remembered;
  /** Numbers of the dictionary that the rules go by. */
  practice: Practice;
  /** ISO date of the user's own day. */
  today: string;
  /** A label read; undefined while somebody else is still reading it. */
  reading(text: string, as?: ReadFor): Reading | undefined;
};

/**
 * A list that was met on a page, or pasted, with what is told of its product; `photo` is one of the label that the
 * user wishes to keep with the product, as a data URL.
 */
export type Met = { text: string; facts: ProductFacts; photo?: string };

/** What an act comes to: what is to be changed, and what to say when it is. */
export type Decided = { changes: Change[]; say?: Said };
