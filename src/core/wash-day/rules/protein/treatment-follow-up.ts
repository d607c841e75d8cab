import { byRatio } from '../../../judge/asked.ts';
import type { Finding } from '../../../judge/finding.ts';
import { alwaysComesWith, oneAlwaysComesWith } from '../cadence.ts';
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
  // One that comes each time, or several that take turns.
  const each = (steps: DayStep[]) => {
    if (
      !oneAlwaysComesWith(
        steps.map(({ cadence }) => cadence),
        treatment.cadence,
      )
    )
      return [];
    const always = steps.filter(({ cadence }) => alwaysComesWith(cadence, treatment.cadence));
    return always.length > 0 ? always : steps;
  };
  const soft = after.filter((step) => !much(step, day));
  const unread = soft.filter(({ traits }) => traits.read === 'none');
  const sure = soft.filter((step) => !step.optional && !unread.includes(step));
  const found = each(sure);
  if (found.length > 0) return answer('suits', 'followed', found);
  const may = each([...sure, ...unread]).filter((step) => unread.includes(step));
  if (may.length > 0) return answer('cannot-tell', 'unread', may);
  const optional = each(soft);
  if (optional.length > 0) return answer('with-care', 'optional', optional);
  const rich = each(after);
  if (rich.length > 0) return answer('with-care', 'with-protein', rich);
  if (after.length > 0) return answer('with-care', 'not-each-time', after);
  return answer('does-not-suit', 'missing', []);
}
