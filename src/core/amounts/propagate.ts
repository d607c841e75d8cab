/**
 * Highest share of each name where
 *
 *   wi ≥ wj for names i before j ahead of the one-percent line (the chain),
 *   least ≤ w ≤ most for each, and Σ w ≤ cap over the members of each shared sum.
 *
 * Every condition but the chain only holds from above, so w_k = t is possible just where the smallest list
 * that has it is: t for each name ahead of it, its minimum for every other. Each bound is exact for itself.
 */
export type Held = {
  least: number;
  /** Infinity where nothing is known. */
  most: number;
  /** Ahead of the line: stands in the chain. */
  chained: boolean;
  /** Index of the shared sum it is part of. */
  sum?: number;
};

/** What holds a share down: its own bound, an earlier name's, or a shared sum. */
export type HeldBy = { by: 'own' } | { by: 'earlier'; index: number } | { by: 'sum'; sum: number };

export type Highest = { most: number; held: HeldBy };

const slack = 1e-9;

/** Minimum of each name: in the chain no less than any later one. */
function minima(names: readonly Held[]): number[] {
  const least = names.map((name) => name.least);
  let later = 0;
  for (let i = names.length - 1; i >= 0; i--) {
    if (!names[i]!.chained) continue;
    later = Math.max(later, least[i]!);
    least[i] = later;
  }
  return least;
}

/** The bounds and sums that cannot hold together with the minima: indexes of names, and of sums. */
export function misfits(
  names: readonly Held[],
  caps: readonly number[],
): { names: number[]; sums: number[] } {
  const least = minima(names);
  return {
    names: names.flatMap(({ most }, i) => (least[i]! > most + slack ? [i] : [])),
    sums: caps.flatMap((cap, sum) => {
      const needed = names.reduce((all, name, i) => (name.sum === sum ? all + least[i]! : all), 0);
      return needed > cap + slack ? [sum] : [];
    }),
  };
}

/** Names and sums must fit (`misfits` empty). */
export function highest(names: readonly Held[], caps: readonly number[]): Highest[] {
  const least = minima(names);
  // Members of each sum that holds, in order.
  const parts = caps.map((cap, sum) =>
    Number.isFinite(cap) ? names.flatMap((name, i) => (name.sum === sum ? [i] : [])) : [],
  );
  let most = Number.POSITIVE_INFINITY;
  let held: HeldBy = { by: 'own' };
  return names.map((name, k) => {
    if (name.chained) {
      if (name.most < most) {
        most = name.most;
        held = { by: 'earlier', index: k };
      }
    }
    let best = name.chained ? most : name.most;
    let by: HeldBy = name.chained && held.by === 'earlier' && held.index !== k ? held : { by: 'own' };
    // In the chain a name lifts all before it, so every sum with a member ahead of it may hold it down.
    for (const [sum, members] of parts.entries()) {
      if (members.length === 0 || (name.chained ? members[0]! > k : name.sum !== sum)) continue;
      const lifted: number[] = [];
      let rest = 0;
      for (const i of members) {
        if (i === k || (name.chained && names[i]!.chained && i < k)) lifted.push(least[i]!);
        else rest += least[i]!;
      }
      const room = lifted.length > 0 ? level(lifted, caps[sum]! - rest) : Number.POSITIVE_INFINITY;
      if (room < best - slack) {
        best = room;
        by = { by: 'sum', sum };
      }
    }
    // What lowered an earlier name lowers this one through the chain.
    if (name.chained && best < most) {
      most = best;
      held = { by: 'earlier', index: k };
    }
    return { most: Math.max(best, least[k]!), held: by };
  });
}

/** Largest t with Σ max(t, each) ≤ total. */
function level(floors: number[], total: number): number {
  const falling = floors.toSorted((a, b) => b - a);
  let above = falling.reduce((a, b) => a + b, 0);
  let t = Number.NEGATIVE_INFINITY;
  for (let count = 1; count <= falling.length; count++) {
    // The `count` lowest stand at t, the rest at their floors.
    above -= falling[falling.length - count]!;
    t = (total - above) / count;
    const next = falling[falling.length - count - 1];
    if (next === undefined || t <= next) break;
  }
  return t;
}
