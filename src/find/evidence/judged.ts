import type { Item } from '../names/step.ts';

/** One reason to take a run of names for a list, or not to. */
export type Evidence = { what: string; count: number; points: number };

/** A run of names with what speaks for its being a cosmetic list. */
export type JudgedRun = {
  isList: boolean;
  names: Item[];
  evidence: Evidence[];
  points: number;
  /** Why it cannot be one, whatever its points. */
  not?: string;
  from: number;
  to: number;
  /** The places of its names alone, where other words stand between them. */
  parts?: { from: number; to: number }[];
  /** Edges of inline elements are the separators. */
  soft: boolean;
  /** A known heading stands before it: on a line of its own, or in the same line. */
  headed: 'line' | 'inline' | undefined;
  /** The page sells it for rooms, dishes or cloth. */
  forHome: boolean;
  /** Words right before the list that are no known heading: a product's name where there are several lists. */
  label: string;
};
