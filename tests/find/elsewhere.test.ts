// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { findLists } from '../../src/page/find-lists.ts';

const cleaner =
  'Aqua, Sodium Laureth Sulfate, Cocamidopropyl Betaine, Citric Acid, Parfum, Limonene, Benzisothiazolinone';
const found = (body: string) => {
  document.body.innerHTML = body;
  return findLists(document);
};

// Goods and sentences are invented.
it.each([
  ['a name', `<h1>Lemon dish soap</h1><h3>Ingredients</h3><p>${cleaner}</p>`],
  ['a name in German', `<h1>Allzweckreiniger Zitrone</h1><h3>Inhaltsstoffe</h3><p>${cleaner}</p>`],
  [
    'the text around',
    `<h1>Lemon spray</h1><p>Wipes grease off countertops, tiles and worktops.</p><h3>Ingredients</h3><p>${cleaner}</p>`,
  ],
])('a list is for the home by %s', (_what, body) => {
  expect(found(body).map(({ elsewhere }) => elsewhere)).toEqual([true]);
});

it.each([
  `<h1>Lemon shampoo</h1><p>Rinses off hair and tiles.</p><h3>Ingredients</h3><p>${cleaner}</p>`,
  `<h1>Lemon rinse</h1><p>For every day.</p><h3>Ingredients</h3><p>${cleaner}</p>`,
])('and else it is not', (body) => {
  expect(found(body).map(({ elsewhere }) => elsewhere)).toEqual([undefined]);
});
