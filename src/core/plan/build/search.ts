/** One coordinate of a search: what may stand there, the cheapest first. */
export type Coordinate<T> = { options: readonly T[]; costs: readonly number[] };

/**
 * Every way to take one option of each coordinate, the cheapest sum first: a heap of vectors, each reached from one
 * parent alone, so none comes twice.
 */
export function* cheapestFirst<T>(
  coordinates: readonly Coordinate<T>[],
): Generator<{ taken: T[]; sum: number }> {
  const start = coordinates.map(() => 0);
  const sumOf = (at: readonly number[]) => at.reduce((sum, i, c) => sum + coordinates[c]!.costs[i]!, 0);
  const heap: { at: number[]; sum: number; last: number }[] = [{ at: start, sum: sumOf(start), last: 0 }];
  while (heap.length > 0) {
    const { at, sum, last } = pop(heap);
    yield { taken: at.map((i, c) => coordinates[c]!.options[i]!), sum };
    // Raise the last raised coordinate or one after it.
    for (let c = last; c < coordinates.length; c++) {
      const next = at[c]! + 1;
      const { costs } = coordinates[c]!;
      if (next < costs.length)
        push(heap, { at: at.with(c, next), sum: sum + costs[next]! - costs[next - 1]!, last: c });
    }
  }
}

type Node = { sum: number };

function push<N extends Node>(heap: N[], node: N) {
  heap.push(node);
  for (let at = heap.length - 1; at > 0; ) {
    const up = (at - 1) >> 1;
    if (heap[up]!.sum <= heap[at]!.sum) return;
    [heap[up], heap[at]] = [heap[at]!, heap[up]!];
    at = up;
  }
}

function pop<N extends Node>(heap: N[]): N {
  const top = heap[0]!;
  const last = heap.pop()!;
  if (heap.length === 0) return top;
  heap[0] = last;
  for (let at = 0; ; ) {
    const left = 2 * at + 1;
    const least = left + 1 < heap.length && heap[left + 1]!.sum < heap[left]!.sum ? left + 1 : left;
    if (left >= heap.length || heap[at]!.sum <= heap[least]!.sum) return top;
    [heap[least], heap[at]] = [heap[at]!, heap[least]!];
    at = least;
  }
}
