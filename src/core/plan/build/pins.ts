import type { ProductKind } from '../../product/product.ts';
import type { Step } from '../../wash-day/routine.ts';
import { washesBetween } from '../../wash-day/rules/cadence.ts';
import type { Day, DayStep } from '../../wash-day/rules/day.ts';
import type { SlotOption } from './bound.ts';
import type { BuildChoice } from './choices.ts';
import { onOneDay } from './in-turns.ts';
import type { PlanPractice } from './plan-practice.ts';

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

/** A wash costs on average; what comes at every n-th costs an n-th of it. What is not known counts nothing. */
export const priceOf = (steps: readonly Step[], of: ReadonlyMap<string, number>, washEvery: number) =>
  steps.reduce(
    (sum, { product = '', cadence }) => sum + (of.get(product) ?? 0) / washesBetween(cadence, washEvery),
    0,
  );

/** Whether a day is within what was settled. */
export function keeps(
  steps: readonly DayStep[],
  pins: BuildPins,
  plan: PlanPractice,
  washEvery: number,
): boolean {
  if (steps.length > (pins.stepsAtMost ?? Number.POSITIVE_INFINITY)) return false;
  if (minutesOf(steps, plan) > (pins.minutesAtMost ?? Number.POSITIVE_INFINITY)) return false;
  if (!pins.price) return true;
  const { of, atMost } = pins.price;
  return priceOf(steps, of, washEvery) <= atMost;
}

export const minutesOf = (steps: readonly Step[], { minutes }: PlanPractice) =>
  onOneDay(steps).reduce((sum, { kind }) => sum + minutes[kind], 0);

/** For each kind its choices and, where the person did not settle it, none; what weighs most is settled first. */
export function slotsOf(
  choices: Map<ProductKind, BuildChoice[]>,
  pins: BuildPins,
  { practice }: Day,
): SlotOption[][] {
  const stays = new Set(pins.stays);
  return practice.washDay.kinds.order
    .filter((kind) => choices.has(kind) && !pins.without?.includes(kind))
    .map((kind) => {
      const all = choices.get(kind)!;
      const pinned = all.filter(({ step }) => stays.has(step.product!));
      return { kind, all, options: pinned.length > 0 ? pinned : [...all, undefined] };
    })
    .toSorted(
      (a, b) => Math.min(...a.all.map(({ cost }) => cost)) - Math.min(...b.all.map(({ cost }) => cost)),
    )
    .map(({ options }) => options);
}
