// Every place of the panel with what opens in it, in five languages and from right to left: axe-core in both schemes,
// nothing clipped and no word broken at 320 px, at 200 % of that, on a whole page, and in forced colours.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { unfit } from './fits.ts';
import { type Harness, openShop } from './harness.ts';
import { opened } from './opened.ts';
import { changeIn, look, panelBesideProduct, seed } from './views.ts';

let shop: Harness;
let panel: Page;
let tab = -1;
beforeAll(async () => {
  shop = await openShop();
  ({ panel, tab } = await panelBesideProduct(shop));
});
afterAll(() => shop.close());

// Each language in one scheme, so that each place is seen in both; the last is right to left with longer words.
const languages = [
  ['en', 'light'],
  ['de', 'dark'],
  ['es', 'light'],
  ['fr', 'dark'],
  ['pt-BR', 'light'],
  ['ar-XB', 'dark'],
] as const;

async function speak(language: string) {
  await changeIn(panel, [{ do: 'set', settings: { language } }]);
  await panel.waitForFunction((wanted) => document.documentElement.lang === wanted, language);
}
// Every language in two or three of the places, every place in two languages, one of each scheme; in English all of
// them are asked in panel-a11y.
const byAxe = (name: string, language: string) => {
  const at = opened.findIndex((one) => one.name === name);
  return [at % 6, (at + 3) % 6].includes(languages.findIndex(([one]) => one === language));
};
// A menu shows what is chosen on one line: names of products may be longer than that.
const fits = async () => (await unfit(panel)).filter((line) => !/^cut off: ".*\s· .*" in select/.test(line));

describe('320 px', () => {
  beforeAll(async () => {
    await panel.setViewportSize({ width: 320, height: 800 });
    await seed(panel, 'many');
  });
  it.each(opened)('$name, in each language', async ({ name, place, open }) => {
    await speak('en');
    await look(shop, panel, place, tab);
    await open(panel);
    for (const [language, colorScheme] of languages) {
      await panel.emulateMedia({ colorScheme });
      await speak(language);
      const found = { fits: await fits(), axe: byAxe(name, language) ? await violations(panel) : [] };
      expect({ language, ...found }).toEqual({ language, fits: [], axe: [] });
    }
  });
});

describe('other sizes', () => {
  beforeAll(async () => {
    await seed(panel, 'many', [{ do: 'set', settings: { language: 'de' } }]);
  });
  it.each(['page', 'routine', 'hair', 'log', 'settings'] as const)(
    '%s: two columns on a whole page with everything in its place, one beside a shop',
    async (place) => {
      const corners = () =>
        panel.evaluate(() =>
          [...document.querySelectorAll('.columns > div')].map((column) => {
            const { left, top } = column.firstElementChild!.getBoundingClientRect();
            return [Math.round(left), Math.round(top)] as const;
          }),
        );
      await panel.setViewportSize({ width: 1100, height: 800 });
      await look(shop, panel, place, tab);
      const [first, second] = await corners();
      expect(second![0]).toBeGreaterThan(first![0] + 400);
      expect(second![1]).toBe(first![1]);
      expect(await fits()).toEqual([]);
      await panel.setViewportSize({ width: 640, height: 800 });
      await expect.poll(async () => new Set((await corners()).map(([left]) => left)).size).toBe(1);
    },
  );
  it('on paper stand the wash days to come and commas between names, and no fields', async () => {
    await panel.setViewportSize({ width: 700, height: 800 });
    const shown = (selector: string) =>
      panel.evaluate(
        (wanted) => [...document.querySelectorAll(wanted)].filter((each) => each.checkVisibility()).length,
        selector,
      );
    await look(shop, panel, 'routine', tab);
    await panel.locator('.run-day').first().waitFor();
    await panel.emulateMedia({ media: 'print' });
    expect(await shown('.run-day')).toBeGreaterThan(4);
    expect(await shown('select, input, textarea')).toBe(0);
    await panel.emulateMedia({ media: 'screen' });
    await look(shop, panel, 'page', tab);
    await panel.emulateMedia({ media: 'print' });
    const after = await panel.evaluate(() =>
      [...document.querySelectorAll('.decided .button')].map(
        (name) => getComputedStyle(name, '::after').content,
      ),
    );
    expect(after).toEqual(['","', '","', '","', 'none']);
    expect(await shown('select, input, textarea')).toBe(0);
    await panel.emulateMedia({ media: 'screen' });
  });
  it.each(opened)('$name, at 200 % of 320 px and on a whole page', async ({ place, open }) => {
    await panel.setViewportSize({ width: 640, height: 400 });
    await look(shop, panel, place, tab);
    await open(panel);
    expect(await fits()).toEqual([]);
    await panel.setViewportSize({ width: 160, height: 400 });
    await panel.waitForFunction(() => window.innerWidth === 160);
    // A long word may go on in a second line there; letter by letter none does, and menus show what there is room for.
    const found = (await unfit(panel)).filter((line) => !/over 2 lines|in select$/.test(line));
    expect(found).toEqual([]);
  });
});

