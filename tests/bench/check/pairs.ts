// Ours and its measure, one after the other in one run, again and again: what slows one slows the other, so that
// their ratio says little of the machine.

/** Times of one thing of ours and of what it is held against, taken by turns, in ms. */
export type Pair = { name: string; ours: number[]; beside: number[] };

/** The ratio of the least times, and the span of the ratios of the rounds. */
export function ratioOf({ ours, beside }: Pair): { ratio: number; from: number; to: number } {
  const each = ours.map((time, i) => time / beside[i]!);
  return {
    ratio: Math.min(...ours) / Math.min(...beside),
    from: Math.min(...each),
    to: Math.max(...each),
  };
}

/** Time of the processor that a task takes in Node, in ms: what other programs take is not counted. */
async function spent(task: () => unknown, times: number): Promise<number> {
  const before = process.cpuUsage();
  for (let i = 0; i < times; i++) await task();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000 / times;
}

/** Both by turns, once each to warm up; `times` and `besideTimes` are runs within a round. */
export async function byTurns(
  name: string,
  ours: () => unknown,
  beside: () => unknown = calibration,
  { rounds = 7, times = 1, besideTimes = 3 } = {},
): Promise<Pair> {
  const pair: Pair = { name, ours: [], beside: [] };
  for (let round = -1; round < rounds; round++) {
    const [one, other] = [await spent(ours, times), await spent(beside, besideTimes)];
    if (round < 0) continue;
    pair.ours.push(one);
    pair.beside.push(other);
  }
  return pair;
}

/**
 * Work that every machine is held against: words counted in a text, as plain as it can be written. About 5 ms on
 * the machine of `npm run bench`. Self-contained: it is also run in a page.
 */
export function calibration(): number {
  const counts = new Map<string, number>();
  for (let i = 0; i < 30_000; i++) {
    const word = `${'abcdefghij'.slice(i % 7)}${i % 4999}`.toUpperCase();
    counts.set(word, (counts.get(word) ?? 0) + word.length);
  }
  return [...counts.values()].reduce((sum, one) => sum + one, 0);
}
