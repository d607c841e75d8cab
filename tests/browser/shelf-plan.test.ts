// From a shelf to the plan without leaving the page, in real Chromium: compare, keep, add to a step; and what a shop
// may answer instead of a product's page.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Harness, openShop, until } from './harness.ts';
import { seeds } from './seeds.ts';
import { type Driven, pressOurs, shelfBar, shelfBarSays, shelfMarks } from './shelf-bar.ts';

let shop: Harness;
let page: Page;
const driven = () => page as unknown as Driven;
beforeAll(async () => {
  shop = await openShop();
  await shop.change(seeds.many);
  page = await shop.open('/rack?n=8');
  await page.setViewportSize({ width: 1280, height: 2400 });
  await shelfBarSays(driven(), /0 of 8/);
  // Two pages that are none of the product: a wall that asks for consent, and what the shop sells instead.
  const html = (body: string) => ({ contentType: 'text/html', body });
  await page.route(/\/rack\/p\/1\b/, (route) =>
    route.fulfill(html(`<h1>Before you go on</h1><p>${'We would like your consent. '.repeat(80)}</p>`)),
  );
  await page.route(/\/rack\/p\/2\b/, (route) =>
    route.fulfill(
      html(
        '<link rel="canonical" href="/rack/p/77"><h1>Whelk Body Butter</h1><p>Ingredients: Aqua, Glycerin, Cetearyl Alcohol, Behentrimonium Chloride, Panthenol, Parfum</p>',
      ),
    ),
  );
  await pressOurs(driven(), '^Unfold$');
  await pressOurs(driven(), '^Read this shelf');
  await shelfBarSays(driven(), /8 products on this page, 4 of them read(?!.*Reading)/, 60_000);
});
afterAll(() => shop.close());

const remembered = () => shop.remembered();
const pinned = async () => ((await remembered()).settings.pinned ?? []).length;

const isOpen = () =>
  page.evaluate(() =>
    [...document.documentElement.children].some(({ shadowRoot }) =>
      shadowRoot?.querySelector('.card')?.matches(':popover-open'),
    ),
  );

/** Opens the card of the nth mark that was read, and presses a button there. */
async function onCard(nth: number, button: string) {
  await page.mouse.move(2, 2);
  await page.keyboard.press('Escape');
  await until(isOpen, (is) => !is);
  const mark = (await shelfMarks(driven())).filter(({ read }) => read)[nth]!;
  const names = () =>
    page.evaluate(() =>
      [...document.documentElement.children]
        .flatMap(({ shadowRoot }) => [...(shadowRoot?.querySelectorAll<HTMLElement>('.card [data-t]') ?? [])])
        .map(({ dataset }) => dataset.t)
        .join(' '),
    );
  await page.mouse.move(mark.left + 8, mark.top + 8);
  await until(isOpen, (is) => is);
  const name = mark.label.split(':')[0]!;
  await until(names, (words) => words.includes(name));
  await pressOurs(driven(), button);
  return name;
}

it('a wall that asks for consent and another product are no labels of what was asked for', async () => {
  const bar = await shelfBar(driven());
  expect(bar).toMatch(/no ingredient list/);
  expect(bar).toMatch(/answered with another product/);
  expect(bar).toMatch(/4 products could not be read/);
});

it('up to four are put side by side', async () => {
  const before = await pinned();
  expect(before).toBeLessThanOrEqual(4);
  const names: string[] = [];
  for (const nth of [0, 1, 2, 3]) names.push(await onCard(nth, '^Compare$'));
  await until(remembered, ({ settings }) => JSON.stringify(settings.pinned).includes(names[3]!));
  const { settings } = await remembered();
  expect(settings.pinned).toHaveLength(4);
  for (const name of names) expect(JSON.stringify(settings.pinned)).toContain(name);
});

it('a product joins the wash day, its outcome is said on the card, and Undo takes it back', async () => {
  const steps = async () => (await remembered()).routines.reduce((sum, each) => sum + each.steps.length, 0);
  const before = await steps();
  const name = await onCard(0, '^Add to wash day$');
  await until(steps, (n) => n === before + 1);
  const { routines, products } = await remembered();
  const added = products.find((each) => each.name === name);
  expect(routines.flatMap((each) => each.steps).map(({ product }) => product)).toContain(added?.id);
  await pressOurs(driven(), '^Undo$');
  await until(steps, (n) => n === before);
  expect((await remembered()).products.some((each) => each.name === name)).toBe(false);
});
