import { fulfils, type Wish } from '../../../core/plan/wish.ts';
import { type Product, type ProductKind, usualUse } from '../../../core/product/product.ts';
import type { Reading } from '../../../core/reading/reading.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import type { Change, Remembered } from '../../../store/remembered.ts';
import type { Decided, Knowing } from '../../knowing.ts';

const same = (a: Wish, b: Wish) => JSON.stringify(a) === JSON.stringify(b);

/** Looks for one more thing while shopping; the same thing once. */
export function wishFor({ settings: { wishes = [] } }: Remembered, wish: Wish): Decided {
  const kept = wishes.filter((each) => !same(each, wish));
  return {
    changes: [{ do: 'set', settings: { wishes: [...kept, wish] } }],
    say: { key: 'routine.wish.kept' },
  };
}

/** What was looked for is found, or wanted no more. */
export const dropWish = ({ settings: { wishes = [] } }: Remembered, wish: Wish): Decided => ({
  changes: [{ do: 'set', settings: { wishes: wishes.filter((each) => !same(each, wish)) } }],
  say: { key: 'routine.wish.dropped' },
});

/** The things looked for that a product surely is. */
export const grantedBy = (
  { remembered, practice }: Pick<Knowing, 'remembered' | 'practice'>,
  { reading, kind }: { reading: Reading | undefined; kind: ProductKind | undefined },
): Wish[] =>
  (remembered.settings.wishes ?? []).filter((wish) => fulfils(reading, kind, wish, practice) === 'yes');

/** What may come to be on hand, or into a routine, by some changes: products that were not there before. */
function comesBy({ products, routines }: Remembered, changes: readonly Change[]): Product[] {
  const put = <T extends 'products' | 'routines'>(thing: T) =>
    changes.flatMap((change) => (change.do === 'put' && change.thing === thing ? [change.value] : []));
  const brought = put('products') as Product[];
  const owned = brought.filter(
    ({ id, owned }) => owned && !products.some((had) => had.id === id && had.owned),
  );
  const placed = (put('routines') as Routine[]).flatMap(({ id, steps }) => {
    const had = routines.find((routine) => routine.id === id)?.steps ?? [];
    return steps.flatMap(({ product }) =>
      had.some((step) => step.product === product) ? [] : (product ?? []),
    );
  });
  const named = (id: string) => [...brought, ...products].find((product) => product.id === id) ?? [];
  return [...owned, ...placed.flatMap(named)];
}

/** An act that brings what was looked for also ends the looking, in the same change. */
export function endingWishes({ remembered, practice, reading }: Filling, decided: Decided): Decided {
  const { wishes = [] } = remembered.settings;
  if (wishes.length === 0) return decided;
  const filled = new Set(
    comesBy(remembered, decided.changes).flatMap(({ kind, use, labels: [label] }) => {
      if (!kind || !label) return [];
      const read = reading(label.text, { kind, use: use ?? usualUse[kind] });
      return grantedBy({ remembered, practice }, { kind, reading: read });
    }),
  );
  if (filled.size === 0) return decided;
  const left = wishes.filter((wish) => !filled.has(wish));
  return { ...decided, changes: [...decided.changes, { do: 'set', settings: { wishes: left } }] };
}

type Filling = Pick<Knowing, 'remembered' | 'practice' | 'reading'>;
