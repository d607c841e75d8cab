// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { findLists } from '../../src/page/find-lists.ts';

const list = 'Aqua, Glycerin, Cetyl Alcohol, Panthenol, Phenoxyethanol';
const names = list.split(', ');

/** What is found on a page that prints its product's name and holds all else in its state. */
const found = (state: unknown, heading = 'Gannet Curl Jelly') => {
  document.body.innerHTML = `<h1>${heading}</h1><script type="application/json">${JSON.stringify(state).replace(/</g, '\\u003c')}</script>`;
  return findLists(document).map(({ text, via }) => [via, text.replace(/\n/g, ', ')]);
};

// Shapes of states, from memory of how builders of shops print them; products are invented.
const name = 'Gannet Curl Jelly';
it.each([
  ['a field of the product', { props: { pageProps: { product: { name, fullIngredients: list } } } }],
  ['names one by one', { product: { title: name, ingredients: names } }],
  ['names as things', { product: { title: name, inci: names.map((each) => ({ id: 1, name: each })) } }],
  ['tabs', { product: { title: name, tabs: [{ title: 'Ingredients', html: `<p>${list}</p>` }] } }],
  ['fields with a key', { title: name, metafields: [{ key: 'ingredients_list', value: list }] }],
  [
    'formatted text within a string',
    {
      title: name,
      metafields: [
        {
          key: 'ingredients',
          value: JSON.stringify({
            type: 'root',
            children: [{ type: 'paragraph', children: [{ type: 'text', value: list }] }],
          }),
        },
      ],
    },
  ],
  ['an answer within a string', { status: 200, body: JSON.stringify({ item: { name, composition: list } }) }],
  ['values that are places in one array', [{ product: 1 }, { title: 2, ingredients: 3 }, name, list]],
])('reads %s', (_kind, state) => {
  expect(found(state)).toEqual([['data', list]]);
});

it.each([
  ['another product', { product: { name: 'Tern Oil', ingredients: list } }],
  [
    'one that goes with it',
    { product: { name, slug: 'a', related: [{ name: 'Tern Oil', slug: 'b', ingredients: list }] } },
  ],
  ['a filter', { facets: [{ name: 'Ingredients', values: names }] }],
  ['what is left out', { product: { name, freeFromIngredients: names, withoutIngredients: list } }],
  ['a choice', { product: { name, keyIngredients: names.slice(2) } }],
  ['what is no list', { product: { name, ingredients: 'Read the pack.' } }],
  ['nothing', []],
])('says nothing of %s', (_kind, state) => {
  expect(found(state)).toEqual([]);
});

it('reads no state where the page prints a list', () => {
  const other = 'Aqua, Glycerin, Betaine, Coumarin, Linalool, Parfum';
  document.body.innerHTML = `<h1>${name}</h1><h3>Ingredients</h3><p>${other}</p><script type="application/json">${JSON.stringify({ name, ingredients: list })}</script>`;
  expect(findLists(document).map(({ text }) => text)).toEqual([other]);
});

it('a text that many places lead to is opened once', () => {
  const large = JSON.stringify(Array.from({ length: 20_000 }, (_, i) => `${i} of many`));
  const began = performance.now();
  const places = Array.from({ length: 5000 }, () => ({ note: 1 }));
  expect(found([{ note: list }, large, ...places])).toEqual([]);
  expect(performance.now() - began).toBeLessThan(2000);
});

it('places that lead in a circle end', () => {
  const circle = Array.from({ length: 300 }, () => 3);
  const began = performance.now();
  expect(found([{ product: 1 }, { title: 2, ingredients: 3 }, name, circle, list])).toEqual([]);
  expect(performance.now() - began).toBeLessThan(1000);
});
