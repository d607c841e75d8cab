import { expect, it } from 'vitest';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import { withKind } from '../../../entrypoints/background/knowing/kinds.ts';
import { readingsOfDictionary } from '../../../entrypoints/background/knowing/readings.ts';
import { looseText } from '../../../src/find/text/page-text.ts';
import { createShelfCache } from '../../../src/store/shelf-cache.ts';
import { createMetLabels } from '../../../src/use/shelf/met-labels.ts';
import { noClues } from '../../find/no-clues.ts';
import { slowArea } from '../../keeping/area.ts';
import { slowSession } from '../../keeping/session.ts';
import { nothing } from '../knowing.ts';

const address = 'https://shop.example/products/saltgrass-gel';
const readings = readingsOfDictionary();

function labels() {
  const cache = createShelfCache(slowArea().area, shelfFacts.remembered);
  const met = createMetLabels({ cache, session: slowSession(), readings, facts: shelfFacts, withKind });
  const known = async () => (await met.of([address], nothing)).get(address)?.text;
  return { met, known };
}
const list = { id: 0, text: 'Aqua, Glycerin', via: 'heading', product: { name: 'Saltgrass Gel' } };
const page = (letters: string) => ({
  address,
  at: address,
  name: 'Saltgrass Gel',
  texts: [looseText(letters)],
  clues: noClues({ base: address }),
  letters: 5000,
  asksPassword: false,
});

it('a label read on its product’s own page is known to its shelf', async () => {
  const { met, known } = labels();
  await met.meet(list, `${address}?variant=2`);
  expect(await known()).toBe('Aqua, Glycerin');
});

it('a page that was open when everything was deleted is not remembered again by itself', async () => {
  const { met, known } = labels();
  await met.deletedWith([address]);
  await met.meet(list, address);
  expect(await known()).toBeUndefined();
});

it('a page that a shelf asked for gives its label, on the shelf’s own site alone', async () => {
  const { met, known } = labels();
  const asked = page('Ingredients: Aqua, Glycerin, Hydrolyzed Keratin, Panthenol, Phenoxyethanol.');
  expect(await met.take(asked, 'https://other.example')).toEqual({ why: 'elsewhere' });
  expect(await known()).toBeUndefined();
  expect(await met.take(asked, 'https://shop.example')).toEqual({});
  expect(await known()).toContain('Hydrolyzed Keratin');
});

it('a page without a list says so and leaves nothing', async () => {
  const { met, known } = labels();
  const asked = page('A gel for slow mornings. Squeeze it in while the hair is wet.');
  expect(await met.take(asked, 'https://shop.example')).toEqual({ why: 'no-list' });
  expect(await known()).toBeUndefined();
});
