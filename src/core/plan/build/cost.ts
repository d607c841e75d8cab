import type { Finding } from '../../judge/finding.ts';
import { stiffAnswer } from '../../judge/rules/care.ts';
import { weightAnswer } from '../../judge/rules/weight.ts';
import type { Day, DayStep, Rule } from '../../wash-day/rules/day.ts';
import { rules } from '../../wash-day/rules/index.ts';
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

/** What one day costs by one weight, and the least it costs with more steps that cannot soften it. */
export type Cost = { now: number; least: number };

/** One thing that a day is weighed by, taken together: `sees` and `softens` as of a rule. */
export type Weight = Pick<Rule, 'sees'> & {
  softens(look: string): boolean;
  cost(day: Day): Cost;
};

/** What a day is weighed by beyond its single steps; together with them never below nought. */
export function weightsOf(plan: PlanPractice): Weight[] {
  return [...rules.filter(({ of }) => of === 'day').map((rule) => ofRule(rule, plan)), ...ownWeights(plan)];
}

function ofRule(rule: Rule, plan: PlanPractice): Weight {
  // Of a head that is not described a louder answer may be that nobody can tell, which costs less.
  const louder = (finding: Finding): Finding =>
    finding.answer === 'with-care' ? { ...finding, answer: 'cannot-tell' } : finding;
  return {
    sees: (step, day) => rule.sees(step, day),
    softens: (look) => rule.softens?.(look) ?? true,
    cost(day) {
      const findings = rule.ask(day);
      const now = costOf(findings, plan);
      return { now, least: day.hair.numbers.length > 1 ? costOf(findings.map(louder), plan) : now };
    },
  };
}

/**
 * No protein at all where the hair would use some, a hold too stiff for this hair with nothing soft beneath, tough
 * films left on a day without any wash, weight that the hair does not thirst for, and hold upon hold.
 */
function ownWeights(plan: PlanPractice): Weight[] {
  const care = plan.costs['with-care'];
  const weight = (
    sees: Weight['sees'],
    softens: Weight['softens'],
    cost: (looks: string[], day: Day) => number,
  ): Weight => ({
    sees,
    softens,
    cost(day) {
      const now = cost(
        day.steps.map((step) => sees(step, day)),
        day,
      );
      return { now, least: now };
    },
  });
  const never = () => false;
  const many = (looks: readonly string[], look: string) => looks.filter((each) => each === look).length;
  return [
    weight(
      // What a cleanser holds goes down the drain: it costs, and carries nothing.
      ({ kind, traits }, { practice: { judge, washDay } }) =>
        traits.dose >= judge.dose.matters && !washDay.kinds.cleansing.includes(kind) ? 'carries' : '',
      () => true,
      (looks, { hair }) =>
        hair.numbers.every(({ tolerance }) => tolerance >= plan.usesFrom) && many(looks, 'carries') === 0
          ? plan.unused
          : 0,
    ),
    weight(
      (step, day) => (plan.beneath.includes(step.kind) ? 'soft' : tooStiff(step, day) ? 'stiff' : ''),
      (look) => look === 'soft',
      (looks) => (looks.includes('soft') ? 0 : care * many(looks, 'stiff')),
    ),
    weight(
      ({ kind, use, traits }, { practice }) =>
        practice.washDay.kinds.cleansing.includes(kind)
          ? 'washes'
          : use === 'leave-on' && traits.films.strong.length > 0
            ? 'films'
            : '',
      (look) => look === 'washes',
      (looks) => (looks.includes('washes') ? 0 : care * many(looks, 'films')),
    ),
    weight(
      (step, day) => {
        const loads = weightAnswer(step, day.hair) === 'with-care';
        const needed = plan.needed.some((kinds) => kinds.includes(step.kind));
        return needed || loads ? `${needed ? step.kind : ''} ${loads}` : '';
      },
      never,
      (_, day) =>
        day.hair.numbers.every(({ wants }) => wants >= plan.thirstyFrom)
          ? 0
          : care *
            day.steps.filter((step) => spare(step, day, plan) && weightAnswer(step, day.hair) === 'with-care')
              .length,
    ),
    weight(
      ({ kind }, { practice }) => (practice.washDay.kinds.holding.includes(kind) ? 'holds' : ''),
      never,
      (looks) => plan.again * Math.max(0, many(looks, 'holds') - 1),
    ),
  ];
}

/** What a step costs in any day it stands in: what rules say of it alone, and the protein that it brings each wash. */
export function costOfStep(step: DayStep, day: Day, plan: PlanPractice): number {
  const said = rules
    .filter(({ of }) => of === 'product')
    .flatMap((rule) => rule.ask({ ...day, steps: [step] }));
  const brings = step.traits.dose / (step.cadence.every === 'nth-wash' ? step.cadence.n : 1);
  const takes = Math.min(...day.hair.numbers.map(({ protein }) => protein.suits));
  return costOf(said, plan) + plan.thrift * (brings / takes);
}

/** What a day costs: each step by itself, and all that they are weighed by together. Never below nought. */
export const costOfDay = (day: Day, plan: PlanPractice): number =>
  day.steps.reduce((sum, step) => sum + costOfStep(step, day, plan), 0) +
  weightsOf(plan).reduce((sum, weight) => sum + weight.cost(day).now, 0);

/** Not the only one of its kinds that a wash day needs. */
const spare = ({ id, kind }: DayStep, day: Day, { needed }: PlanPractice) =>
  !needed.some(
    (kinds) =>
      kinds.includes(kind) && day.steps.every((other) => other.id === id || !kinds.includes(other.kind)),
  );

const tooStiff = (step: DayStep, { hair }: Day) =>
  hair.numbers.every((numbers) => stiffAnswer(step, numbers) !== 'suits');
