import type { Lookup } from '../../../src/core/names/lookup.ts';
import type { Candidate } from '../../../src/core/plan/suggest.ts';
import { type ProductKind, usualUse } from '../../../src/core/product/product.ts';
import { readLabel } from '../../../src/core/reading/reading.ts';

/** Products on hand of these kinds and labels, `p0` first, each with the use usual for its kind. */
export const madeCandidates = (
  labels: readonly (readonly [ProductKind, string])[],
  lookup: Lookup,
): Candidate[] =>
  labels.map(([kind, text], at) => {
    const use = usualUse[kind];
    return { product: `p${at}`, kind, use, reading: readLabel(text, lookup, { kind, use }), owned: true };
  });
