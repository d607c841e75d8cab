// The panel beside a real shop: follows the tab, keeps, pins and compares, forgets; and who may be asked for what.
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { goodOf } from '../store/goods.ts';
import { type Harness, openShop, painted, screens, until } from './harness.ts';
import { changeIn, look, places, rememberedIn, seed, tabOf } from './views.ts';

let shop: Harness;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

const words = (page: Page) => page.evaluate(() => document.body.textContent ?? '');
const title = (panel: Page) =>
  panel.evaluate(() => document.querySelector('.card h3')?.textContent ?? 'no product');
const read = async (path: string) => {
  const page = await shop.open(path);
  await until(
    () => shop.badge(page),
    (text) => text !== '',
  );
  return page;
};

describe('beside a shop', () => {
  let panel: Page;
  let shown: Page;
  beforeEach(async () => {
    panel = await shop.panelPage();
    await panel.setViewportSize({ width: 360, height: 800 });
    await seed(panel, 'empty');
    shown = await read('/goods/heavy-weather-mask');
    await look(shop, panel, 'page', await tabOf(shop, shown));
  });
  afterEach(async () => {
    await panel.close();
    await shown.close();
  });

  it('shows the product of the tab and follows it to the next page', async () => {
    const first = goodOf('heavy-weather-mask')!;
    const next = goodOf('linen-gel')!;
    await expect.poll(() => title(panel)).toContain(first.name);
    await shown.goto(`${shop.store.url}/goods/${next.id}`);
    expect(
      await until(
        () => title(panel),
        (now) => now.includes(next.name),
      ),
    ).toContain(next.name);
    await shown.goto(`${shop.store.url}/help`);
    await until(
      () => words(panel),
      (now) => now.includes('No ingredient list here yet'),
    );
    expect(await words(panel)).toContain('No ingredient list here yet');
  });

  it('reads again when its worker was killed in between', async () => {
    const tab = await tabOf(shop, shown);
    await shop.killWorker();
    await look(shop, panel, 'page', tab);
    await expect.poll(() => title(panel)).toContain(goodOf('heavy-weather-mask')!.name);
  });

  it('keeps a product, says so, and takes it back', async () => {
    await panel.click('text=Keep product');
    await panel.waitForSelector('.toast >> text=is kept under Products');
    const kept = async () => (await rememberedIn(panel)).products.length;
    expect(await kept()).toBe(1);
    await panel.click('.toast-actions >> text=Undo');
    await panel.waitForSelector('.toast >> text=Undone.');
    expect(await kept()).toBe(0);
  });

  it('pins the first product while the reader browses to the second', async () => {
    await panel.click('text=Compare with…');
    await panel.waitForSelector('.toast >> text=is ready to compare');
    await shown.goto(`${shop.store.url}/goods/low-tide-deep-conditioner`);
    await until(
      () => title(panel),
      (now) => now.includes('Low Tide'),
    );
    await panel.click('#tab-compare');
    const heads = () =>
      panel.$$eval('.side-by-side thead >> nth=0 >> th', (all) => all.map((each) => each.textContent ?? ''));
    expect(await until(heads, (now) => now.length === 2)).toEqual([
      expect.stringContaining('Heavy Weather'),
      expect.stringContaining('Low Tide'),
    ]);
    await expect.poll(() => words(panel)).toMatch(/Only in .*Heavy Weather/);
    await expect.poll(() => words(panel)).toMatch(/In both \(\d+\)/);
    await screens(panel, 'panel-compare', true);
  });

  it('describes a head and has the answer at once, in every open panel', async () => {
    const other = await shop.panelPage();
    await look(shop, other, 'page', await tabOf(shop, shown));
    await changeIn(panel, [
      {
        do: 'put',
        thing: 'heads',
        value: {
          id: 'h',
          name: 'Wren',
          thickness: 'coarse',
          porosity: 'low',
          damage: { kinds: [] },
          avoid: [],
          stretch: [],
          setAside: [],
          added: '2026-01-01',
        },
      },
    ]);
    for (const view of [panel, other]) {
      await view.waitForSelector('.answer-head.large:not(.cannot-tell)');
      await expect.poll(() => view.textContent('.decided')).toContain('Hydrolyzed');
    }
    await other.close();
  });

  it('reads a pasted list without any page', async () => {
    await look(shop, panel, 'page');
    await panel.click('summary >> text=Paste a list');
    await panel.fill('textarea', 'Aqua, Glycerin, Hydrolyzed Silk, Parfum');
    await panel.click('text=Read this list');
    await panel.waitForSelector('.sums');
    await expect.poll(() => panel.textContent('.sums')).toMatch(/1 protein, small/i);
  });

  it('offers a close spelling, reads by it when told, and forgets it again', async () => {
    await look(shop, panel, 'page');
    await panel.click('summary >> text=Paste a list');
    await panel.fill('textarea', 'Aqua, Glycerin, Lcatic Acid, Panthenol, Parfum');
    await panel.click('text=Read this list');
    const offer = panel.locator('.unknown button', { hasText: 'Lactic Acid' }).first();
    await offer.waitFor();
    const name = await offer.textContent();
    await offer.click();
    await panel.waitForSelector(`text=is now read as ${name}`);
    await expect.poll(() => panel.locator('.unknown-name').count()).toBe(0);
    await panel.click('.toast-actions >> text=Undo');
    await panel.locator('.unknown-name').waitFor();
  });

  it('speaks another language at once, on the page as in the panel', async () => {
    await look(shop, panel, 'settings', await tabOf(shop, shown));
    await panel.selectOption('select', 'de');
    await panel.waitForSelector('#tab-settings >> text=Einstellungen');
    await expect.poll(() => panel.evaluate(() => document.documentElement.lang)).toBe('de');
    const strip = await until(
      async () => (await painted(shown)).strip,
      (now) => /Proteine/.test(now),
    );
    expect(strip).toMatch(/3 Proteine/);
  });

  it('remembers the place it was left at', async () => {
    await panel.click('#tab-settings');
    await panel.goto(`chrome-extension://${shop.id}/sidepanel.html`);
    await panel.waitForSelector('#tab-settings[aria-selected=true]');
  });

  it('is moved through by keyboard alone', async () => {
    await panel.focus('#tab-page');
    const seen: (string | null)[] = [];
    for (let i = 0; i < places.length; i++) {
      seen.push(await panel.evaluate(() => document.activeElement!.id));
      await panel.keyboard.press('ArrowRight');
    }
    expect(seen).toEqual(places.map((place) => `tab-${place}`));
    expect(await panel.evaluate(() => document.activeElement!.id)).toBe('tab-page');
    await panel.keyboard.press('Tab');
    expect(await panel.evaluate(() => document.activeElement!.id)).toBe('place');
  });

  it('forgets everything, where it was left included', async () => {
    await seed(panel, 'many');
    await look(shop, panel, 'settings');
    await panel.check('text=Yes, I want that');
    await panel.click('button >> text=Delete everything');
    await panel.waitForSelector('.toast >> text=Everything is deleted');
    const value = await rememberedIn(panel);
    expect(value).toMatchObject({ heads: [], products: [], routines: [], log: [], sites: [], readAs: {} });
    expect(await panel.evaluate(() => chrome.storage.local.get(null))).toEqual({});
    expect(await panel.evaluate(() => localStorage.length)).toBe(0);
  });
});

