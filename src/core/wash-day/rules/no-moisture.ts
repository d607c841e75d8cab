import { filledSteps, finding, isKind, mentionsOf, type Rule } from './day.ts';

/** Does no step bring moisture: a conditioner, leave-in or cream that holds more than a trace of it? */
export const noMoisture: Rule = {
  id: 'no-moisture',
  of: 'day',
  aspect: 'care',
  sees: (step, day) => (step.filled && isKind(day, 'moisture', step) ? step.traits.moist : ''),
  mayHelp: (_, after) => after === 'yes' || after === 'maybe',
  ask(day) {
    const steps = filledSteps(day).filter((step) => isKind(day, 'moisture', step));
    const sure = steps.filter(({ traits }) => traits.moist === 'yes');
    const say = (key: string, n: number) => ({ key: `rules.no-moisture.${key}`, values: { n } });
    if (sure.length > 0)
      return [
        finding(this, 'suits', say('there', sure.length), {
          steps: sure,
          mentions: sure.flatMap((step) => mentionsOf(step, step.traits.moisture)),
        }),
      ];
    const maybe = steps.filter(({ traits }) => traits.moist === 'maybe');
    if (maybe.length > 0)
      return [
        finding(this, 'cannot-tell', say('maybe', maybe.length), {
          steps: maybe,
          unknown: { key: 'rules.unknown.labels', values: { n: maybe.length } },
        }),
      ];
    return [finding(this, 'does-not-suit', say('missing', 0), { steps })];
  },
};
