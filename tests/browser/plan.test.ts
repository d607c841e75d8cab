// A wash day built from the products on hand, what it lacks looked for on a shelf, in a real Chromium.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { goods } from '../store/goods.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { productOf, robin } from './seeds.ts';

let shop: Harness;
let panel: Page;
const today = new Date().toISOString();
beforeAll(async () => {
  shop = await openShop();
  const owned = goods
    .filter(({ kind }) => kind !== 'gel')
    .slice(0, 16)
    .map(productOf);
  await shop.change([
    { do: 'put', thing: 'heads', value: { ...robin, added: today } },
    ...owned.map((value) => ({ do: 'put', thing: 'products', value: { ...value, owned: true } }) as const),
    {
      do: 'put',
      thing: 'routines',
      value: { id: 'day', head: robin.id, name: 'Sunday', steps: [], added: today, washEvery: 7 },
    },
    { do: 'set', settings: { headInUse: robin.id, routineInUse: 'day' } },
  ]);
  panel = await shop.panelPage('sidepanel.html#routine');
  await panel.setViewportSize({ width: 400, height: 1200 });
});
afterAll(() => shop.close());

const steps = async () => (await shop.remembered()).routines.find(({ id }) => id === 'day')!.steps;
const press = (name: string | RegExp) => panel.getByRole('button', { name }).first().click();

it('is offered in plans that differ, taken with one press, and taken back', async () => {
  await press(/^Build from 16 products$/);
  const plans = panel.locator('#build .offer');
  await expect.poll(() => plans.count()).toBeGreaterThan(1);
  await expect
    .poll(() => plans.locator('.answer-head, h4, [class*="answer"]').first().textContent())
    .toMatch(/[Pp]rotein/);
  await expect
    .poll(() => plans.first().textContent())
    .toMatch(/No other day of these products is better by the rules\./);
  await screens(panel, 'plan', true);
  await press('Take this plan');
  const taken = await until(steps, (now) => now.length > 0);
  expect(taken.length).toBeGreaterThan(2);
  for (const { product } of taken) expect(goods.map(({ id }) => id)).toContain(product);
  await press('Undo');
  expect(await until(steps, (now) => now.length === 0)).toEqual([]);
});

it('keeps within the limits that were set', async () => {
  await panel.locator('#build summary').first().click();
  await panel.locator('#build').getByLabel('Steps').selectOption('4');
  await press(/^Build from/);
  const plans = panel.locator('#build .offer');
  await until(
    async () => [await panel.locator('#build progress').count(), await plans.count()] as const,
    ([searching, n]) => searching === 0 && n > 0,
  );
  for (const plan of await plans.all()) expect(await plan.locator('ol > li').count()).toBeLessThanOrEqual(4);
});

it('what it lacks is looked for: kept in a list, and a filter on the shelf', async () => {
  const wish = { kind: 'gel', protein: 'free', moisture: false, lifts: false } as const;
  await shop.change([{ do: 'set', settings: { wishes: [wish] } }]);
  await until(
    async () => panel.locator('#wishes').textContent(),
    (words) => /gel/.test(words ?? ''),
  );
  const page = await shop.open('/rack?n=24');
  const bar = () =>
    page.evaluate(() =>
      [...document.documentElement.children]
        .flatMap(({ shadowRoot }) => [...(shadowRoot?.querySelectorAll<HTMLElement>('.bar [data-t]') ?? [])])
        .map(({ dataset }) => dataset.t)
        .join(' '),
    );
  await until(bar, (words) => /of 24/.test(words));
  await shop.ask('press-shelf', { tab: await shop.tabOf(page) }); // says first what a press does
  await shop.change([{ do: 'set', settings: { shelfTold: true } }]);
  await page.reload();
  await until(bar, (words) => /of 24/.test(words));
  await shop.ask('press-shelf', { tab: await shop.tabOf(page) });
  expect(await until(bar, (words) => /what I was looking for \([1-9]/.test(words), 30_000)).toMatch(
    /what I was looking for \([1-9]/,
  );
  await page.close();
});
