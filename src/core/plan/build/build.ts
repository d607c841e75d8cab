import { atOnce } from '../../at-once.ts';
import { type Answer, type Finding, worstOf } from '../../judge/finding.ts';
import type { ProductKind } from '../../product/product.ts';
import { dayOf, findingsOf, type WashDayInput } from '../../wash-day/add-up.ts';
import type { Step } from '../../wash-day/routine.ts';
import type { Day } from '../../wash-day/rules/day.ts';
import { proposable } from '../medicated.ts';
import type { Candidate } from '../suggest.ts';
import type { Wish } from '../wish.ts';
import { beginnings, type DayBegun, dayStepsOf } from './bound.ts';
import { type Best, type Carrier, carrierOf, carriersOver, costLimits } from './carrier.ts';
import { type BuildChoice, choicesFor, type LeftOut } from './choices.ts';
import { costOfDay } from './cost.ts';
import { takingTurns } from './in-turns.ts';
import { missingOf } from './missing.ts';
import { type BuildPins, keeps, minutesOf, slotsOf } from './pins.ts';
import type { PlanPractice } from './plan-practice.ts';
import { branches } from './search.ts';

export type BuildInput = Omit<WashDayInput, 'readings'> & {
  candidates: readonly Candidate[];
  pins?: BuildPins;
};

export type BuiltPlan = {
  /** A product that stands in the routine is used by as many grams as there. */
  steps: Step[];
  answer: Answer;
  findings: Finding[];
  carrier: Carrier;
  minutes: number;
  /**
   * Proven: of the first plan that no other day of these products is better by the rules, of another that none with
   * the protein there is. Else the best of those looked at.
   */
  best: boolean;
  /** What it was weighed by: less is better, and only beside another plan of the same products. */
  cost: number;
  missing: Wish[];
  /** Products that stay on the shelf: those that do not suit, and those another does better. */
  leftOut: LeftOut[];
};

export type Built = { plans: BuiltPlan[]; tried: number };

/** A search that is still going on: how much of all days is behind (0 … 1), and what it would answer now. */
export type Building = { share: number; soFar(): Built };

type DayFound = { day: Day; cost: number };

/** `building`, to its end. */
export const buildDay = (input: BuildInput): Built => atOnce(building(input));

/**
 * Wash days made of the products on hand: which product does each step, which one carries the protein, what stays
 * on the shelf, what is missing. Kind after kind is settled, and what can be no better than what was found is left
 * out, so the search ends with proof: first of the best day, then of the best with the protein in another step. It
 * gives up, each time, after as many beginnings as practice has patience for. Pure.
 */
export function* building(input: BuildInput): Generator<Building, Built> {
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
  const slots = slotsOf(choices, pins, empty);
  const { root, settle } = beginnings(slots, empty, plan, pins.stepsAtMost);
  const carriers = carriersOver(slots);
  const best: Best = new Map();
  const costWith = (carrier: Carrier) => best.get(carrier)?.cost ?? Number.POSITIVE_INFINITY;
  let tried = 0;
  let proven = 0;
  const answer = (): Built => ({ plans: plansOf(best, proven, choices, leftOut, input), tried });
  const next = (begun: DayBegun) =>
    (slots[begun.taken.length] ?? []).flatMap((option) => {
      tried++;
      const on = settle(begun, option);
      const steps = option ? on.taken.flatMap((each) => each?.step ?? []) : [];
      return keeps(steps, pins, plan, empty.washEvery) ? on : [];
    });
  for (const [round, limit] of costLimits.entries()) {
    const from = tried;
    const follow = ({ taken, least }: DayBegun) =>
      least < limit(best, plan) && carriers(taken).some((carrier) => least < costWith(carrier));
    for (const { way, share } of branches(root, next, follow)) {
      if (way.taken.length === slots.length) {
        const day = { ...empty, steps: dayStepsOf(way.taken, empty) };
        const carrier = carrierOf(day);
        if (way.least < costWith(carrier)) best.set(carrier, { day, cost: way.least });
      }
      const spent = (tried - from) / plan.patience;
      if (spent > 1) return answer();
      yield { share: (round + Math.max(share, spent)) / costLimits.length, soFar: answer };
    }
    proven++;
  }
  return answer();
}

/** What is offered: the best plans, that differ in their carrier, and one in turns where that is about as good. */
function plansOf(
  best: Best,
  proven: number,
  choices: Map<ProductKind, BuildChoice[]>,
  leftOut: LeftOut[],
  input: BuildInput,
): BuiltPlan[] {
  const { pins = {}, practice } = input;
  const { plan } = practice;
  const plans = [...best.values()]
    .toSorted((a, b) => a.cost - b.cost)
    .filter(({ cost }, at, all) => at === 0 || cost - all[0]!.cost < plan.costs['does-not-suit'] / 2)
    .slice(0, plan.plans)
    .map((found, at) => planOf(found, proven > Math.min(at, 1), input, leftOut));
  const turns = turnsOf(best, choices, pins, plan);
  // Turns are no part of the search: nothing is claimed of them but that they are worth a look.
  if (turns && plans[0] && turns.cost - plans[0].cost < plan.costs['does-not-suit'] / 2)
    plans.splice(plan.plans - 1, 1, planOf(turns, false, input, leftOut));
  return plans;
}

/** The best day without protein, or with it in that very step, with the step shared by two products in turns. */
function turnsOf(
  best: Best,
  choices: Map<ProductKind, BuildChoice[]>,
  pins: BuildPins,
  plan: PlanPractice,
): DayFound | undefined {
  const found = [...best].flatMap(([carrier, { day, cost }]) => {
    const whole = costOfDay(day, plan);
    return takingTurns(day, choices, new Set(pins.stays))
      .filter((turns) => carrier === 'none' || carrier === carrierOf(turns.day))
      .filter((turns) => keeps(turns.day.steps, pins, plan, day.washEvery))
      .map((turns) => ({ day: turns.day, cost: cost - whole + turns.worth + costOfDay(turns.day, plan) }));
  });
  return found.toSorted((a, b) => a.cost - b.cost)[0];
}

function planOf({ day, cost }: DayFound, proven: boolean, input: BuildInput, unfit: LeftOut[]): BuiltPlan {
  const { plan } = input.practice;
  const findings = findingsOf(day);
  const used = new Set(day.steps.map(({ product }) => product));
  const spare = input.candidates
    .filter(({ product }) => !used.has(product) && !unfit.some((each) => each.product === product))
    .map(({ product, kind }) => ({ product, kind, because: [] }));
  return {
    steps: day.steps.map(({ reading: _, traits: __, filled: ___, ...step }) => {
      const { grams } = input.routine.steps.find(({ product }) => product === step.product) ?? {};
      return { ...step, ...(grams !== undefined && { grams }) };
    }),
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
