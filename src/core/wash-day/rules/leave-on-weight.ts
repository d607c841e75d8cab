import { distinctProducts, filledSteps, finding, mentionsOf, type Rule } from './day.ts';
import { staysOn } from './traits.ts';

/**
 * Do the leave-ons weigh more than these strands carry? A rich rinse-off leaves about a hundredth on the hair,
 * a leave-on about a tenth (exposure table), so only leave-ons are counted.
 */
export const leaveOnWeight: Rule = {
  id: 'leave-on-weight',
  of: 'day',
  aspect: 'weight',
  sees: (step) =>
    step.filled && staysOn(step.use)
      ? `${step.traits.heavy.length > 0} ${step.traits.read} ${step.product}`
      : '',
  mayHelp: (before) => before.startsWith('true'),
  excess: ({ reason }) => Number(reason.values?.n) - Number(reason.values?.carries),
  ask(day) {
    const leaveOns = distinctProducts(filledSteps(day).filter(({ use }) => staysOn(use)));
    const heavy = leaveOns.filter(({ traits }) => traits.heavy.length > 0);
    const maybe = leaveOns.filter(({ traits }) => traits.heavy.length === 0 && traits.read !== 'enough');
    if (heavy.length + maybe.length === 0) return [];
    const carries = day.practice.washDay.heavyLeaveOns;
    const { thickness } = day.head ?? {};
    const span = thickness ? [carries[thickness]] : Object.values(carries);
    const values = { n: heavy.length, maybe: maybe.length, carries: Math.max(...span) };
    const say = (key: string) => ({ key: `rules.leave-on-weight.${key}`, values });
    const mentions = heavy.flatMap((step) => mentionsOf(step, step.traits.heavy));
    if (heavy.length > Math.max(...span))
      return [finding(this, 'does-not-suit', say('too-heavy'), { steps: heavy, mentions })];
    if (heavy.length + maybe.length > Math.min(...span))
      return [
        finding(this, 'cannot-tell', say(thickness ? 'maybe' : 'hair-unknown'), {
          steps: [...heavy, ...maybe],
          mentions,
          unknown: thickness
            ? { key: 'rules.unknown.labels', values: { n: maybe.length } }
            : { key: 'rules.unknown.thickness' },
        }),
      ];
    return [finding(this, 'suits', say('carried'), { steps: heavy, mentions })];
  },
};
