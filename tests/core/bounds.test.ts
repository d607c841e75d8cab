import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Amount, shareBounds } from '../../src/core/amounts/bounds.ts';

const anything = { least: 0, most: 100 };
const list = (n: number, set: Record<number, Partial<Amount>> = {}): Amount[] =>
  Array.from({ length: n }, (_, i) => ({ ...anything, ...set[i + 1] }));
const round = (value: number) => Math.round(value * 1e4) / 1e4;
const most = (amounts: Amount[]) => shareBounds(amounts)!.map(({ max }) => round(max));
const least = (amounts: Amount[]) => shareBounds(amounts)!.map(({ min }) => round(min));

// Computed values for ordered amounts, checked there with a linear-programming solver: "order only",
// "w1 at least", "marker at position p" and so on.
describe('bounds from order, tabled values', () => {
  it('order only, five and ten names', () => {
    expect(most(list(5))).toEqual([100, 50, 33.3333, 25, 20]);
    expect(least(list(5))).toEqual([20, 0, 0, 0, 0]);
    expect(most(list(10))).toEqual([100, 50, 33.3333, 25, 20, 16.6667, 14.2857, 12.5, 11.1111, 10]);
    expect(least(list(10))[0]).toBe(10);
  });
  it('the first is at least 60', () => {
    expect(most(list(10, { 1: { least: 60 } })).slice(1)).toEqual([
      40, 20, 13.3333, 10, 8, 6.6667, 5.7143, 5, 4.4444,
    ]);
  });
  it('position 6 of 10 is at most 1 (phenoxyethanol, EU Annex V/29)', () => {
    const amounts = list(10, { 6: { most: 1 } });
    expect(most(amounts).slice(5)).toEqual([1, 1, 1, 1, 1]);
    expect(least(amounts)[0]).toBe(19);
    expect(most(amounts)[1]).toBe(50);
  });
  it('both', () => {
    expect(most(list(10, { 1: { least: 60 }, 6: { most: 1 } })).slice(1)).toEqual([
      40, 20, 13.3333, 10, 1, 1, 1, 1, 1,
    ]);
  });
  it('a cap far below 1 % does not cap what follows at its own value (0.02 at 8 of 12)', () => {
    expect(most(list(12, { 8: { most: 0.02 } })).slice(7)).toEqual([0.02, 1, 1, 1, 1]);
  });
  it('a cap above 1 % caps all that follows (sodium benzoate, rinse-off, 2.95 at 5 of 10)', () => {
    expect(most(list(10, { 5: { most: 2.95 } })).slice(4)).toEqual([2.95, 2.95, 2.95, 2.95, 2.95, 2.95]);
  });
  // "Food Ingredients as Linear Programming" (tomerv.github.io): wheat flour, water, egg 2 %, salt, turmeric.
  // Food law has no free line: line 0.
  it('published noodles: flour 47–96, water 2–49, salt and turmeric 0–2', () => {
    const bounds = shareBounds(list(5, { 3: { least: 2, most: 2 } }), 0)!;
    expect(bounds.map(({ min, max }) => [round(min), round(max)])).toEqual([
      [47, 96],
      [2, 49],
      [2, 2],
      [0, 2],
      [0, 2],
    ]);
  });
  it('published chocolate: 58, 40, ?, 0.1 leaves 1.9', () => {
    const bounds = shareBounds(
      list(4, { 1: { least: 58, most: 58 }, 2: { least: 40, most: 40 }, 4: { least: 0.1, most: 0.1 } }),
      0,
    )!;
    expect(bounds[2]!.min).toBeCloseTo(1.9, 9);
    expect(bounds[2]!.max).toBeCloseTo(1.9, 9);
  });
});

// MacArthur RH, PNAS 1957;43:293–295; values computed two ways: the formula, and the centroid of the corners.
describe('bounds, always', () => {
  const amounts = fc.array(
    fc
      .record({
        least: fc.constantFrom(0, 0, 0, 0, 0.2, 2),
        most: fc.constantFrom(100, 100, 100, 30, 5, 2, 1, 0.5),
        free: fc.constantFrom(false, false, false, false, true),
      })
      .map((amount) => ({ ...amount, most: Math.max(amount.least, amount.most) })),
    { minLength: 1, maxLength: 30 },
  );
  it('a tighter ceiling never widens any range', () => {
    fc.assert(
      fc.property(amounts, fc.nat(), (list, pick) => {
        const before = shareBounds(list);
        const tighter = list.map((amount, i) =>
          i === pick % list.length ? { ...amount, most: Math.max(amount.least, amount.most / 2) } : amount,
        );
        const after = shareBounds(tighter);
        if (!after) return;
        expect(before).not.toBeNull();
        for (const [i, range] of after.entries()) {
          expect(range.min).toBeGreaterThanOrEqual(before![i]!.min - 1e-6);
          expect(range.max).toBeLessThanOrEqual(before![i]!.max + 1e-6);
        }
      }),
    );
  });
  it('contradictions have no formula', () => {
    expect(shareBounds([{ least: 0, most: 10 }, anything])).toBeNull();
    expect(shareBounds([{ least: 5, most: 5 }, { least: 20, most: 20 }, anything])).toBeNull();
  });
  it('says nothing where order says nothing', () => {
    const free = list(3).map((amount) => ({ ...amount, free: true }));
    expect(shareBounds(free, 1)).toEqual([
      { min: 0, max: 100 },
      { min: 0, max: 100 },
      { min: 0, max: 100 },
    ]);
  });
  it('500 names take little more than ten times 50', () => {
    const time = (n: number) => {
      const from = performance.now();
      for (let i = 0; i < 20; i++) shareBounds(list(n, { [Math.floor(n / 2)]: { most: 1 } }));
      return performance.now() - from;
    };
    // The least of many runs: what a busy machine adds is no fault of ours.
    const least = (n: number) => Math.min(...Array.from({ length: 30 }, () => time(n)));
    least(50);
    expect(least(500) / Math.max(0.05, least(50))).toBeLessThan(60);
  });
});
