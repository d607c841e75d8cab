// Shelves that a shop's own script builds, in real Chromium: nodes used again, no end, other shelves by route.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Harness, openShop, until } from './harness.ts';
import { type Driven, pressOurs, shelfBar, shelfBarSays, shelfMarks } from './shelf-bar.ts';

let shop: Harness;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

const drives = (page: Page) => page as unknown as Driven;
const barSays = (page: Page, wanted: RegExp, ms?: number) => shelfBarSays(drives(page), wanted, ms);
/** The product each mark in view names, and the one whose card it stands on, as painted now. */
const pairs = (page: Page): Promise<[string, string | undefined][]> =>
  page.evaluate(() =>
    [...document.documentElement.children]
      .flatMap(({ shadowRoot }) => [...(shadowRoot?.querySelectorAll<HTMLElement>('.mark.read') ?? [])])
      .filter(({ hidden }) => !hidden)
      .map((mark) => {
        const { left, right, top, bottom } = mark.getBoundingClientRect();
        const under = [...document.querySelectorAll('.card')].find((card) => {
          const box = card.querySelector('img')!.getBoundingClientRect();
          return left >= box.left && right <= box.right && top >= box.top && bottom <= box.bottom;
        });
        const name = mark.getAttribute('aria-label')!.split(/[:.]/)[0]!;
        return [name, under?.querySelector('b')?.textContent ?? undefined];
      }),
  );
const wrongOf = (all: [string, string | undefined][]) => all.filter(([mark, card]) => mark !== card);
const bodyOf = (page: Page) => page.evaluate(() => document.body.outerHTML);

describe('a virtual grid', () => {
  it('is read and marked by what its nodes show now; no mark ever stands on another product', async () => {
    const page = await shop.open('/grids/virtual?n=120');
    await barSays(page, /0 of 24/);
    const before = await bodyOf(page);
    await pressOurs(drives(page), '^Unfold$');
    await pressOurs(drives(page), '^Read this shelf');
    await barSays(page, /[4-9] of them read/);
    // Its nodes are handed on while their pages are on their way.
    await page.evaluate(() => scrollTo(0, 2600));
    await barSays(page, /\b0 of them read/);
    await shop.ask('labels-met', null);
    await page.bringToFront(); // asking opened a tab: a page behind another is held to a step a second
    await until(
      () => shop.ask('labels-met', null),
      (n) => n >= 24,
      60_000,
    );
    expect(await shop.ask('labels-met', null)).toBe(24);
    const paths = shop.store.requests.map(({ path }) => path).filter((path) => path.startsWith('/rack/'));
    expect(new Set(paths).size).toBe(24);
    expect(paths).toHaveLength(24);

    await page.evaluate(() => scrollTo(0, 0));
    await barSays(page, /24 of them read/);
    expect(await bodyOf(page)).toBe(before);
    const seen: string[] = [];
    for (const to of [...Array(30).keys()].map((n) => n * 130)) {
      await page.evaluate(async (y) => {
        scrollTo(0, y);
        await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
      }, to);
      const now = await pairs(page);
      seen.push(...now.map(([mark]) => mark));
      expect(wrongOf(now)).toEqual([]);
    }
    expect(new Set(seen).size).toBeGreaterThan(12);
    // Where it comes to rest, all that was read is marked.
    await page.evaluate(() => scrollTo(0, 0));
    const rest = await until(
      () => pairs(page),
      (all) => all.length >= 8,
    );
    expect(rest.length).toBeGreaterThanOrEqual(8);
    expect(wrongOf(rest)).toEqual([]);
    await page.close();
  }, 120_000);
});

describe('a grid without an end', () => {
  it('is counted and marked as it grows', async () => {
    const page = await shop.open('/grids/endless?n=96');
    await barSays(page, /24 of 24/);
    for (const n of [48, 72, 96]) {
      await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
      await barSays(page, new RegExp(`24 of ${n}`));
    }
    await page.evaluate(() => scrollTo(0, 0));
    const all = await until(
      () => pairs(page),
      (now) => now.length > 3,
    );
    expect(all.length).toBeGreaterThan(3);
    expect(wrongOf(all)).toEqual([]);
    await page.close();
  });
});

describe('rooms by route', () => {
  const go = (page: Page, to: string) => page.click(`[data-door][href="/rooms/${to}"]`);
  const rackAsked = () => shop.store.requests.filter(({ path }) => path.startsWith('/rack/')).length;

  it('a shelf that comes late by route is found, left and found again; the panel follows', async () => {
    const page = await shop.open('/rooms/hall');
    await page.waitForSelector('#room p');
    expect(await shelfBar(drives(page))).toBe('');
    await go(page, 'creams');
    await barSays(page, /0 of 12/);
    const tab = await shop.tabOf(page);
    const names = async () => (await shop.ask('shelf-rows', { tab }))?.map(({ name }) => name) ?? [];
    const creams = await names();
    expect(creams).toHaveLength(12);
    expect(await shop.keptOf(tab)).toMatchObject({ url: page.url(), shelf: true });
    await go(page, 'gels');
    await until(names, (now) => now.length === 12 && now[0] !== creams[0]);
    expect((await names()).filter((name) => creams.includes(name))).toEqual([]);
    const told = await until(
      () => shop.keptOf(tab),
      (now) => now?.url === page.url() && now.shelf === true,
    );
    expect(told).toMatchObject({ url: page.url(), shelf: true });
    await go(page, 'hall');
    expect(
      await until(
        () => shelfBar(drives(page)),
        (bar) => bar === '',
      ),
    ).toBe('');
    await page.goBack();
    await barSays(page, /0 of 12/);
    await page.close();
  });

  it('left midway, nothing more is asked for the shelf before; what came stays', async () => {
    const page = await shop.open('/rooms/creams');
    await barSays(page, /0 of 12/);
    await pressOurs(drives(page), '^Unfold$');
    await pressOurs(drives(page), '^Read this shelf');
    await barSays(page, /[3-9] of them read/);
    await go(page, 'gels');
    await barSays(page, /12 products on this page, 0 of them read(?!.*(?:Reading|Stopped))/);
    const asked = rackAsked();
    await pressOurs(drives(page), '^Read this shelf \\(12\\)$');
    await barSays(page, /12 of them read/, 60_000);
    expect(rackAsked()).toBe(asked + 12);
    await go(page, 'creams');
    await barSays(page, /[3-9] of them read/);
    await pressOurs(drives(page), '^Read this shelf');
    await barSays(page, /12 of them read/, 60_000);
    const marks = await until(
      () => shelfMarks(drives(page)),
      (all) => all.some(({ read }) => read),
    );
    expect(marks.some(({ read }) => read)).toBe(true);
    await page.close();
  }, 120_000);
});
