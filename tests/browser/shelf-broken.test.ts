// What breaks while a shelf is read, in real Chromium: our worker, the line, the page. What came stays, the rest
// is said in a sentence, and the next press goes on.
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { type Harness, openShop, until } from './harness.ts';
import { type Driven, pressOurs, shelfBar } from './shelf-bar.ts';

let shop: Harness;
let page: Page;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());
beforeEach(async () => {
  await shop.ask('forget-labels', null);
  page = await shop.open('/rack?n=14');
  await barSays(/0 of 14/);
  shop.store.requests.length = 0;
  await press('^Unfold$');
  await press('^Read this shelf \\(14\\)$');
  await barSays(/(?:[3-9]|1\d) of them read/);
});
afterEach(() => page.close());

const press = (words: string) => pressOurs(page as unknown as Driven, words);
const barSays = async (wanted: RegExp, ms = 40_000) =>
  expect(
    await until(
      () => shelfBar(page as unknown as Driven),
      (bar) => wanted.test(bar),
      ms,
    ),
  ).toMatch(wanted);
const pagesAsked = () =>
  shop.store.requests.map(({ path }) => path).filter((path) => path.startsWith('/rack/'));
// Of 14 one is gone, one broken, one leads off-site, one is too large.
const all = /14 products on this page, 10 of them read(?!.*Reading).*4 products could not be read/;

it('the worker killed again and again: it goes on, and no page is asked for twice', async () => {
  await shop.killWorker();
  await barSays(/(?:[6-9]|1\d) of them read/);
  await shop.killWorker();
  await barSays(all);
  expect(new Set(pagesAsked()).size).toBe(14);
  expect(pagesAsked()).toHaveLength(14);
  // What was read before the worker went is still there after it.
  await page.reload();
  await barSays(/10 of 14/);
}, 90_000);

it('the line gone midway: said at once, what came stays, the next press asks for the rest alone', async () => {
  await page.context().setOffline(true);
  await barSays(/There is no connection\. What was read stays; go on when it is back\./);
  const before = new Set(pagesAsked());
  await barSays(/Go on/);
  // The bar says the same before and after this press: in between it reads.
  await press('^Go on');
  await barSays(/Reading/);
  await barSays(/There is no connection/);
  await page.context().setOffline(false);
  await press('^Go on');
  await barSays(all);
  // Those that were on their way when the line went are asked for again, no other.
  const paths = pagesAsked();
  expect(new Set(paths).size).toBe(14);
  expect(paths.length).toBeLessThanOrEqual(14 + 2);
  expect(before.size).toBeLessThan(14);
}, 90_000);

it.each([429, 503])(
  'the shop busy midway (%i): nothing more is asked until it says, and that is said',
  async (status) => {
    shop.store.refuses = { status, headers: { 'retry-after': '3600' } };
    await barSays(/The shop asks for a pause\. Try again after \d/);
    const asked = pagesAsked().length;
    await press('^Go on');
    await barSays(/The shop asks for a pause/);
    shop.store.refuses = undefined;
    await press('^Go on');
    await barSays(/The shop asks for a pause/);
    expect(pagesAsked()).toHaveLength(asked);
    expect(asked).toBeLessThan(14);
  },
  60_000,
);

it('the page closed midway: what came is marked when it is opened again, and a press reads the rest', async () => {
  const read = Number(/(\d+) of them read/.exec(await shelfBar(page as unknown as Driven))?.[1]);
  await page.close();
  page = await shop.open('/rack?n=14');
  await barSays(/(?:[3-9]|1\d) of 14/);
  expect(Number(/(\d+) of 14/.exec(await shelfBar(page as unknown as Driven))?.[1])).toBeGreaterThanOrEqual(
    read,
  );
  await press('^Unfold$');
  await press('^Read this shelf');
  await barSays(all);
  const often = [...Map.groupBy(pagesAsked(), (path) => path)].filter(([, asked]) => asked.length > 1);
  // Only what had no answer yet, or none that stays.
  expect(
    often.map(([path]) => Number(path.split('/').at(-1))).filter((n) => ![3, 6, 9, 12].includes(n)).length,
  ).toBeLessThanOrEqual(2);
}, 90_000);

it('the extension loaded anew midway: nothing goes on pretending to read', async () => {
  await (await shop.worker()).evaluate(() => chrome.runtime.reload()).catch(() => undefined);
  await barSays(/^(?!.*Reading)/);
}, 60_000);
