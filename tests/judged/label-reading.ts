import { entries, limits, patterns } from '../../dictionary/index.ts';
import type { Usage } from '../../src/core/amounts/brings.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { productKinds, usualUse } from '../../src/core/product/product.ts';
import { type Reading, readLabel } from '../../src/core/reading/reading.ts';
import type { Row } from './rows.ts';

const lookup = createLookup(entries, patterns, limits);

/** How a label's product is used; what the row does not say is taken as in a conditioner. */
export function usageOf({ kind = '', use = '' }: Row): Usage {
  const known = productKinds.find((each) => each === kind) ?? 'conditioner';
  return { kind: known, use: use === 'rinse-off' || use === 'leave-on' ? use : usualUse[known] };
}

/** A label's text, read as its product is used. */
export const readingOf = (row: Row): Reading => readLabel(row.label ?? '', lookup, usageOf(row));
