// A product kept from a page brings a small picture of it along: drawn from pixels that are there, no request made.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Harness, openShop, screens, until } from './harness.ts';
import { type AnyPage, act } from './moments.ts';
import { pressOurs, shelfBarSays } from './shelf-bar.ts';
import { asks, keptPictures, rememberedIn, seed } from './views.ts';

let shop: Harness;
let panel: Page;
beforeAll(async () => {
  shop = await openShop({ width: 1200 });
  panel = await shop.panelPage();
  await panel.setViewportSize({ width: 380, height: 800 });
});
afterAll(() => shop.close());

const products = async () => (await rememberedIn(panel)).products;
const pictures = () => keptPictures(panel);

async function keepFrom(path: string): Promise<Page> {
  const page = await shop.open(path);
  await act(page as unknown as AnyPage, '^Keep product$');
  await until(products, (kept) => kept.length > 0);
  return page;
}

it('keeps what the page shows, small, shows it in its row, and takes it along when it goes', async () => {
  await seed(panel, 'empty');
  const page = await shop.open('/goods/heavy-weather-mask');
  await shop.badgeBecomes(page, '3');
  const before = shop.store.asked.length;
  await act(page as unknown as AnyPage, '^Keep product$');
  const [kept] = await until(products, (all) => all.length > 0);
  expect(shop.store.asked.slice(before)).toEqual([]);
  const [[key, data] = ['', '']] = await pictures();
  expect(key).toBe(`photo:${kept!.picture}`);
  expect(data).toMatch(/^data:image\/(?:webp|jpeg);base64,/);
  expect(data.length).toBeLessThanOrEqual(4000);

  await panel.bringToFront();
  await panel.click('#tab-products');
  const shown = panel.locator('.product .picture img');
  await shown.waitFor();
  await screens(panel, 'product-picture');
  // Held against the page's own picture, drawn by the browser: the colours of the same places, but for the squeezing.
  const colours = async (from: Page, selector: string) => {
    const loaded = (wanted: string) => {
      const image = document.querySelector<HTMLImageElement>(wanted);
      return image?.complete && image.naturalWidth > 0;
    };
    await from.waitForFunction(loaded, selector);
    return from.evaluate((wanted) => {
      const image = document.querySelector<HTMLImageElement>(wanted)!;
      const canvas = new OffscreenCanvas(8, 10);
      const pen = canvas.getContext('2d')!;
      pen.fillStyle = '#fff';
      pen.fillRect(0, 0, 8, 10);
      pen.drawImage(image, 0, 0, 8, 10);
      return [...pen.getImageData(0, 0, 8, 10).data];
    }, selector);
  };
  const [own, theirs] = [
    await colours(panel, '.product .picture img'),
    await colours(page, 'article.product img'),
  ];
  expect(new Set(theirs).size).toBeGreaterThan(20);
  const apart = own.reduce((sum, value, i) => sum + Math.abs(value - theirs[i]!), 0) / own.length;
  expect(apart).toBeLessThan(12);

  await asks(panel, 'act', { act: { act: 'remove', product: kept!.id }, id: 'gone' });
  expect(await pictures()).toEqual([]);
  await panel.bringToFront();
  await panel.click('summary >> text=Removed');
  await panel.click('.removed-lately button');
  expect(await until(pictures, (all) => all.length > 0)).toEqual([[key, data]]);
  await asks(panel, 'forget');
  expect(await pictures()).toEqual([]);
  await page.close();
});

it('keeps from a shelf the picture of that card', async () => {
  await seed(panel, 'empty');
  const page = await shop.open('/rack?n=6');
  await shelfBarSays(page as never, /0 of 6/);
  await pressOurs(page as never, '^Unfold$');
  await pressOurs(page as never, '^Read this shelf');
  await shelfBarSays(page as never, /[345] of them read(?!.*Reading)/);
  const mark = page.locator('.mark.read').nth(1);
  await mark.hover({ position: { x: 6, y: 6 } });
  await page.locator('.shelf-card:popover-open').waitFor();
  const before = shop.store.asked.length;
  await pressOurs(page as never, '^Keep$');
  const [kept] = await until(products, (all) => all.length > 0);
  expect(shop.store.asked.slice(before)).toEqual([]);
  expect(kept!.picture).toBeDefined();
  const [[, data] = ['', '']] = await pictures();
  // Whose colours are nearest to the small picture's: of all pictures on the page, that of its own card.
  const nearest = await page.evaluate(async (small) => {
    const colours = (image: CanvasImageSource) => {
      const pen = new OffscreenCanvas(8, 10).getContext('2d')!;
      pen.fillStyle = '#fff';
      pen.fillRect(0, 0, 8, 10);
      pen.drawImage(image, 0, 0, 8, 10);
      return [...pen.getImageData(0, 0, 8, 10).data];
    };
    const kept = new Image();
    kept.src = small;
    await kept.decode();
    const own = colours(kept);
    const apart = (image: HTMLImageElement) =>
      colours(image).reduce((sum, value, i) => sum + Math.abs(value - own[i]!), 0);
    const all = [...document.querySelectorAll<HTMLImageElement>('main img')];
    const best = all.sort((a, b) => apart(a) - apart(b))[0]!;
    return best.closest('li, article, a')!.textContent;
  }, data);
  expect(nearest).toContain(kept!.name);
  await page.close();
});

it('another site’s pixels are not taken from the page, and the product is kept all the same', async () => {
  await seed(panel, 'empty');
  await shop.context.route('**/pictures/gossamer-leave-in.svg', (route) =>
    route.fulfill({ status: 302, headers: { location: 'https://pictures.shop.example/one.svg' } }),
  );
  await shop.context.route('https://pictures.shop.example/**', (route) =>
    route.fulfill({
      contentType: 'image/svg+xml',
      body: '<svg xmlns="http://www.w3.org/2000/svg" width="320" height="400"><rect width="320" height="400" fill="teal"/></svg>',
    }),
  );
  const page = await keepFrom('/goods/gossamer-leave-in');
  const [kept] = await products();
  expect(kept!.name).toContain('Gossamer');
  expect(kept!.picture).toBeUndefined();
  await page.close();
});

it('where the reader wants none, none is taken and none shown', async () => {
  await seed(panel, 'empty', [{ do: 'set', settings: { pictures: false } }]);
  const page = await keepFrom('/goods/linen-gel');
  expect((await products())[0]!.picture).toBeUndefined();
  expect(await pictures()).toEqual([]);
  await page.close();
});
