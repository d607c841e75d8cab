import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runOf } from '../../../src/core/plan/build/alternate.ts';
import { washDay } from '../../../src/core/wash-day/add-up.ts';
import { daysBetween } from '../../../src/core/wash-day/days.ts';
import { day, fatty, glycerin, hand, laureth, middling, silk, water, wheat } from '../hand-read.ts';

const nth = (n: number) => ({ every: 'nth-wash', n }) as const;
const wash = { kind: 'cleanser', of: hand([water, glycerin]) } as const;
const plain = hand([water, fatty, glycerin]);
const treats = hand([water, wheat, silk]);

const alternating = day(
  [
    { kind: 'cleanser', of: hand([water, laureth]), cadence: nth(3) },
    wash,
    { kind: 'protein-treatment', of: treats, cadence: nth(4) },
    { kind: 'deep-conditioner', of: plain, cadence: nth(2) },
    { kind: 'gel', of: hand([water, silk]) },
  ],
  middling,
);

describe('a run of wash days', () => {
  it('says what sets each day apart, in the rhythm the steps have', () => {
    const run = runOf(alternating, 7 * 9);
    expect(run.days.map(({ turns }) => turns.join())).toEqual([
      'treatment,clarifying,moisture',
      '',
      'moisture',
      'clarifying',
      'treatment,moisture',
      '',
      'clarifying,moisture',
      '',
      'treatment,moisture',
    ]);
    expect(run.between).toEqual({ least: 28, most: 28 });
  });
  it('judges each day by what is done on it', () => {
    for (const { steps, date, answer, findings } of runOf(alternating, 70).days) {
      const own = {
        ...alternating.routine,
        steps: alternating.routine.steps.filter(({ id }) => steps.includes(id)),
      };
      const alone = washDay({ ...alternating, routine: own, today: date });
      expect({ answer, findings }).toEqual({ answer: alone.answer, findings: alone.findings });
    }
  });
  it('counts doses over the whole run: a gel with protein at each weekly wash, and a treatment each fourth', () => {
    // 12 washes in 84 days: 12 of the gel, 3 of the treatment; 15 in 84 days are 5.4 in 30.
    expect(runOf(alternating, 84).dosesAMonth).toBe(5);
    expect(runOf(day([wash], middling), 84)).toMatchObject({ dosesAMonth: 0 });
    expect(runOf(day([wash], middling), 84).between).toBeUndefined();
  });
  it('treatments never come closer than the hair wants, whatever the rhythm', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 14 }),
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 1, max: 8 }),
        (washEvery, n, m) => {
          const input = day(
            [
              wash,
              { kind: 'protein-treatment', of: treats, cadence: nth(n) },
              { kind: 'deep-conditioner', of: plain, cadence: nth(m) },
            ],
            middling,
            { washEvery },
          );
          const { days, between, wanted } = runOf(input, 200);
          const treated = days.filter(({ treatments }) => treatments.length > 0).map(({ date }) => date);
          const gaps = treated.slice(1).map((date, at) => daysBetween(treated[at]!, date));
          expect(between?.least ?? Infinity).toBe(Math.min(...gaps));
          expect(between?.least ?? Infinity).toBeGreaterThanOrEqual(wanted!);
        },
      ),
      { numRuns: 60 },
    );
  });
});
