import { weakAnswer } from '../../judge/rules/cleansing.ts';
import { filledSteps, finding, isKind, type Rule } from './day.ts';

/** Does no cleanser of the day take what this scalp leaves? A co-wash alone does not for an oily or flaky one. */
export const weakCleansing: Rule = {
  id: 'weak-cleansing',
  of: 'day',
  aspect: 'cleansing',
  sees: (step, day) =>
    step.filled && isKind(day, 'cleansing', step)
      ? `${step.traits.wash?.power} ${step.traits.wash?.creamy} ${step.traits.read}`
      : '',
  ask(day) {
    const cleansers = filledSteps(day).filter((step) => isKind(day, 'cleansing', step));
    if (cleansers.length === 0 || cleansers.some(({ traits }) => traits.read !== 'enough')) return [];
    if (cleansers.some(({ traits }) => weakAnswer(traits.wash!, day.hair) !== 'does-not-suit')) return [];
    return [finding(this, 'with-care', { key: 'rules.weak-cleansing.scalp' }, { steps: cleansers })];
  },
};
