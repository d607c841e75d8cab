import { damageOf } from '../../../hair/tolerance.ts';
import { type Day, type DayStep, filledSteps, finding, isKind, type Rule } from '../day.ts';

/** Is hair that is badly damaged left without any protein or bond care? */
export const noProtein: Rule = {
  id: 'no-protein',
  of: 'day',
  aspect: 'protein',
  sees: (step, day) => (step.filled ? `${rebuilds(step, day)}` : 'empty'),
  mayHelp: (_, after) => after === 'true',
  ask(day) {
    const { from, tolerance } = day.practice.judge.needs;
    if (!day.head?.damage || filledSteps(day).some((step) => rebuilds(step, day))) return [];
    if (damageOf(day.head.damage, day.practice.allowance) < from) return [];
    if (day.hair.numbers.some((hair) => hair.tolerance < tolerance)) return [];
    return [
      finding(
        this,
        'with-care',
        { key: 'rules.no-protein.missing' },
        {
          condition: { key: 'rules.no-protein.add' },
        },
      ),
    ];
  },
};

/** Protein, a bond builder or a treatment of whatever kind; what was not read may hold it. */
const rebuilds = (step: DayStep, day: Day) =>
  step.traits.named ||
  step.traits.bond ||
  step.traits.read !== 'enough' ||
  isKind(day, 'strengthening', step);
