// Going from place to place in the built panel: the way back, what was scrolled, and where what was said ends.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { atRest, type Harness, openShop, until } from './harness.ts';
import { look, seed } from './views.ts';

let shop: Harness;
let panel: Page;
beforeAll(async () => {
  shop = await openShop();
  panel = await shop.panelPage();
  await panel.setViewportSize({ width: 380, height: 700 });
  await seed(panel, 'many');
});
afterAll(() => shop.close());

const topOf = (selector: string) =>
  panel.locator(selector).evaluate((each) => Math.round(each.getBoundingClientRect().top));
/** Stands where it stood a second ago: rows above may still have had their answers coming. */
const restsAt = (selector: string) =>
  atRest(
    () => topOf(selector),
    (a, b) => a === b,
  );
const focused = () => panel.evaluate(() => document.activeElement?.textContent);

it('a product far down the list: closed again, its row stands where it stood and has the focus', async () => {
  await look(shop, panel, 'products');
  const last = panel.locator('.product').last();
  await last.scrollIntoViewIfNeeded();
  const row = panel.locator('.product', { hasText: 'Bellbuoy Everyday Conditioner' });
  await row.scrollIntoViewIfNeeded();
  const id = await row.getAttribute('id');
  const before = await restsAt(`#${id}`);
  await row.locator('.product-name').click();
  await panel.waitForSelector('text=All products');
  await expect.poll(() => panel.evaluate(() => scrollY)).toBe(0);
  await panel.click('text=All products');
  await row.waitFor();
  await expect.poll(async () => Math.abs((await topOf(`#${id}`)) - before)).toBeLessThanOrEqual(2);
  await expect.poll(focused).toBe('Bellbuoy Everyday Conditioner');
});

it('a product opened from the routine leads back to the routine, scrolled as it was', async () => {
  await look(shop, panel, 'routine');
  const step = panel.locator('.step-row .product-name').last();
  await step.scrollIntoViewIfNeeded();
  const name = await step.textContent();
  // What is scrolled when the press is heard: whoever presses may have scrolled to it.
  await panel.evaluate(() =>
    addEventListener('click', () => Object.assign(globalThis, { left: scrollY }), {
      capture: true,
      once: true,
    }),
  );
  await step.click();
  const before = await panel.evaluate(() => (globalThis as { left?: number }).left ?? 0);
  expect(before).toBeGreaterThan(300);
  await until(
    () => panel.locator('#place .card h3').first().textContent(),
    (title) => title === name,
  );
  await panel.click('text=Back to the routine');
  await panel.waitForSelector('#tab-routine[aria-selected=true]');
  await until(
    () => panel.evaluate(() => scrollY),
    (now) => Math.abs(now - before) <= 2,
  );
});

it('what was said ends with its place, and goes along where the same press leads elsewhere', async () => {
  await look(shop, panel, 'products');
  await panel.locator('.product-name').first().click();
  await panel.locator('button >> text=/^Add to comparison|^Compare with/').click();
  await panel.waitForSelector('#tab-compare[aria-selected=true]');
  await panel.waitForSelector('.toast >> text=is ready to compare');
  await panel.click('#tab-hair');
  await panel.waitForSelector('.toast', { state: 'detached' });
});

it('a button that was pressed at the foot stands clear of what is said', async () => {
  await seed(panel, 'many', [{ do: 'set', settings: { pinned: [] } }]);
  await look(shop, panel, 'products');
  await panel.locator('.product-name').nth(3).click();
  const compare = panel.locator('.card .actions button', { hasText: 'Compare with' });
  await compare.evaluate((button) => scrollBy(0, button.getBoundingClientRect().bottom - innerHeight + 4));
  await compare.focus();
  await panel.keyboard.press('Enter');
  await panel.waitForSelector('.toast');
  const clear = () =>
    panel.evaluate(() => {
      const used = document.activeElement!.getBoundingClientRect();
      return used.bottom <= document.querySelector('.toast-place')!.getBoundingClientRect().top;
    });
  expect(await until(clear, (is) => is)).toBe(true);
});

it('on paper stands what is read: no field, no page left empty, and the whole list', async () => {
  await seed(panel, 'many');
  for (const place of ['page', 'compare', 'routine', 'products', 'log'] as const) {
    await look(shop, panel, place);
    await panel.emulateMedia({ media: 'print' });
    await panel.evaluate(() => dispatchEvent(new Event('beforeprint')));
    const shown = () =>
      panel.evaluate(() => {
        const tags =
          'input, select, textarea, [role=tablist], .toast-place, .step-buttons, .disclosure:not([open])';
        return [...document.querySelectorAll(`#place :is(${tags}), .masthead [role=tablist]`)]
          .filter((each) => each.checkVisibility())
          .map((each) => `${each.localName} ${each.className} ${each.textContent?.slice(0, 40)}`);
      });
    await expect.poll(async () => [place, await shown()]).toEqual([place, []]);
    if (place === 'products') await expect.poll(() => panel.locator('.product').count()).toBe(30);
    for (const format of ['A4', 'Letter']) {
      const pdf = await panel.pdf({ format });
      const pages = pdf.toString('latin1').split(/\/Type ?\/Page\b/).length - 1;
      const height = await panel.evaluate(
        () => document.querySelector('main')!.getBoundingClientRect().height,
      );
      expect([place, format, pages > 0 && pages <= Math.ceil(height / 600) + 1]).toEqual([
        place,
        format,
        true,
      ]);
    }
    await panel.evaluate(() => dispatchEvent(new Event('afterprint')));
    await panel.emulateMedia({ media: 'screen' });
  }
});
