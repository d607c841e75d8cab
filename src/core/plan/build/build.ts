import { type Answer, type Finding, worstOf } from '../../judge/finding.ts';
import type { ProductKind } from '../../product/product.ts';
import { dayOf, findingsOf, type WashDayInput } from '../../wash-day/add-up.ts';
import type { Step } from '../../wash-day/routine.ts';
import { washesBetween } from '../../wash-day/rules/cadence.ts';
import type { Day, DayStep } from '../../wash-day/rules/day.ts';
import { proposable } from '../medicated.ts';
import type { Candidate } from '../suggest.ts';
import type { Wish } from '../wish.ts';
import { type BuildChoice, choicesFor, type LeftOut } from './choices.ts';
import { costOfDay } from './cost.ts';
import { missingOf } from './missing.ts';
import type { PlanPractice } from './plan-practice.ts';
import { cheapestFirst } from './search.ts';

/** What the person settled beforehand; always kept. */
export type BuildPins = {
  /** This product does its step. */
  stays?: readonly string[];
  /** No step of this kind. */
  without?: readonly ProductKind[];
  stepsAtMost?: number;
  minutesAtMost?: number;
  /** What each product costs at a wash at which it is used, and how much a wash may cost on average. */
  price?: { of: ReadonlyMap<string, number>; atMost: number };
};

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
  return { plans, tried };
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

/** A wash costs on average; what comes at every n-th costs an n-th of it. What is not known counts nothing. */
export const priceOf = (steps: readonly Step[], of: ReadonlyMap<string, number>, washEvery: number) =>
  steps.reduce(
    (sum, { product = '', cadence }) => sum + (of.get(product) ?? 0) / washesBetween(cadence, washEvery),
    0,
  );

function keeps(steps: readonly DayStep[], pins: BuildPins, plan: PlanPractice, washEvery: number): boolean {
  if (steps.length > (pins.stepsAtMost ?? Number.POSITIVE_INFINITY)) return false;
  if (minutesOf(steps, plan) > (pins.minutesAtMost ?? Number.POSITIVE_INFINITY)) return false;
  if (!pins.price) return true;
  const { of, atMost } = pins.price;
  return priceOf(steps, of, washEvery) <= atMost;
}

const minutesOf = (steps: readonly Step[], { minutes }: PlanPractice) =>
  steps.reduce((sum, { kind }) => sum + minutes[kind], 0);

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