it('welcome, in each language', async () => {
  await panel.setViewportSize({ width: 320, height: 800 });
  await seed(panel, 'empty');
  await panel.goto(`chrome-extension://${shop.id}/welcome.html`);
  await panel.waitForSelector('.painted');
  for (const [language, colorScheme] of languages) {
    await panel.emulateMedia({ colorScheme });
    await speak(language);
    const found = { fits: await fits(), axe: await violations(panel) };
    expect({ language, ...found }).toEqual({ language, fits: [], axe: [] });
  }
});

describe('in forced colours', () => {
  beforeAll(async () => {
    await panel.setViewportSize({ width: 320, height: 800 });
    await seed(panel, 'many');
    await panel.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  });
  it.each(opened)(
    '$name: what is chosen has an edge of its own, nothing moves, axe finds nothing',
    async (one) => {
      await look(shop, panel, one.place, tab);
      await one.open(panel);
      expect(await violations(panel)).toEqual([]);
      const without = await panel.evaluate(() =>
        [
          ...document.querySelectorAll<HTMLElement>(
            '[aria-pressed=true], .option:has(:checked), .tab[aria-selected=true]',
          ),
        ]
          .filter((each) => each.checkVisibility())
          .filter((each) => {
            const { outlineStyle, borderBlockEndWidth } = getComputedStyle(each);
            return outlineStyle === 'none' && Number.parseFloat(borderBlockEndWidth) < 2;
          })
          .map((each) => each.textContent),
      );
      expect(without).toEqual([]);
      const moving = await panel.evaluate(
        () =>
          [...document.querySelectorAll('*')].filter(
            (each) => getComputedStyle(each).transitionDuration !== '0s' || each.getAnimations().length > 0,
          ).length,
      );
      expect(moving).toBe(0);
    },
  );
});

it('letters that do not fit, and words broken, would have been found', async () => {
  await panel.emulateMedia({ forcedColors: 'none', reducedMotion: 'no-preference' });
  await look(shop, panel, 'settings');
  await panel.evaluate(() => {
    const styles = {
      broken: 'width:2em;overflow-wrap:anywhere',
      'cut off here': 'width:3em;overflow:hidden;white-space:nowrap',
      outside: 'position:absolute;inset-inline-start:25em',
    };
    for (const [words, style] of Object.entries(styles)) {
      const bad = document.createElement('p');
      bad.textContent = words;
      bad.style.cssText = style;
      document.body.append(bad);
    }
  });
  const found = (await unfit(panel)).join('\n');
  expect(found).toMatch(/broken over \d lines: broken/);
  expect(found).toMatch(/cut off: "cut off here"/);
  expect(found).toMatch(/outside the view: "outside"/);
});
