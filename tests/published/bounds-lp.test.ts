import { expect, it } from 'vitest';
import { type Amount, shareBounds } from '../../src/core/amounts/bounds.ts';
import { solve } from './solve-bounds.ts';

// Reference: HiGHS, a general LP solver.

// A small seeded generator (Numerical Recipes constants): the same 500 labels each run.
function seeded(seed: number) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

it('equals a general LP solver on 500 random labels to 1e-6', { timeout: 180_000 }, () => {
  const next = seeded(20261125);
  const pick = <T>(...values: T[]) => values[Math.floor(next() * values.length)]!;
  let solved = 0;
  let impossible = 0;
  while (solved < 500) {
    const n = 1 + Math.floor(next() * 9);
    const line = pick(1, 1, 1, 0.5, 0);
    const amounts: Amount[] = Array.from({ length: n }, () => {
      const most = pick(100, 100, 100, 60, 25, 5, 2.95, 1, 0.59, 0.02);
      const printed = next() < 0.08;
      const share = Math.round(Math.min(most, 1 + next() * 30) * 10) / 10;
      return {
        least: printed ? share : pick(0, 0, 0, 0, 0, 0.1),
        most: printed ? share : Math.max(0.1, most),
        free: next() < 0.07,
      };
    });
    const ours = shareBounds(amounts, line);
    const k = Math.floor(next() * n);
    const min = solve(amounts, line, k, 'Minimize');
    const max = solve(amounts, line, k, 'Maximize');
    const shown = JSON.stringify({ line, k, amounts, ours, min, max });
    if (min === null || max === null) {
      expect(ours, shown).toBeNull();
      impossible++;
      continue;
    }
    expect(ours, shown).not.toBeNull();
    expect(Math.abs(ours![k]!.min - min), shown).toBeLessThan(1e-6);
    expect(Math.abs(ours![k]!.max - max), shown).toBeLessThan(1e-6);
    solved++;
  }
  console.log(
    `share bounds against HiGHS: ${solved} labels agree; ${impossible} more have no formula in either`,
  );
});
