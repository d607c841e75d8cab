import type { Allowance, Head } from '../hair/head.ts';
import { allowanceOf, allowances } from '../hair/tolerance.ts';
import { changeOfAll, changesOf } from '../plan/compare-days.ts';
import { type Move, type MoveOption, withOptions } from '../plan/moves.ts';
import type { Candidate } from '../plan/suggest.ts';
import type { Wish } from '../plan/wish.ts';
import { dayOf, findingsOf, type WashDayInput } from '../wash-day/add-up.ts';
import { daysBetween, newestFirst } from '../wash-day/days.ts';
import type { LogEntry } from '../wash-day/routine.ts';
import type { Day } from '../wash-day/rules/day.ts';
import { causes } from './causes.ts';
import { type Difference, dayBefore, differed } from './differed.ts';
import type { Cause, Sign } from './learn-practice.ts';
import { optionsFor, wishesFor } from './options.ts';
import { signOf } from './signs.ts';

/** The one change that a wash day speaks for. */
export type Proposed =
  | { change: 'routine'; cause: Cause; moves: Move[] }
  /** The tolerance set by hand, one step nearer to what the days say. */
  | { change: 'profile'; head: Head; from: Allowance; to: Allowance }
  /** Nothing on hand would do: what would. */
  | { change: 'wish'; cause: Cause; wish: Wish }
  /** The routine is another by now, or nothing in it is behind it. */
  | { change: 'none'; why: 'changed-since' | 'nothing-found' };

export type Lesson = {
  entry: LogEntry;
  sign: Sign;
  /** Of the last `of` wash days that were told, `n` felt so. */
  n: number;
  of: number;
  /** Against the wash day before. */
  differed: Difference[];
  proposed: Proposed;
};

export type LessonInput = WashDayInput & { head: Head; candidates: readonly Candidate[] };

/** The newest wash day of a head that was told and is not too old to teach anything. */
export function newestTold(
  head: string,
  { log, today, practice }: Pick<WashDayInput, 'log' | 'today' | 'practice'>,
): LogEntry[] {
  const { entries, withinDays } = practice.allowance.feel;
  return log
    .filter(
      (each) =>
        each.head === head &&
        Object.values(each.feel).some((value) => value !== undefined) &&
        daysBetween(each.date, today) <= withinDays,
    )
    .toSorted(newestFirst)
    .slice(0, entries);
}

/**
 * What the newest wash day teaches: undefined where it felt well, or was answered before. Every single change of
 * the routine is tried that takes enough of the likeliest cause away and makes no rule speak louder; the one that
 * costs least is proposed. Pure.
 */
export function lessonOf(input: LessonInput): Lesson | undefined {
  const { head, log, practice } = input;
  const told = newestTold(head.id, input);
  const [entry] = told;
  if (!entry || entry.answered) return undefined;
  const sign = signOf(entry.feel, practice.allowance.feel);
  if (!sign) return undefined;
  const before = dayBefore(entry, log);
  return {
    entry,
    sign,
    n: told.filter(({ feel }) => signOf(feel, practice.allowance.feel) === sign).length,
    of: told.length,
    differed: before ? differed(entry, before) : [],
    proposed: ofProfile(input) ?? ofRoutine(input, entry, sign),
  };
}

/** A tolerance set by hand stands against what most days say: one step towards them. */
function ofProfile({ head, practice, today, log }: LessonInput): Proposed | undefined {
  const by = head.allowanceByHand;
  const feel = allowanceOf(head, practice.allowance, { today, log }).reasons.find(({ id }) => id === 'feel');
  if (!by || !feel || feel.setAside || feel.steps === 0) return undefined;
  const to = allowances[allowances.indexOf(by) + feel.steps];
  return to && { change: 'profile', head: { ...head, allowanceByHand: to }, from: by, to };
}

function ofRoutine(input: LessonInput, entry: LogEntry, sign: Sign): Proposed {
  const { practice, routine } = input;
  const now = new Map(routine.steps.map(({ id, product }) => [id, product]));
  if (entry.done.steps.some(({ id, product }) => !now.has(id) || now.get(id) !== product))
    return { change: 'none', why: 'changed-since' };
  const day = dayOf(input);
  const there = practice.learn.signs[sign].filter(
    (cause) => causes[cause](day) >= practice.learn.from[cause],
  );
  for (const cause of there) {
    const moves = cheapest(day, cause, optionsFor(day, input.candidates, cause));
    if (moves) return { change: 'routine', cause, moves };
  }
  for (const cause of there) {
    const [move] = cheapest(day, cause, wishesFor(day, cause)) ?? [];
    if (move && 'with' in move && 'wish' in move.with) return { change: 'wish', cause, wish: move.with.wish };
  }
  return { change: 'none', why: 'nothing-found' };
}

/** Swaps and spacing before additions before omissions, what is on hand before what is thought of. */
const costs = { swap: 0, space: 0, add: 1, omit: 2 };
const costOf = ({ move }: MoveOption) =>
  costs[move.do] + ('with' in move && 'product' in move.with && !move.with.owned ? 0.5 : 0);

/** Of the options that take enough of a cause away, the one that costs least and then takes most; none that harms. */
function cheapest(day: Day, cause: Cause, options: readonly MoveOption[]): Move[] | undefined {
  const measure = causes[cause];
  const atMost = measure(day) * (1 - day.practice.learn.by);
  const had = findingsOf(day);
  const helping = options
    .map((option) => ({ option, after: withOptions(day, [option]) }))
    .map((each) => ({ ...each, left: measure(each.after) }))
    .filter(({ left }) => left <= atMost)
    .toSorted((a, b) => costOf(a.option) - costOf(b.option) || a.left - b.left);
  const changed = helping.map((each) => ({ ...each, changes: changesOf(had, findingsOf(each.after)) }));
  const harmless = ({ changes }: (typeof changed)[number]) => {
    const change = changeOfAll(changes, 0);
    return change !== 'worse' && change !== 'cannot-tell';
  };
  // A strong wash now and then asks for care, which is said with it; where nothing else helps it is what lifts films.
  const lifts = ({ option: { move, to }, changes }: (typeof changed)[number]) =>
    cause === 'films' &&
    move.do === 'add' &&
    to!.cadence.every !== 'wash' &&
    changes.every(({ change, after }) => change !== 'worse' || after === 'with-care');
  const best = changed.find(harmless) ?? changed.find(lifts);
  if (!best) return undefined;
  const { move, to } = best.option;
  // An added step takes its rhythm from a move of its own.
  return move.do === 'add' && to!.cadence.every !== 'wash'
    ? [move, { do: 'space', step: move.step, cadence: to!.cadence }]
    : [move];
}
