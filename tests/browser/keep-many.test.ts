// 500 products in the built panel: scrolling and searching without a task above 50 ms of processor time. The figures are printed.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Change } from '../../src/store/remembered.ts';
import { goods } from '../store/goods.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { changeIn } from './views.ts';

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

type Traced = { name: string; ph: string; pid: number; tid: number; tdur?: number; args?: { name?: string } };

/**
 * The longest task of any page's main thread while something is done, in milliseconds of processor time: what
 * other programs on a shared machine take is not counted.
 */
async function longestTask(page: Page, job: () => Promise<void>): Promise<number> {
  const session = await shop.context.browser()!.newBrowserCDPSession();
  const events: Traced[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as Traced[])));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', '__metadata'] },
  });
  await job();
  await page.waitForTimeout(300);
  const complete = new Promise((done) => session.once('Tracing.tracingComplete', done));
  await session.send('Tracing.end');
  await complete;
  await session.detach();
  const mains = new Set(
    events
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid}:${tid}`),
  );
  const tasks = events.filter(
    ({ name, pid, tid }) => name === 'ThreadControllerImpl::RunTask' && mains.has(`${pid}:${tid}`),
  );
  expect(tasks.length).toBeGreaterThan(20);
  return Math.round(Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 100) / 10;
}

it('500 products scroll and search without a task above 50 ms', async () => {
  await changeIn(panel, many);
  await panel.click('#tab-products');
  await until(
    async () => panel.locator('.product').count(),
    (count) => count > 0,
  );
  await panel.waitForTimeout(1500);
  const scrolling = await longestTask(panel, async () => {
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
  const searching = await longestTask(panel, async () => {
    await search.fill('');
    await search.pressSequentially('isinglass 21', { delay: 60 });
  });
  await expect.poll(() => panel.locator('.product-name').first().textContent()).toContain('Isinglass');
  console.log(
    `500 products: longest task scrolling ${scrolling} ms, searching ${searching} ms of processor time`,
  );
  expect(scrolling).toBeLessThanOrEqual(50);
  expect(searching).toBeLessThanOrEqual(50);
});
