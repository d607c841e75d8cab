import { byRatio } from '../../../judge/asked.ts';
import type { Finding } from '../../../judge/finding.ts';
import { alwaysComesWith } from '../cadence.ts';
import { type Day, type DayStep, finding, isKind, mentionsOf, type Rule, staysOn } from '../day.ts';

/** Is each strengthening treatment that is rinsed off followed by conditioner or mask on the same day? */
export const treatmentFollowUp: Rule = {
  id: 'treatment-follow-up',
  of: 'day',
  aspect: 'care',
  sees: (step, day) =>
    isKind(day, 'strengthening', step)
      ? `treatment ${step.filled} ${step.use} ${JSON.stringify(step.cadence)}`
      : isKind(day, 'followUp', step)
        ? `${step.filled} ${step.traits.read} ${much(step, day)} ${step.optional} ${JSON.stringify(step.cadence)}`
        : '',
  ask: (day) =>
    day.steps
      .filter((step) => step.filled && isKind(day, 'strengthening', step) && !staysOn(step))
      .map((treatment) => askOf(treatment, day)),
};

const much = ({ traits }: DayStep, day: Day) =>
  byRatio(traits.dose / day.practice.judge.followUp.most, 1) !== 'suits';

function askOf(treatment: DayStep, day: Day): Finding {
  const after = day.steps
    .slice(day.steps.findIndex(({ id }) => id === treatment.id) + 1)
    .filter((step) => step.filled && isKind(day, 'followUp', step));
  const answer = (what: Finding['answer'], key: string, steps: DayStep[]) =>
    finding(
      treatmentFollowUp,
      what,
      { key: `rules.treatment-follow-up.${key}`, values: { kind: treatment.kind } },
      {
        steps: [treatment, ...steps],
        mentions: steps.flatMap((step) => mentionsOf(step, step.traits.doses)),
        ...(key === 'unread' && { unknown: { key: 'rules.unknown.labels', values: { n: steps.length } } }),
      },
    );
  const always = after.filter((step) => alwaysComesWith(step.cadence, treatment.cadence));
  const soft = always.filter((step) => !much(step, day));
  const sure = soft.filter(({ optional, traits }) => !optional && traits.read !== 'none');
  if (sure.length > 0) return answer('suits', 'followed', sure);
  const unread = soft.filter(({ traits }) => traits.read === 'none');
  if (unread.length > 0) return answer('cannot-tell', 'unread', unread);
  if (soft.length > 0) return answer('with-care', 'optional', soft);
  if (always.length > 0) return answer('with-care', 'with-protein', always);
  if (after.length > 0) return answer('with-care', 'not-each-time', after);
  return answer('does-not-suit', 'missing', []);
}
