import { fulfils, type Wish } from '../../core/plan/wish.ts';
import type { ProductKind } from '../../core/product/product.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { Remembered } from '../../store/remembered.ts';
import type { Decided, Knowing } from '../knowing.ts';

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
