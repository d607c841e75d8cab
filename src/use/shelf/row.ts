import type { ShelfRow } from '../../contract/shelf.ts';
import { worstOf } from '../../core/judge/finding.ts';
import { pricePer100 } from '../../core/product/product.ts';
import type { ShelfProduct } from './know-product.ts';

/** A product that is known as a row of a table. @param printed what its card calls it */
export function rowOf(
  { entry, known, checks, protein, moisture, notForHair }: ShelfProduct,
  printed: string,
): ShelfRow {
  const per100 = pricePer100(known.facts);
  return {
    address: entry.address,
    name: printed || entry.product.name,
    state: 'read',
    protein,
    moisture,
    ...(notForHair && { notForHair }),
    ...(checks.length > 0 && { answer: worstOf(checks) }),
    ...(per100 !== undefined && { per100 }),
    ...(known.facts.currency && { currency: known.facts.currency }),
  };
}
