import { insertUsually } from '../../core/plan/moves.ts';
import { type Product, type ProductKind, usualUse } from '../../core/product/product.ts';
import type { Routine, Step } from '../../core/wash-day/routine.ts';
import type { World } from '../world.ts';

export const newRoutine = (
  world: World,
  head: string,
  name: string,
  kinds: readonly ProductKind[] = [],
): Routine => ({
  id: world.newId(),
  head,
  name,
  steps: kinds.map((kind) => newStep(world, kind)),
  added: world.now?.() ?? world.today,
  washEvery: 7,
});

export const newStep = (world: World, kind: ProductKind): Step => ({
  id: world.newId(),
  kind,
  use: usualUse[kind],
  optional: false,
  cadence: { every: 'wash' },
});

/** Keeps a routine and says what was done, with an undo. A new one is in use from then on. */
export async function keepRoutine(world: World, routine: Routine, said?: string): Promise<boolean> {
  const known = world.remembered.routines.some(({ id }) => id === routine.id);
  const { ok } = await world.change(
    { do: 'put', thing: 'routines', value: routine },
    ...(known ? [] : [{ do: 'set', settings: { routineInUse: routine.id } } as const]),
  );
  if (ok && said) world.say(said, true);
  return ok;
}

export const withStep = (routine: Routine, step: Step): Routine => ({
  ...routine,
  steps: routine.steps.map((old) => (old.id === step.id ? step : old)),
});

export const withoutStep = (routine: Routine, id: string): Routine => ({
  ...routine,
  steps: routine.steps.filter((step) => step.id !== id),
});

/** Moves a step to a place in the order, 0 the first. */
export function movedStep(routine: Routine, id: string, to: number): Routine {
  const from = routine.steps.findIndex((step) => step.id === id);
  const step = routine.steps[from];
  if (!step) return routine;
  const rest = routine.steps.toSpliced(from, 1);
  return { ...routine, steps: rest.toSpliced(Math.max(0, Math.min(rest.length, to)), 0, step) };
}

export const withNewStep = (world: World, routine: Routine, kind: ProductKind): Routine => ({
  ...routine,
  steps: insertUsually(routine.steps, newStep(world, kind), world.practice.washDay.kinds.order),
});

/** Puts a product in a step, or takes it out; the step is used as the product is. */
export function filled({ product: _, ...step }: Step, product: Product | undefined): Step {
  return product
    ? { ...step, product: product.id, use: product.use ?? (product.kind ? usualUse[product.kind] : step.use) }
    : step;
}

/** A copy with ids of its own. */
export const copyOf = (world: World, routine: Routine, name: string): Routine => ({
  ...routine,
  id: world.newId(),
  name,
  added: world.now?.() ?? world.today,
  steps: routine.steps.map((step) => ({ ...step, id: world.newId() })),
});
