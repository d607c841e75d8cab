import { exposureOf } from '../../core/amounts/brings.ts';
import { bestSource, offerOf, priceOfGrams, usualUse } from '../../core/product/product.ts';
import type { Knowing } from '../knowing.ts';

export type WashPrices = { of: Map<string, number>; currency: string | undefined };

/**
 * What each product costs at a wash at which it is used: the price of its best source for the usual grams of its
 * kind. Where size or price is not known, or in another currency than most have, it is left out.
 */
export function washPrices({ remembered, practice }: Knowing, products: readonly string[]): WashPrices {
  const priced = remembered.products.flatMap((product) => {
    const { id, kind } = product;
    if (!kind || !products.includes(id)) return [];
    const source = bestSource(product);
    const { grams } = exposureOf({ kind, use: product.use ?? usualUse[kind] }, practice.washDay);
    const price = source && priceOfGrams(offerOf(product, source), grams);
    return price === undefined ? [] : [{ id, currency: source!.currency, price }];
  });
  const counts = Map.groupBy(priced, ({ currency }) => currency);
  const [most] = [...counts].toSorted(([, a], [, b]) => b.length - a.length);
  return { of: new Map(most?.[1].map(({ id, price }) => [id, price])), currency: most?.[0] };
}
