import { expect, it } from 'vitest';
import type { TabPage } from '../../../src/contract/messages.ts';
import { pictureWanted } from '../../../src/use/acts/picture-wanted.ts';
import { madeProduct } from '../../keeping/made.ts';
import { nothing } from '../knowing.ts';

const text = 'Aqua, Glycerin';
const image = 'https://shop.example/gel.png';
const facts = { name: 'Saltgrass Gel', url: 'https://shop.example/gel' };
const shown = { id: 0, frame: 0, text, via: 'heading', product: { ...facts, image } };
const page: TabPage = { url: facts.url, title: 'Gel', lists: [shown] };
const keep = (of = text) => ({ act: 'keep', met: { text: of, facts }, id: 'new' }) as const;
const kept = madeProduct({ name: facts.name, labels: [{ text, seen: '2026-01-01' }], sources: [] });
const remembered = (products: (typeof kept)[], pictures = true) => ({
  ...nothing,
  products,
  settings: { ...nothing.settings, pictures },
});

it('a product that the page shows is kept with its picture, by the page’s own word of it where there is one', () => {
  expect(pictureWanted(keep(), nothing, page)).toEqual({ said: image, on: page.url });
  const { product: _, ...bare } = shown;
  expect(pictureWanted(keep(), nothing, { ...page, lists: [bare] })).toEqual({
    said: undefined,
    on: page.url,
  });
  const { maker: __, ...own } = kept;
  expect(pictureWanted(keep(), remembered([own]), page)).toEqual({ said: image, on: page.url });
});

it.each([
  ['the tab shows no page', keep(), nothing, null],
  ['the page shows another list', keep('Aqua, Parfum'), nothing, page],
  ['the list stands in a frame', keep(), nothing, { ...page, lists: [{ ...shown, frame: 3 }] }],
  ['the reader wants no pictures', keep(), remembered([], false), page],
  ['it has one already', keep(), remembered([{ ...kept, picture: 'p1' }]), page],
])('no picture is taken where %s', (_, act, all, tab) => {
  const { maker: __, ...bare } = all.products[0] ?? kept;
  expect(pictureWanted(act, { ...all, products: all.products.length ? [bare] : [] }, tab)).toBeUndefined();
});

it('a product of a card on a shelf is kept with the picture of that card', () => {
  const card = 'https://shop.example/gel';
  expect(pictureWanted(keep(), nothing, null, card)).toEqual({ card, on: undefined });
  expect(pictureWanted(keep(), remembered([], false), null, card)).toBeUndefined();
});
