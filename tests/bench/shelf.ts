// A shelf whose labels are known, in a real Chromium: time until its cards are marked, what that and a step of
// scrolling cost the page's own thread, from press to marks, and what the cache weighs when it is full.
import type { Page } from 'playwright-core';
import { shelfFacts } from '../../dictionary/shelf.ts';
import type { LabelMet } from '../../src/store/remembered.ts';
import { type Harness, openShop, until } from '../browser/harness.ts';
import { type Driven, pressOurs, shelfBar } from '../browser/shelf-bar.ts';
import { goods } from '../store/goods.ts';
import { rackRow } from '../store/rack.ts';
import { median, ms } from './measure.ts';
import { profiled } from './profile.ts';

const { most: mostCards } = shelfFacts.cards;
const { most: mostLabels } = shelfFacts.remembered;
const steps = 60;

/** Labels of the rack's products as the extension keeps them, by its key. */
const labelsOf = (url: string, n: number): Record<string, LabelMet> =>
  Object.fromEntries(
    Array.from({ length: n }, (_, i) => {
      const [good, { link, name }] = [goods[i % goods.length]!, rackRow(i)];
      const address = url + link.split('?')[0];
      const { kind, size, unit, price } = good;
      const product = { name, url: address, kind, size, sizeUnit: unit, price, currency: 'EUR' };
      return [`shelf:${address}`, { address, text: good.list, readOn: new Date(0).toISOString(), product }];
    }),
  );

/** Notes, frame by frame, when the first mark stood on the page and when the last of those in view came. */
const watchMarks = () => {
  const at = { first: 0, last: 0, marks: 0 };
  Object.assign(window, { marksAt: at });
  const look = () => {
    let marks = 0;
    for (const { shadowRoot } of document.documentElement?.children ?? [])
      for (const mark of shadowRoot?.querySelectorAll<HTMLElement>('.mark.read') ?? [])
        if (!mark.hidden) marks++;
    if (marks > at.marks) {
      at.first ||= performance.now();
      at.last = performance.now();
      at.marks = marks;
    }
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
};
type MarksAt = { first: number; last: number; marks: number; ready: number };
const marksAt = (page: Page): Promise<MarksAt> =>
  page.evaluate(() => ({
    ...(window as unknown as { marksAt: MarksAt }).marksAt,
    ready:
      performance
        .getEntriesByType('navigation')
        .map((entry) => (entry as PerformanceNavigationTiming).domContentLoadedEventEnd)[0] ?? 0,
  }));

/** Opens a shelf of so many known cards; waits until the marks in view have stopped coming. */
async function load(shop: Harness, page: Page, n: number): Promise<MarksAt> {
  await page.goto('about:blank');
  await page.goto(`${shop.store.url}/rack?n=${n}`);
  let before = -1;
  return until(
    async () => {
      const now = await marksAt(page);
      await page.waitForTimeout(300);
      return now;
    },
    ({ marks }) => {
      const isSettled = marks > 0 && marks === before;
      before = marks;
      return isSettled;
    },
    60_000,
  );
}

export async function lines(): Promise<string[]> {
  const shop = await openShop();
  const page = await shop.context.newPage();
  await page.addInitScript(watchMarks);
  const said: string[] = [];

  // From the press: nothing is known yet.
  await page.goto(`${shop.store.url}/rack?n=24`);
  await pressOurs(page as unknown as Driven, '^Unfold$');
  await until(
    () => shelfBar(page as unknown as Driven),
    (bar) => /Read this shelf/.test(bar),
  );
  const pressed = await page.evaluate(() => performance.now());
  await pressOurs(page as unknown as Driven, '^Read this shelf');
  await until(
    () => shelfBar(page as unknown as Driven),
    (bar) => /16 of them read(?!.*Reading)/.test(bar),
    60_000,
  );
  const { first } = await marksAt(page);
  const all = (await page.evaluate(() => performance.now())) - pressed;
  said.push(
    `press → first mark ${ms(first - pressed)}, → all 24 answered ${ms(all)} (24 requests half a second apart take 12 s)`,
  );

  const worker = await shop.worker();
  const fill = labelsOf(shop.store.url, mostLabels);
  await worker.evaluate((labels) => chrome.storage.local.set(labels), fill as Record<string, unknown>);
  const bytes = await worker.evaluate(async () => {
    const every = Object.keys(await chrome.storage.local.get(null)).filter((key) => key.startsWith('shelf:'));
    return [every.length, await chrome.storage.local.getBytesInUse(every)] as const;
  });
  said.push(
    `cache at its bound: ${bytes[0]} labels, ${(bytes[1] / 1e6).toFixed(2)} MB of the browser's 10 (at most ${shelfFacts.remembered.letters / 1e6} MB of letters)`,
  );

  const perCard: number[] = [];
  for (const [n, runs] of [
    [24, 5],
    [100, 3],
    [200, 3],
    [1000, 3],
    [2000, 3],
  ] as const) {
    const taken: MarksAt[] = [];
    const spent: number[] = [];
    for (let i = 0; i < runs; i++)
      spent.push((await profiled(page, async () => taken.push(await load(shop, page, n)))).all);
    const known = Math.min(n, mostCards);
    const main = median(spent);
    perCard.push(known / main);
    said.push(
      `${n} cards${n > mostCards ? ` (the first ${mostCards} are taken)` : ''}: page ready → first mark ${ms(median(taken.map((at) => at.first - at.ready)))}, → all ${taken[0]!.marks} in and near the view ${ms(median(taken.map((at) => at.last - at.ready)))}; ${ms(main)} of main-thread time, ${(known / main).toFixed(1)} cards found and painted a millisecond`,
    );
    const scroll = await profiled(page, () =>
      page.evaluate(async (count) => {
        for (let i = 1; i <= count; i++) {
          scrollTo(0, i * 120);
          await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
        }
      }, steps),
    );
    said.push(
      `  a step of scrolling: ${ms(scroll.all / steps)} of main-thread time, longest ${ms(scroll.longest)} (aim 50)`,
    );
  }
  await shop.close();
  return said;
}
