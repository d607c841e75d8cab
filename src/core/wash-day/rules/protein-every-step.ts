import { distinctProducts, filledSteps, finding, proteinMentions, type Rule } from './day.ts';

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
    const free = steps.filter(({ traits }) => traits.protein === 'no');
    const maybe = steps.filter(({ traits }) => traits.protein === 'maybe');
    const values = { n: steps.length, free: free.length };
    const rest = { steps, mentions: steps.flatMap(proteinMentions) };
    if (free.length > 0)
      return free.length === steps.length
        ? []
        : [finding(this, 'suits', { key: 'rules.protein-every-step.some-free', values }, { steps: free })];
    if (maybe.length > 0)
      return [
        finding(
          this,
          'cannot-tell',
          { key: 'rules.protein-every-step.maybe', values },
          {
            ...rest,
            unknown: { key: 'rules.unknown.maybe-protein', values: { n: maybe.length } },
          },
        ),
      ];
    return [finding(this, 'does-not-suit', { key: 'rules.protein-every-step.all', values }, rest)];
  },
};
