import type {
  Allergen,
  Entry,
  Limits,
  MoistureRole,
  Pattern,
  Protein,
  Role,
  Thresholds,
  Use,
} from './entry.ts';

/** How a printed name was found. `none` carries close spellings: offered to the reader, never used. */
export type Found = { how: 'exact' | 'alias' | 'pattern'; name: string } | { how: 'none'; close: string[] };

/** What is known of a found name. */
export type Known = {
  protein?: Protein;
  moisture: MoistureRole[];
  roles: Role[];
  allergens: Allergen[];
  functions: string[];
  sources: string[];
};

export type Lookup = {
  /** Exact, alias or pattern, saying which; close spellings are not computed here. */
  find(raw: string): Found;
  /** Properties of a name as `find` gave it (`found.name`), or of a pattern's match. */
  known(found: Found): Known;
  /** Up to `most` close spellings of an unknown name, best first. Numbers must be equal; short tokens are exact only. */
  close(raw: string, most?: number): string[];
  /** The legal ceiling in percent of a found name for a use, if any. Unknown use takes the larger of the two. */
  ceiling(found: Found, use?: Use): number | undefined;
  thresholds: Thresholds;
};

/** Builds the lookup from the dictionary. Pure; entries, patterns and limits are plain data. */
export function createLookup(
  _entries: readonly Entry[],
  _patterns: readonly Pattern[],
  _limits: Limits,
): Lookup {
  throw new Error('not yet built');
}
