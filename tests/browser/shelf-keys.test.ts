// The shortcut that reads a shelf, in the shipped build in real Chromium. A driver's keys end in the page and never
// reach the browser's own shortcuts: the command is handed to its listener in the worker instead. In Firefox the
// browser's own key runs (shelf-firefox.test.ts).
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Harness, openShop, until } from './harness.ts';

let shop: Harness;
beforeAll(async () => {
  shop = await openShop({ build: 'shipped' });
});
afterAll(() => shop.close());

const asked = () => shop.store.requests.filter(({ path }) => /^\/(?:rack\/|robots)/.test(path)).length;
const shortcut = async (page: Page) => {
  await page.bringToFront();
  await (await shop.worker()).evaluate(async () => {
    const [tab] = await chrome.tabs.query({ active: true });
    // The event's own way to its listeners: no type speaks of it.
    (chrome.commands.onCommand as unknown as { dispatch(command: string, tab: unknown): void }).dispatch(
      'read-shelf',
      tab,
    );
  });
};
const isInOurs = (page: Page) => page.evaluate(() => document.activeElement?.matches('html > div') ?? false);

it('each command has the key that is suggested for it', async () => {
  const commands = await (await shop.worker()).evaluate(() => chrome.commands.getAll());
  const keys = commands.flatMap(({ name, shortcut: key }) =>
    name === '_execute_action' ? [] : [[name, key]],
  );
  expect(keys).toEqual([
    ['jump-to-strip', 'Alt+Shift+S'],
    ['read-shelf', 'Alt+Shift+E'],
  ]);
});

it('without leave to read the page nothing is drawn and nobody is asked', async () => {
  const page = await shop.open('/rack?n=4');
  await shortcut(page);
  // Nothing is to come: as long as the listener itself waits for a shelf.
  await page.waitForTimeout(3500);
  expect(await page.locator('html > div').count()).toBe(0);
  expect(asked()).toBe(0);
  await page.close();
});

it('the first time it asks, in the bar, where Enter agrees; from then on it reads', async () => {
  const page = await shop.open('/rack?n=4');
  await shop.press(page); // a key gives the same leave, for this page and this time
  await until(
    () => page.locator('html > div').count(),
    (n) => n > 0,
  );
  await shortcut(page);
  await until(
    () => isInOurs(page),
    (is) => is,
  );
  expect(asked()).toBe(0);
  await page.keyboard.press('Enter');
  await until(
    async () => asked(),
    (n) => n === 1 + 4,
    20_000,
  );
  await page.close();

  const other = await shop.open('/rack?n=8');
  await shop.press(other);
  await until(
    () => other.locator('html > div').count(),
    (n) => n > 0,
  );
  await shortcut(other);
  await until(
    async () => asked(),
    (n) => n > 1 + 4 + 1,
    20_000,
  );
  await other.close();
}, 90_000);
