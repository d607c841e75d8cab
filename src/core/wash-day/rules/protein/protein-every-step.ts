import { distinctProducts, filledSteps, finding, isKind, mentionsOf, type Rule } from '../day.ts';
import { perWash } from './too-much-protein.ts';

/** Is there protein in every product but the cleanser? Not every one should hold it (common practice). */
export const proteinEveryStep: Rule = {
  id: 'protein-every-step',
  of: 'day',
  aspect: 'protein',
  sees: (step) =>
    step.filled
      ? `${step.traits.protein} ${step.traits.dose} ${step.kind} ${step.product} ${JSON.stringify(step.cadence)}`
      : '',
  mayHelp: (before, after) => before !== '' || !after.startsWith('yes'),
  ask(day) {
    const steps = distinctProducts(filledSteps(day)).filter((step) => !isKind(day, 'cleansing', step));
    if (steps.length < day.practice.washDay.thresholds.everyStepFrom) return [];
    if (steps.some(({ traits }) => traits.protein !== 'yes')) return [];
    // More than the hair takes, from every bottle, is no slip where the hair does not ask for protein.
    const total = steps.reduce((all, step) => all + perWash(step, day), 0);
    const over = day.hair.numbers.every(
      ({ protein, tolerance }) => total > protein.suits && tolerance < day.practice.judge.needs.tolerance,
    );
    return [
      finding(
        this,
        over ? 'does-not-suit' : 'with-care',
        { key: 'rules.protein-every-step.all', values: { n: steps.length } },
        {
          steps,
          mentions: steps.flatMap((step) => mentionsOf(step, step.traits.doses)),
          extent: steps.length,
        },
      ),
    ];
  },
};
