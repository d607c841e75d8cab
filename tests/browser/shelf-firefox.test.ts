// A shelf of the invented shop in a real Firefox: read in one press, with the same manners as in Chromium.
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findFirefox } from '../run/browsers.ts';
import { type Store, serveStore } from '../store/serve.ts';
import { openFirefox } from './firefox.ts';
import { until } from './harness.ts';
import { type Driven, pressOurs, shelfBar, shelfBarSays, shelfMarks } from './shelf-bar.ts';

// Puppeteer's page evaluates and clicks likewise; its type says the same in other words.
const drives = (page: Page) => page as unknown as Driven;

const barSays = (page: Page, wanted: RegExp, ms?: number) => shelfBarSays(drives(page), wanted, ms);

describe.skipIf(!findFirefox())('a shelf in Firefox', () => {
  let store: Store;
  let firefox: Awaited<ReturnType<typeof openFirefox>>;
  beforeAll(async () => {
    store = await serveStore();
    firefox = await openFirefox('localhost');
  });
  afterAll(async () => {
    await firefox.close();
    await store.close();
  });
  const toldOfRack = () => store.requests.filter(({ path }) => /^\/(?:rack\/|robots)/.test(path));

  it('is read in one press, with manners, and the page stays as it was', async () => {
    const page = await firefox.open(`${store.url}/rack?n=24`);
    await page.setCookie({ name: 'visitor', value: '1', url: store.url });
    const before = await page.evaluate(() => document.body.outerHTML);
    await barSays(page, /0 of 24/);
    expect(toldOfRack()).toEqual([]);
    await pressOurs(drives(page), '^Unfold$');
    await barSays(page, /Strandline asks this shop, and nobody else/);
    await pressOurs(drives(page), '^Read this shelf \\(24\\)$');
    await barSays(page, /Reading/);
    await barSays(page, /16 of them read(?!.*Reading)/, 60_000);
    await barSays(page, /8 products could not be read/);
    const bar = await shelfBar(drives(page));
    for (const words of [
      /page is gone/,
      /leads away/,
      /larger than 2 MB/,
      /by script/,
      /leave this page alone/,
    ])
      expect(bar).toMatch(words);

    const told = toldOfRack();
    const paths = told.map(({ path }) => path);
    expect(paths[0]).toBe('/robots.txt');
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths).toHaveLength(1 + 23);
    expect(paths).not.toContain('/rack/private/23');
    for (const { cookie, referer } of told) expect([cookie, referer]).toEqual([undefined, undefined]);
    // The distance itself is held by the clock of read-shelf.test.ts: a busy machine hears late.
    expect(told.at(-1)!.at - told[0]!.at).toBeGreaterThan(500 * (told.length - 1) - 300);

    const marks = await until(
      () => shelfMarks(drives(page)),
      (shown) => shown.some(({ read }) => read),
    );
    for (const { label } of marks.filter(({ read }) => read))
      expect(label).toMatch(/Protein: (?:none|a little|some|a lot|cannot tell)\. Moisture: /);
    expect(await page.evaluate(() => document.body.outerHTML)).toBe(before);
    await page.close();
  }, 120_000);

  it('what was read is marked at once; a filter dims, a card opens with its reasons', async () => {
    const asked = toldOfRack().length;
    const page = await firefox.open(`${store.url}/rack?n=24`);
    await barSays(page, /16 of 24/);
    expect(toldOfRack()).toHaveLength(asked);
    await pressOurs(drives(page), '^Unfold$');
    await pressOurs(drives(page), '^no protein \\(');
    const dimmed = () =>
      page.evaluate(
        () =>
          [...document.documentElement.children]
            .flatMap(({ shadowRoot }) => [...(shadowRoot?.querySelectorAll<HTMLElement>('.veil') ?? [])])
            .filter(({ hidden }) => !hidden).length,
      );
    expect(await until(dimmed, (n) => n > 0)).toBeGreaterThan(0);
    const mark = (
      await until(
        () => shelfMarks(drives(page)),
        (all) => all.some(({ read }) => read),
      )
    ).find(({ read }) => read)!;
    await page.mouse.move(mark.left + 8, mark.top + 8);
    await pressOurs(drives(page), '^Keep$');
    const card = () =>
      page.evaluate(() =>
        [...document.documentElement.children]
          .flatMap(({ shadowRoot }) => [
            ...(shadowRoot?.querySelectorAll<HTMLElement>('.shelf-card [data-t]') ?? []),
          ])
          .map(({ dataset }) => dataset.t)
          .join(' '),
      );
    expect(await until(card, (words) => /Undo/.test(words))).toMatch(/Label read on.*Undo/);
    await page.close();
  }, 60_000);
});

describe.skipIf(!findFirefox())('the shortcut in Firefox, on a shop that was not allowed', () => {
  let store: Store;
  let firefox: Awaited<ReturnType<typeof openFirefox>>;
  beforeAll(async () => {
    store = await serveStore();
    firefox = await openFirefox('shipped');
  });
  afterAll(async () => {
    await firefox.close();
    await store.close();
  });
  const asked = () => store.requests.filter(({ path }) => /^\/(?:rack\/|robots)/.test(path)).length;

  it('asks once, in the bar; from then on it reads', async () => {
    const page = await firefox.open(`${store.url}/rack?n=4`);
    expect(await page.$('html > div')).toBeNull();
    await firefox.shortcut(page, 'E');
    // What we draw is closed to the page here: that the focus is in it is all that can be seen.
    const isInOurs = () => page.evaluate(() => document.activeElement?.matches('html > div') ?? false);
    await until(isInOurs, (is) => is, 20_000);
    expect(asked()).toBe(0);
    await page.keyboard.press('Enter');
    await until(
      async () => asked(),
      (n) => n === 1 + 4,
      20_000,
    );
    await page.close();
    const other = await firefox.open(`${store.url}/rack?n=8`);
    await firefox.shortcut(other, 'E');
    await until(
      async () => asked(),
      (n) => n > 1 + 4 + 1,
      20_000,
    );
    await other.close();
  }, 90_000);
});
