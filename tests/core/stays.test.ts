import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bringsOf, steps as words } from '../../src/core/amounts/brings.ts';
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

describe('what a product brings', () => {
  it('is share × grams × what stays, by size and role', () => {
    // 6 g of gel, nine tenths stay: 54 mg a percent. Nothing is known to be usual: a share of 0…1 % is likely 0.4 %.
    const gel = washDay(day([{ kind: 'gel', of: hand([water, glycerin, silk, wheat]) }])).stays.steps[0]!;
    expect(gel).toMatchObject({ grams: 6, stays: 0.9, source: 'common-practice', unread: false });
    expect(gel.protein.bySize.small.mg.likely).toBeCloseTo(54 * 0.4, 6);
    expect(gel.protein.bySize.small.mg.most).toBeCloseTo(54, 6);
    expect(gel.protein.bySize.large.mg.most).toBeCloseTo(540, 6);
    expect(gel.moisture.byRole.humectant.mg.least).toBeGreaterThanOrEqual(54);
  });

  it('adds up for the day, apart for the washes on which nothing alternates, and says how many were not read', () => {
    const { day: all, everyWash } = washDay(
      day([
        { kind: 'gel', of: hand([silk]) },
        { kind: 'conditioner', of: hand([silk]), grams: 10, cadence: { every: 'nth-wash', n: 4 } },
        { kind: 'cream' },
      ]),
    ).stays;
    expect(all.protein.mg.most).toBeCloseTo(54 + 10, 6);
    expect(everyWash.protein.mg.most).toBeCloseTo(54, 6);
    expect(all.unread).toBe(1);
  });

  it('counts a mention with two roles in both, and once in the whole', () => {
    const { moisture } = washDay(day([{ kind: 'cream', of: hand([water, butter]) }])).stays.day;
    expect(moisture.byRole.emollient.mg).toEqual(moisture.mg);
    expect(moisture.byRole.occlusive.mg).toEqual(moisture.mg);
  });

  it('does not count what may contain protein, nor named peptides below 10 ppm', () => {
    const { protein } = washDay(day([{ kind: 'gel', of: hand([oatExtract, peptide]) }])).stays.day;
    expect(protein).toMatchObject({ step: 'none', mg: { most: 0 } });
  });

  it('least, likely and most stand in this order, and never exceed what is left of the whole product', () => {
    const range = fc
      .tuple(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }))
      .map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }));
    fc.assert(
      fc.property(
        fc.array(range, { maxLength: 12 }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (shares, grams) => {
          const reading = hand(shares.map((share) => ({ ...silk, share })));
          const { protein } = bringsOf(reading, { kind: 'gel', grams }, practice.washDay);
          const { least, likely, most } = protein.mg;
          expect(least).toBeLessThanOrEqual(likely + 1e-9);
          expect(likely).toBeLessThanOrEqual(most + 1e-9);
          expect(most).toBeLessThanOrEqual(grams * practice.washDay.exposure.gel.retention * 1000 + 1e-6);
          expect(words.indexOf(protein.least)).toBeLessThanOrEqual(words.indexOf(protein.most));
        },
      ),
    );
  });
});
