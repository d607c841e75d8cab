// Heap of a tab through a thousand client-side navigations, with the extension and without.
import type { BrowserContext } from 'playwright-core';
import { openShop } from '../browser/harness.ts';
import { benchPage, fortyNames } from './bench-page.ts';
import { serveBench } from './page.ts';

const navigations = 1000;

/** @param rest ms on each page: as long as it takes to be read */
async function heaps(context: BrowserContext, url: string, rest: number): Promise<number[]> {
  const page = await context.newPage();
  await page.goto(url);
  await page.waitForTimeout(800);
  const session = await context.newCDPSession(page);
  const heap = async () => {
    await page.evaluate(() => performance.clearMarks()); // only test builds leave any
    await session.send('HeapProfiler.collectGarbage');
    await session.send('HeapProfiler.collectGarbage');
    return ((await session.send('Runtime.getHeapUsage')) as { usedSize: number }).usedSize / 1e6;
  };
  const taken: number[] = [];
  for (let i = 0; i <= navigations; i++) {
    await page.evaluate(
      ([nth, label]) => {
        history.pushState({}, '', `?at=${nth}`);
        const list = document.querySelector('.list')!;
        const fresh = list.cloneNode() as Element;
        fresh.textContent = nth % 4 === 3 ? 'No list on this page.' : `${label}, Route${nth}`;
        list.replaceWith(fresh);
      },
      [i, fortyNames] as const,
    );
    await page.waitForTimeout(rest);
    if (i % (navigations / 5) === 0) taken.push(await heap());
  }
  await page.close();
  return taken;
}

export async function lines(): Promise<string[]> {
  const shop = await openShop();
  const bench = await serveBench();
  const ours = await heaps(shop.context, bench.url(3000), 220);
  const plain = await shop.context.browser()!.newContext();
  const theirs = await heaps(plain, bench.url(3000), 20);
  await plain.close();
  await bench.close();
  await shop.close();
  const shown = (values: number[]) => values.map((value) => value.toFixed(1)).join(' · ');
  return [
    `heap in MB at 0, ${navigations / 5} … ${navigations} client-side navigations: ${shown(ours)} with, ${shown(theirs)} without: ${(ours.at(-1)! - theirs.at(-1)!).toFixed(1)} MB ours (aim 3)`,
    `each of these pages has ${benchPage(3000).length} letters of HTML`,
  ];
}