describe('at every width and size', () => {
  let panel: Page;
  beforeAll(async () => {
    panel = await shop.panelPage();
  });
  afterAll(() => panel.close());
  const wide = () =>
    panel.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

  it.each([
    ['320 px', 320, 'en'],
    ['320 px, longer words', 320, 'en-XA'],
    ['320 px, right to left', 320, 'ar-XB'],
    ['320 px at 200 %', 160, 'en'],
    ['320 px, German', 320, 'de'],
    ['320 px, French', 320, 'fr'],
    ['a whole page', 1280, 'en'],
  ])('%s: nothing is cut off sideways', async (_, width, language) => {
    await panel.setViewportSize({ width, height: 700 });
    for (const state of ['many', 'long'] as const) {
      await seed(panel, state, [{ do: 'set', settings: { language } }]);
      for (const place of places) {
        await look(shop, panel, place);
        await expect.poll(async () => [state, place, await wide()]).toEqual([state, place, 0]);
      }
    }
  });

  it('gives every control at least 24 × 24 px, or 24 px around it', async () => {
    await panel.setViewportSize({ width: 320, height: 700 });
    await seed(panel, 'many');
    for (const place of places) {
      await look(shop, panel, place);
      const small = await panel.evaluate(() =>
        [
          ...document.querySelectorAll<HTMLElement>(
            'button, summary, select, textarea, input:not([type=radio],[type=checkbox])',
          ),
        ]
          .filter((each) => each.checkVisibility())
          .map((each) => ({ name: each.textContent?.slice(0, 30), box: each.getBoundingClientRect() }))
          .filter(({ box }) => box.width < 23.9 || box.height < 23.9)
          .map(({ name, box }) => `${name} ${box.width} × ${box.height}`),
      );
      expect([place, small]).toEqual([place, []]);
    }
  });

  it('keeps what matters in forced colours, without motion', async () => {
    await panel.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
    await look(shop, panel, 'page');
    await screens(panel, 'panel-forced-colours', true);
    const border = await panel.evaluate(
      () => getComputedStyle(document.querySelector('.tab[aria-selected=true]')!).borderBlockEndWidth,
    );
    expect(border).toBe('3px');
    const moves = await panel.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter(
          (each) => getComputedStyle(each).transitionDuration !== '0s' || each.getAnimations().length > 0,
        ).length,
    );
    expect(moves).toBe(0);
    await panel.emulateMedia({ forcedColors: 'none', reducedMotion: 'no-preference' });
  });
});
