// The same lists under styles that fight back: read all the same, and pictured for a person to judge.
import { isDeepStrictEqual } from 'node:util';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { expected } from '../store/expected.ts';
import { goodOf } from '../store/goods.ts';
import { type StructureName, structureNames } from '../store/structures/index.ts';
import { atRest, type Harness, openShop, painted, proteinLetters, screens, until } from './harness.ts';
import { reveal } from './reveal.ts';

let shop: Harness;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

const styles = ['unset', 'transform', 'above', 'rtl', 'zoom', 'dark'];
const id = 'gossamer-leave-in';
const good = goodOf(id)!;
// Structures with nothing to underline in this document, and the router, which has a page of its own.
const structures = structureNames.filter(
  (name) =>
    !['json-ld', 'microdata', 'frame', 'client-router', 'stream', 'kit', 'look-alikes'].includes(name),
);

// Every structure under the worst of them, those that fold or float under the others.
const folding: StructureName[] = [
  'open',
  'details',
  'tabs',
  'dialog',
  'custom-dialog',
  'shadow-root',
  'accordion',
];

it.each(styles)('%s: underlined in every structure', async (style) => {
  const wanted = expected[id]!.map(([printed]) => printed).sort();
  const missed: string[] = [];
  for (const structure of style === 'unset' ? structures : folding) {
    const page = await shop.open(`/goods/${good.id}?as=${structure}&hostile=${style}`);
    // Under these styles a control may be covered or shapeless: it is clicked by script.
    await reveal((control) => page.locator(control).dispatchEvent('click'), structure);
    const letters = await until(
      // Each copy of a list is underlined where it stands.
      async () => [...new Set(proteinLetters(await painted(page)))].sort(),
      (now) => now.length >= wanted.length,
      10_000,
    ).catch(async () => [...new Set(proteinLetters(await painted(page)))].sort());
    if (letters.join() !== wanted.join()) missed.push(`${structure}: ${letters.join()}`);
    if (['open', 'tabs', 'details'].includes(structure)) await screens(page, `hostile-${style}-${structure}`);
    await page.close();
  }
  expect(missed).toEqual([]);
});

it.each(styles)('%s: the strip is in view, and covers no glyph', async (style) => {
  const page = await shop.open(`/goods/${good.id}?as=open&hostile=${style}`);
  await page.evaluate(() => document.querySelector('h2')?.scrollIntoView());
  const boxes = () =>
    page.evaluate(() => {
      const root = document.querySelector('[data-strandline]')?.shadowRoot;
      const box = (one: Element) => {
        const { left, top, right, bottom } = one.getBoundingClientRect();
        return { left, top, right, bottom };
      };
      const strip = root?.querySelector('.strip:not(.seeking)');
      const view = { left: 0, top: 0, right: innerWidth, bottom: innerHeight };
      return strip && { strip: box(strip), view, glyphs: [...root!.querySelectorAll('.name svg')].map(box) };
    });
  await until(boxes, (now) => Boolean(now && now.glyphs.length > 0));
  const { strip, view, glyphs } = (await atRest(boxes, isDeepStrictEqual))!;
  expect(strip.left).toBeGreaterThanOrEqual(view.left);
  expect(strip.top).toBeGreaterThanOrEqual(view.top);
  expect(strip.right).toBeLessThanOrEqual(view.right);
  expect(strip.bottom).toBeLessThanOrEqual(view.bottom);
  const met = ({ left, top, right, bottom }: typeof strip) =>
    right > left && left < strip.right && right > strip.left && top < strip.bottom && bottom > strip.top;
  expect(glyphs.length).toBeGreaterThan(0);
  expect(glyphs.filter(met)).toEqual([]);
  await page.close();
});

it('dark: the strip and the glyphs are light on dark where the page is, whatever the browser prefers', async () => {
  const page = await shop.open(`/goods/${good.id}?as=open&hostile=dark`);
  await until(
    () => painted(page),
    ({ strip }) => strip !== '',
  );
  const colours = await page.evaluate(() => {
    const root = document.querySelector('[data-strandline]')?.shadowRoot;
    const strip = getComputedStyle(root!.querySelector('.strip')!);
    const glyph = getComputedStyle(root!.querySelector('.layer svg *')!);
    const brightness = (colour: string) => Math.max(...(colour.match(/\d+/g) ?? []).slice(0, 3).map(Number));
    return {
      ground: brightness(strip.backgroundColor),
      words: brightness(strip.color),
      glyph: Math.max(brightness(glyph.fill), brightness(glyph.stroke)),
    };
  });
  expect(colours.ground).toBeLessThan(80);
  expect(colours.words).toBeGreaterThan(180);
  expect(colours.glyph).toBeGreaterThan(180);
  await page.close();
});
