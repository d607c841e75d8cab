import type { ProductKind } from '../product/product.ts';
import type { BringsPractice } from './brings.ts';

/** Grams of each kind of product that a person says they use at a time. */
export type OwnAmounts = { [kind in ProductKind]?: number };

/** The practice of a person who said how much they use: beside the usual amounts, which stay the scale. */
export function withOwn<P extends BringsPractice>(practice: P, own: OwnAmounts | undefined): P {
  if (!own) return practice;
  const exposure = Object.fromEntries(
    Object.entries(practice.exposure).map(([kind, row]) => {
      const grams = own[kind as ProductKind];
      return [kind, grams === undefined ? row : { ...row, own: grams }];
    }),
  );
  return { ...practice, exposure };
}
