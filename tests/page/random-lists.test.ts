// @vitest-environment happy-dom
import { expect, it, vi } from 'vitest';
import { findLists } from '../../src/page/find-lists.ts';
import { barely, cosmeticPages, shapeNames, silentPages, silentPools } from './random-lists.ts';

vi.setConfig({ testTimeout: 120_000 });

const found = (body: string) => {
  document.body.innerHTML = body;
  return findLists(document).map(({ text }) => barely(text));
};

// With no heading, eight or nine names without water first may not be enough to tell a list by.
const untold = (shape: string) => (shape === 'without a heading' ? 10 : 0);

it.each(shapeNames)('200 cosmetic lists drawn at random, %s, are read letter for letter', (shape) => {
  const wrong = cosmeticPages(shape, 200).flatMap(({ body, wanted }) => {
    const texts = found(body);
    return texts.join(' | ') === wanted ? [] : [{ body, texts }];
  });
  expect(wrong.filter(({ texts }) => texts.length > 0)).toEqual([]);
  expect(wrong.length).toBeLessThanOrEqual(untold(shape));
});

it.each(silentPools)('100 lists of %s drawn at random, in each shape, show nothing', (pool) => {
  for (const shape of shapeNames)
    for (const body of silentPages(pool, shape, 100)) expect(found(body), body).toEqual([]);
});
