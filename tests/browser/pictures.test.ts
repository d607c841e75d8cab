// Lists that are only pictures: read in the panel by files of the extension, shown for checking, and kept only where
// that is asked.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { type Drawn, drawnLabel, readInPanel, scoreRead, type Way } from './drawn-labels.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { asks, keptPictures, look, rememberedIn, tabOf } from './views.ts';

let shop: Harness;
let panel: Page;
let board: Page;
beforeAll(async () => {
  shop = await openShop();
  panel = await shop.panelPage();
  board = await shop.open('/');
  await board.goto('about:blank');
});
afterAll(() => shop.close());
beforeEach(async () => {
  await look(shop, panel, 'page');
  await panel.click('summary >> text=Read a picture of a list');
});

const fileOf = ({ way, picture }: Drawn) => ({ name: `${way}.png`, mimeType: 'image/png', buffer: picture });
const typed = (text: string) => async () => {
  await board.setViewportSize({ width: 600, height: 300 });
  await board.setContent('<p style="font:16px sans-serif"></p>');
  await board.locator('p').evaluate((each, words) => {
    each.textContent = words;
  }, text);
  return { name: 'label.png', mimeType: 'image/png', buffer: await board.screenshot() };
};
const label = typed(
  'Ingredients: Aqua, Cetearyl Alcohol, Glycerin, Flumberol Wodkate, Hydrolyzed Silk, Parfum',
);

it('is shown beside its names, the doubtful first, and goes on like a pasted text', async () => {
  const asked: string[] = [];
  const broken: string[] = [];
  panel.on('request', (request) => asked.push(new URL(request.url()).protocol));
  panel.on('console', (message) => {
    if (message.type() === 'error') broken.push(message.text());
  });
  await panel.setInputFiles('input[type=file][multiple]', [await label()]);
  await panel.waitForSelector('.picture-check', { timeout: 30_000 });
  const names = () =>
    panel.$$eval('.picture-names input', (all) => all.map((each) => (each as HTMLInputElement).value));
  await expect
    .poll(names)
    .toEqual(['Flumberol Wodkate', 'Aqua', 'Cetearyl Alcohol', 'Glycerin', 'Hydrolyzed Silk', 'Parfum']);
  await panel.hover('.picture-names li >> nth=4');
  await panel.waitForSelector('.picture-view rect.lit', { state: 'attached' });
  const lit = await panel.$eval('.picture-view rect.lit', (each) => Number(each.getAttribute('width')));
  const wide = await panel.$eval('.picture-view image', (each) => Number(each.getAttribute('width')));
  expect(lit / wide).toBeGreaterThan(0.1);
  expect(lit / wide).toBeLessThan(0.4);
  await screens(panel, 'panel-picture', true);
  await panel.fill('.picture-names input >> nth=0', 'Panthenol');
  await panel.click('text=Use this list');
  await panel.click('text=Read this list');
  await panel.waitForSelector('.sums');
  await expect.poll(() => panel.textContent('.sums')).toMatch(/1 protein/i);
  await expect.poll(() => panel.locator('.unknown-name').count()).toBe(0);
  expect([...new Set(asked)].filter((each) => !/^(?:chrome-extension|blob|data):$/.test(each))).toEqual([]);
  expect(broken).toEqual([]);
  const value = await rememberedIn(panel);
  expect(value).toMatchObject({ products: [], log: [] });
  const kept = await panel.evaluate(async () =>
    JSON.stringify([await chrome.storage.local.get(null), await chrome.storage.session.get(null)]),
  );
  expect(kept).not.toMatch(/data:image|blob:|Flumberol/);
});

it('keeps the photo where that is asked, with the product, and takes it along when that goes', async () => {
  const page = await shop.open('/help');
  await look(shop, panel, 'page', await tabOf(shop, page));
  await panel.click('summary >> text=Read a picture of a list');
  await panel.setInputFiles('input[type=file][multiple]', [await label()]);
  await panel.waitForSelector('.picture-check', { timeout: 30_000 });
  const wish = panel.getByLabel('Keep this photo');
  expect(await wish.isChecked()).toBe(false);
  await wish.check();
  await screens(panel, 'panel-picture-keep', true);
  await panel.click('text=Use this list');
  await panel.click('text=Read this list');
  await panel.waitForSelector('.sums');
  expect(await keptPictures(panel)).toEqual([]);
  await panel.click('button >> text="Keep product"');
  const products = async () => (await rememberedIn(panel)).products;
  const [kept] = await until(products, (all) => all.length > 0);
  const [[key, data] = ['', '']] = await until(
    () => keptPictures(panel),
    (all) => all.length > 0,
  );
  expect(key).toBe(`photo:${kept!.picture}`);
  // Large enough to be read again: more than the small picture of a page may be.
  expect(data).toMatch(/^data:image\/jpeg;base64,/);
  expect(data.length).toBeGreaterThan(4000);
  await asks(panel, 'act', { act: { act: 'remove', product: kept!.id }, id: 'gone' });
  expect(await keptPictures(panel)).toEqual([]);
  await asks(panel, 'forget');
  await page.close();
});

