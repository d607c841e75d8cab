import { findSame } from '../../core/product/same-product.ts';
import { comparedMet } from '../../use/acts/matters/pins.ts';
import type { Met } from '../../use/knowing.ts';
import { Button } from '../parts/controls/button.tsx';
import type { World } from '../world.ts';

/** What to do with the product in view: add it to the routine, compare it, keep it or (unless it is `opened`) look at what is kept. */
export function ListActions({ world, met, opened }: { world: World; met: Met; opened?: boolean }) {
  const { t, remembered } = world;
  const kept = findSame(remembered.products, met);
  const pinned = remembered.settings.pinned ?? [];

  const compare = async () => {
    const { ok } = await world.act({ act: 'pin', pin: comparedMet(met).pin });
    if (ok && pinned.length > 0) world.go('compare');
  };
  return (
    <div class="actions">
      <Button look="strong" onClick={() => world.go('routine', { add: met })}>
        {t('panel.action.add')}
      </Button>
      <Button onClick={compare}>
        {t(pinned.length > 0 ? 'panel.action.compare-here' : 'panel.action.compare')}
      </Button>
      {opened ? null : kept ? (
        <Button look="quiet" onClick={() => world.go('products', { product: kept.id })}>
          {t('panel.action.kept')}
        </Button>
      ) : (
        <Button onClick={() => void world.act({ act: 'keep', met, id: world.newId() })}>
          {t('panel.action.keep')}
        </Button>
      )}
    </div>
  );
}
