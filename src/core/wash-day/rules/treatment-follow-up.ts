import type { Finding } from '../../judge/finding.ts';
import { alwaysComesWith } from './cadence.ts';
import { type Day, type DayStep, finding, isKind, proteinMentions, type Rule } from './day.ts';

/** Is each strengthening treatment followed by a protein-free deep conditioner on the same wash day? */
export const treatmentFollowUp: Rule = {
  id: 'treatment-follow-up',
  of: 'day',
  aspect: 'protein',
  sees: (step, day) =>
    isKind(day, 'strengthening', step)
      ? `treatment ${step.filled} ${JSON.stringify(step.cadence)}`
      : isKind(day, 'followUp', step)
        ? `${step.filled} ${step.traits.protein} ${step.optional} ${JSON.stringify(step.cadence)}`
        : '',
  ask: (day) =>
    day.steps
      .filter((step) => step.filled && isKind(day, 'strengthening', step))
      .map((treatment) => askOf(treatment, day)),
};

function askOf(treatment: DayStep, day: Day): Finding {
  const after = day.steps
    .slice(day.steps.findIndex(({ id }) => id === treatment.id) + 1)
    .filter((step) => isKind(day, 'followUp', step));
  const answer = (what: Finding['answer'], key: string, steps: DayStep[], unknown?: string) =>
    finding(
      treatmentFollowUp,
      what,
      { key: `rules.treatment-follow-up.${key}`, values: { kind: treatment.kind } },
      {
        steps: [treatment, ...steps],
        mentions: steps.flatMap(proteinMentions),
        ...(unknown && { unknown: { key: unknown, values: { n: steps.length } } }),
      },
    );
  const filled = after.filter((step) => step.filled);
  const free = filled.filter(({ traits }) => traits.protein === 'no');
  const always = free.filter((step) => alwaysComesWith(step.cadence, treatment.cadence));
  const sure = always.filter(({ optional }) => !optional);
  if (sure.length > 0) return answer('suits', 'followed', sure);
  if (always.length > 0) return answer('cannot-tell', 'optional', always);
  const maybe = filled.filter(({ traits }) => traits.protein === 'maybe');
  if (maybe.length > 0) return answer('cannot-tell', 'maybe-protein', maybe, 'rules.unknown.maybe-protein');
  if (free.length > 0) return answer('does-not-suit', 'not-each-time', free);
  if (filled.length > 0) return answer('does-not-suit', 'with-protein', filled);
  return answer('does-not-suit', 'missing', after);
}
