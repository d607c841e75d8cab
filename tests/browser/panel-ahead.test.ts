// A panel that opens while its background says nothing: it draws by what was left for it, where that is as new as the
// store, and by nothing else.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { aheadIn, aheadKeys } from '../../src/use/left-ahead.ts';
import { type Harness, openShop, until } from './harness.ts';
import { panelBesideProduct, rememberedIn, seed } from './views.ts';

let shop: Harness;
let [panel, tab]: [Page, number] = [undefined as never, 0];
beforeAll(async () => {
  shop = await openShop();
  ({ panel, tab } = await panelBesideProduct(shop));
  await seed(panel, 'many');
});
afterAll(() => shop.close());

/** What stands in storage.session for a panel that opens now. */
const left = async () => {
  const [session, written] = await panel.evaluate(
    async (keys) => [
      await chrome.storage.session.get(keys),
      (await chrome.storage.local.get('written')).written,
    ],
    aheadKeys,
  );
  return aheadIn(session as Record<string, unknown>, written);
};

/** The panel as a whole page whose questions to the background are never answered. */
async function openUnanswered(): Promise<Page> {
  const page = await shop.context.newPage();
  await page.addInitScript(() => {
    chrome.runtime.sendMessage = (() => new Promise(() => {})) as never;
  });
  await page.goto(`chrome-extension://${shop.id}/sidepanel.html?tab=${tab}#page`);
  return page;
}

it('what is remembered and the label in view are left, and drawn without an answer', async () => {
  const { remembered } = await until(left, (now) => now.remembered !== undefined && now.readings.length > 0);
  expect(remembered).toEqual(await rememberedIn(panel));
  const page = await openUnanswered();
  await page.waitForSelector('.sums');
  expect(await page.locator('.sums').textContent()).toBe(
    await panel.goto(`chrome-extension://${shop.id}/sidepanel.html?tab=${tab}#page`).then(async () => {
      await panel.waitForSelector('.sums');
      return panel.locator('.sums').textContent();
    }),
  );
  await page.close();
});

it('what is older than the store is not drawn', async () => {
  await until(left, (now) => now.remembered !== undefined);
  await panel.evaluate(async (key) => {
    const { [key]: kept } = (await chrome.storage.session.get(key)) as { [key: string]: object };
    await chrome.storage.session.set({ [key]: { ...kept, written: 'another' } });
  }, aheadKeys[0]!);
  const page = await openUnanswered();
  await page.waitForTimeout(1000); // nothing is to come; what is drawn stood there above long before
  expect(await page.locator('main').count()).toBe(0);
  await page.close();
});

it('nothing is left of what was forgotten', async () => {
  await panel.goto(`chrome-extension://${shop.id}/sidepanel.html?tab=${tab}#page`);
  await panel.evaluate(() => chrome.runtime.sendMessage({ strandline: 'forget', request: null }));
  await panel.waitForTimeout(1000); // longer than what is new waits to be left
  const { remembered, readings } = await left();
  expect([remembered?.products.length ?? 0, JSON.stringify(readings).includes('Keratin')]).toEqual([
    0,
    false,
  ]);
});
