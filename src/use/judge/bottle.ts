import { type Product, usualUse } from '../../core/product/product.ts';
import { sameList } from '../../core/product/same-list.ts';
import { findSame, plainName } from '../../core/product/same-product.ts';
import type { Knowing, Met } from '../knowing.ts';
import { readingOf } from './wash-day-input.ts';

/**
 * A product typed in by hand whose list is the one of a page's product under another name, or spelled otherwise.
 * Only asked about, never taken: some makers sell one list under two names.
 */
export function bottleLike(knowing: Knowing, met: Met): Product | undefined {
  const { products } = knowing.remembered;
  const { facts, text } = met;
  if (!facts.url || findSame(products, met)) return undefined;
  const typed = products.filter(({ sources, maker, kind }) => {
    const makers = maker && facts.maker ? [plainName(maker), plainName(facts.maker)] : [];
    return sources.length === 0 && makers[0] === makers[1] && (!kind || !facts.kind || kind === facts.kind);
  });
  return typed.find((product) => {
    const kind = product.kind ?? facts.kind;
    const as = { kind, use: product.use ?? (kind && usualUse[kind]) };
    return sameList(readingOf(knowing, product, as), knowing.reading(text, { ...as, facts }));
  });
}
