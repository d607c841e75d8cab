// A shelf of the invented shop, read in one press, in real Chromium: manners by the server's own log.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { faults } from '../store/rack.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { pressOurs } from './shelf-bar.ts';

let shop: Harness;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

type Seen = {
  bar: string;
  marks: { label: string; className: string; left: number; top: number }[];
  card: string;
};

/** What our own elements show on a page. */
const seen = (page: Page): Promise<Seen> =>
  page.evaluate(() => {
    const roots = [...document.documentElement.children].flatMap(({ shadowRoot }) => shadowRoot ?? []);
    const root = roots.find((each) => each.querySelector('.bar'));
    const words = (of: Element | null | undefined) =>
      [...(of?.querySelectorAll<HTMLElement>('[data-t]') ?? [])].map(({ dataset }) => dataset.t).join(' ');
    return {
      bar: words(root?.querySelector('.bar')),
      card: words(root?.querySelector('.card')),
      marks: [...(root?.querySelectorAll<HTMLElement>('.mark') ?? [])]
        .filter(({ hidden }) => !hidden)
        .map((mark) => {
          const { left, top } = mark.getBoundingClientRect();
          return { label: mark.getAttribute('aria-label') ?? '', className: mark.className, left, top };
        }),
    };
  });

const barSays = async (page: Page, wanted: RegExp, ms = 30_000) =>
  expect(
    (
      await until(
        () => seen(page),
        ({ bar }) => wanted.test(bar),
        ms,
      )
    ).bar,
  ).toMatch(wanted);
const toldOfRack = () => shop.store.requests.filter(({ path }) => /^\/(?:rack\/|robots)/.test(path));

