import type { Finding } from '../../judge/finding.ts';
import { worstOf } from '../../judge/finding.ts';
import { type FitContext, fitProduct } from '../../judge/fit.ts';
import type { ProductKind } from '../../product/product.ts';
import type { Cadence } from '../../wash-day/routine.ts';
import { type Day, type DayStep, dayStep } from '../../wash-day/rules/day.ts';
import { treatmentDaysOf } from '../../wash-day/rules/protein/treatments-apart.ts';
import type { Candidate } from '../suggest.ts';
import { costOfStep } from './cost.ts';
import type { PlanPractice } from './plan-practice.ts';

/** One way to do a step: a product at a rhythm. */
export type BuildChoice = {
  step: DayStep;
  /** What the step is worth to the day, below nought, and how well the product itself suits. */
  worth: number;
  /** The same with all that the step costs by itself, in whatever day. */
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
    const plain = dayStep(
      {
        id: `built-${candidate.product}`,
        kind: candidate.kind,
        use: candidate.use,
        product: candidate.product,
        optional: false,
        cadence: { every: 'wash' },
      },
      candidate.reading,
      day.practice,
    );
    const found = rhythmsOf(plain, day, plan).map((cadence) => {
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
    const step: DayStep = { ...plain, cadence: fit.cadence };
    const worth =
      plan.prefers[fit.answer] + plan.strength * strengthOf(step) - fills(step, fit.findings, plan);
    const choice = { step, worth, cost: worth + costOfStep(step, day, plan) };
    choices.set(candidate.kind, [...(choices.get(candidate.kind) ?? []), choice]);
  }
  for (const [kind, all] of choices)
    choices.set(
      kind,
      all.toSorted((a, b) => a.cost - b.cost),
    );
  return { choices, leftOut };
}

/** A cleanser that comes now and then, or cleans too little, leaves most of its step undone. */
function fills({ kind, traits, cadence }: DayStep, findings: readonly Finding[], plan: PlanPractice): number {
  const full = plan.fills[kind];
  if (!traits.wash) return full;
  if (cadence.every === 'nth-wash') return full * plan.fillsSeldom;
  const weak = traits.wash.creamy && worstOf(findings) !== 'suits';
  return weak ? full * plan.fillsWeak : full;
}

/** Of two alike the milder wash and the softer hold is taken. */
const strengthOf = ({ use, traits }: DayStep) =>
  (traits.wash?.harsh ?? 0) + (use === 'leave-on' ? traits.stiff / 3 : 0);

/** How often a kind of product is used: as usual, and seldom for cleansers. The first that suits is taken. */
function rhythmsOf(step: DayStep, day: Day, { weeklyDays }: PlanPractice): Cadence[] {
  const { kind } = step;
  const { strengthening, cleansing } = day.practice.washDay.kinds;
  const every: Cadence = { every: 'wash' };
  const apart = (days: number): Cadence => {
    const n = Math.ceil(days / Math.max(1, day.washEvery));
    return n > 1 ? { every: 'nth-wash', n } : every;
  };
  if (strengthening.includes(kind)) return [apart(treatmentDaysOf(step, day))];
  if (kind === 'deep-conditioner' || kind === 'pre-wash') return [apart(weeklyDays)];
  return cleansing.includes(kind) ? [every, apart(weeklyDays)] : [every];
}
