import { type Answer, type Finding, worstOf } from '../../judge/finding.ts';
import type { ProductKind } from '../../product/product.ts';
import { dayOf, findingsOf, type WashDayInput } from '../../wash-day/add-up.ts';
import type { Step } from '../../wash-day/routine.ts';
import type { Day } from '../../wash-day/rules/day.ts';
import { proposable } from '../medicated.ts';
import type { Candidate } from '../suggest.ts';
import type { Wish } from '../wish.ts';
import { type BuildChoice, choicesFor, type LeftOut } from './choices.ts';
import { costOfDay } from './cost.ts';
import { takingTurns } from './in-turns.ts';
import { missingOf } from './missing.ts';
import { type BuildPins, keeps, minutesOf } from './pins.ts';
import type { PlanPractice } from './plan-practice.ts';
import { cheapestFirst } from './search.ts';

export type BuildInput = Omit<WashDayInput, 'readings'> & {
  candidates: readonly Candidate[];
  pins?: BuildPins;
};

/** Which step carries the protein, if any does. */
export type Carrier = ProductKind | 'none';

export type BuiltPlan = {
  steps: Step[];
  answer: Answer;
  findings: Finding[];
  carrier: Carrier;
  minutes: number;
  /** Proven that no other day of these products is better by the rules; else the best of those looked at. */
  best: boolean;
  /** What it was weighed by: less is better, and only beside another plan of the same products. */
  cost: number;
  missing: Wish[];
  /** Products that stay on the shelf: those that do not suit, and those another does better. */
  leftOut: LeftOut[];
};

export type Built = { plans: BuiltPlan[]; tried: number };

type Found = { day: Day; cost: number };

/**
 * Wash days made of the products on hand: which product does each step, which one carries the protein, what stays
 * on the shelf, what is missing. Days are looked at from the cheapest sum of their steps on; what the day as a whole
 * costs comes on top and is never below nought, so the search may stop, proven, once no sum left can do better.
 * The plans differ in the step that carries the protein; the best comes first. Pure.
 */
export function buildDay(input: BuildInput): Built {
  const { pins = {} } = input;
  const { plan } = input.practice;
  const empty = dayOf({ ...input, readings: new Map(), routine: { ...input.routine, steps: [] } });
  const placed = new Set([...(pins.stays ?? []), ...input.routine.steps.map(({ product }) => product)]);
  const { choices, leftOut } = choicesFor(
    proposable(input.candidates, placed),
    empty,
    { ...input, washEvery: empty.washEvery },
    plan,
  );
  const coordinates = coordinatesOf(choices, pins, empty);
  let tried = 0;
  const best = new Map<Carrier, Found>();
  let lowest = Number.POSITIVE_INFINITY;
  let proven = true;
  for (const { taken, sum } of cheapestFirst(coordinates)) {
    // No carrier can do better any more than the last of those that are kept.
    if (sum >= lowest && settled(best, sum, plan)) break;
    if (tried >= plan.patience) {
      proven = false;
      break;
    }
    const chosen = taken.filter((choice) => choice !== undefined);
    const steps = chosen.map(({ step }) => step);
    if (!keeps(steps, pins, plan, empty.washEvery)) continue;
    tried++;
    const day = { ...empty, steps };
    const cost = chosen.reduce((all, { worth }) => all + worth, costOfDay(day, plan));
    const carrier = carrierOf(day);
    if (cost < (best.get(carrier)?.cost ?? Number.POSITIVE_INFINITY)) best.set(carrier, { day, cost });
    lowest = Math.min(lowest, cost);
  }
  const plans = [...best.values()]
    .toSorted((a, b) => a.cost - b.cost)
    .filter(({ cost }, at, all) => at === 0 || cost - all[0]!.cost < plan.costs['does-not-suit'] / 2)
    .slice(0, plan.plans)
    .map((found) => planOf(found, proven, input, leftOut));
  const turns = turnsOf(best, choices, pins, plan);
  // Turns are no part of the search: nothing is claimed of them but that they are worth a look.
  if (turns && plans[0] && turns.cost - plans[0].cost < plan.costs['does-not-suit'] / 2)
    plans.splice(plan.plans - 1, 1, planOf(turns, false, input, leftOut));
  return { plans, tried };
}

/** The best day without protein, or with it in that very step, with the step shared by two products in turns. */
function turnsOf(
  best: ReadonlyMap<Carrier, Found>,
  choices: Map<ProductKind, BuildChoice[]>,
  pins: BuildPins,
  plan: PlanPractice,
): Found | undefined {
  const found = [...best].flatMap(([carrier, { day, cost }]) => {
    const whole = costOfDay(day, plan);
    return takingTurns(day, choices, new Set(pins.stays))
      .filter((turns) => carrier === 'none' || carrier === carrierOf(turns.day))
      .filter((turns) => keeps(turns.day.steps, pins, plan, day.washEvery))
      .map((turns) => ({ day: turns.day, cost: cost - whole + turns.worth + costOfDay(turns.day, plan) }));
  });
  return found.toSorted((a, b) => a.cost - b.cost)[0];
}

/** The kinds in their usual order, each with its choices and, where the person did not settle it, with none. */
function coordinatesOf(choices: Map<ProductKind, BuildChoice[]>, pins: BuildPins, { practice }: Day) {
  const stays = new Set(pins.stays);
  return practice.washDay.kinds.order
    .filter((kind) => choices.has(kind) && !pins.without?.includes(kind))
    .map((kind) => {
      const all = choices.get(kind)!;
      const pinned = all.filter(({ step }) => stays.has(step.product!));
      const options: (BuildChoice | undefined)[] = pinned.length > 0 ? [...pinned] : [...all, undefined];
      options.sort((a, b) => (a?.cost ?? 0) - (b?.cost ?? 0));
      return { options, costs: options.map((option) => option?.cost ?? 0) };
    });
}

/** Whether enough plans are kept, each better than any sum that is left. */
const settled = (best: ReadonlyMap<Carrier, Found>, sum: number, { plans, costs }: PlanPractice) => {
  const costsKept = [...best.values()].map(({ cost }) => cost).toSorted((a, b) => a - b);
  const worth = costsKept.slice(0, plans);
  return sum >= (worth.length === plans ? worth.at(-1)! : costsKept[0]! + costs['does-not-suit'] / 2);
};

/** The step with the most protein; none where no step holds a dose. */
export function carrierOf({ steps }: Pick<Day, 'steps'>): Carrier {
  const carrying = steps
    .filter(({ traits }) => traits.protein === 'yes')
    .toSorted((a, b) => b.traits.dose - a.traits.dose);
  return carrying[0]?.kind ?? 'none';
}

function planOf({ day, cost }: Found, proven: boolean, input: BuildInput, unfit: LeftOut[]): BuiltPlan {
  const { plan } = input.practice;
  const findings = findingsOf(day);
  const used = new Set(day.steps.map(({ product }) => product));
  const spare = input.candidates
    .filter(({ product }) => !used.has(product) && !unfit.some((each) => each.product === product))
    .map(({ product, kind }) => ({ product, kind, because: [] }));
  return {
    steps: day.steps.map(({ reading: _, traits: __, filled: ___, ...step }) => step),
    answer: worstOf(findings.filter(({ rule }) => !plan.unfinished.includes(rule))),
    findings,
    carrier: carrierOf(day),
    minutes: minutesOf(day.steps, plan),
    best: proven,
    cost,
    missing: missingOf(day, input.candidates, plan),
    leftOut: [...unfit, ...spare],
  };
}
