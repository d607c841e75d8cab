import { type Finding, speaksAgainst } from '../judge/finding.ts';
import type { Use } from '../names/entry.ts';
import type { ProductKind } from '../product/product.ts';
import type { Reading } from '../reading/reading.ts';
import { dayOf, findingsOf, type WashDayInput } from '../wash-day/add-up.ts';
import { type Day, type DayStep, dayStep } from '../wash-day/rules/day.ts';
import { rules } from '../wash-day/rules/index.ts';
import { proposable } from './medicated.ts';
import { type Move, type MoveOption, optionsOf, type StepChoice, withOptions } from './moves.ts';
import { searchFewest } from './suggest-search.ts';
import { wishedStep, wishes } from './wish.ts';

/** A product that may be used: on hand, or considered. */
export type Candidate = {
  product: string;
  kind: ProductKind;
  use: Use;
  reading: Reading | undefined;
  owned: boolean;
};

export type Suggestion = {
  moves: Move[];
  /** For each move, the clashes that would stand without it. */
  because: Finding[][];
  /** What is left that nobody can tell. */
  untold: Finding[];
};

export type Suggestions =
  | { answer: 'settled' }
  /** `fewest`: proven that no fewer changes do. */
  | { answer: 'found'; fewest: boolean; suggestions: Suggestion[]; tried: number }
  /** `complete`: every set of changes was tried; else every one of up to `upTo` changes. */
  | { answer: 'none'; complete: boolean; upTo: number; wanted: Suggestion[]; tried: number };

export type SuggestInput = WashDayInput & { candidates: readonly Candidate[]; most?: number };

/** Days looked at before the search gives up: about a fifth of a second. */
const patience = 7_000;
const patienceForWishes = patience / 3;

/**
 * The fewest swaps, additions, omissions or wider spacings that settle every clash, ranked: what leaves fewest
 * questions first, then products on hand before considered ones, swaps before additions before omissions.
 * Exact: every set of changes of the smallest size is found, up to products that no rule can tell apart, which
 * are named as alternatives. Where nothing settles it, `wanted` says which kind of product would. `onTheWay` is
 * told what share of the days that may be looked at have been.
 */
export function suggest(input: SuggestInput, onTheWay?: (share: number) => void): Suggestions {
  const day = dayOf(input);
  const choices = choicesOf(input, day);
  const looked = (before: number) => (tried: number) =>
    onTheWay?.((before + tried) / (patience + patienceForWishes));
  const found = searchFewest(day, optionsOf(day, choices), patience, looked(0));
  const { tried, complete, upTo } = found;
  if (found.solutions[0]?.length === 0) return { answer: 'settled' };
  const rank = (solutions: MoveOption[][]) => ranked(solutions, day, input.most ?? 5);
  if (found.solutions.length > 0)
    return { answer: 'found', fewest: complete, suggestions: rank(found.solutions), tried };
  const wished = wishes(input.practice.washDay).map(
    (wish): StepChoice => ({ step: wishedStep(wish, input.practice), fill: { wish } }),
  );
  const withWishes = optionsOf(day, [...choices, ...wished]);
  const wanted = searchFewest(day, withWishes, patienceForWishes, looked(tried));
  return { answer: 'none', complete, upTo, wanted: rank(wanted.solutions), tried: tried + wanted.tried };
}

/** What every rule sees of a step, its product's identity aside. */
const looksOf = (step: DayStep, day: Day) =>
  [step.kind, step.use, ...rules.map((rule) => rule.sees({ ...step, product: '' }, day))].join('|');

/** Candidates as steps, those that no rule can tell apart taken together. */
function choicesOf({ candidates, routine, practice }: SuggestInput, day: Day): StepChoice[] {
  const planned = new Set(routine.steps.map(({ product }) => product));
  // A product already planned stands for its likes: used twice it counts once.
  const first = ({ product, owned }: Candidate) => (planned.has(product) ? 2 : 0) + (owned ? 1 : 0);
  const choices = new Map<string, StepChoice>();
  const proposed = proposable(candidates, planned);
  for (const { product, kind, use, reading, owned } of proposed.toSorted((a, b) => first(b) - first(a))) {
    const plan = {
      id: `new-${product}`,
      kind,
      use,
      product,
      optional: false,
      cadence: { every: 'wash' as const },
    };
    const step = dayStep(plan, reading, practice);
    const looks = looksOf(step, day);
    const same = choices.get(looks)?.fill;
    if (same && 'product' in same) same.alternatives.push(product);
    else choices.set(looks, { step, fill: { product, alternatives: [], owned } });
  }
  return [...choices.values()];
}

function ranked(solutions: MoveOption[][], day: Day, most: number): Suggestion[] {
  return solutions
    .map((options) => ({
      options,
      untold: findingsOf(withOptions(day, options)).filter(({ answer }) => answer === 'cannot-tell'),
      cost: options.reduce((sum, option) => sum + costOfMove(option), 0),
    }))
    .toSorted((a, b) => a.untold.length - b.untold.length || a.cost - b.cost)
    .slice(0, most)
    .map(({ options, untold }) => ({
      moves: options.map(({ move }) => move),
      untold,
      because: options.map((option) =>
        findingsOf(
          withOptions(
            day,
            options.filter((other) => other !== option),
          ),
        ).filter(speaksAgainst),
      ),
    }));
}

function costOfMove({ move, from }: MoveOption): number {
  const wished = 'with' in move && 'wish' in move.with ? 20 : 0;
  const considered = 'with' in move && 'product' in move.with && !move.with.owned ? 0.5 : 0;
  return wished + considered + { swap: 0, space: 0, add: 1, omit: from?.optional ? 0 : 2 }[move.do];
}
