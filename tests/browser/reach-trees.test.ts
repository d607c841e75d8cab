// What a screen reader gets: the browser's accessibility tree of each main surface, against files that a person can
// read (`tests/browser/trees/`; `-u` writes them anew, and each change is then to be read).
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../run/steps.ts';
import { atRest, type Harness, openShop, until } from './harness.ts';
import { type AnyPage, unfold } from './moments.ts';
import { openCard } from './name-card.ts';
import { opened } from './opened.ts';
import { robin } from './seeds.ts';
import { pressOurs, shelfBarSays } from './shelf-bar.ts';
import { treeOf } from './tree.ts';
import { look, seed, tabOf } from './views.ts';

let shop: Harness;
let panel: Page;
beforeAll(async () => {
  shop = await openShop();
  panel = await shop.panelPage();
  await panel.clock.setFixedTime('2026-11-26T12:00:00Z');
});
afterAll(() => shop.close());

const same = (tree: string, name: string) =>
  expect(tree).toMatchFileSnapshot(join(root, 'tests/browser/trees', `${name}.txt`));
/** The tree of a page once it has not changed for a second: some of what it shows is asked for first. */
const treeAtRest = (...of: Parameters<typeof treeOf>) =>
  atRest(
    () => treeOf(...of),
    (a, b) => a === b,
  );
const inEnglish = [{ do: 'set', settings: { language: 'en' } }] as const;

describe('the panel', () => {
  let tab = -1;
  beforeAll(async () => {
    const shown = await shop.open('/goods/heavy-weather-mask');
    await until(
      () => shop.badge(shown),
      (text) => text !== '',
    );
    tab = await tabOf(shop, shown);
  });
  const seen = [
    ['page', 'many'],
    ['compare', 'many'],
    ['routine', 'one'],
    ['products', 'one'],
    ['products-one', 'one'],
    ['products-new', 'one'],
    ['log', 'one'],
    ['log-new', 'one'],
    ['hair', 'one'],
    ['settings', 'one'],
  ] as const;
  it.each(seen)('%s', async (name, state) => {
    await seed(panel, state, [...inEnglish]);
    const { place, open } = opened.find((one) => one.name === name)!;
    await look(shop, panel, place, tab);
    // A place itself is shown as it opens; what was opened in it, with all of that.
    if (name !== place) await open(panel);
    await same(await treeAtRest(panel, 'RootWebArea', /./, false), `panel-${name}`);
  });
  it('first run', async () => {
    await seed(panel, 'empty', [...inEnglish]);
    await panel.goto(`chrome-extension://${shop.id}/welcome.html`);
    await panel.waitForSelector('.painted');
    await same(await treeAtRest(panel, 'RootWebArea', /./, false), 'welcome');
  });
});

describe('in the page', () => {
  const cardOf = async (page: Page, selector: string) => {
    await page.locator(`${selector}:popover-open`).waitFor();
    return treeAtRest(page, 'note', /^/);
  };
  it('strip, and the card of a name', async () => {
    await seed(panel, 'empty', [
      { do: 'put', thing: 'heads', value: robin },
      { do: 'set', settings: { headInUse: robin.id, language: 'en' } },
    ]);
    const page = await shop.open('/goods/heavy-weather-mask');
    await unfold(page as unknown as AnyPage);
    await same(await treeAtRest(page, 'region', /^Strandline/), 'strip');
    await openCard(page);
    await same(await cardOf(page, '.card'), 'card');
    await page.close();
  });
  it('bar of a shelf, a mark and its card', async () => {
    const page = await shop.open('/rack?n=6');
    await shelfBarSays(page as never, /0 of 6/);
    await pressOurs(page as never, '^Unfold$');
    await pressOurs(page as never, '^Read this shelf');
    await shelfBarSays(page as never, /[345] of them read(?!.*Reading)/);
    await same(await treeAtRest(page, 'region', /./), 'shelf-bar');
    await same(`${(await page.locator('.mark.read').first().getAttribute('aria-label'))!}\n`, 'shelf-mark');
    await page
      .locator('.mark.read')
      .first()
      .hover({ position: { x: 6, y: 6 } });
    await same(await cardOf(page, '.shelf-card'), 'shelf-card');
    await page.close();
  });
});
