import { countProtein, overBy } from './count-protein.ts';
import type { Rule } from './day.ts';
import { staysOn } from './traits.ts';

/** Do more leave-ons carry protein than the allowance has room for? What is not rinsed out adds up. */
export const leaveOnProteins: Rule = {
  id: 'leave-on-proteins',
  of: 'day',
  aspect: 'protein',
  sees: (step) => (step.filled && staysOn(step.use) ? `${step.traits.protein} ${step.product}` : ''),
  mayHelp: (before) => before.startsWith('yes'),
  excess: overBy,
  ask: (day) => countProtein(leaveOnProteins, day, 'leaveOns', ({ use }) => staysOn(use)),
};
