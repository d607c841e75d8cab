import { countProtein, overBy } from './count-protein.ts';
import type { Rule } from './day.ts';

/** Do more products of the wash day carry protein than the allowance has room for? */
export const proteinProducts: Rule = {
  id: 'protein-products',
  of: 'day',
  aspect: 'protein',
  sees: (step) => (step.filled ? `${step.traits.protein} ${step.product}` : ''),
  mayHelp: (before) => before.startsWith('yes'),
  excess: overBy,
  ask: (day) => countProtein(proteinProducts, day, 'products'),
};
