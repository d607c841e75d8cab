import { type PlanFile, planFileOf } from '../../../core/plan/plan-file.ts';
import type { Product } from '../../../core/product/product.ts';
import { findSame, keepMet } from '../../../core/product/same-product.ts';
import type { Routine, Step } from '../../../core/wash-day/routine.ts';
import type { Remembered } from '../../../store/remembered.ts';
import type { Decided } from '../../knowing.ts';
import { copyOf, type Making, momentOf } from './routines.ts';

/** A plan of somebody else as it would stand here: what would be new, and its routine. */
export type TakenPlan = {
  routine: Routine;
  /** Those that are not here yet. */
  products: Product[];
  /** Names of those that are. */
  had: string[];
};

/** A routine as a file for somebody else, with an indent, so that it can be read before it is sent. */
export const planFileFor = ({ products }: Pick<Remembered, 'products'>, routine: Routine, today: string) =>
  JSON.stringify(planFileOf(routine, products, today), null, 1);

/**
 * A plan as a routine of a head. A product that is here already stays as it is, with its own label; any other is new
 * and only considered.
 */
export function takenAs(remembered: Remembered, plan: PlanFile, head: string, making: Making): TakenPlan {
  const now = momentOf(making);
  const products: Product[] = [];
  const had: string[] = [];
  const ids = new Map<string, string>();
  for (const { ref, label: text, ...facts } of plan.products) {
    const same = findSame([...remembered.products, ...products], { facts, text });
    const { product } = same ? { product: same } : keepMet([], { facts, text, now }, making.newId(), false);
    if (!same) products.push(product);
    else if (remembered.products.includes(same)) had.push(same.name);
    ids.set(ref, product.id);
  }
  const steps = plan.steps.map(({ product: ref, ...step }): Step => {
    const product = ref && ids.get(ref);
    return { ...step, id: making.newId(), ...(product && { product }) };
  });
  const { name, washEvery, note } = plan;
  return {
    routine: { id: making.newId(), head, name, steps, added: now, washEvery, ...(note && { note }) },
    products,
    had,
  };
}

/** Keeps a plan that was looked at: what it brings, and its routine, which is in use from then on. */
export const keepTaken = ({ routine, products }: Pick<TakenPlan, 'routine' | 'products'>): Decided => ({
  changes: [
    ...products.map((value) => ({ do: 'put', thing: 'products', value }) as const),
    { do: 'put', thing: 'routines', value: routine },
    { do: 'set', settings: { routineInUse: routine.id } },
  ],
  say: { key: 'plan.file.taken', values: { name: routine.name } },
});

/** A routine for another person, as it would stand there. */
export const copiedFor = (making: Making, routine: Routine, head: string): Routine => ({
  ...copyOf(making, routine, routine.name),
  head,
});

/** Keeps a copy for another person; who is in view, and what is in use, stays. */
export const keepCopy = (routine: Routine, person: string): Decided => ({
  changes: [{ do: 'put', thing: 'routines', value: routine }],
  say: { key: 'plan.copied-to', values: { name: routine.name, person } },
});
