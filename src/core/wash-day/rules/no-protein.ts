import { damageOf } from '../../hair/tolerance.ts';
import { filledSteps, finding, type Rule } from './day.ts';
import { perWash } from './too-much-protein.ts';

/** Is hair that is badly damaged left without any protein or bond care? */
export const noProtein: Rule = {
  id: 'no-protein',
  of: 'day',
  aspect: 'protein',
  sees: (step, day) =>
    step.filled ? `${step.traits.protein} ${perWash(step, day)} ${step.traits.bond}` : 'empty',
  mayHelp: (_, after) => after !== 'empty',
  ask(day) {
    const { from, tolerance } = day.practice.judge.needs;
    const steps = filledSteps(day);
    if (!day.head?.damage) return [];
    if (steps.some(({ traits }) => traits.bond || traits.protein === 'maybe')) return [];
    if (damageOf(day.head.damage, day.practice.allowance) < from) return [];
    if (day.hair.numbers.some((hair) => hair.tolerance < tolerance)) return [];
    if (steps.reduce((all, step) => all + perWash(step, day), 0) >= day.practice.judge.needs.dose) return [];
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
