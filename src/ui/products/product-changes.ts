import type { Product } from '../../core/product/product.ts';
import { keepMet, type Met, mergeProducts } from '../../core/product/same-product.ts';
import type { Change } from '../../store/remembered.ts';
import type { World } from '../world.ts';

type Kept = Pick<World, 'remembered'>;

/** Routines with every step of one product given another, or none. */
function steps({ remembered }: Kept, from: string, to: string | undefined): Change[] {
  return remembered.routines
    .filter((routine) => routine.steps.some(({ product }) => product === from))
    .map((routine) => ({
      do: 'put',
      thing: 'routines',
      value: {
        ...routine,
        steps: routine.steps.map((step) => {
          if (step.product !== from) return step;
          const { product: _, ...rest } = step;
          return to ? { ...rest, product: to } : rest;
        }),
      },
    }));
}

function pins({ remembered }: Kept, from: string, to: string | undefined): Change[] {
  const { pinned = [] } = remembered.settings;
  if (!pinned.includes(from)) return [];
  const next = pinned.map((pin) => (pin === from ? to : pin)).filter((pin) => pin !== undefined);
  return [{ do: 'set', settings: { pinned: [...new Set(next)] } }];
}

/** Removes a product; its steps stand empty. One change, so that one undo brings all of it back. */
export const removing = (world: Kept, id: string): Change[] => [
  { do: 'remove', thing: 'products', id },
  ...steps(world, id, undefined),
  ...pins(world, id, undefined),
];

/** Makes two products one: labels and sources of both under the first; steps of the other follow. */
export const merging = (world: Kept, kept: Product, other: Product): Change[] => [
  { do: 'put', thing: 'products', value: mergeProducts(kept, other) },
  { do: 'remove', thing: 'products', id: other.id },
  ...steps(world, other.id, kept.id),
  ...pins(world, other.id, kept.id),
];

/** Keeps what was met (or pasted) and says what came of it. The id of the product kept, or undefined. */
export async function keep(
  world: World,
  met: Omit<Met, 'now'>,
  owned?: boolean,
): Promise<string | undefined> {
  const now = world.now?.() ?? world.today;
  const { product, happened } = keepMet(world.remembered.products, { ...met, now }, world.newId(), owned);
  const { ok } = await world.change({ do: 'put', thing: 'products', value: product });
  if (!ok) return undefined;
  const words = {
    new: 'products.kept',
    same: 'products.kept.same',
    'source-added': 'products.kept.source',
    'label-changed': 'products.kept.changed',
  }[happened];
  world.say(world.t(words, { name: product.name }), true);
  return product.id;
}
