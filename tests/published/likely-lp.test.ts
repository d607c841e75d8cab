import highsLoader from 'highs';
import { expect, it } from 'vitest';
import { type Held, highest, misfits } from '../../src/core/amounts/propagate.ts';

// Reference: HiGHS (general LP solver, npm `highs`): the highest share of one name under chain, bounds and shared sums.
const highs = await highsLoader();

function solve(names: readonly Held[], caps: readonly number[], k: number): number | null {
  const rows: string[] = [];
  const chain = names.flatMap(({ chained }, i) => (chained ? [i] : []));
  for (let j = 1; j < chain.length; j++) rows.push(`o${j}: w${chain[j - 1]} - w${chain[j]} >= 0`);
  for (const [sum, cap] of caps.entries()) {
    const members = names.flatMap((name, i) => (name.sum === sum ? [`w${i}`] : []));
    if (members.length > 0) rows.push(`s${sum}: ${members.join(' + ')} <= ${cap}`);
  }
  rows.push(`all: w${k} >= 0`);
  const bounds = names.map(({ least, most }, i) => `${least} <= w${i} <= ${Math.min(most, 1000)}`);
  const answer = highs.solve(
    `Maximize\n w${k}\nSubject To\n ${rows.join('\n ')}\nBounds\n ${bounds.join('\n ')}\nEnd\n`,
    { primal_feasibility_tolerance: 1e-9, dual_feasibility_tolerance: 1e-9 },
  );
  return answer.Status === 'Optimal' ? answer.ObjectiveValue : null;
}

// A small seeded generator (Numerical Recipes constants): the same labels each run.
function seeded(seed: number) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

it('equals a general LP solver on 600 random lists to 1e-6, every name of each', { timeout: 180_000 }, () => {
  const next = seeded(20261126);
  const pick = <T>(...values: T[]) => values[Math.floor(next() * values.length)]!;
  let unfit = 0;
  let heldBySum = 0;
  for (let round = 0; round < 600; round++) {
    const n = 1 + Math.floor(next() * 10);
    const caps = Array.from({ length: Math.floor(next() * 4) }, () => pick(1.5, 5, 10, 20, 30));
    const line = Math.floor(next() * (n + 1));
    const names = Array.from({ length: n }, (_, i): Held => {
      const sum = Math.floor(next() * (caps.length + 1));
      return {
        least: pick(0, 0, 0, 0, 0.5, 2, Math.round(next() * 80) / 10),
        most: pick(1000, 1000, 20, 10, 5, 2, 1, 0.25, Math.round(next() * 200) / 10 + 0.1),
        chained: i < line && next() < 0.9,
        ...(sum < caps.length ? { sum } : {}),
      };
    });
    const shown = JSON.stringify({ names, caps });
    const wrong = misfits(names, caps);
    if (wrong.names.length + wrong.sums.length > 0) {
      expect(solve(names, caps, 0), shown).toBeNull();
      unfit++;
      continue;
    }
    const ours = highest(names, caps);
    for (const k of names.keys()) {
      expect(ours[k]!.most, `${k} of ${shown}`).toBeCloseTo(solve(names, caps, k)!, 6);
      if (ours[k]!.held.by === 'sum') heldBySum++;
    }
  }
  // The generator reaches every branch.
  expect(unfit).toBeGreaterThan(50);
  expect(heldBySum).toBeGreaterThan(100);
});
