import type { ProductKind } from '../../product/product.ts';
import type { Day, DayStep } from '../../wash-day/rules/day.ts';
import type { SlotOption } from './bound.ts';
import type { PlanPractice } from './plan-practice.ts';

/** Which step carries the protein, if any does. */
export type Carrier = ProductKind | 'none';

/** The best day found for each carrier. */
export type Best = Map<Carrier, { day: Day; cost: number }>;

/** The step with the most protein; none where no step holds a dose. */
export function carrierOf({ steps }: Pick<Day, 'steps'>): Carrier {
  const carrying = steps
    .filter(({ traits }) => traits.protein === 'yes')
    .toSorted((a, b) => b.traits.dose - a.traits.dose);
  return carrying[0]?.kind ?? 'none';
}

/** Which steps may come to carry the protein of a day whose first slots are settled. */
export function carriersOver(
  slots: readonly (readonly SlotOption[])[],
): (taken: readonly SlotOption[]) => Carrier[] {
  const carrying = (options: readonly SlotOption[]): DayStep[] =>
    options.flatMap((option) => (option?.step.traits.protein === 'yes' ? option.step : []));
  const later = [...slots, []].map((_, at) => carrying(slots.slice(at).flat()));
  return (taken) => {
    const now = carrying(taken);
    const most = Math.max(0, ...now.map(({ traits }) => traits.dose));
    const may = [...now, ...later[taken.length]!].filter(({ traits }) => traits.dose >= most);
    return now.length === 0 ? ['none', ...may.map(({ kind }) => kind)] : may.map(({ kind }) => kind);
  };
}

/** From which cost on a day would not be the best; and would be none of the plans that are offered. */
export const costLimits: ((best: Best, plan: PlanPractice) => number)[] = [
  (best) => Math.min(...[...best.values()].map(({ cost }) => cost)),
  (best, { plans, costs }) => {
    const [first = Number.POSITIVE_INFINITY, ...others] = [...best.values()]
      .map(({ cost }) => cost)
      .toSorted((a, b) => a - b);
    return Math.min(first + costs['does-not-suit'] / 2, others[plans - 2] ?? Number.POSITIVE_INFINITY);
  },
];
