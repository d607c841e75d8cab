import { bestSource, offerOf, priceOfGrams } from '../../core/product/product.ts';
import { gramsAWash } from '../grams-a-wash.ts';
import type { Knowing } from '../knowing.ts';

export type WashPrices = { of: Map<string, number>; currency: string | undefined };

/**
 * What each product costs at a wash at which it is used: the price of its best source for the grams that one wash
 * takes of it. Where size or price is not known, or in another currency than most have, it is left out.
 */
export function washPrices(knowing: Knowing, products: readonly string[]): WashPrices {
  const asked = new Set(products);
  const priced = knowing.remembered.products.flatMap((product) => {
    const { id } = product;
    if (!asked.has(id)) return [];
    const source = bestSource(product);
    const grams = gramsAWash(knowing, product);
    if (!source || grams === undefined) return [];
    const price = priceOfGrams(offerOf(product, source), grams);
    return price === undefined ? [] : [{ id, currency: source.currency, price }];
  });
  const counts = Map.groupBy(priced, ({ currency }) => currency);
  const [most] = [...counts].toSorted(([, a], [, b]) => b.length - a.length);
  return { of: new Map(most?.[1].map(({ id, price }) => [id, price])), currency: most?.[0] };
}
