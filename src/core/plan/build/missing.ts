import { findingsOf } from '../../wash-day/add-up.ts';
import type { Day } from '../../wash-day/rules/day.ts';
import { insertUsually } from '../moves.ts';
import type { Candidate } from '../suggest.ts';
import { type Wish, wishedStep, wishes } from '../wish.ts';
import { costOf } from './cost.ts';
import type { PlanPractice } from './plan-practice.ts';

/**
 * What a built day lacks: a product of each kind a wash day needs and that comes at every wash; what would settle
 * what still speaks against it; and what a treatment that stays on the shelf waits for.
 */
export function missingOf(day: Day, candidates: readonly Candidate[], plan: PlanPractice): Wish[] {
  const { order, strengthening, followUp } = day.practice.washDay.kinds;
  const all = wishes(day.practice.washDay);
  const missing: Wish[] = [];
  const wish = (kinds: readonly string[]) => {
    const fitting = all.filter(
      ({ kind }) => kinds.includes(kind) && !missing.some((each) => each.kind === kind),
    );
    const best = fitting.toSorted((a, b) => costWith(day, a, plan) - costWith(day, b, plan))[0];
    if (best) missing.push(best);
  };
  for (const kinds of plan.needed) {
    const there = day.steps.some(({ kind, cadence }) => kinds.includes(kind) && cadence.every === 'wash');
    if (!there) wish(kinds);
  }
  // A treatment on hand that no protein-free care could follow.
  const treats = (kind: string) => (strengthening as string[]).includes(kind);
  const waits = candidates.some(({ kind }) => treats(kind)) && !day.steps.some(({ kind }) => treats(kind));
  const follows = day.steps.some(({ kind, traits }) => followUp.includes(kind) && traits.protein === 'no');
  if (waits && !follows) wish(followUp);
  // What would settle most of what still speaks against the day, or is not there yet.
  const counted = { ...plan, unfinished: [] };
  const now = costOf(findingsOf(day), counted);
  const helps = all
    .filter(({ kind }) => !missing.some((each) => each.kind === kind))
    .map((each) => ({ each, cost: costWith(day, each, counted) }))
    .toSorted((a, b) => a.cost - b.cost)[0];
  const settled = missing.length > 0 && day.steps.length === 0;
  if (helps && !settled && helps.cost <= now - plan.costs['with-care']) missing.push(helps.each);
  return missing.toSorted((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
}

/** What the day costs with a product as wished for. */
function costWith(day: Day, wish: Wish, plan: PlanPractice): number {
  const step = wishedStep(wish, day.practice);
  const steps = insertUsually(
    day.steps.filter(({ kind }) => kind !== wish.kind),
    step,
    day.practice.washDay.kinds.order,
  );
  return costOf(findingsOf({ ...day, steps }), plan);
}
