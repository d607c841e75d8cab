import type { Finding } from '../../judge/finding.ts';
import { type Day, type DayStep, filledSteps, finding, mentionsOf, type Rule } from './day.ts';
import { staysOn } from './traits.ts';

/**
 * What does the protein of this one product mean for this head? Protein alone never makes a product clash
 * (common practice): how many are too many is a question of the whole wash day.
 */
export const proteinDose: Rule = {
  id: 'protein-dose',
  of: 'product',
  aspect: 'protein',
  sees: ({ filled, use, traits }) =>
    filled ? `${use} ${traits.read} ${traits.doses.length} ${traits.bearing.length > 0}` : '',
  ask: (day) => filledSteps(day).flatMap((step) => askOf(step, day)),
};

function askOf(step: DayStep, { numbers }: Day): Finding[] {
  const { doses, bearing, minute, surfactants, read, moist } = step.traits;
  const answer = (what: Finding['answer'], key: string, which: number[], unknown?: string) => [
    finding(
      proteinDose,
      what,
      { key: `rules.protein-dose.${key}`, values: { n: which.length } },
      {
        steps: [step],
        mentions: mentionsOf(step, which),
        ...(unknown && { unknown: { key: unknown, values: { n: which.length } } }),
      },
    ),
  ];
  const stays = staysOn(step.use);
  if (doses.length > 0) {
    if (!numbers) return answer('cannot-tell', 'hair-unknown', doses, 'rules.unknown.hair');
    if (stays && numbers.leaveOns === 0) return answer('cannot-tell', 'leave-ons-free', doses);
    return answer('suits', moist === 'yes' ? 'with-moisture' : 'welcome', doses);
  }
  if (read !== 'enough') return [];
  if (bearing.length > 0) {
    const matters = stays && numbers?.large !== 'welcome';
    return answer(
      matters ? 'cannot-tell' : 'suits',
      matters ? 'bearing' : 'bearing-slight',
      bearing,
      'rules.unknown.bearing',
    );
  }
  if (minute.length > 0) return answer('suits', 'peptides-only', minute);
  if (surfactants.length > 0) return answer('suits', 'surfactants-only', surfactants);
  return answer('suits', 'free', []);
}
