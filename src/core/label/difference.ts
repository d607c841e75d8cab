import type { Mention } from '../reading/reading.ts';

type Part = Pick<Mention, 'raw' | 'found' | 'protein' | 'moisture'>;

export type LabelDifference<M extends Part = Mention> = {
  /** In the order of the label they stand on. */
  added: M[];
  removed: M[];
  /** On both, but further up (or down) among the names on both. */
  moved: { mention: M; up: boolean }[];
};

const keyOf = ({ raw, found }: Part) =>
  found.how === 'none' ? raw.toLowerCase().replace(/\s+/g, ' ').trim() : found.name;

/**
 * What changed between two labels of one product, name by name: a name is the same when it is found as the
 * same INCI name, so a new spelling is no change. What moved is the least that explains the new order.
 */
export function labelDifference<M extends Part>(
  before: readonly M[],
  after: readonly M[],
): LabelDifference<M> {
  const was = placed(before);
  const is = placed(after);
  const both = [...is.keys()].filter((key) => was.has(key));
  const places = both.map((key) => was.get(key)!).toSorted((a, b) => a - b);
  const stayed = longestRising(both.map((key) => was.get(key)!));
  return {
    added: after.filter((mention, i) => is.get(keyOf(mention)) === i && !was.has(keyOf(mention))),
    removed: before.filter((mention, i) => was.get(keyOf(mention)) === i && !is.has(keyOf(mention))),
    moved: both
      .map((key, i) => ({ key, up: i < places.indexOf(was.get(key)!) }))
      .filter(({ key }) => !stayed.has(was.get(key)!))
      .map(({ key, up }) => ({ mention: after[is.get(key)!]!, up })),
  };
}

/** Name → its first place. */
function placed(parts: readonly Part[]): Map<string, number> {
  const places = new Map<string, number>();
  for (const [i, part] of parts.entries()) if (!places.has(keyOf(part))) places.set(keyOf(part), i);
  return places;
}

/** Values of a longest rising subsequence (patience sorting). */
function longestRising(values: number[]): Set<number> {
  const ends: number[] = []; // index of the smallest end of a rising run of each length
  const before: (number | undefined)[] = [];
  for (const [i, value] of values.entries()) {
    let low = 0;
    let high = ends.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (values[ends[middle]!]! < value) low = middle + 1;
      else high = middle;
    }
    before[i] = low > 0 ? ends[low - 1] : undefined;
    ends[low] = i;
  }
  const rising = new Set<number>();
  for (let at = ends.at(-1); at !== undefined; at = before[at]) rising.add(values[at]!);
  return rising;
}
