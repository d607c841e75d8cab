// A page whose list comes when its accordion is opened, in real Chromium: the panel says so and helps.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Harness, openShop } from './harness.ts';

let shop: Harness;
let page: Page;
let panel: Page;
beforeAll(async () => {
  shop = await openShop();
  page = await shop.open('/');
  await page.evaluate(() => {
    const title = document.createElement('h1');
    title.textContent = 'Kelpmoor Curl Milk 250 ml';
    const button = document.createElement('button');
    button.setAttribute('aria-expanded', 'false');
    button.textContent = 'Full ingredients';
    const list = document.createElement('div');
    button.onclick = () => {
      button.setAttribute('aria-expanded', 'true');
      list.textContent =
        'Aqua, Cetearyl Alcohol, Behentrimonium Chloride, Glycerin, Hydrolyzed Silk, Parfum, Phenoxyethanol';
    };
    document.body.replaceChildren(title, button, list);
  });
  panel = await shop.panelFor(page);
});
afterAll(() => shop.close());

it('says that nothing is found, names the closed part and offers every other way', async () => {
  await panel.getByText('No ingredient list here yet').waitFor();
  await panel.getByText('A closed part of this page is called “Full ingredients”.').waitFor();
  const words = () => panel.locator('body').textContent();
  for (const way of ['Point at the list', 'Read this as an ingredient list', 'Read a picture of a list'])
    await expect.poll(words).toContain(way);
  await expect.poll(words).toMatch(/paste/i);
});

it('reads the list when that part is opened', async () => {
  await page.bringToFront();
  await page.getByText('Full ingredients').click();
  await panel.getByText('No ingredient list here yet').waitFor({ state: 'detached' });
  await expect.poll(() => panel.locator('body').textContent()).toContain('Hydrolyzed Silk');
});
