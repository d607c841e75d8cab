// The shelf of a page as the panel's table, in real Chromium: read from there, sorted by the keyboard, saved, under axe.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { root } from '../run/steps.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { seeds } from './seeds.ts';
import { type Driven, pressOurs, shelfBar } from './shelf-bar.ts';

const axe = readFileSync(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');
let shop: Harness;
let page: Page;
let panel: Page;
const bar = () => shelfBar(page as unknown as Driven);
beforeAll(async () => {
  shop = await openShop();
  page = await shop.open('/rack?n=10');
  await until(bar, (words) => /0 of 10/.test(words), 30_000);
  panel = await shop.panelFor(page);
  await panel.setViewportSize({ width: 420, height: 900 });
});
afterAll(() => shop.close());

const asked = () => shop.store.requests.filter(({ path }) => path.startsWith('/rack/')).length;
const column = (n: number): Promise<string[]> =>
  panel.evaluate(
    (nth) =>
      [...document.querySelectorAll<HTMLTableRowElement>('.shelf-table tbody tr')].map(
        ({ cells }) => cells[nth]?.textContent ?? '',
      ),
    n,
  );

it('says what a press does, and one press reads: the page does not ask again', async () => {
  await panel.getByText('Strandline asks this shop, and nobody else').waitFor();
  await expect.poll(() => column(0)).toHaveLength(10);
  expect(asked()).toBe(0);
  await panel.getByRole('button', { name: 'Read this shelf (10)' }).click();
  await until(
    async () => (await column(1)).filter((words) => /The shop|leads away/.test(words)).length,
    (failed) => failed === 3,
    60_000,
  );
  await panel.getByText('10 products on this page, 7 of them read.').waitFor();
  expect(asked()).toBe(10);
  await screens(panel, 'shelf-table');
}, 120_000);

it('is sorted by any column from the keyboard; rows that have nothing there stand last', async () => {
  const head = panel.getByRole('button', { name: 'Product', exact: true });
  await head.focus();
  await panel.keyboard.press('Enter');
  const up = await until(
    () => column(0),
    (names) => names[0]! < names.at(-1)!,
  );
  expect(up).toEqual(up.toSorted(new Intl.Collator('en', { numeric: true }).compare));
  await panel.keyboard.press('Enter');
  expect(
    await until(
      () => column(0),
      (names) => names[0] === up.at(-1),
    ),
  ).toEqual(up.toReversed());
  expect(await panel.locator('th[aria-sort="descending"]').textContent()).toBe('Product');
  await panel.getByRole('button', { name: 'Protein', exact: true }).click();
  const amounts = (
    await until(
      () => column(2),
      (all) => all.at(-1) === '',
    )
  ).filter(Boolean);
  const order = ['none', 'a little', 'some', 'a lot', 'cannot tell'];
  expect(amounts).toEqual(amounts.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
  expect(amounts.length).toBe(7);
});

it('is saved as a file, in the order shown', async () => {
  const [file] = await Promise.all([
    panel.waitForEvent('download'),
    panel.getByRole('button', { name: 'Save as CSV' }).click(),
  ]);
  const lines = readFileSync(await file.path(), 'utf8')
    .trim()
    .split(/\r?\n/);
  expect(lines[0]).toMatch(/^\W?name,answer,protein,moisture,/);
  const names = await column(0);
  expect(lines.slice(1).map((line) => line.split(',')[0])).toEqual(names);
});

it.each(['light', 'dark'] as const)('axe finds nothing in it (%s)', async (colorScheme) => {
  await panel.emulateMedia({ colorScheme });
  await panel.evaluate(axe);
  const found = await panel.evaluate(async () => {
    type Found = { violations: { id: string; nodes: { target: string[] }[] }[] };
    const { axe } = globalThis as unknown as { axe: { run(at: Document, how: object): Promise<Found> } };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const { violations } = await axe.run(document, { runOnly: tags, resultTypes: ['violations'] });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
  });
  expect(found).toEqual([]);
});

it('a wash day brings filters for each of its steps that something here fits', async () => {
  await shop.change(seeds.many);
  await page.bringToFront();
  const filters = /fits my wash day \(\d+\).*fits my wash day as my [^()]+\(\d+\)/;
  const words = await until(bar, (now) => filters.test(now), 30_000);
  const fits = Number(/fits my wash day \((\d+)\)/.exec(words)![1]);
  const as = [...words.matchAll(/fits my wash day as my [^()]+\((\d+)\)/g)].map(([, n]) => Number(n));
  expect(as.length).toBeGreaterThan(0);
  for (const n of as) expect(n).toBeGreaterThan(0);
  expect(as.reduce((sum, n) => sum + n, 0)).toBeLessThanOrEqual(fits);
  await pressOurs(page as unknown as Driven, '^fits my wash day as my ');
  const veils = () =>
    page.evaluate(
      () =>
        [...document.documentElement.children]
          .flatMap(({ shadowRoot }) => [...(shadowRoot?.querySelectorAll<HTMLElement>('.veil') ?? [])])
          .filter(({ hidden }) => !hidden).length,
    );
  expect(await until(veils, (n) => n > 0)).toBeGreaterThan(0);
});
