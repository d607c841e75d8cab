import { bottleLike } from '../../../use/judge/bottle.ts';
import type { Met } from '../../../use/knowing.ts';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import type { World } from '../../world.ts';

/** A bottle typed in by hand with the list of what this page sells: made one on a press. Else nothing. */
export function SameBottle({ world, met }: { world: World; met: Met }) {
  const { t } = world;
  const bottle = bottleLike(world, met);
  if (!bottle) return null;
  return (
    <Card title={t('products.bottle')}>
      <p>{t('products.bottle.why', { name: bottle.name })}</p>
      <div class="actions">
        <Button onClick={() => void world.act({ act: 'keep', met, id: bottle.id, as: bottle.id })}>
          {t('products.bottle.join')}
        </Button>
      </div>
    </Card>
  );
}
