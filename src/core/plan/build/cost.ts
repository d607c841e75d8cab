import type { Finding } from '../../judge/finding.ts';
import { stiffAnswer } from '../../judge/rules/care.ts';
import { weightAnswer } from '../../judge/rules/weight.ts';
import { findingsOf } from '../../wash-day/add-up.ts';
import type { Day, DayStep } from '../../wash-day/rules/day.ts';
import type { PlanPractice } from './plan-practice.ts';

/** What findings cost together; what is merely not there yet costs nothing. */
export const costOf = (findings: readonly Finding[], { costs, unfinished }: PlanPractice): number =>
  findings.reduce(
    (sum, { answer, rule, reason }) =>
      sum +
      (answer === 'suits' ||
      (answer !== 'does-not-suit' && unfinished.some((each) => each === rule || each === reason.key))
        ? 0
        : costs[answer]),
    0,
  );

/**
 * What a day costs: its findings, the protein it brings beside what the hair takes, none at all where the hair
 * would use some, a hold too stiff for this hair with nothing soft beneath, tough films left on a day without any
 * wash, weight that the hair does not thirst for, and hold upon hold. Never below nought.
 */
export function costOfDay(day: Day, plan: PlanPractice): number {
  const { judge, washDay } = day.practice;
  const brings = (steps: readonly DayStep[]) =>
    steps.reduce(
      (all, { traits, cadence }) => all + traits.dose / (cadence.every === 'nth-wash' ? cadence.n : 1),
      0,
    );
  // What a cleanser holds goes down the drain: it costs, and carries nothing.
  const carrying = day.steps.filter(({ kind }) => !washDay.kinds.cleansing.includes(kind));
  const carries = carrying.some(({ traits }) => traits.dose >= judge.dose.matters);
  const takes = Math.min(...day.hair.numbers.map(({ protein }) => protein.suits));
  const uses = day.hair.numbers.every(({ tolerance }) => tolerance >= plan.usesFrom);
  const soft = day.steps.some(({ kind }) => plan.beneath.includes(kind));
  const bare = soft ? [] : day.steps.filter((step) => tooStiff(step, day));
  const thirsty = day.hair.numbers.every(({ wants }) => wants >= plan.thirstyFrom);
  const loads = thirsty
    ? []
    : day.steps.filter((step) => spare(step, day, plan) && weightAnswer(step, day.hair) === 'with-care');
  const holding = day.steps.filter(({ kind }) => washDay.kinds.holding.includes(kind));
  const washed = day.steps.some(({ kind }) => washDay.kinds.cleansing.includes(kind));
  const stuck = washed
    ? []
    : day.steps.filter(({ use, traits }) => use === 'leave-on' && traits.films.strong.length > 0);
  return (
    costOf(findingsOf(day), plan) +
    plan.thrift * (brings(day.steps) / takes) +
    (uses && !carries ? plan.unused : 0) +
    plan.costs['with-care'] * (bare.length + stuck.length + loads.length) +
    plan.again * Math.max(0, holding.length - 1)
  );
}

/** Not the only one of its kinds that a wash day needs. */
const spare = ({ id, kind }: DayStep, day: Day, { needed }: PlanPractice) =>
  !needed.some(
    (kinds) =>
      kinds.includes(kind) && day.steps.every((other) => other.id === id || !kinds.includes(other.kind)),
  );

const tooStiff = (step: DayStep, { hair }: Day) =>
  hair.numbers.every((numbers) => stiffAnswer(step, numbers) !== 'suits');
