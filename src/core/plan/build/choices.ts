import type { Finding } from '../../judge/finding.ts';
import { worstOf } from '../../judge/finding.ts';
import { type FitContext, fitProduct } from '../../judge/fit.ts';
import type { ProductKind } from '../../product/product.ts';
import { findingsOf } from '../../wash-day/add-up.ts';
import type { Cadence } from '../../wash-day/routine.ts';
import { type Day, type DayStep, dayStep } from '../../wash-day/rules/day.ts';
import { rules } from '../../wash-day/rules/index.ts';
import { treatmentDays } from '../../wash-day/rules/treatments-apart.ts';
import type { Candidate } from '../suggest.ts';
import type { PlanPractice } from './plan-practice.ts';

/** One way to do a step: a product at a rhythm. */
export type BuildChoice = {
  step: DayStep;
  /** What the step is worth to the day, below nought, and how well the product itself suits. */
  worth: number;
  /** The same with all that rules say of this product alone: a day with it costs no less. */
  cost: number;
};

/** A product that does no step of this day, and what speaks against it. */
export type LeftOut = { product: string; kind: ProductKind; because: Finding[] };

/**
 * For each kind, the products that may do its step, the best first: those that do not suit this head are left out
 * with their reason; a cleanser too strong for every wash may still do one now and then.
 */
export function choicesFor(
  candidates: readonly Candidate[],
  day: Day,
  context: FitContext,
  plan: PlanPractice,
): { choices: Map<ProductKind, BuildChoice[]>; leftOut: LeftOut[] } {
  const choices = new Map<ProductKind, BuildChoice[]>();
  const leftOut: LeftOut[] = [];
  for (const candidate of candidates) {
    const found = rhythmsOf(candidate.kind, day, plan).map((cadence) => {
      const every = cadence.every === 'nth-wash' ? cadence.n : 1;
      const findings = fitProduct(candidate, { ...context, washEvery: day.washEvery * every });
      return { cadence, findings, answer: worstOf(findings) };
    });
    const fit = found.find(({ answer }) => answer !== 'does-not-suit');
    if (!fit) {
      const because = found.at(-1)!.findings.filter(({ answer }) => answer === 'does-not-suit');
      leftOut.push({ product: candidate.product, kind: candidate.kind, because });
      continue;
    }
    const step = dayStep(
      {
        id: `built-${candidate.product}`,
        kind: candidate.kind,
        use: candidate.use,
        product: candidate.product,
        optional: false,
        cadence: fit.cadence,
      },
      candidate.reading,
      day.practice,
    );
    const worth = plan.prefers[fit.answer] - plan.fills[candidate.kind];
    const alone = { ...day, steps: [step] };
    const said = rules.filter(({ of }) => of === 'product').flatMap((rule) => rule.ask(alone));
    const choice = { step, worth, cost: worth + costOf(said, plan) };
    choices.set(candidate.kind, [...(choices.get(candidate.kind) ?? []), choice]);
  }
  for (const [kind, all] of choices)
    choices.set(
      kind,
      all.toSorted((a, b) => a.cost - b.cost),
    );
  return { choices, leftOut };
}

/** What findings cost together; what is merely not there yet costs nothing. */
export const costOf = (findings: readonly Finding[], { costs, unfinished }: PlanPractice): number =>
  findings.reduce(
    (sum, { answer, rule, reason }) =>
      sum +
      (answer === 'suits' || unfinished.some((each) => each === rule || each === reason.key)
        ? 0
        : costs[answer]),
    0,
  );

/**
 * What a day costs: its findings, each dose of protein after the first, and that hair with room for some gets none.
 * Never below nought.
 */
export function costOfDay(day: Day, plan: PlanPractice): number {
  const sum = (steps: readonly DayStep[]) => steps.reduce((all, step) => all + dosesOf(step, day), 0);
  const doses = sum(day.steps);
  // What a cleanser holds goes down the drain: it costs, and carries nothing.
  const carried = sum(day.steps.filter(({ kind }) => !day.practice.washDay.kinds.cleansing.includes(kind)));
  const room = (day.numbers?.products ?? 0) > 0;
  return (
    costOf(findingsOf(day), plan) +
    plan.thrift * Math.max(0, doses - 1) +
    (room && carried < 1 ? plan.unused : 0)
  );
}

/** Doses of protein a step brings to an average wash, two at most; large ones that stay count twice. */
function dosesOf({ traits, use, cadence }: DayStep, { practice }: Day): number {
  const { matters } = practice.judge.dose;
  const often = cadence.every === 'nth-wash' ? cadence.n : 1;
  const large = use === 'leave-on' ? Math.min(1, traits.largeDose / matters) : 0;
  return (Math.min(2, traits.dose / matters) + large) / often;
}

/** How often a kind of product is used: as usual, and seldom for cleansers. The first that suits is taken. */
function rhythmsOf(kind: ProductKind, day: Day, { weeklyDays }: PlanPractice): Cadence[] {
  const { strengthening, cleansing } = day.practice.washDay.kinds;
  const every: Cadence = { every: 'wash' };
  const apart = (days: number): Cadence => {
    const n = Math.ceil(days / Math.max(1, day.washEvery));
    return n > 1 ? { every: 'nth-wash', n } : every;
  };
  if (strengthening.includes(kind)) return [apart(treatmentDays(day))];
  if (kind === 'deep-conditioner' || kind === 'pre-wash') return [apart(weeklyDays)];
  return cleansing.includes(kind) ? [every, apart(weeklyDays)] : [every];
}
