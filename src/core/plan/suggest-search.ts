import type { Day } from '../wash-day/rules/day.ts';
import { type MoveOption, withOptions } from './moves.ts';
import { asker, type Clash, helper, seenAfter } from './suggest-ask.ts';

export type FoundMoves = {
  /** Smallest sets of options that leave no clash; one empty set when there was none. */
  solutions: MoveOption[][];
  /** Days looked at. */
  tried: number;
  /** Proven: no smaller set settles it, or none at all. Else the search gave up and took what it could reach. */
  complete: boolean;
  /** Largest size of set tried in full. */
  upTo: number;
};

/** Days looked at after the first find before it ranks what it has. */
const lookAround = 400;
/** Days between two words on how many were looked at. */
const toldEvery = 50;

/**
 * Fewest changes that leave no clash, by iterative deepening. Some change of any solution must alter what the
 * clashing rule sees, so at each day one clash is chosen and only changes that may help with it are followed;
 * clashes that no one change can help with together each need their own, which bounds what is still needed.
 * After `patience` days it gives up and says so. `onTried` is told on the way how many were looked at.
 */
export function searchFewest(
  day: Day,
  options: readonly MoveOption[],
  patience: number,
  onTried?: (tried: number) => void,
): FoundMoves {
  const ask = asker(seenAfter(day, options));
  const helping = helper(day, options);
  const spots = options.map(touches);
  const places = options.map((option) => place(option, day));
  let tried = 0;
  for (let size = 0; ; size++) {
    const solutions: MoveOption[][] = [];
    const seen = new Set<string>();
    let cut = false;
    let until = patience;
    const follow = (chosen: readonly number[]): void => {
      const key = chosen.toSorted((a, b) => a - b).join();
      if (seen.has(key) || tried >= until) return;
      seen.add(key);
      tried++;
      if (tried % toldEvery === 0) onTried?.(tried);
      const now = withOptions(
        day,
        chosen.map((at) => options[at]!),
      );
      const clashes = ask(now);
      if (clashes.length === 0) {
        if (solutions.push(chosen.map((at) => options[at]!)) === 1)
          until = Math.min(patience, tried + lookAround);
        return;
      }
      const taken = new Set(chosen.map((at) => spots[at]!));
      const open = clashes.map(({ least, ...clash }) => {
        const at = helping(clash).filter((one) => !taken.has(spots[one]!));
        let where = 0;
        for (const one of at) where |= places[one]!;
        return { least, at, where };
      });
      if (open.some(({ at }) => at.length === 0)) return;
      if (chosen.length + leastNeeded(open) > size) {
        cut = true;
        return;
      }
      const { at } = open.reduce((least, some) => (some.at.length < least.at.length ? some : least));
      for (const one of at) follow([...chosen, one]);
    };
    follow([]);
    if (solutions.length > 0) return { solutions, tried, complete: true, upTo: size };
    if (tried >= patience)
      return { solutions: stepwise(day, options, ask), tried, complete: false, upTo: size - 1 };
    if (!cut) return { solutions, tried, complete: true, upTo: size };
  }
}

/** The change that helps most, again and again: not the fewest, but something. */
function stepwise(day: Day, options: readonly MoveOption[], ask: (day: Day) => Clash[]): MoveOption[][] {
  const badness = (clashes: Clash[]) => clashes.reduce((sum, { least }) => sum + least, 0);
  let chosen: MoveOption[] = [];
  let left = badness(ask(day));
  while (left > 0) {
    const taken = new Set(chosen.map(touches));
    const tries = options
      .filter((option) => !taken.has(touches(option)))
      .map((option) => ({ option, left: badness(ask(withOptions(day, [...chosen, option]))) }));
    const best = tries.reduce((a, b) => (b.left < a.left ? b : a), tries[0] ?? { option: undefined, left });
    if (!best.option || best.left >= left) return [];
    chosen = [...chosen, best.option];
    left = best.left;
  }
  return [chosen];
}

/** What an option changes: no two options of a set change the same. */
const touches = ({ move, to }: MoveOption) => (move.do === 'add' ? `add ${to!.id}` : move.step);

/** The same as a bit, coarser: a step (the 19th and later share one), or an addition of some kind. */
function place({ move }: MoveOption, day: Day): number {
  if (move.do === 'add') return 1 << (20 + (day.practice.washDay.kinds.order.indexOf(move.kind) % 11));
  return (
    1 <<
    Math.min(
      19,
      day.steps.findIndex(({ id }) => id === move.step),
    )
  );
}

/** Changes needed at least: clashes whose helping changes lie in different places each need their own. */
function leastNeeded(open: readonly { least: number; where: number }[]): number {
  const few = open.toSorted((a, b) => bits(a.where) - bits(b.where));
  return Math.max(
    ...open.map((first) => {
      let { least, where } = first;
      for (const next of few)
        if ((next.where & where) === 0) {
          where |= next.where;
          least += next.least;
        }
      return least;
    }),
  );
}

function bits(mask: number): number {
  let n = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) n++;
  return n;
}
