import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { usualUse } from '../../src/core/product/product.ts';
import { readLabel, shareOf } from '../../src/core/reading/reading.ts';
import { formulas } from './formulas.ts';

const lookup = createLookup(entries, patterns, limits);
const shares = formulas.flatMap(({ kind, parts }) => {
  const { mentions } = readLabel(parts.map(([name]) => name).join(', '), lookup, {
    kind,
    use: usualUse[kind],
  });
  return parts.map(([name, percent], index) => ({ kind, name, percent, mention: mentions[index]! }));
});
const part = (test: (each: (typeof shares)[number]) => boolean, of = shares) =>
  of.filter(test).length / of.length;

it('the share of a formula lies below the likely upper end, and mostly within three times the usual one', () => {
  const told = shares.filter(({ mention }) => mention.usual !== undefined);
  const inside = part(({ percent, mention }) => percent <= shareOf(mention).max + 1e-9);
  const near = part(
    ({ percent, mention: { usual } }) => percent <= usual! * 3 && percent >= usual! / 3,
    told,
  );
  const outside = shares.filter(({ percent, mention }) => percent > shareOf(mention).max + 1e-9);
  console.info(
    `${(inside * 100).toFixed(0)} % of ${shares.length} below the likely upper end; ${(near * 100).toFixed(0)} % of ${told.length} within three times the usual share`,
    outside.map(({ kind, name, percent, mention }) => `${kind} ${name} ${percent} > ${shareOf(mention).max}`),
  );
  expect(inside).toBeGreaterThanOrEqual(0.95);
  expect(near).toBeGreaterThanOrEqual(0.75);
});
