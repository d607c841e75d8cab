// What every question of judgement starts from: a head, its tolerance, a label read.
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { practice } from '../../dictionary/practice.ts';
import { allowanceOf } from '../../src/core/hair/tolerance.ts';
import { createLookup } from '../../src/core/lookup.ts';
import type { Use } from '../../src/core/names/entry.ts';
import { type ProductKind, productKinds, usualUse } from '../../src/core/product/product.ts';
import { readLabel } from '../../src/core/reading.ts';
import { headOf, logOf, today, washEveryOf } from './head-of.ts';
import type { Row } from './rows.ts';

const lookup = createLookup(entries, patterns, limits);

/** A head as the program knows it, with the rhythm of its washing days. */
export function contextOf(row: Row) {
  const head = headOf(row);
  const allowance = allowanceOf(head, practice.allowance, { today, log: logOf(row) });
  return { head, allowance, practice, today, washEvery: washEveryOf(row.notes ?? '') };
}

export function productOf(row: Row, kind: string | undefined = row.kind) {
  const known = productKinds.find((each) => each === kind) as ProductKind | undefined;
  const use = (['rinse-off', 'leave-on'] as const).find((each) => each === row.use) as Use | undefined;
  return {
    kind: known,
    use: use ?? (known && usualUse[known]),
    reading: readLabel(row.label ?? '', lookup, {
      ...(use && { use }),
      ...(known && { kind: known }),
    }),
  };
}
