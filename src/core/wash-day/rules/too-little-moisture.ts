import { acrossHeads, untoldOf } from '../../judge/asked.ts';
import type { Answer } from '../../judge/finding.ts';
import type { HairNumbers } from '../../judge/hair-numbers.ts';
import { dryAnswer, softness } from '../../judge/rules/care.ts';
import { washesBetween } from './cadence.ts';
import { type Day, type DayStep, filledSteps, finding, mentionsOf, type Rule, staysOn } from './day.ts';

/** Do conditioner, mask, leave-in and cream together soften enough, and does no leave-on undo it? */
export const tooLittleMoisture: Rule = {
  id: 'too-little-moisture',
  of: 'day',
  aspect: 'care',
  sees: (step, day) => {
    if (!step.filled) return '';
    const { soft, rich, dry, read, builds } = step.traits;
    const drying = staysOn(step) && dry > 0;
    if (!counts(step, day)) return drying ? `dries ${dry} ${soft} ${rich}` : 'filled';
    return `${step.kind} ${step.use} ${soft} ${builds} ${rich} ${drying && dry} ${read} ${washesBetween(step.cadence, day.washEvery)}`;
  },
  ask(day) {
    const steps = filledSteps(day);
    if (steps.length === 0) return [];
    const caring = steps.filter((step) => counts(step, day));
    const unread = caring.filter(({ traits }) => traits.read !== 'enough');
    const each = day.hair.numbers.map((hair) => softAnswer(softnessOfDay(day, hair), day));
    // While the hair is not described, care that is enough for some heads and a little thin for others is no fault.
    const soft =
      each.includes('suits') && !each.includes('does-not-suit')
        ? 'suits'
        : acrossHeads(each, (answer) => answer);
    const drying = steps.filter(
      (step) =>
        acrossHeads(day.hair.numbers, (hair) => dryAnswer(step, hair, day.practice)) === 'does-not-suit',
    );
    const extent = -Math.min(
      ...day.hair.numbers.map((hair) => softnessOfDay(day, hair)),
      day.practice.judge.moisture.most,
    );
    const say = (answer: Answer, key: string, which: DayStep[]) => [
      finding(
        this,
        answer,
        { key: `rules.too-little-moisture.${key}`, values: { n: which.length } },
        {
          steps: which,
          mentions: which.flatMap((step) =>
            mentionsOf(step, key === 'dries' ? step.traits.dryers : step.traits.softeners),
          ),
          unknown:
            answer !== 'cannot-tell'
              ? undefined
              : unread.length > 0
                ? { key: 'rules.unknown.labels', values: { n: unread.length } }
                : untoldOf(answer, day.hair),
          extent: extent + drying.length,
        },
      ),
    ];
    if (caring.length === 0) return say('with-care', 'missing', []);
    if (soft !== 'suits' && unread.length > 0) return say('cannot-tell', 'unread', unread);
    if (soft === 'does-not-suit' || soft === 'with-care') return say(soft, 'thin', caring);
    if (drying.length > 0) return say('with-care', 'dries', drying);
    return soft === 'cannot-tell'
      ? say('cannot-tell', 'hair-unknown', caring)
      : say('suits', 'enough', caring);
  },
};

/** Steps that are there to soften; what comes seldom does not carry the other washes. */
const counts = (step: DayStep, { practice, washEvery }: Day) =>
  practice.washDay.kinds.moisture.includes(step.kind) &&
  washesBetween(step.cadence, washEvery) <= practice.judge.moisture.seldomFrom;

/** The best step that is rinsed off, and part of the best that is left on; 1 is as much as is wanted. */
export function softnessOfDay(day: Day, hair: HairNumbers): number {
  const { leaveOnCounts } = day.practice.judge.moisture;
  const best = (steps: readonly DayStep[]) =>
    Math.max(
      0,
      ...steps.map(
        (step) => (softness(step, hair, day.practice) ?? 0) / washesBetween(step.cadence, day.washEvery),
      ),
    );
  const caring = filledSteps(day).filter((step) => counts(step, day));
  return best(caring.filter((step) => !staysOn(step))) + leaveOnCounts * best(caring.filter(staysOn));
}

function softAnswer(soft: number, { practice }: Day): Answer {
  const { enough, little } = practice.judge.moisture;
  return soft >= enough ? 'suits' : soft >= little ? 'with-care' : 'does-not-suit';
}
