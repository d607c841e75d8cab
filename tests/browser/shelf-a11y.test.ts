// Bar, marks and card of a shelf in real Chromium: WCAG 2.2 AA by axe-core in both schemes, by the keyboard alone,
// and at 320 px, where nothing that the page keeps in view is covered.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { violationsOfOurs } from './axe.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { type Driven, pressOurs, shelfBar, shelfMarks } from './shelf-bar.ts';

let shop: Harness;
let page: Page;
const drives = () => page as unknown as Driven;
const bar = () => shelfBar(drives());
const barSays = async (wanted: RegExp, ms = 40_000) =>
  expect(await until(bar, (words) => wanted.test(words), ms)).toMatch(wanted);

beforeAll(async () => {
  shop = await openShop();
  page = await shop.open('/rack?n=12');
  await barSays(/0 of 12/);
});
afterAll(() => shop.close());

/** In view, and not where the open bar stands. */
const isBesideBar = ({ read, left, top }: { read: boolean; left: number; top: number }) =>
  read && left > 420 && top > 60 && top < 840;

/** What has the focus within ours, and whether it is in the card. */
const focused = () =>
  page.evaluate(() => {
    for (const { shadowRoot } of document.documentElement.children) {
      const at = shadowRoot?.activeElement as HTMLElement | null | undefined;
      if (at)
        return {
          is: at.getAttribute('aria-label') ?? at.getAttribute('title') ?? at.dataset.t ?? at.className,
          within: at.closest('.card') ? 'card' : at.closest('.bar') ? 'bar' : 'marks',
        };
    }
    return { is: '', within: 'page' };
  });
/** Presses a key until the focus is where it is wanted, a bounded number of times. */
async function keyTo(key: string, wanted: RegExp) {
  for (let n = 0; n < 60; n++) {
    await page.keyboard.press(key);
    const now = await focused();
    if (wanted.test(now.is)) return now;
  }
  throw new Error(`${key} never leads to ${wanted}`);
}
const isOpen = () =>
  page.evaluate(() =>
    [...document.documentElement.children].some(
      ({ shadowRoot }) => shadowRoot?.querySelector('.shelf-card')?.matches(':popover-open') ?? false,
    ),
  );

const offersUndo = () =>
  page.evaluate(() =>
    [...document.documentElement.children].some(({ shadowRoot }) =>
      [...(shadowRoot?.querySelectorAll<HTMLElement>('.shelf-card button') ?? [])].some(
        ({ dataset, title }) => [dataset.t, title].includes('Undo'),
      ),
    ),
  );

describe('by the keyboard alone', () => {
  it('the bar is reached, unfolded, read from, stopped and gone on with', async () => {
    await keyTo('Shift+Tab', /^Unfold$/);
    await page.keyboard.press('Enter');
    await barSays(/asks this shop, and nobody else/);
    await expect.poll(async () => (await focused()).is).toBe('Fold');
    await keyTo('Tab', /^Read this shelf/);
    await page.keyboard.press('Enter');
    await barSays(/Reading/);
    // The press gives its place to what ends it, and the keyboard stays there.
    expect(await until(focused, ({ is }) => is === 'Stop')).toEqual({ is: 'Stop', within: 'bar' });
    await barSays(/[2-5] of them read/);
    await page.keyboard.press('Enter');
    await barSays(/Stopped/);
    expect((await until(focused, ({ is }) => /^Go on/.test(is))).is).toMatch(/^Go on/);
    await page.keyboard.press('Enter');
    await barSays(/9 of them read(?!.*Reading)/);
  }, 90_000);

  it('a filter is pressed, and says that it is', async () => {
    await keyTo('Shift+Tab', /^no protein/);
    await page.keyboard.press('Space');
    const pressed = () =>
      page.evaluate(() =>
        [...document.documentElement.children].some(({ shadowRoot }) =>
          shadowRoot?.querySelector('[data-which="protein-free"][aria-pressed="true"]'),
        ),
      );
    expect(await until(pressed, (is) => is)).toBe(true);
    await expect.poll(async () => (await focused()).is).toMatch(/^no protein/);
    await page.keyboard.press('Space');
  });

  it('a mark opens its card, Enter goes in, Tab comes back and on, Escape closes', async () => {
    await page.evaluate(() => scrollTo(0, 0));
    await until(
      () => shelfMarks(drives()),
      (all) => all.length > 2,
    );
    const first = await keyTo('Shift+Tab', /Protein: .*Moisture: /);
    expect(first.within).toBe('marks');
    expect(await until(isOpen, (is) => is)).toBe(true);
    await page.keyboard.press('Enter');
    await expect.poll(focused).toEqual({ is: 'Open', within: 'card' });
    await page.keyboard.press('Shift+Tab');
    await expect.poll(focused).toEqual(first);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await expect.poll(focused).toEqual({ is: 'Keep', within: 'card' });
    await page.keyboard.press('Enter');
    // Tab would leave a card in which it does not stand yet.
    await expect.poll(offersUndo).toBe(true);
    expect(await keyTo('Tab', /^Undo$/)).toEqual({ is: 'Undo', within: 'card' });
    await page.keyboard.press('Tab');
    await expect.poll(async () => (await focused()).within).not.toBe('card');
    await page.keyboard.press('Shift+Tab');
    await keyTo('Shift+Tab', /Protein: .*Moisture: /);
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await focused()).within).toBe('card');
    await page.keyboard.press('Escape');
    expect(await until(isOpen, (is) => !is)).toBe(false);
    await expect.poll(async () => (await focused()).within).toBe('marks');
  });
});

