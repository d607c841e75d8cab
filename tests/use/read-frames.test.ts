// What a tab shows is read, kept and painted; pages, badge and painter are noted and not real.
import { expect, it } from 'vitest';
import { withKind } from '../../entrypoints/background/knowing/kinds.ts';
import { readingsOfDictionary } from '../../entrypoints/background/knowing/readings.ts';
import type { PaintOrder } from '../../src/contract/paint-order.ts';
import type { Site } from '../../src/store/remembered.ts';
import { createFrames } from '../../src/use/tabs/read-frames.ts';
import { createTabPages } from '../../src/use/tabs/tab-pages.ts';
import { noClues } from '../find/no-clues.ts';
import { slowSession } from '../keeping/session.ts';
import { nothing } from './knowing.ts';

const readings = readingsOfDictionary();
const url = 'https://shop.example/products/saltgrass-gel';
const letters =
  'Ingredients: Aqua, Glycerin, Hydrolyzed Keratin, Cetearyl Alcohol, Panthenol, Phenoxyethanol.';
const sent = (text = letters, canPaint = false) => ({
  url,
  title: 'Saltgrass Gel',
  texts: [{ text, starts: [0], lengths: [text.length], parents: [0], elements: [{ tag: 'p', parent: -1 }] }],
  clues: noClues({ base: url }),
  canPaint,
});
const top = { tab: 7, frame: 0, site: 'https://shop.example' };

function frames() {
  const told: string[] = [];
  let sites: Site[] = [];
  const tabPages = createTabPages(slowSession());
  const made = createFrames({
    keeper: { remembered: async () => ({ ...nothing, sites }) },
    readings,
    tabPages,
    withKind,
    drawing: async () => (list) => ({ proteinMentions: list.proteins }) as PaintOrder,
    bringPainter: async ({ frame }) =>
      told.push(`painter in ${frame}, ${(await tabPages.get(7)) ? 'known' : 'unknown'}`),
    setBadge: async (_, text) => told.push(`badge ${text || 'empty'}`),
    meet: async (list, at) => told.push(`met at ${at}: ${list.text.length > 20}`),
  });
  const pause = () => {
    sites = [{ origin: 'https://shop.example', paused: true, notLists: [], listsAt: [] }];
  };
  return { ...made, tabPages, told, pause };
}

it('a list is painted, shown by the badge and the panel, and known to its shelf', async () => {
  const { read, tabPages, told } = frames();
  expect(await read(sent(), top)).toMatchObject([{ proteinMentions: 1, places: [{}] }]);
  expect(await tabPages.get(7)).toMatchObject({ url, lists: [{ frame: 0, proteins: 1 }] });
  await expect
    .poll(() => told.toSorted())
    .toEqual(['badge 1', `met at ${url}: true`, expect.stringMatching(/^painter in 0/)]);
});

it('a painter that came before is not brought again, nor one where there is no list', async () => {
  const { read, told } = frames();
  await read(sent(letters, true), top);
  await read(sent('Open Monday to Friday. Mind the step.'), { ...top, frame: 3 });
  expect(told.filter((each) => each.startsWith('painter'))).toEqual([]);
});

it('a list of a frame within the page is not taken for the page’s own product', async () => {
  const { read, told } = frames();
  await read(sent(), { ...top, frame: 3 });
  await expect.poll(() => told).toContain('badge 1');
  expect(told.filter((each) => each.startsWith('met'))).toEqual([]);
});

it('while a site is paused, nothing is read; dropped, panel and badge show nothing of before', async () => {
  const { read, drop, tabPages, told, pause } = frames();
  await read(sent(), top);
  pause();
  await drop(7);
  expect([await tabPages.get(7), told.at(-1)]).toEqual([null, 'badge empty']);
  expect(await read(sent(), top)).toEqual([]);
  expect(await tabPages.get(7)).toBeNull();
});

it('of two requests of one frame the newer alone is answered with something to paint', async () => {
  const { read } = frames();
  const both = await Promise.all([read(sent(), top), read(sent(), top)]);
  expect(both.map((orders) => orders.length)).toEqual([0, 1]);
});

it('a page that moved on shows no list any more', async () => {
  const { read, left, tabPages, told } = frames();
  await read(sent(), top);
  await left(top, `${url}#reviews`, 'Reviews');
  expect(await tabPages.get(7)).toEqual({ url: `${url}#reviews`, title: 'Reviews', lists: [] });
  expect(told.at(-1)).toBe('badge empty');
});
