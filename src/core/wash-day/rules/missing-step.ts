import { filledSteps, finding, isKind, type Rule } from './day.ts';

/** What is the wash day still without? Unfinished is not wrong: it is said what is still to add. */
export const missingStep: Rule = {
  id: 'missing-step',
  of: 'day',
  aspect: 'cleansing',
  sees: (step, day) => (step.filled ? `${isKind(day, 'cleansing', step)}` : 'empty'),
  mayHelp: (_, after) => after === 'true',
  ask(day) {
    const steps = filledSteps(day);
    if (steps.some((step) => isKind(day, 'cleansing', step))) return [];
    return [
      finding(
        this,
        'with-care',
        { key: 'rules.missing-step.cleanser' },
        {
          condition: { key: 'rules.missing-step.add' },
        },
      ),
    ];
  },
};
