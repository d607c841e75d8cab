// The first minutes in the shipped build, pressed and counted: from install to the first verdict on a real page; what a
// pressed page without a list says; the steps that a first product offers.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Harness, openShop, screens, until } from './harness.ts';
import { treeOf } from './tree.ts';
import { tabOf } from './views.ts';

const mostPresses = 4;
const mostWords = 150; // in view at a time, the sample's own aside

let shop: Harness;
let welcome: Page;
let presses = 0;
beforeAll(async () => {
  shop = await openShop({ build: 'shipped' });
  welcome = await until(
    async () => shop.context.pages().find((each) => each.url().endsWith('/welcome.html')) as Page,
    (page) => page !== undefined,
  );
  await welcome.waitForSelector('.painted');
});
afterAll(() => shop.close());

/** Words that are shown before the button that goes on, the sample and what is folded aside. */
const wordsShown = () =>
  welcome.evaluate(() => {
    const main = document.querySelector('main')!;
    const shown = document.createTreeWalker(main, NodeFilter.SHOW_TEXT);
    let words = 0;
    for (let node = shown.nextNode(); node; node = shown.nextNode()) {
      const at = node.parentElement!;
      if (at.matches('.button.strong')) break;
      if (at.checkVisibility() && !at.closest('.sample, .sr, details:not([open])'))
        words += node.textContent!.match(/[\p{L}’]+/gu)?.length ?? 0;
    }
    return words;
  });
const sampleSays = () => welcome.locator('.sample figcaption').textContent();
const press = async (name: RegExp) => {
  presses++;
  await welcome.getByRole('button', { name }).first().click();
};

it('install opens the first page; three presses describe the hair, and the verdict on the sample changes with them', async () => {
  const answers = [(await sampleSays())!];
  const counts = [await wordsShown()];
  for (const answer of [/^Fine/, /^Low/, /^None of these$/]) {
    await press(answer);
    const told = counts.length;
    await until(
      () => welcome.locator('.answered-value:not(:has(em))').count(),
      (n) => n === told,
    );
    answers.push((await sampleSays())!);
    counts.push(await wordsShown());
  }
  expect(new Set(answers).size).toBeGreaterThan(2);
  console.log(`words shown before each press: ${counts.join(', ')}`);
  expect(Math.max(...counts)).toBeLessThanOrEqual(mostWords);
  expect(answers[0]).toMatch(/^Cannot tell yet/);
  expect(answers.at(-1)).toMatch(/your hair/);
  // How pages are read comes after the questions, each choice with what it means.
  const order = await welcome.locator('main h2').allTextContents();
  expect(order).toEqual(['Your hair: three questions', 'Which pages it reads', 'Off to a shop']);
  const choices = await welcome.locator('.option').allTextContents();
  expect(choices).toHaveLength(3);
  for (const choice of choices) expect(choice.split(/\s+/).length).toBeGreaterThan(6);
  await screens(welcome, 'first-minutes-welcome', true);
});

it('the fourth press reads a page of a shop, and the verdict stands there', async () => {
  const page = await shop.open('/goods/oakum-protein-treatment');
  presses++;
  await shop.press(page);
  const strip = await until(
    () => treeOf(page, 'region', /^Strandline/).catch(() => ''),
    (tree) => /your hair/.test(tree),
    30_000,
  );
  expect(strip).toMatch(/(Fits|Not for) your hair/);
  expect(presses).toBeLessThanOrEqual(mostPresses);
  await screens(page, 'first-minutes-strip');
});

it('a pressed page without a list says what to do', async () => {
  const page = await shop.open('/journal/flapjacks');
  await shop.press(page);
  const tab = await tabOf(shop, page);
  const panel = await shop.panelPage(`sidepanel.html?tab=${tab}#page`);
  await panel.waitForSelector('.empty');
  const says = await panel.locator('#place').textContent();
  expect(says).toMatch(/Open a product page/);
  expect(await panel.locator('#place .empty .button, #place summary').count()).toBeGreaterThan(0);
  await panel.close();
});

it('a first product offers the usual steps around it', async () => {
  const page = await shop.open('/goods/bellbuoy-conditioner');
  await shop.press(page);
  await until(
    () => shop.badge(page),
    (text) => text !== '',
  );
  const tab = await tabOf(shop, page);
  const panel = await shop.panelPage(`sidepanel.html?tab=${tab}#page`);
  await panel
    .getByRole('button', { name: /^Add to routine/ })
    .first()
    .click();
  await panel.locator('#adding').waitFor();
  const around = panel.getByLabel(/^With the usual steps around it/);
  expect(await around.isChecked()).toBe(true);
  await panel.getByRole('button', { name: 'Add to routine', exact: true }).click();
  await panel.locator('#adding').waitFor({ state: 'detached' });
  const [routine] = (await shop.remembered()).routines;
  expect(routine!.steps.map(({ kind }) => kind)).toEqual(['cleanser', 'conditioner', 'leave-in', 'gel']);
  await panel.close();
});
