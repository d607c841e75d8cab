// The bounds of shares by a general solver: HiGHS (npm `highs`). The union of polytopes is walked place by place.
import highsLoader from 'highs';
import type { Amount } from '../../src/core/amounts/bounds.ts';

const highs = await highsLoader();

/** Least or largest share of the `k`th amount, in percent; null where no formula fits. */
export function solve(
  amounts: Amount[],
  line: number,
  k: number,
  sense: 'Minimize' | 'Maximize',
): number | null {
  let best: number | null = null;
  const chain = amounts.flatMap((amount, i) => (amount.free ? [] : [i]));
  for (let p = 0; p <= chain.length; p++) {
    const rows = [`total: ${amounts.map((_, i) => `w${i}`).join(' + ')} = 100`];
    const limits = amounts.map((amount, i) => {
      const at = chain.indexOf(i);
      const low = at >= 0 && at < p ? Math.max(amount.least, line) : amount.least;
      const high = at >= p ? Math.min(amount.most, line) : amount.most;
      return { i, low, high };
    });
    if (limits.some(({ low, high }) => low > high)) continue;
    for (let j = 1; j < p; j++) rows.push(`o${j}: w${chain[j - 1]} - w${chain[j]} >= 0`);
    const bounds = limits.map(({ i, low, high }) => `${low} <= w${i} <= ${high}`);
    const answer = highs.solve(
      `${sense}\n w${k}\nSubject To\n ${rows.join('\n ')}\nBounds\n ${bounds.join('\n ')}\nEnd\n`,
      { primal_feasibility_tolerance: 1e-9, dual_feasibility_tolerance: 1e-9 },
    );
    if (answer.Status !== 'Optimal') continue;
    const value = answer.ObjectiveValue;
    best = best === null ? value : sense === 'Minimize' ? Math.min(best, value) : Math.max(best, value);
  }
  return best;
}
