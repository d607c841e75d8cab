import type { ProductFacts } from '../../core/product/product.ts';
import { findSame, keepMet } from '../../core/product/same-product.ts';
import { pinsWith } from '../compare/pinned.ts';
import { Button } from '../parts/button.tsx';
import type { World } from '../world.ts';
import { addDetail } from './facts.ts';

/** What to do with the product in view: add it to the routine, compare it, keep it. */
export function ListActions({ world, text, facts }: { world: World; text: string; facts: ProductFacts }) {
  const { t, remembered } = world;
  const met = { facts, text };
  const kept = findSame(remembered.products, met);
  const pinned = remembered.settings.pinned ?? [];
  const { name } = facts;

  const compare = async () => {
    const { ok } = await world.change({ do: 'set', settings: { pinned: pinsWith(remembered, text, facts) } });
    if (pinned.length > 0) world.go('compare');
    else if (ok) world.say(t('panel.action.compare-now', { name }), true);
  };
  const keep = async () => {
    const { product } = keepMet(
      remembered.products,
      { ...met, now: new Date().toISOString() },
      world.newId(),
    );
    const { ok } = await world.change({ do: 'put', thing: 'products', value: product });
    if (ok) world.say(t('panel.action.kept-now', { name }), true);
  };
  return (
    <div class="actions">
      <Button look="strong" onClick={() => world.go('routine', addDetail(text, facts))}>
        {t('panel.action.add')}
      </Button>
      <Button onClick={compare}>
        {t(pinned.length > 0 ? 'panel.action.compare-here' : 'panel.action.compare')}
      </Button>
      {kept ? (
        <Button look="quiet" onClick={() => world.go('products', kept.id)}>
          {t('panel.action.kept')}
        </Button>
      ) : (
        <Button onClick={keep}>{t('panel.action.keep')}</Button>
      )}
    </div>
  );
}
