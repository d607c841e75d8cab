import type { ProductKind } from '../product/product.ts';

/** What so many grams are as large as, spoons being 5 and 15 ml. */
export type HandMeasure =
  | 'pea'
  | 'coin'
  | 'teaspoon'
  | 'two-teaspoons'
  | 'tablespoon'
  | 'palm'
  | 'egg'
  | 'orange';

/** dictionary/amounts/in-hand.json: common practice. Measures by their most grams, smallest first. */
export type InHandPractice = {
  inHand: {
    measures: { is: HandMeasure; upTo: number }[];
    /** The same of foam, which is mostly air. */
    foam: { is: HandMeasure; upTo: number }[];
    /** Kinds that are sprayed: nothing of them is seen in the hand. */
    not: ProductKind[];
    sources: string[];
  };
};

/** What grams of a kind of product look like in the hand; undefined where it is sprayed, none, or more than a hand holds. */
export function inHand(
  kind: ProductKind,
  grams: number,
  { inHand: { measures, foam, not } }: InHandPractice,
): HandMeasure | undefined {
  if (not.includes(kind) || grams <= 0) return undefined;
  return (kind === 'foam' ? foam : measures).find(({ upTo }) => grams <= upTo)?.is;
}
