// The reader's own help in a real Chromium: a selection read as a list, an element picked and remembered, a text
// that is no list, a site that is paused.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { serveBarePages } from './bare-pages.ts';
import { type Harness, openShop, painted, proteinLetters, screens, until } from './harness.ts';
import { type AnyPage, act } from './moments.ts';
import { asks, rememberedIn } from './views.ts';

let shop: Harness;
let bare: Awaited<ReturnType<typeof serveBarePages>>;
beforeAll(async () => {
  [shop, bare] = [await openShop({ width: 1000 }), await serveBarePages()];
});
afterAll(async () => {
  await bare.close();
  await shop.close();
});

/** Sends what a menu of the browser would, once the reader is there: the browser's own menus cannot be pressed. */
const send = async (page: Page, message: unknown) => {
  const worker = await shop.worker();
  const sent = () =>
    worker.evaluate(
      async ([url, sent]) => {
        const tab = (await chrome.tabs.query({})).find((each) => each.url === url);
        return chrome.tabs.sendMessage(tab!.id!, sent).catch(() => undefined);
      },
      [page.url(), message] as const,
    );
  expect(await until(sent, (answer) => answer !== undefined)).toMatchObject({ ok: true });
};

/** The reader has looked at the page, and waits for it to stir. */
const looked = (page: Page) =>
  page.waitForFunction(() => performance.getEntriesByName('strandline begin').length > 0);

const press = (page: Page, word: string) => act(page as unknown as AnyPage, `^${word}`);

it('selected letters are read as a list, whatever they are', async () => {
  const page = await shop.context.newPage();
  await page.goto(bare.url('prose'));
  await looked(page);
  expect((await painted(page)).strip).toBe('');
  await page.evaluate(() => getSelection()!.selectAllChildren(document.querySelector('.words')!));
  await send(page, {
    strandline: 'read-selection',
    request: { text: 'ignored where the page has the letters' },
  });
  const { lines, strip } = await until(
    () => painted(page),
    (now) => /1 protein, small/.test(now.strip),
  );
  expect(strip).toMatch(/1 protein, small/);
  expect(lines.small).toEqual(['Hydrolyzed Silk']);
  expect(await shop.badgeBecomes(page, '1')).toBe('1');
  await page.close();
});

it('two million selected letters are refused with a sentence', async () => {
  const page = await shop.context.newPage();
  await page.goto(bare.url('prose'));
  await looked(page);
  await page.evaluate(() => {
    document.querySelector('.words')!.textContent = 'Glycerin, Aqua, '.repeat(125_000);
    getSelection()!.selectAllChildren(document.querySelector('.words')!);
  });
  await send(page, { strandline: 'read-selection', request: { text: '' } });
  const { strip } = await until(
    () => painted(page),
    (now) => /too long/.test(now.strip),
    15_000,
  );
  expect(strip).toMatch(/too long to be one ingredient list/);
  await page.close();
});

it('an element is picked by keyboard, read, and remembered for the site', async () => {
  const page = await shop.context.newPage();
  await page.goto(bare.url('prose'));
  await looked(page);
  const panel = await shop.panelPage();
  const tab = await panel.evaluate(
    async (url) => (await chrome.tabs.query({})).find((each) => each.url === url)!.id!,
    page.url(),
  );
  await panel.evaluate(
    (id) => chrome.runtime.sendMessage({ strandline: 'pick-list', request: { tab: id } }),
    tab,
  );
  await panel.close();
  await page.bringToFront();
  await page.mouse.move(60, 300);
  await page.hover('.words');
  await screens(page, 'paint-pick');
  await page.keyboard.press('Enter');
  const { lines } = await until(
    () => painted(page),
    (now) => now.strip !== '',
  );
  expect(lines.small).toEqual(['Hydrolyzed Silk']);
  await page.goto(bare.url('prose?again'));
  expect(
    (
      await until(
        () => painted(page),
        (now) => now.strip !== '',
      )
    ).lines.small,
  ).toEqual(['Hydrolyzed Silk']);
  await page.close();
});

it('“not a list” is remembered, “pause this site” undoes everything until it is resumed', async () => {
  const page = await shop.context.newPage();
  await page.goto(bare.url('bare'));
  expect(await shop.badgeBecomes(page, '0')).toBe('0');
  await press(page, 'Not an ingredient list');
  expect(
    (
      await until(
        () => painted(page),
        (now) => now.strip === '',
      )
    ).lines,
  ).toEqual({});
  expect(await shop.badgeBecomes(page, '')).toBe('');
  await page.goto(bare.url('upper'));
  expect(await shop.badgeBecomes(page, '4')).toBe('4');
  await press(page, 'Pause this site');
  expect(
    (
      await until(
        () => painted(page),
        (now) => now.strip === '',
      )
    ).lines,
  ).toEqual({});
  await page.reload();
  await page.waitForTimeout(500);
  expect(proteinLetters(await painted(page))).toEqual([]);
  const panel = await shop.panelPage();
  await asks(panel, 'act', { act: { act: 'resume', url: page.url() }, id: 'resumed' });
  await panel.close();
  expect(await shop.badgeBecomes(page, '4')).toBe('4');
  await page.close();
});

it('a kept product is kept once', async () => {
  const page = await shop.context.newPage();
  await page.goto(bare.url('dark'));
  expect(await shop.badgeBecomes(page, '4')).toBe('4');
  await press(page, 'Keep product');
  const kept = async () => {
    const panel = await shop.panelPage();
    const { products } = await rememberedIn(panel);
    await panel.close();
    return products.map(({ name, labels }) => `${name} ${labels.length}`);
  };
  expect(await until(kept, (names) => names.length > 0)).toEqual(['Dark 1']);
  await page.bringToFront();
  // The strip says so and offers it no more.
  const offered = () => page.locator('[data-strandline] button[data-does=keep]').count();
  expect(await until(offered, (n) => n === 0)).toBe(0);
  await page.close();
});
