import { fulfils, type Wish } from '../../../core/plan/wish.ts';
import type { Product } from '../../../core/product/product.ts';
import { readingOf } from '../../../use/judge/wash-day-input.ts';
import { Button } from '../../parts/controls/button.tsx';
import { Note } from '../../parts/note.tsx';
import type { World } from '../../world.ts';
import { wishWords } from '../suggestions.tsx';

/** The wish that the place was opened for. */
export const wishFrom = ({ detail }: Pick<World, 'detail'>): Wish | undefined =>
  detail && 'wish' in detail ? detail.wish : undefined;

/** Products that are, or may be, such a one. */
export const wished = (world: World, products: readonly Product[], wish: Wish) =>
  products.filter((product) => {
    const use = product.use ?? 'leave-on';
    return (
      fulfils(readingOf(world, product, { kind: product.kind, use }), product.kind, wish, world.practice) !==
      'no'
    );
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
