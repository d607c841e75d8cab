import { fulfils, type Wish, wishes } from '../../core/plan/wish.ts';
import type { Product } from '../../core/product/product.ts';
import { Button } from '../parts/button.tsx';
import { Note } from '../parts/note.tsx';
import type { World } from '../world.ts';
import { readingOf } from './day-input.ts';
import { wishWords } from './suggestions.tsx';

/** The wish that `world.go('products', 'wish:…')` carries; undefined for anything else, however broken. */
export function wishFrom({ detail, practice }: Pick<World, 'detail' | 'practice'>): Wish | undefined {
  if (!detail?.startsWith('wish:')) return undefined;
  // Only wishes that the rules make themselves.
  return wishes(practice.washDay).find((wish) => JSON.stringify(wish) === detail.slice(5));
}

/** Products that are, or may be, such a one. */
export const wished = (world: World, products: readonly Product[], wish: Wish) =>
  products.filter((product) => {
    const use = product.use ?? 'leave-on';
    return fulfils(readingOf(world, product, use), product.kind, wish, world.practice.washDay) !== 'no';
  });

/** Says that a list shows only what was wished for, and takes the filter away. */
export function WishNote({ world, wish }: { world: World; wish: Wish }) {
  const { t } = world;
  return (
    <Note t={t}>
      <p>{t('routine.wish.only', { what: wishWords(world, wish) })}</p>
      <div class="actions">
        <Button onClick={() => world.go('products')}>{t('routine.wish.all')}</Button>
      </div>
    </Note>
  );
}
