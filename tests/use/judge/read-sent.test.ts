import { expect, it } from 'vitest';
import { withKind } from '../../../entrypoints/background/knowing/kinds.ts';
import { readingsOfDictionary } from '../../../entrypoints/background/knowing/readings.ts';
import { addressOn, readSent } from '../../../src/use/judge/read-sent.ts';
import { noClues } from '../../find/no-clues.ts';
import { madeHead } from '../../keeping/made.ts';
import { knowing } from '../knowing.ts';

const readings = readingsOfDictionary();
const by = { finder: readings.finder, lookup: readings.lookup, withKind };
const url = 'https://shop.example/products/saltgrass-gel';
const letters =
  'Ingredients: Aqua, Glycerin, Hydrolyzed Keratin, Cetearyl Alcohol, Panthenol, Phenoxyethanol.';
const sent = {
  url,
  title: 'Saltgrass Gel',
  texts: [
    {
      text: letters,
      starts: [0],
      lengths: [letters.length],
      parents: [0],
      elements: [{ tag: 'p', parent: -1 }],
    },
  ],
  clues: noClues({ base: url }),
};
const head = knowing({ heads: [madeHead()] });

it('letters become a list that is read, judged for the head in use, and knows where it stands', async () => {
  const [read, ...others] = await readSent(sent, true, head, by, () => false);
  expect(others).toEqual([]);
  expect(read).toMatchObject({ list: { id: 0 }, proteins: 1, checks: [{ about: 'head' }] });
  expect(read!.places.length).toBeGreaterThan(0);
});

it('what is not wanted any more, and what stands on a paused site, is not read', async () => {
  expect(await readSent(sent, true, head, by, () => true)).toEqual([]);
  const site = { origin: 'https://shop.example', paused: true, notLists: [], listsAt: [] };
  expect(await readSent(sent, true, knowing({ sites: [site] }), by, () => false)).toEqual([]);
});

it('a page is where the browser says it is, whatever it says itself', () => {
  expect(addressOn('https://shop.example', url)).toBe(url);
  expect(addressOn('https://other.example', url)).toBe('https://other.example/');
  expect(addressOn(undefined, 'about:srcdoc')).toBe('about:srcdoc');
});
