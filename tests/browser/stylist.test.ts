// A stylist with twelve clients, in the built extension: a person's name comes first, the person in use stands in the
// strip and is one press away, people are found by name and in order, and a product says whom of them it fits.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Harness, openShop, painted, screens, until } from './harness.ts';
import { type AnyPage, act } from './moments.ts';
import { robin, wren } from './seeds.ts';
import { look, seed } from './views.ts';

const names = ['Zora', 'Ana', 'Mia', 'Björn', 'Cleo', 'Ada', 'Nils', 'Ines', 'Ole', 'Uma', 'Tilda', 'Émile'];
const inOrder = [
  'Ada',
  'Ana',
  'Björn',
  'Cleo',
  'Émile',
  'Ines',
  'Mia',
  'Nils',
  'Ole',
  'Tilda',
  'Uma',
  'Zora',
];

let shop: Harness;
let panel: Page;
beforeAll(async () => {
  shop = await openShop();
  panel = await shop.panelPage();
  await panel.setViewportSize({ width: 360, height: 900 });
  await seed(panel, 'empty', [
    ...names.map((name, i) => ({
      do: 'put' as const,
      thing: 'heads' as const,
      value: {
        ...(i % 2 === 0 ? wren : robin),
        id: `client-${i}`,
        name,
        avoid: [],
        added: `2026-09-${10 + i}T08:00:00.000Z`,
      },
    })),
    { do: 'set', settings: { headInUse: 'client-0', language: 'en' } },
  ]);
});
afterAll(() => shop.close());

const remembered = () => shop.remembered();

it('asks for the name first, and leaves the answers with whom they were for', async () => {
  await look(shop, panel, 'hair');
  await panel.getByRole('button', { name: 'Add a person' }).click();
  await panel.getByLabel('Name of the person').fill('Pia');
  await panel.getByRole('button', { name: 'Add', exact: true }).first().click();
  const now = await until(remembered, ({ heads }) => heads.length === 13);
  expect(now.heads.find(({ name }) => name === 'Pia')).toMatchObject({ name: 'Pia' });
  expect(now.settings.headInUse).toBe('client-0');
  await panel.getByRole('button', { name: 'Describe Pia' }).click();
  await until(
    () => panel.locator('#place h2').textContent(),
    (title) => title === 'Pia',
  );
});

it('people are in the order of their names, and found by them', async () => {
  const listed = await panel.getByLabel('Whose hair').first().locator('option').allTextContents();
  expect(listed.filter((name) => name !== 'Pia')).toEqual(inOrder);
  await panel.getByLabel('Look for a person').fill('emi');
  const found = panel.locator('.heads .actions[role=group] button');
  expect(
    await until(
      () => found.allTextContents(),
      (all) => all.length === 1,
    ),
  ).toEqual(['Émile']);
  await found.first().click();
  await until(remembered, ({ settings }) => settings.headInUse === 'client-11');
});

it('the person in use stands in the strip, and another is one press away', async () => {
  const page = await shop.open('/goods/heavy-weather-mask');
  const strip = await until(
    async () => (await painted(page)).strip,
    (words) => /Émile/.test(words),
  );
  expect(strip).toMatch(/(Fits|Not for) Émile/);
  const beside = await shop.panelFor(page);
  await beside.locator('#whom').waitFor();
  await act(page as unknown as AnyPage, '^For whom…$');
  // The menu of people has the focus: the next key or press chooses.
  await beside.bringToFront();
  await until(
    () => beside.evaluate(() => document.activeElement?.matches('#whom select') ?? false),
    (is) => is,
  );
  await beside.getByLabel('Answers for').selectOption('Zora');
  await page.bringToFront();
  await until(
    async () => (await painted(page)).strip,
    (words) => /(Fits|Not for) Zora/.test(words),
  );
  await screens(page, 'stylist-strip');
  await beside.bringToFront();
  await beside.getByText(/^Which of 13 people does it fit\?$/).click();
  const answers = await until(
    () => beside.locator('details[open] .answer-head').allTextContents(),
    (all) => all.length === 13,
  );
  const whom = answers.map((words) => names.find((name) => words.includes(name))).filter(Boolean);
  expect(whom).toEqual(inOrder);
  expect(new Set(answers.map((words) => words.replace(/ \S+(,|$)/, ''))).size).toBeGreaterThan(1);
  await screens(beside, 'stylist-whom', true);
});
