// Pages that talk of ingredients and carry no list of a cosmetic product: nothing may show.
import { afterAll, beforeAll, expect, it } from 'vitest';
import { silentPages } from '../store/silent.ts';
import { type Harness, openShop } from './harness.ts';

let shop: Harness;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

// `/` is itself a shelf of products: what offers to read it stands there, and marks that say nothing was read.
const bars: Record<string, number> = { '/': 1 };

it.each(['/', '/shelf', ...Object.keys(silentPages)])('%s stays silent', async (path) => {
  const page = await shop.open(path);
  // A page that is read shows its strip within this time (structures.test.ts waits for far less).
  await page.waitForTimeout(700);
  expect(await shop.badge(page)).toBe('');
  await expect.poll(() => page.locator('[data-strandline]').count()).toBe(bars[path] ?? 0);
  expect(await page.locator('[data-strandline] :is(.strip, .name, .mark:not(.unread))').count()).toBe(0);
  expect(await page.evaluate(() => CSS.highlights.size)).toBe(0);
  await page.close();
});
