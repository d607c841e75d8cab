import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Range } from '../../src/core/names/entry.ts';
import { washDay } from '../../src/core/wash-day/add-up.ts';
import {
  butter,
  day,
  glycerin,
  hand,
  oatExtract,
  peptide,
  practice,
  silk,
  water,
  wheat,
} from './hand-read.ts';

const close = (range: Range, min: number, max: number) => {
  expect(range.min).toBeCloseTo(min, 9);
  expect(range.max).toBeCloseTo(max, 9);
};

describe('what stays on the hair', () => {
  it('is grams × share × retention, in milligrams, by size and role', () => {
    // 6 g of gel, nine tenths stay: 5.4 g. 0…1 % silk → 0…54 mg; 0…10 % wheat → 0…540; 1…30 % glycerin → 54…1620.
    const { steps } = washDay(day([{ kind: 'gel', of: hand([water, glycerin, silk, wheat]) }])).stays;
    const [gel] = steps;
    close(gel!.protein.small, 0, 54);
    close(gel!.protein.large, 0, 540);
    close(gel!.moisture.humectant, 54, 1620);
    expect(gel).toMatchObject({ grams: 6, retention: 0.9, source: 'common-practice', unread: false });
  });

  it('adds the steps up for the day, and says how many were not read', () => {
    const { day: all } = washDay(
      day([
        { kind: 'gel', of: hand([silk]) },
        { kind: 'conditioner', of: hand([silk]), grams: 10 },
        { kind: 'cream' },
      ]),
    ).stays;
    close(all.protein.small, 0, 54 + 10);
    expect(all.unread).toBe(1);
  });

  it('counts a mention with two roles in both, and once in the whole', () => {
    const { day: all } = washDay(day([{ kind: 'cream', of: hand([butter]) }])).stays;
    close(all.moisture.emollient, 45, 900);
    close(all.moisture.occlusive, 45, 900);
    close(all.moistureAll, 45, 900);
  });

  it('keeps matter that may bear protein apart, and named peptides below 10 ppm', () => {
    const { day: all } = washDay(day([{ kind: 'gel', of: hand([oatExtract, peptide]) }])).stays;
    close(all.bearing, 0, 270);
    close(all.protein.small, 0, 6000 * 0.9 * 1e-5);
  });

  it('never says more stays than is left of the whole product', () => {
    const range = fc
      .tuple(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }))
      .map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }));
    fc.assert(
      fc.property(
        fc.array(range, { maxLength: 12 }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (shares, grams) => {
          const reading = hand(shares.map((share) => ({ ...silk, share })));
          const [step] = washDay(day([{ kind: 'gel', of: reading, grams }])).stays.steps;
          const { min, max } = step!.protein.small;
          expect(min).toBeLessThanOrEqual(max);
          expect(max).toBeLessThanOrEqual(grams * practice.washDay.exposure.gel.retention * 1000 + 1e-9);
        },
      ),
    );
  });
});
