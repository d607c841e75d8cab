/** Median of a list of numbers; NaN of none. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Median time of a task in ms, after warming up. */
export function timed(task: () => unknown, runs = 200, warm = 20): number {
  for (let i = 0; i < warm; i++) task();
  return median(
    Array.from({ length: runs }, () => {
      const from = performance.now();
      task();
      return performance.now() - from;
    }),
  );
}

export const ms = (value: number) => `${value.toFixed(value < 10 ? 2 : 1)} ms`;
