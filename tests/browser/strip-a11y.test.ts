// Strip, folded and open, and the card of a name in real Chromium: WCAG 2.2 AA by axe-core, in both schemes, in German
// and from right to left.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOfOurs } from './axe.ts';
import { type Harness, openShop, screens } from './harness.ts';
import { openCard } from './name-card.ts';
import { robin } from './seeds.ts';
import { changeIn, seed } from './views.ts';

let shop: Harness;
let panel: Page;
let page: Page;
beforeAll(async () => {
  shop = await openShop();
  panel = await shop.panelPage();
  await seed(panel, 'empty', [
    { do: 'put', thing: 'heads', value: robin },
    { do: 'set', settings: { headInUse: robin.id } },
  ]);
  page = await shop.open('/goods/heavy-weather-mask');
});
afterAll(() => shop.close());

const strip = () => page.locator('.strip');
/** What the strip folds and unfolds with, whatever the language. */
const folding = '.strip [data-does=fold]';
const states = {
  folded: async () => {
    await strip().locator('[aria-expanded]').waitFor();
    if ((await page.getAttribute(folding, 'aria-expanded')) === 'true') await page.click(folding);
    await page.locator(`${folding}[aria-expanded=false]`).waitFor();
  },
  open: async () => {
    await states.folded();
    await page.click(folding);
    await page.locator(`${folding}[aria-expanded=true]`).waitFor();
  },
  'open, with the card of a name': async () => {
    await states.open();
    await openCard(page);
  },
};

describe.each([
  ['en', 'light'],
  ['en', 'dark'],
  ['de', 'light'],
  ['ar-XB', 'light'],
  ['ar-XB', 'dark'],
] as const)('%s, %s', (language, colorScheme) => {
  beforeAll(async () => {
    await changeIn(panel, [{ do: 'set', settings: { language } }]);
    await page.emulateMedia({ colorScheme });
    await page.bringToFront();
  });
  it.each(Object.keys(states) as (keyof typeof states)[])(
    'axe finds nothing in the strip %s',
    async (name) => {
      await page.reload();
      await page.locator(`.strip[lang="${language}"]`).waitFor();
      await states[name]();
      await screens(page, `strip-${language}-${colorScheme}-${name}`);
      expect(await violationsOfOurs(page)).toEqual([]);
    },
  );
});

it('axe would have found a fault there', async () => {
  await page.reload();
  await states.open();
  await strip().evaluate((each) => each.append(document.createElement('button')));
  expect(await violationsOfOurs(page)).toEqual([expect.stringContaining('button-name')]);
});
