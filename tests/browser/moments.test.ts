// The three moments in a real Chromium: browse with a head of hair, add to the routine, compare.
import { afterAll, beforeAll, it } from 'vitest';
import { type Harness, openShop, screens } from './harness.ts';
import { add, browse, compare, keep, type Stage } from './moments.ts';

let shop: Harness;
let stage: Stage;
beforeAll(async () => {
  shop = await openShop();
  const page = await shop.open('/goods/gossamer-leave-in');
  const panel = await shop.panelFor(page);
  await panel.setViewportSize({ width: 420, height: 900 });
  stage = {
    storeUrl: shop.store.url,
    page,
    panel,
    screens: (of, name) =>
      of === 'panel' ? screens(panel, `moment-${name}`, true) : screens(page, `moment-${name}`),
  };
});
afterAll(() => shop.close());

it('browse', () => browse(stage));
it('keep', () => keep(stage));
it('add to the routine', () => add(stage));
it('compare', () => compare(stage));
