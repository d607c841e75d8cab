/** A way that has begun: no way to go on with it costs less than `least`. */
export type Branch = { least: number };

/** A way that was worth following, and how much of all ways is behind: looked at, or ruled out (0 … 1). */
export type Looked<W extends Branch> = { way: W; share: number };

/**
 * Goes through all ways, the most promising first, and leaves out what cannot be worth it: `next` takes one step on
 * in every way that is allowed (none: the way is whole, or leads nowhere), `follow` says whether a way may still be
 * worth it, by what was found up to then. Exact: what is left out costs no less than its bound.
 */
export function* branches<W extends Branch>(
  root: W,
  next: (way: W) => W[],
  follow: (way: W) => boolean,
): Generator<Looked<W>> {
  const open = [{ way: root, part: 1 }];
  let share = 0;
  for (let at = open.pop(); at; at = open.pop()) {
    const { way, part } = at;
    const worth = follow(way);
    // The last is gone on with first: of two alike the earlier.
    const ways = worth
      ? next(way)
          .toReversed()
          .sort((a, b) => b.least - a.least)
      : [];
    if (ways.length === 0) share += part;
    for (const each of ways) open.push({ way: each, part: part / ways.length });
    if (worth) yield { way, share };
  }
}
