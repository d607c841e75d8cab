// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { findLists } from '../../src/page/find-lists.ts';
import { barely, cosmeticPages, shapeNames, silentPages, silentPools } from './random-lists.ts';

const found = (body: string) => {
  document.body.innerHTML = body;
  return findLists(document).map(({ text }) => barely(text));
};

it.each(shapeNames)('200 cosmetic lists drawn at random, %s, are read letter for letter', (shape) => {
  const wrong = cosmeticPages(shape, 200).filter(({ body, wanted }) => found(body).join(' | ') !== wanted);
  expect(wrong).toEqual([]);
});

it.each(silentPools)('300 lists of %s drawn at random, in each shape, show nothing', (pool) => {
  for (const shape of shapeNames)
    for (const body of silentPages(pool, shape, 300)) expect(found(body), body).toEqual([]);
});
