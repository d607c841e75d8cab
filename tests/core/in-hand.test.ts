import { expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { inHand } from '../../src/core/amounts/in-hand.ts';
import { productKinds } from '../../src/core/product/product.ts';

const { washDay } = practice;

// A teaspoon is 5 ml, a tablespoon 15; the rest is common practice.
it.each([
  ['conditioner', 10.2, 'two-teaspoons'],
  ['deep-conditioner', 15, 'tablespoon'],
  ['cleanser', 5, 'teaspoon'],
  ['cream', 2.5, 'coin'],
  ['oil', 0.5, 'pea'],
  ['conditioner', 30, 'palm'],
  ['foam', 5, 'egg'],
  ['foam', 10, 'orange'],
  ['hairspray', 2.7, undefined],
  ['rinse', 50, undefined],
  ['gel', 0, undefined],
] as const)('%s, %d g: %s', (kind, grams, measure) => expect(inHand(kind, grams, washDay)).toBe(measure));

it('no measure is smaller for more grams, and all kinds but sprays and poured rinses have one', () => {
  for (const measures of [washDay.inHand.measures, washDay.inHand.foam])
    expect(measures.map(({ upTo }) => upTo)).toEqual(
      measures.map(({ upTo }) => upTo).toSorted((a, b) => a - b),
    );
  const without = productKinds.filter((kind) => !inHand(kind, washDay.exposure[kind].grams, washDay));
  expect(without).toEqual(['rinse', 'hairspray', 'refresh-spray', 'dry-shampoo']);
});