describe.each(['light', 'dark'] as const)('%s', (colorScheme) => {
  beforeEach(async () => {
    await page.emulateMedia({ colorScheme });
    await page.reload();
    await barSays(/of 12/);
  });

  it('axe finds nothing in bar, marks and card', async () => {
    await pressOurs(drives(), '^Unfold$');
    await barSays(/no protein/);
    await pressOurs(drives(), '^no protein');
    const [mark] = (
      await until(
        () => shelfMarks(drives()),
        (all) => all.some(isBesideBar),
      )
    ).filter(isBesideBar);
    await page.mouse.move(mark!.left + 8, mark!.top + 8);
    expect(await until(isOpen, (is) => is)).toBe(true);
    expect(await violationsOfOurs(page)).toEqual([]);
    // And axe does look there.
    await page.evaluate(() => {
      for (const { shadowRoot } of document.documentElement.children)
        shadowRoot?.querySelector('.bar')?.append(document.createElement('button'));
    });
    expect(await violationsOfOurs(page)).toEqual([expect.stringContaining('button-name')]);
  });

  it('at 320 px bar and card stand within the view, cover nothing that the page keeps there, and marks stay on their pictures', async () => {
    await page.setViewportSize({ width: 320, height: 640 });
    // A page that keeps a bar of its own at its foot and a sign at its head.
    await page.addStyleTag({
      content:
        '.sign{position:sticky;top:0;z-index:9;background:#fff}footer{position:fixed;left:0;bottom:0;width:60%;z-index:9;background:#fff}',
    });
    await page.evaluate(() => dispatchEvent(new Event('resize')));
    const boxes = () =>
      page.evaluate(() => {
        const all = [...document.documentElement.children].flatMap(({ shadowRoot }) => shadowRoot ?? []);
        const ours = all.flatMap((root) => [...root.querySelectorAll('.bar, .shelf-card:popover-open')]);
        const kept = [...document.querySelectorAll('.sign, footer')].map((each) =>
          each.getBoundingClientRect(),
        );
        return ours.map((each) => {
          const { left, right, top, bottom } = each.getBoundingClientRect();
          return {
            within: left >= 0 && right <= innerWidth && top >= 0 && bottom <= innerHeight,
            folds: each.scrollWidth <= each.clientWidth,
            covers: kept.filter(
              (its) => its.left < right && its.right > left && its.top < bottom && its.bottom > top,
            ).length,
            height: bottom - top,
          };
        });
      });
    const folded = await until(boxes, ([one]) => one?.covers === 0);
    expect(folded).toEqual([{ within: true, folds: true, covers: 0, height: expect.any(Number) }]);
    expect(folded[0]!.height).toBeLessThan(48);
    await screens(page, `shelf-320-${colorScheme}`);
    const scrolls = await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
    expect(scrolls).toBe(true);
    await pressOurs(drives(), '^Unfold$');
    const open = await until(boxes, ([one]) => (one?.height ?? 0) > 60);
    expect(open[0]).toMatchObject({ within: true, folds: true });
    await screens(page, `shelf-320-open-${colorScheme}`);
    await pressOurs(drives(), '^Fold$');
    await until(boxes, ([one]) => (one?.height ?? 99) < 48);
    const mark = (
      await until(
        () => shelfMarks(drives()),
        (all) => all.some(({ read, top }) => read && top > 60 && top < 400),
      )
    ).find(({ read, top }) => read && top > 60 && top < 400)!;
    await page.mouse.click(mark.left + 8, mark.top + 8);
    const card = await until(boxes, (all) => all.length === 2);
    expect(card).toHaveLength(2);
    for (const each of card) expect(each).toMatchObject({ within: true, folds: true });
    await screens(page, `shelf-320-card-${colorScheme}`);
    await page.setViewportSize({ width: 1200, height: 900 });
  });
});
