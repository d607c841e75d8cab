// How much of a product one wash takes, and what that costs. Sums checked by hand.
import { expect, it } from 'vitest';
import { priceOfGrams } from '../../src/core/product/product.ts';
import { gramsAWash } from '../../src/use/grams-a-wash.ts';
import { knowing } from './knowing.ts';

const head = {
  id: 'h',
  name: 'Wren',
  damage: { kinds: [] },
  avoid: [],
  stretch: [],
  setAside: [],
  added: '2026-01-01',
};
const step = { id: 's', kind: 'gel', use: 'leave-on', optional: false, cadence: { every: 'wash' } } as const;
const routine = (grams?: number) => ({
  id: 'r',
  head: 'h',
  name: 'Sunday',
  washEvery: 7,
  added: '2026-01-01',
  steps: [{ ...step, product: 'p', ...(grams !== undefined && { grams }) }],
});

it.each([
  ['as its step in the routine says', { id: 'p', kind: 'gel' }, 11, 11],
  // Loretz and others 2006: conditioner 10.2 g a use, as dictionary/wash-day.json has it.
  ['a step without grams: what is usual', { id: 'p', kind: 'conditioner' }, undefined, 6],
  ['not in the routine: what is usual for its kind', { id: 'q', kind: 'conditioner' }, 11, 10.2],
  ['only met: what is usual for its kind', { kind: 'conditioner' }, 11, 10.2],
  ['kind not known', { id: 'q' }, 11, undefined],
] as const)('%s', (_, product, grams, expected) => {
  expect(gramsAWash(knowing({ heads: [head], routines: [routine(grams)] }), product)).toBe(expected);
});

it.each([
  [{ price: 14, size: 200 }, 10, 0.7],
  [{ price: 14, size: 200 }, 0, 0],
  [{ price: 14 }, 10, undefined],
  [{ size: 200 }, 10, undefined],
])('%j: %d g', (product, grams, price) => {
  const found = priceOfGrams(product, grams);
  if (price === undefined) expect(found).toBeUndefined();
  else expect(found).toBeCloseTo(price, 10);
});
