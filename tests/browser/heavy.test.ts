// Pages that would hold us, and so the page, up: bounded, silent or read, and the page stays answerable.
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Harness, openShop, until } from './harness.ts';
import { heavyPages, serveHeavy } from './heavy-pages.ts';

let shop: Harness;
let heavy: Awaited<ReturnType<typeof serveHeavy>>;
beforeAll(async () => {
  shop = await openShop();
  heavy = await serveHeavy();
});
afterAll(async () => {
  await shop.close();
  await heavy.close();
});

it.each(Object.entries(heavyPages))('%s', async (name, [, badge]) => {
  const tab = await shop.context.newPage();
  await tab.goto(heavy.url(name));
  if (badge !== 'any') expect(await shop.badgeBecomes(tab, badge, 20_000)).toBe(badge);
  else await tab.waitForTimeout(2500);
  // Neither the page nor the background is held up: both answer, and another page is read meanwhile.
  const from = performance.now();
  expect(await tab.evaluate(() => 1 + 1)).toBe(2);
  await shop.remembered();
  expect(performance.now() - from).toBeLessThan(3000);
  const other = await shop.open('/goods/gossamer-leave-in');
  expect(
    await until(
      () => shop.badge(other),
      (text) => text === '3',
      15_000,
    ),
  ).toBe('3');
  await other.close();
  await tab.close();
});
