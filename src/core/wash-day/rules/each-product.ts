import type { AspectRule } from '../../judge/asked.ts';
import { type Day, type DayStep, filledSteps, type Rule } from './day.ts';

/** A question about one product, asked of every step of the day. */
export function eachProduct(rule: AspectRule): Rule {
  const ask = (step: DayStep, day: Day) => rule.ask(step, day.hair);
  return {
    id: rule.id,
    of: 'product',
    aspect: rule.aspect,
    sees: (step, day) =>
      step.filled
        ? ask(step, day)
            .map(({ answer, reason }) => `${answer} ${reason.key} ${JSON.stringify(reason.values)}`)
            .join()
        : '',
    ask: (day) => filledSteps(day).flatMap((step) => ask(step, day)),
  };
}
