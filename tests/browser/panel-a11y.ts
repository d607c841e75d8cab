// WCAG 2.2 AA by axe-core: no violation on any view of the built extension, in both schemes.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { type Harness, openShop } from './harness.ts';
import { look, panelBesideProduct, places, seed } from './views.ts';

let shop: Harness;
let panel: Page;
let tab = -1;
beforeAll(async () => {
  shop = await openShop();
  ({ panel, tab } = await panelBesideProduct(shop));
  await panel.setViewportSize({ width: 320, height: 800 });
});
afterAll(() => shop.close());

describe.each(['light', 'dark'] as const)('%s', (colorScheme) => {
  describe.each(['empty', 'many', 'long'] as const)('%s', (state) => {
    beforeAll(async () => {
      await panel.emulateMedia({ colorScheme });
      await seed(panel, state);
    });
    it.each(places)('%s', async (place) => {
      await look(shop, panel, place, state === 'empty' ? -1 : tab);
      expect(await violations(panel)).toEqual([]);
    });
  });
  it('welcome', async () => {
    await seed(panel, 'empty');
    await panel.goto(`chrome-extension://${shop.id}/welcome.html`);
    await panel.waitForSelector('.painted');
    expect(await violations(panel)).toEqual([]);
  });
});

it('axe would have found a fault', async () => {
  await look(shop, panel, 'page');
  await panel.evaluate(() => {
    document.querySelector('main')!.append(document.createElement('button'));
  });
  expect(await violations(panel)).toEqual([expect.stringContaining('button-name')]);
});
