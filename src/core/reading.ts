import type { Allergen, MoistureRole, Protein, Range, Role, Use } from './entry.ts';
import type { Found, Lookup } from './lookup.ts';

/** none · trace: every such mention at most 1 % · leading: one among the first five ahead of the one-percent line · present: between · unknown: too much unread. */
export type Strength = 'none' | 'trace' | 'present' | 'leading' | 'unknown';

export type Mention = {
  /** The letters on the label, and their offsets in the text (UTF-16 units, `to` exclusive). */
  raw: string;
  from: number;
  to: number;
  found: Found;
  protein?: Protein;
  moisture: MoistureRole[];
  roles: Role[];
  allergens: Allergen[];
  /** Percent by weight that the label allows. */
  share: Range;
  /** The share as printed on the label, in percent. */
  printed?: number;
};

export type Reading = {
  mentions: Mention[];
  order: 'descending' | 'uninformative';
  /** Index from which every mention is at most 1 %. */
  onePercentFrom?: number;
  protein: Strength;
  moisture: Strength;
  /** Share of mentions found, 0…1. */
  read: number;
  /** A legal ceiling narrowed a share: true only of products that meet EU limits. */
  assumesLimits: boolean;
  /** Set when the text was refused or cut short (word key under `reading.`). */
  refused?: 'too-long' | 'no-list';
};

/** How a reader had an unknown name read: printed name (normal form) → dictionary name. */
export type ReadAs = Record<string, string>;

export type ReadOptions = { use?: Use; readAs?: ReadAs };

/** The one door: a label's text becomes a Reading. Never throws on any text. */
export function readLabel(_text: string, _lookup: Lookup, _options: ReadOptions = {}): Reading {
  throw new Error('not yet built');
}
