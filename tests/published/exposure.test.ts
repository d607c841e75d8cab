import { expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { productKinds, usualUse } from '../../src/core/product/product.ts';
import { exposureOf, staysOf } from '../../src/core/wash-day/retained.ts';
import { dayStep } from '../../src/core/wash-day/rules/day.ts';
import { hand, silk, water } from '../core/hand-read.ts';

// SCCS/1647/22, Notes of Guidance, 12th revision, estimated daily exposure: grams a day, retention factor,
// grams retained a day. From memory, so the retained column is held to the printed precision only.
const table = {
  shampoo: { grams: 10.46, retention: 0.01, retained: 0.11 },
  'rinse-off conditioner': { grams: 3.92, retention: 0.01, retained: 0.04 },
  styling: { grams: 4, retention: 0.1, retained: 0.4 },
};

it('every kind of product takes one of the three rows, by how it is used', () => {
  for (const kind of productKinds) {
    const row = practice.washDay.exposure[kind];
    const { grams, retention } = table[row.source as keyof typeof table];
    expect([row.grams, row.retention], kind).toEqual([grams, retention]);
    expect(row.source === 'styling', kind).toBe(usualUse[kind] === 'leave-on');
  }
});

it.each([
  ['cleanser', 'shampoo'],
  ['conditioner', 'rinse-off conditioner'],
  ['gel', 'styling'],
] as const)('%s: what stays of a whole product is the table’s retained column', (kind, row) => {
  const step = {
    id: 's',
    kind,
    use: usualUse[kind],
    product: 'p',
    optional: false,
    cadence: { every: 'wash' as const },
  };
  const all = hand([{ ...silk, share: { min: 100, max: 100 } }]);
  const { day } = staysOf([dayStep(step, all, practice.washDay)], practice.washDay);
  // The table prints 0.11 for 10.46 × 0.01, so its own rounding is the tolerance.
  expect(Math.abs(day.protein.small.max / 1000 - table[row].retained)).toBeLessThan(0.006);
  // And the percent arithmetic: 0…1 % of it.
  const some = hand([water, silk]);
  const small = staysOf([dayStep(step, some, practice.washDay)], practice.washDay).day.protein.small;
  expect(small.min).toBe(0);
  expect(small.max).toBeCloseTo(table[row].grams * table[row].retention * 10, 6);
});

it('a product used otherwise than is usual takes the row of its use, and the reader’s grams', () => {
  const left = exposureOf({ kind: 'conditioner', use: 'leave-on', grams: 2 }, practice.washDay);
  expect(left).toEqual({ grams: 2, retention: 0.1, source: 'styling' });
  const rinsed = exposureOf({ kind: 'gel', use: 'rinse-off' }, practice.washDay);
  expect(rinsed).toMatchObject({ grams: 4, retention: 0.01 });
});
