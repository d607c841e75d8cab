// The three moments in a real Firefox, driven by WebDriver BiDi.
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ElementHandle, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findFirefox } from '../run/browsers.ts';
import { root } from '../run/steps.ts';
import { expected } from '../store/expected.ts';
import { type Store, serveStore } from '../store/serve.ts';
import { badgeFor, underlined } from './counted.ts';
import { openFirefox } from './firefox.ts';
import { painted, proteinLetters, until } from './harness.ts';
import { type AnyPage, add, browse, compare, keep as keepProduct, type Stage } from './moments.ts';

declare const browser: typeof chrome;

const screens = join(root, '.output', 'screens');
const keep = async (page: Page, name: string) => {
  mkdirSync(screens, { recursive: true });
  await page.screenshot({ path: join(screens, `firefox-${name}.png`) });
};

let store: Store;
beforeAll(async () => {
  store = await serveStore();
});
afterAll(() => store.close());

describe.skipIf(!findFirefox())('Firefox', () => {
  describe('with the pages of localhost granted', () => {
    let firefox: Awaited<ReturnType<typeof openFirefox>>;
    beforeAll(async () => {
      firefox = await openFirefox('localhost');
    });
    afterAll(() => firefox.close());

    it.each(['oakum-protein-treatment', 'low-tide-deep-conditioner', 'soapwort-gentle-cleanser'])(
      'browse: %s',
      async (id) => {
        const page = await firefox.open(`${store.url}/goods/${id}`);
        if (id === 'soapwort-gentle-cleanser') await page.click('[data-loads]');
        const now = await until(
          () => painted(page),
          ({ strip }) => strip !== '',
        );
        expect(now.strip).toMatch(/protein/);
        expect(proteinLetters(now).sort()).toEqual(underlined(expected[id]!));
        await expect.poll(() => firefox.badge(page)).toBe(badgeFor(id));
        await keep(page, `browse-${id}`);
        await page.close();
      },
    );
  });

  describe('the three moments', () => {
    let firefox: Awaited<ReturnType<typeof openFirefox>>;
    let stage: Stage;
    beforeAll(async () => {
      firefox = await openFirefox('localhost');
      const page = await firefox.open(`${store.url}/goods/gossamer-leave-in`);
      const asking = await firefox.panelPage();
      const tab = await asking.evaluate(
        async (url) => (await browser.tabs.query({})).find((each) => each.url === url)?.id,
        page.url(),
      );
      await asking.close();
      const panel = await firefox.panelPage(`sidepanel.html?tab=${tab}`);
      await panel.setViewport({ width: 420, height: 900 });
      // Puppeteer's page asks and clicks as a stage's does; its type says the same in other words.
      const any = (one: Page) => one as unknown as AnyPage;
      stage = {
        storeUrl: store.url,
        page: any(page),
        panel: any(panel),
        screens: (of, name) => keep(of === 'panel' ? panel : page, `moment-${name}`),
      };
    });
    afterAll(() => firefox.close());

    it('a picture of a list is read by files of the extension', async () => {
      const board = await firefox.browser.newPage();
      await board.setContent(
        '<p style="font:16px sans-serif; width:560px">Ingredients: Aqua, Cetearyl Alcohol, Glycerin, Hydrolyzed Silk, Parfum</p>',
      );
      const file = join(mkdtempSync(join(tmpdir(), 'strandline-')), 'label.png');
      writeFileSync(file, await board.screenshot({ clip: { x: 0, y: 0, width: 620, height: 120 } }));
      await board.close();
      const panel = await firefox.panelPage();
      await panel.evaluate(() => {
        for (const each of document.querySelectorAll('details')) each.open = true;
      });
      const input = (await panel.waitForSelector('input[type=file][multiple]'))!;
      await (input as ElementHandle<HTMLInputElement>).uploadFile(file);
      const names = await until(
        () =>
          panel.evaluate(() =>
            [...document.querySelectorAll<HTMLInputElement>('.picture-names input')].map(
              ({ value }) => value,
            ),
          ),
        (all) => all.length > 0,
        60_000,
      );
      expect(names.toSorted()).toEqual(['Aqua', 'Cetearyl Alcohol', 'Glycerin', 'Hydrolyzed Silk', 'Parfum']);
      await panel.close();
    });

    it('browse', () => browse(stage));
    it('keep', () => keepProduct(stage));
    it('add to the routine', () => add(stage));
    it('compare', () => compare(stage));
  });

  describe('with the shipped manifest', () => {
    let firefox: Awaited<ReturnType<typeof openFirefox>>;
    beforeAll(async () => {
      firefox = await openFirefox('shipped');
    });
    afterAll(() => firefox.close());

    it('leaves a page alone until the toolbar button is pressed', async () => {
      const page = await firefox.open(`${store.url}/goods/oakum-protein-treatment`);
      await new Promise((later) => setTimeout(later, 700));
      expect(await page.$('html > div')).toBeNull();
      await firefox.press(page);
      await until(
        () => page.$('html > div'),
        (host) => host !== null,
      );
      expect(await page.$('html > div')).not.toBeNull();
      await expect.poll(() => firefox.badge(page)).toBe(badgeFor('oakum-protein-treatment'));
    });
  });
});
