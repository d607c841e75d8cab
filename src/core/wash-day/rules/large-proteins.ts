import type { Finding } from '../../judge/finding.ts';
import { type Day, type DayStep, filledSteps, finding, mentionsOf, type Rule } from './day.ts';
import { staysOn } from './traits.ts';

/** Do large proteins sit with this hair? They stay on the surface and build up on low-porosity and coarse hair. */
export const largeProteins: Rule = {
  id: 'large-proteins',
  of: 'product',
  aspect: 'protein',
  sees: ({ filled, use, traits, reading }) =>
    filled && traits.large.length > 0
      ? `${use} ${traits.largeAboveTrace.length > 0} ${reading?.protein === 'leading'}`
      : '',
  ask: (day) => filledSteps(day).flatMap((step) => askOf(step, day)),
};

function askOf(step: DayStep, day: Day): Finding[] {
  const { traits, use, reading } = step;
  if (traits.large.length === 0) return [];
  const answer = (what: Finding['answer'], key: string, which = traits.large) => [
    finding(
      largeProteins,
      what,
      { key: `rules.large-proteins.${key}`, values: { n: which.length } },
      {
        steps: [step],
        mentions: mentionsOf(step, which),
        ...(key === 'hair-unknown' && { unknown: { key: 'rules.unknown.hair' } }),
      },
    ),
  ];
  const onlyTrace = traits.largeAboveTrace.length === 0;
  if (onlyTrace && !staysOn(use)) return answer('suits', 'trace-rinsed');
  if (!day.numbers) return answer('cannot-tell', 'hair-unknown');
  if (day.numbers.large === 'welcome') return answer('suits', 'welcome');
  if (onlyTrace)
    return day.numbers.large === 'sparing' ? answer('suits', 'trace') : answer('cannot-tell', 'trace-stays');
  if (day.numbers.large === 'unwelcome') return answer('does-not-suit', 'unwelcome', traits.largeAboveTrace);
  // Sparing: clashes only where it leads and is not rinsed out.
  return reading?.protein === 'leading' && staysOn(use)
    ? answer('does-not-suit', 'sparing-leads', traits.largeAboveTrace)
    : answer('suits', 'sparing');
}
