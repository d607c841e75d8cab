import { distinctProducts, filledSteps, finding, mentionsOf, type Rule } from './day.ts';

/** Is there protein in every product of the wash day? Not every one should hold it (common practice). */
export const proteinEveryStep: Rule = {
  id: 'protein-every-step',
  of: 'day',
  aspect: 'protein',
  sees: (step) => (step.filled ? `${step.traits.protein} ${step.product}` : ''),
  mayHelp: (before, after) => before !== '' || !after.startsWith('yes'),
  ask(day) {
    const steps = distinctProducts(filledSteps(day));
    if (steps.length < day.practice.washDay.thresholds.everyStepFrom) return [];
    if (steps.some(({ traits }) => traits.protein !== 'yes')) return [];
    return [
      finding(
        this,
        'with-care',
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
