import type { Range } from '../names/entry.ts';

/**
 * What the order of a label allows each amount to be.
 *
 * Ingredients stand in descending order of weight; those at or below the free line (1 %) may follow in any
 * order, and colourants in any order after them (EU 1223/2009 Art. 19(1)(g); 21 CFR 701.3). So the allowed
 * formulas are a union of polytopes, one for each place p where the line can fall:
 *
 *   w1 ≥ w2 ≥ … ≥ wp ≥ line,   0 ≤ wi ≤ line for i > p,   least ≤ wi ≤ most,   Σ w = total
 *
 * Within one polytope the chain's own limits are monotone (a prefix minimum above, a suffix maximum below),
 * so a formula exists just where Σ lower ≤ total ≤ Σ upper, and an extreme of one amount is where one of the
 * two sums meets the total. Both sums grow with p, so the feasible places are an interval and each extreme is
 * reached at one end of it: O(n log n) in all.
 */
export type Amount = {
  /** Percent; both bounds inclusive. A printed share sets both. */
  least: number;
  most: number;
  /** Colourants and "may contain": any amount within its bounds, wherever it stands. */
  free?: boolean;
};

/**
 * Exact minimum and maximum of every amount, in percent by weight, or null where no formula is allowed
 * (contradictory ceilings or printed shares).
 */
export function shareBounds(amounts: readonly Amount[], line = 1, total = 100): Range[] | null {
  const chain = amounts.filter((amount) => !amount.free);
  const loose = amounts.filter((amount) => amount.free);
  if (amounts.some(({ least, most }) => least > most)) return null;

  const n = chain.length;
  const looseLeast = sum(loose.map(({ least }) => least));
  const looseMost = sum(loose.map(({ most }) => most));
  // Limits of item i (0-based) as a member of the chain, and as a member of the free zone.
  const upper = prefixMinimum(chain.map(({ most }) => most));
  const forced = chain.findLastIndex(({ least }) => least > line) + 1; // p is at least this
  const lower = suffixMaximum(chain.map(({ least }, i) => (i < forced ? Math.max(least, line) : line)));
  const barred = chain.findIndex(({ most }) => most < line); // p is at most this
  const last = barred < 0 ? n : barred;
  const sums = {
    lower: running(lower),
    upper: running(upper),
    tailLeast: running(chain.map(({ least }) => least)),
    tailMost: running(chain.map(({ most }) => Math.min(most, line))),
  };
  const between = (list: number[], from: number, to: number) => list[to]! - list[from]!;
  const leastSum = (p: number) => sums.lower[p]! + between(sums.tailLeast, p, n) + looseLeast;
  const mostSum = (p: number) => sums.upper[p]! + between(sums.tailMost, p, n) + looseMost;
  const slack = 1e-9;
  const fits = (p: number) =>
    leastSum(p) <= total + slack && mostSum(p) >= total - slack && (p === 0 || lowerFits(p));
  const lowerFits = (() => {
    const firstBad = lower.findIndex((value, i) => value > upper[i]! + slack);
    return (p: number) => firstBad < 0 || p <= firstBad;
  })();

  let first = forced;
  while (first <= last && !fits(first)) first++;
  if (first > last) return null;
  let end = last;
  while (!fits(end)) end--;

  // Largest t with Σ_{j≤k} max(lower_j, t) + rest ≤ total.
  const chainMost = (k: number, p: number) => {
    const room = total - (leastSum(p) - sums.lower[k + 1]!);
    let low = 0;
    let high = k + 1; // items with lower ≥ t are a prefix of length s: find the s that holds
    while (low < high) {
      const s = (low + high) >> 1;
      const at = lower[s]!;
      if (sums.lower[s]! + at * (k + 1 - s) <= room) high = s;
      else low = s + 1;
    }
    const rest = k + 1 - low;
    const t = rest > 0 ? (room - sums.lower[low]!) / rest : lower[k]!;
    return Math.min(upper[k]!, Math.max(lower[k]!, t));
  };
  // Smallest t with Σ_{j<k} upper_j + t + Σ_{k<j≤p} min(upper_j, t) + free zone ≥ total.
  const chainLeast = (k: number, p: number) => {
    const need = total - sums.upper[k]! - between(sums.tailMost, p, n) - looseMost;
    let low = k + 1;
    let high = p; // items k+1 … s−1 have upper > t, the rest stand at their upper
    while (low < high) {
      const s = (low + high + 1) >> 1;
      const at = upper[s - 1]!;
      if (at * (s - k) + between(sums.upper, s, p) >= need) low = s;
      else high = s - 1;
    }
    const t = (need - between(sums.upper, low, p)) / (low - k);
    return Math.min(upper[k]!, Math.max(lower[k]!, t));
  };

  const chained = chain.map((amount, k): Range => {
    let min = Number.POSITIVE_INFINITY;
    let max = Number.NEGATIVE_INFINITY;
    if (end > k) {
      max = chainMost(k, Math.max(k + 1, first));
      min = chainLeast(k, end);
    }
    if (first <= k) {
      const most = Math.min(amount.most, line);
      const before = Math.min(end, k);
      max = Math.max(max, Math.min(most, total - (leastSum(first) - amount.least)));
      min = Math.min(min, Math.max(amount.least, total - (mostSum(before) - most)));
    }
    return tidy({ min, max });
  });
  const freed = loose.map(
    ({ least, most }): Range =>
      tidy({
        min: Math.max(least, total - (mostSum(end) - most)),
        max: Math.min(most, total - (leastSum(first) - least)),
      }),
  );
  return amounts.map((amount) => (amount.free ? freed.shift()! : chained.shift()!));
}

const sum = (values: number[]) => values.reduce((a, b) => a + b, 0);

const running = (values: number[]) => {
  const sums = [0];
  for (const value of values) sums.push(sums.at(-1)! + value);
  return sums;
};

const prefixMinimum = (values: number[]) => {
  let least = Number.POSITIVE_INFINITY;
  return values.map((value) => {
    least = Math.min(least, value);
    return least;
  });
};

const suffixMaximum = (values: number[]) => {
  let most = Number.NEGATIVE_INFINITY;
  return values
    .toReversed()
    .map((value) => {
      most = Math.max(most, value);
      return most;
    })
    .toReversed();
};

// Sums of floats leave dust of 1e-14: shown ranges should be clean.
const tidy = ({ min, max }: Range): Range => ({
  min: Math.round(Math.max(0, min) * 1e9) / 1e9,
  max: Math.round(max * 1e9) / 1e9,
});
