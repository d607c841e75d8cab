import type { Said } from '../../../core/judge/finding.ts';
import { insertUsually } from '../../../core/plan/moves.ts';
import { withProduct } from '../../../core/plan/preview.ts';
import { type Product, type ProductKind, usualUse } from '../../../core/product/product.ts';
import type { Routine, Step } from '../../../core/wash-day/routine.ts';
import type { Remembered } from '../../../store/remembered.ts';
import type { Decided, Knowing, Met } from '../../knowing.ts';
import { keepProduct, productById } from './products.ts';

/** What something new needs from whoever makes it. */
export type Making = { newId(): string; today: string; now?(): string };

export const momentOf = ({ now, today }: Omit<Making, 'newId'>): string => now?.() ?? today;

export const newStep = ({ newId }: Pick<Making, 'newId'>, kind: ProductKind): Step => ({
  id: newId(),
  kind,
  use: usualUse[kind],
  optional: false,
  cadence: { every: 'wash' },
});

export const newRoutine = (
  making: Making,
  head: string,
  name: string,
  kinds: readonly ProductKind[] = [],
): Routine => ({
  id: making.newId(),
  head,
  name,
  steps: kinds.map((kind) => newStep(making, kind)),
  added: momentOf(making),
  washEvery: 7,
});

/** The usual steps around a product of a kind, empty and free to stay so; its own step comes with the product. */
export const stepsAround = (
  making: Pick<Making, 'newId'>,
  usual: readonly ProductKind[],
  kind: ProductKind | undefined,
): Step[] =>
  usual.filter((each) => each !== kind).map((each) => ({ ...newStep(making, each), optional: true }));

/** Keeps a routine; a new one is in use from then on. */
export const keepRoutine = ({ routines }: Remembered, routine: Routine, say?: Said): Decided => ({
  changes: [
    { do: 'put', thing: 'routines', value: routine },
    ...(routines.some(({ id }) => id === routine.id)
      ? []
      : [{ do: 'set', settings: { routineInUse: routine.id } } as const]),
  ],
  ...(say && { say }),
});

/** A product met, with the kind it shall stand in the routine as; ids are those of what may be new. */
export type Adding = {
  met: Met;
  kind: ProductKind;
  how?: 'fill' | 'beside';
  routine: Routine;
  ids: { product: string; step: string };
  /** A small one of its page, as a data URL. */
  picture?: string;
};

/** Keeps a product that was met and puts it into a routine: the user's word on its kind is kept with it. */
export function addToRoutine(
  { remembered, practice }: Pick<Knowing, 'remembered' | 'practice'>,
  { met, kind, how = 'fill', routine, ids, picture }: Adding,
  now: string,
): Decided {
  const use = kind === met.facts.kind ? (met.facts.use ?? usualUse[kind]) : usualUse[kind];
  const told = { ...met, facts: { ...met.facts, kind, use } };
  const { product, taken } = keepProduct(remembered, { met: told, id: ids.product, now, picture });
  const known = remembered.routines.find(({ id }) => id === routine.id) ?? routine;
  const step = { ...newStep({ newId: () => ids.step }, kind), use, product: product.id };
  const { routine: after } = withProduct(known, { step, how }, practice.washDay.kinds.order);
  return {
    changes: [
      { do: 'put', thing: 'products', value: { ...product, kind, use } },
      ...taken,
      { do: 'put', thing: 'routines', value: after },
      { do: 'set', settings: { routineInUse: routine.id } },
    ],
    say: { key: 'routine.add.done', values: { name: product.name, routine: routine.name } },
  };
}

/** Puts a product kept into a step, or takes it out. */
export function fillStep(
  remembered: Remembered,
  { routine: id, step, product }: { routine: string; step: string; product: string | undefined },
): Decided {
  const routine = remembered.routines.find((each) => each.id === id);
  const old = routine?.steps.find((each) => each.id === step);
  if (!routine || !old) return { changes: [] };
  const value = withStep(routine, filled(old, productById(remembered, product)));
  return {
    changes: [{ do: 'put', thing: 'routines', value }],
  };
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

export const withNewStep = (
  making: Pick<Making, 'newId'> & Pick<Knowing, 'practice'>,
  routine: Routine,
  kind: ProductKind,
): Routine => ({
  ...routine,
  steps: insertUsually(routine.steps, newStep(making, kind), making.practice.washDay.kinds.order),
});

/** Puts a product in a step, or takes it out; the step is used as the product is. */
export function filled({ product: _, ...step }: Step, product: Product | undefined): Step {
  return product
    ? { ...step, product: product.id, use: product.use ?? (product.kind ? usualUse[product.kind] : step.use) }
    : step;
}

/** A copy with ids of its own. */
export const copyOf = (making: Making, routine: Routine, name: string): Routine => ({
  ...routine,
  id: making.newId(),
  name,
  added: momentOf(making),
  steps: routine.steps.map((step) => ({ ...step, id: making.newId() })),
});
