import { type Product, type ProductKind, usualUse } from '../../../core/product/product.ts';
import { type Kept, keepMet, mergeProducts } from '../../../core/product/same-product.ts';
import type { Change, Remembered } from '../../../store/remembered.ts';
import { knownProduct } from '../../judge/met-product.ts';
import type { Decided, Met } from '../../knowing.ts';
import { isPinOf, type Pin, pinOf } from './pins.ts';
import { kindOnPage } from './sites.ts';

export const productById = (
  { products }: Pick<Remembered, 'products'>,
  id: string | undefined,
): Product | undefined => (id === undefined ? undefined : products.find((product) => product.id === id));

const keptWords: Record<Kept['happened'], string> = {
  new: 'products.kept',
  same: 'products.kept.same',
  'source-added': 'products.kept.source',
  'label-changed': 'products.kept.changed',
};

/** Keeps what was met or pasted: as a new product under `id`, or merged into the one it is. */
export function keepProduct(
  remembered: Remembered,
  {
    met,
    id,
    now,
    owned,
    as,
    picture,
  }: {
    met: Met;
    id: string;
    now: string;
    owned?: boolean | undefined;
    as?: string | undefined;
    picture?: string | undefined;
  },
): Decided & { product: Product; taken: Change[] } {
  const { facts } = knownProduct(remembered, met);
  const kept = keepMet(remembered.products, { facts, text: met.text, now }, id, owned, as);
  const { product, taken } = withPhotoOrPicture(kept.product, met.photo, picture, now);
  return {
    product,
    taken,
    changes: [{ do: 'put', thing: 'products', value: product }, ...taken],
    say: {
      key: as === undefined ? keptWords[kept.happened] : 'products.bottle.joined',
      values: { name: product.name },
    },
  };
}

/** A product with the photo its user wishes to keep, else with its picture; one that has a picture keeps it. */
function withPhotoOrPicture(
  product: Product,
  photo: string | undefined,
  small: string | undefined,
  now: string,
) {
  const data = photo ?? (product.picture ? undefined : small);
  if (!data) return { product, taken: [] };
  const key = `${product.id} ${now}`;
  return {
    product: { ...product, picture: key },
    taken: [...pictureGone(product), { do: 'photo', key, data } as const],
  };
}

const pictureGone = ({ picture }: Product): Change[] =>
  picture ? [{ do: 'photo', key: picture, data: null }] : [];

/** Takes a product's picture away. */
export function dropPicture(product: Product): Decided {
  const { picture: _, ...value } = product;
  return { changes: [{ do: 'put', thing: 'products', value }, ...pictureGone(product)] };
}

/** The user's word on what kind a product is: kept with it, or with its page where it is not kept. */
export function correctKind(remembered: Remembered, met: Met, kind: ProductKind | undefined): Decided {
  const { kept } = knownProduct(remembered, met);
  if (!kept) return { changes: kindOnPage(remembered, met, kind) };
  const { kind: _, use: __, ...rest } = kept;
  const value = kind ? { ...rest, kind, use: usualUse[kind] } : rest;
  return { changes: [{ do: 'put', thing: 'products', value }] };
}

/** Removes a product; its steps stand empty. One change, so that one undo brings all of it back. */
export function removeProduct(remembered: Remembered, id: string): Decided {
  const product = productById(remembered, id);
  if (!product) return { changes: [] };
  return {
    changes: [
      { do: 'remove', thing: 'products', id },
      ...pictureGone(product),
      ...stepsTo(remembered, id, undefined),
      ...pinsTo(remembered, id, undefined),
    ],
    say: { key: 'products.removed', values: { name: product.name } },
  };
}

/** Makes two products one: labels and sources of both under the first; steps of the other follow. */
export function mergeInto(remembered: Remembered, keptId: string, otherId: string): Decided {
  const [kept, other] = [productById(remembered, keptId), productById(remembered, otherId)];
  if (!kept || !other || kept === other) return { changes: [] };
  return {
    changes: [
      { do: 'put', thing: 'products', value: mergeProducts(kept, other) },
      { do: 'remove', thing: 'products', id: otherId },
      ...(kept.picture ? pictureGone(other) : []),
      ...stepsTo(remembered, otherId, keptId),
      ...pinsTo(remembered, otherId, keptId),
    ],
    say: { key: 'products.merged', values: { name: kept.name, other: other.name } },
  };
}

/** Routines with every step of one product given another, or none. */
const stepsTo = ({ routines }: Remembered, from: string, to: string | undefined): Change[] =>
  routines
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

function pinsTo({ settings: { pinned = [] } }: Remembered, from: string, to: string | undefined): Change[] {
  const old = pinOf(from);
  if (!pinned.some((pin) => isPinOf(pin, old))) return [];
  const next: Pin[] = pinned.flatMap((pin) => (!isPinOf(pin, old) ? [pin] : to ? [pinOf(to)] : []));
  const once = next.filter((pin, at) => next.findIndex((each) => isPinOf(each, pin)) === at);
  return [{ do: 'set', settings: { pinned: once } }];
}
