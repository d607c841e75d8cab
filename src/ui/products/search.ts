import Fuse from 'fuse.js';
import type { Product } from '../../core/product/product.ts';
import type { Translate } from '../words/index.ts';

const perSlice = 250; // products that are searched without a pause

type Searched = { product: Product; name: string; maker: string; kind: string; notes: string };

const options = {
  keys: [
    { name: 'name', weight: 3 },
    { name: 'maker', weight: 2 },
    { name: 'kind', weight: 1 },
    { name: 'notes', weight: 1 },
  ],
  threshold: 0.34,
  ignoreLocation: true,
  minMatchCharLength: 2,
  includeScore: true,
};

/**
 * Search over the products kept: names, makers, kinds and notes forgive a slip of the pen; names on labels are
 * looked for as they are written. Best first; an empty query gives all as they stand. Pauses after each few products.
 */
export function createSearch(products: readonly Product[], t: Translate) {
  const rowOf = (product: Product): Searched => ({
    product,
    name: product.name,
    maker: product.maker ?? '',
    kind: product.kind ? t(`routine.kind.${product.kind}`) : '',
    notes: product.notes,
  });
  const starts = Array.from({ length: Math.ceil(products.length / perSlice) }, (_, i) => i * perSlice);
  const slices = starts.map((from) => products.slice(from, from + perSlice));
  const made: Fuse<Searched>[] = [];

  return function* search(query: string): Generator<void, Product[]> {
    const wanted = query.trim();
    if (!wanted) return [...products];
    const hits: { product: Product; score: number }[] = [];
    const printed: Product[] = [];
    for (const [at, slice] of slices.entries()) {
      made[at] ??= new Fuse(slice.map(rowOf), options);
      for (const { item, score = 1 } of made[at].search(wanted)) hits.push({ product: item.product, score });
      if (wanted.length > 2)
        printed.push(...slice.filter(({ labels: [label] }) => holds(label?.text, wanted)));
      yield;
    }
    const best = hits.toSorted((a, b) => a.score - b.score).map(({ product }) => product);
    return [...new Set([...best, ...printed])];
  };
}

const holds = (label: string | undefined, wanted: string) =>
  label?.toLowerCase().includes(wanted.toLowerCase()) ?? false;