describe('a shelf', () => {
  it('is read in one press, with manners: nothing before it, faults said, marks by the pictures, the page untouched', async () => {
    const page = await shop.open('/rack?n=24');
    await page.context().addCookies([{ name: 'visitor', value: '1', url: shop.store.url }]);
    const before = await page.evaluate(() => document.body.outerHTML);
    await barSays(page, /0 of 24/);
    expect(toldOfRack()).toEqual([]);
    await pressOurs(page, '^Unfold$');
    await barSays(page, /Strandline asks this shop, and nobody else/);
    await screens(page, 'shelf-first');
    await pressOurs(page, '^Read this shelf \\(24\\)$');
    await barSays(page, /Reading/);
    await barSays(page, /16 of them read/, 60_000);
    await until(
      () => seen(page),
      ({ bar }) => !/Reading/.test(bar),
    );
    await screens(page, 'shelf-read');

    const told = toldOfRack();
    expect(told[0]!.path).toBe('/robots.txt');
    const paths = told.map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths).not.toContain('/rack/private/23');
    expect(paths).toHaveLength(1 + 23);
    for (const { cookie, referer } of told) expect([cookie, referer]).toEqual([undefined, undefined]);
    // The distance itself is held by the clock of read-shelf.test.ts: a busy machine hears late.
    expect(told.at(-1)!.at - told[0]!.at).toBeGreaterThan(500 * (told.length - 1) - 300);

    const { marks } = await until(
      () => seen(page),
      (shown) => shown.marks.filter(({ className }) => /\bread\b/.test(className)).length > 3,
    );
    for (const { label } of marks.filter(({ className }) => /\bread\b/.test(className)))
      expect(label).toMatch(/Protein: (?:none|a little|some|a lot|cannot tell)\. Moisture: /);
    expect(await page.evaluate(() => document.body.outerHTML)).toBe(before);
    await page.close();
  });

  it('what was read before is marked at once, without a request', async () => {
    const asked = toldOfRack().length;
    const page = await shop.open('/rack?n=24');
    await barSays(page, /16 of 24/);
    // Marks come with the look after the bar's.
    const { marks } = await until(
      () => seen(page),
      (shown) => shown.marks.length > 3,
    );
    expect(marks.length).toBeGreaterThan(3);
    expect(toldOfRack()).toHaveLength(asked);
    await page.close();
  });

  it('says why a product could not be read, and is right after sorting and after 200 more have come', async () => {
    const page = await shop.open('/rack?n=24');
    await barSays(page, /16 of 24/);
    const { marks: unsorted } = await until(
      () => seen(page),
      (shown) => shown.marks.length > 3,
    );
    const first = unsorted.map(({ label }) => label.split(/[:.]/)[0]);
    await page.click('#sort');
    await until(
      () => seen(page),
      ({ marks }) => marks.length > 3 && marks[0]!.label.split(/[:.]/)[0] !== first[0],
    );
    await page.click('#more');
    await barSays(page, /16 of 224/);
    // Each mark stands on the picture of the card that names its product.
    const marked = () =>
      page.evaluate(() => {
        const roots = [...document.documentElement.children].flatMap(({ shadowRoot }) => shadowRoot ?? []);
        const marks = roots
          .flatMap((root) => [...root.querySelectorAll<HTMLElement>('.mark.read')])
          .filter(({ hidden }) => !hidden);
        return marks.map((mark) => {
          const at = mark.getBoundingClientRect();
          const cards = [...document.querySelectorAll('.card')];
          const under = cards.find((card) => {
            const box = card.querySelector('img')!.getBoundingClientRect();
            return (
              at.left >= box.left && at.right <= box.right && at.top >= box.top && at.bottom <= box.bottom
            );
          });
          return [mark.getAttribute('aria-label')!.split(/[:.]/)[0], under?.querySelector('b')?.textContent];
        });
      });
    const right = await until(marked, (all) => all.length > 0);
    for (const [label, name] of right) expect(label).toBe(name);
    await page.close();
  });

  it('cancelled midway keeps what came, and goes on', async () => {
    const page = await shop.open('/rack?n=48');
    await barSays(page, /16 of 48/);
    await pressOurs(page, '^Unfold$');
    await pressOurs(page, '^Read this shelf');
    await barSays(page, /(?:1[89]|[2-4]\d) of them read/);
    const asking = toldOfRack().length;
    // A finger that stays down while pages come, each of which draws the bar anew.
    await pressOurs(page, '^Stop$', () =>
      until(
        async () => toldOfRack().length,
        (n) => n > asking + 2,
      ),
    );
    await barSays(page, /Stopped/);
    const asked = toldOfRack().length;
    await pressOurs(page, '^Go on');
    await barSays(page, /(?:2[3-9]|[34]\d) of them read/);
    const paths = toldOfRack()
      .slice(asked)
      .map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
    await page.close();
  });

  it('dims what does not pass a filter, and opens a card with its reasons', async () => {
    const page = await shop.open('/rack?n=24');
    await barSays(page, /of 24/);
    await pressOurs(page, '^Unfold$');
    await pressOurs(page, '^no protein \\(');
    const dimmed = () =>
      page.evaluate(
        () =>
          [...document.documentElement.children]
            .flatMap(({ shadowRoot }) => [...(shadowRoot?.querySelectorAll<HTMLElement>('.veil') ?? [])])
            .filter(({ hidden }) => !hidden).length,
      );
    expect(await until(dimmed, (n) => n > 0)).toBeGreaterThan(0);
    await screens(page, 'shelf-filter');
    const isRead = ({ className }: { className: string }) => /\bread\b/.test(className);
    const mark = (
      await until(
        () => seen(page),
        (shown) => shown.marks.some(isRead),
      )
    ).marks.find(isRead)!;
    await page.mouse.move(mark.left + 8, mark.top + 8);
    expect(
      (
        await until(
          () => seen(page),
          ({ card }) => card !== '',
        )
      ).card,
    ).toContain('Label read on');
    await screens(page, 'shelf-card');
    await pressOurs(page, '^Keep$');
    expect(
      (
        await until(
          () => seen(page),
          ({ card }) => /Undo/.test(card),
        )
      ).card,
    ).toMatch(/Undo/);
    await page.close();
  });

  it('500 cards scroll without a task of ours above 50 ms', async () => {
    const page = await shop.open('/rack?n=500');
    await barSays(page, /of 500/);
    // By the clock of the page's own thread: a busy machine makes it wait, not work.
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable', { timeDomain: 'threadTicks' });
    const worked = async () => {
      const { metrics } = await session.send('Performance.getMetrics');
      return 1000 * metrics.find(({ name }) => name === 'TaskDuration')!.value;
    };
    /** The most that any step of a walk down the page costs: one frame with all of its tasks. */
    const scroll = async () => {
      await page.evaluate(() => scrollTo(0, 0));
      let most = 0;
      for (let y = 240; y < 12_000; y += 240) {
        const before = await worked();
        await page.evaluate(async (to) => {
          scrollTo(0, to);
          await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
        }, y);
        most = Math.max(most, (await worked()) - before);
      }
      return most;
    };
    await scroll(); // the page's own pictures come
    // The least of three walks: other programs empty the processor's caches, and it works longer for the same.
    const walks = [await scroll(), await scroll(), await scroll()];
    const most = Math.min(...walks);
    expect(most).toBeGreaterThan(0);
    expect(most).toBeLessThan(50);
    await page.close();
  });

  it('says of each fault what it was', async () => {
    expect(Object.keys(faults)).toHaveLength(8);
    const page = await shop.open('/rack?n=24');
    await barSays(page, /of 24/);
    await pressOurs(page, '^Unfold$');
    await pressOurs(page, '^Read this shelf');
    await barSays(page, /8 products could not be read/, 60_000);
    const { bar } = await seen(page);
    for (const words of [
      /page is gone/,
      /failed to bring/,
      /leads away/,
      /larger than 2 MB/,
      /no ingredient list/,
      /by script/,
      /sign in first/,
      /leave this page alone/,
    ])
      expect(bar).toMatch(words);
    await page.close();
  });

  it('a label read on its product’s own page marks the shelf; forgotten, it does not', async () => {
    await shop.ask('forget-labels', null);
    // One was kept above: kept products are known where they were met.
    const page = await shop.open('/rack?n=24');
    await barSays(page, /1 of 24/);
    const own = await shop.open('/rack/p/5?utm_source=rack');
    await until(
      () => shop.ask('labels-met', null),
      (n) => n > 0,
    );
    await own.close();
    await page.bringToFront();
    await page.reload();
    await barSays(page, /2 of 24/);
    await shop.ask('forget-labels', null);
    expect(await shop.ask('labels-met', null)).toBe(0);
    await barSays(page, /1 of 24/);
    await page.close();
  });
});
