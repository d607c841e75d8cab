import { expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { exposureOf } from '../../src/core/amounts/brings.ts';
import { productKinds, usualUse } from '../../src/core/product/product.ts';
import { staysOf } from '../../src/core/wash-day/retained.ts';
import { dayStep } from '../../src/core/wash-day/rules/day.ts';
import { hand, silk, water } from '../core/hand-read.ts';

// Loretz 2006 and 2008, medians per application, from the abstracts: shampoo, conditioner, pump hairspray.
const medians = { cleanser: 9.56, conditioner: 10.21, hairspray: 2.66 };

it('what was measured is taken at its published median, to a tenth of a gram', () => {
  for (const kind of productKinds) {
    const { grams, source } = practice.washDay.exposure[kind];
    const published = medians[kind as keyof typeof medians];
    expect(source, kind).toBe(published ? 'loretz-2006' : 'common-practice');
    if (published) expect(grams).toBeCloseTo(published, 1);
  }
});

// Common practice: a leave-on stays almost whole, of a rinse-off little stays.
it('what stays is one factor for leave-ons, and less for rinse-offs', () => {
  const stays = (use: 'leave-on' | 'rinse-off') =>
    productKinds
      .filter((kind) => usualUse[kind] === use)
      .map((kind) => practice.washDay.exposure[kind].retention);
  expect(new Set(stays('leave-on')).size).toBe(1);
  expect(Math.max(...stays('rinse-off'))).toBeLessThan(Math.min(...stays('leave-on')) / 4);
});

it('of a whole product, grams times what stays is left', () => {
  const step = {
    id: 's',
    kind: 'gel',
    use: 'leave-on',
    product: 'p',
    optional: false,
    cadence: { every: 'wash' },
  } as const;
  const [stays] = staysOf([dayStep(step, hand([water, silk]), practice)], practice.washDay).steps;
  expect(stays!.protein.bySize.small.mg.most).toBeCloseTo(6 * 0.9 * 10, 6);
});

it('a product used otherwise than usual takes the row of that use, and its own grams stay', () => {
  const row = (use: 'leave-on' | 'rinse-off', grams?: number) =>
    exposureOf({ kind: 'conditioner', use, ...(grams && { grams }) }, practice.washDay);
  const { exposure } = practice.washDay;
  expect(row('leave-on').retention).toBe(exposure['leave-in'].retention);
  expect(row('rinse-off').grams).toBe(exposure.conditioner.grams);
  expect(row('leave-on', 7).grams).toBe(7);
});
