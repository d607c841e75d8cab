import { pricePer100 } from '../../core/product/product.ts';
import type { ShelfProduct } from '../../use/shelf/know-product.ts';
import type { Translate } from '../words/index.ts';
import type { ShelfSays } from './drawn/draw-shelf.ts';
import { money } from './money.ts';
import { verdictOf } from './verdict.ts';

/** What a shelf says of a product that is known, in words. @param printed what its card calls it */
export function saysOf(product: ShelfProduct, printed: string, t: Translate): ShelfSays {
  const { entry, known, checks, protein, moisture, passes } = product;
  const per = pricePer100(known.facts);
  const { currency, sizeUnit = 'ml' } = known.facts;
  return {
    address: entry.address,
    name: printed || entry.product.name,
    verdicts: checks.map((check) => verdictOf(check, t)),
    protein,
    moisture,
    passes,
    readOn: entry.readOn,
    kept: known.kept !== undefined,
    granted: product.granted.length > 0,
    notForHair: product.notForHair,
    ...(per !== undefined && currency && { price: { price: money(per, currency, t.lang), unit: sizeUnit } }),
  };
}
