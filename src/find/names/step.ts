import type { After } from './cut.ts';
import type { NameKind } from './kinds.ts';

export type CutStep = Item | Stop;
export type Item = { from: number; to: number; line: number; name: string; kind: NameKind; after: After };
/** Something that is no name: what follows is a list, a choice of names, what is left out, or no list. */
export type Stop = {
  stop: 'heading' | 'label' | 'teaser' | 'denial' | 'end';
  line: number;
  /** What a heading or label says beyond being one: "Shampoo ingredients:" → "Shampoo". */
  words: string;
  inline: boolean;
  /** A label that a word for ingredients stands in: "Shampoo ingredients:", not "Shampoo:". */
  heads?: boolean;
  /** Where what it heads begins. */
  to?: number;
};
