import type { Head } from '../../core/hair/head.ts';
import { type AllowanceReading, allowanceOf } from '../../core/hair/tolerance.ts';
import type { Candidate } from '../../core/plan/suggest.ts';
import type { Product } from '../../core/product/product.ts';
import { usualUse } from '../../core/product/product.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { WashDayInput } from '../../core/wash-day/add-up.ts';
import type { Routine, Step } from '../../core/wash-day/routine.ts';
import type { World } from '../world.ts';

export const productOf = (
  { remembered }: Pick<World, 'remembered'>,
  id: string | undefined,
): Product | undefined =>
  id === undefined ? undefined : remembered.products.find((product) => product.id === id);

/** The newest label of a product, read for a use; undefined while it is asked for or where there is none. */
export function readingOf(world: World, product: Product | undefined, use: Step['use']): Reading | undefined {
  const text = product?.labels[0]?.text;
  return text ? world.reading(text, use) : undefined;
}

export const allowanceFor = (world: World, head: Head | undefined): AllowanceReading | undefined =>
  head && allowanceOf(head, world.practice.allowance, { today: world.today, log: world.remembered.log });

/** All that the rules need to know of one routine. */
export function dayInput(world: World, routine: Routine): WashDayInput {
  const head = world.remembered.heads.find(({ id }) => id === routine.head);
  const readings = new Map(
    routine.steps.map((step) => [step.id, readingOf(world, productOf(world, step.product), step.use)]),
  );
  return {
    routine,
    readings,
    head,
    allowance: allowanceFor(world, head),
    log: world.remembered.log,
    today: world.today,
    practice: world.practice,
  };
}

/** Whether a label of the routine is still being read: then the findings would speak too early. */
export const stillReading = (world: World, { routine, readings }: WashDayInput) =>
  routine.steps.some(
    ({ id, product }) => productOf(world, product)?.labels[0]?.text && readings.get(id) === undefined,
  );

/** Products that could stand in a routine: on hand, and the considered ones where they are wanted. */
export function candidatesOf(world: World, considered: boolean): Candidate[] {
  return world.remembered.products.flatMap((product) => {
    const { id, kind, owned } = product;
    if (!kind || !(owned || considered)) return [];
    const use = product.use ?? usualUse[kind];
    const reading = readingOf(world, product, use);
    return reading ? [{ product: id, kind, use, reading, owned }] : [];
  });
}
