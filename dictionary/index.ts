/** The dictionary as data: `entries`, `patterns` and `limits` are what `createLookup` takes. */
import type { Entry, Limits, Pattern } from '../src/core/entry.ts';

export const entries: Entry[] = [];
export const patterns: Pattern[] = [];
export const limits: Limits = {
  limits: [],
  thresholds: {
    freeBelow: 1,
    leadingWithin: 5,
    readAtLeast: 0.6,
    listAtLeast: 0.4,
    colourantsAtMost: 5,
    alphabeticalFrom: 6,
    longestText: 40000,
  },
};