it('says in a sentence that a picture holds no list, is no picture, or is stopped', async () => {
  const none = await typed('Open Monday to Friday. Mind the step.')();
  expect(await readInPanel(panel, [none])).toEqual([expect.stringContaining('No ingredient list was seen')]);
  const text = { name: 'notes.png', mimeType: 'image/png', buffer: Buffer.from('no picture') };
  expect(await readInPanel(panel, [text])).toEqual([
    expect.stringContaining('cannot be opened as a picture'),
  ]);
  // What was read before the press stays; nothing is read after it.
  const shown = () => panel.locator('.disclosed .note.care').count();
  const before = await shown();
  const many = Array.from({ length: 12 }, () => none);
  await panel.setInputFiles('input[type=file][multiple]', many);
  await panel.click('text=Stop reading');
  await until(
    () => panel.locator('progress').count(),
    (n) => n === 0,
  );
  const stopped = await shown();
  expect(stopped - before).toBeLessThan(many.length);
  await panel.waitForTimeout(1500);
  expect([await shown(), await panel.locator('progress').count()]).toEqual([stopped, 0]);
});

it('names are right at several sizes, turned, and light on dark; no protein is made up', async () => {
  const drawn: Drawn[] = [];
  for (const way of ['serif, 13 px', '9 px', 'turned by 4°', 'light on dark'] satisfies Way[])
    drawn.push(await drawnLabel(board, way, 101));
  const read = await readInPanel(panel, drawn.map(fileOf));
  const scores = drawn.map((each, i) => scoreRead(each, read[i]!));
  const sum = (of: 'right' | 'of') => scores.reduce((all, each) => all + each[of], 0);
  expect(scores.flatMap(({ invented }) => invented)).toEqual([]);
  expect(sum('right') / sum('of')).toBeGreaterThanOrEqual(0.93);
});

it('a picture of the page is read from the screen after a press', async () => {
  const page = await shop.open('/help');
  await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [640, 120];
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, 640, 120);
    pen.fillStyle = '#222';
    pen.font = '14px sans-serif';
    pen.fillText('Ingredients: Aqua, Cetearyl Alcohol, Glycerin, Hydrolyzed Wheat', 12, 40);
    pen.fillText('Protein, Panthenol, Behentrimonium Chloride, Parfum', 12, 62);
    document.body.prepend(canvas);
  });
  const before = shop.store.asked.length;
  await shop.press(page);
  const tab = await tabOf(shop, page);
  const opened = shop.context.waitForEvent('page');
  await (await shop.worker()).evaluate(
    (url) => chrome.windows.create({ url, width: 420, height: 800 }).then(() => undefined),
    `chrome-extension://${shop.id}/sidepanel.html?tab=${tab}#page`,
  );
  const beside = await opened;
  await page.bringToFront();
  await beside.waitForSelector('summary >> text=Read a picture of a list');
  // As the menu on a picture leaves it for the panel.
  await (await shop.worker()).evaluate((go) => chrome.storage.session.set({ 'panel-go': go }), {
    tab,
    place: 'page',
    picture: { frame: 0 },
    nth: Date.now(),
  });
  const names = () =>
    beside.$$eval('.picture-names input', (all) => all.map((each) => (each as HTMLInputElement).value));
  const read = await until(names, (all) => all.length > 0, 30_000);
  expect(read.toSorted()).toEqual([
    'Aqua',
    'Behentrimonium Chloride',
    'Cetearyl Alcohol',
    'Glycerin',
    'Hydrolyzed Wheat Protein',
    'Panthenol',
    'Parfum',
  ]);
  // The tab's own icon may come late.
  const after = shop.store.asked.slice(before).filter((path) => path !== '/pictures/sign.svg');
  expect(after).toEqual([]);
});
