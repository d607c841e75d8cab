import Fuse from 'fuse.js';
import type { Product } from '../../core/product/product.ts';
import type { Translate } from '../words/index.ts';

/**
 * Search over the products kept: names, makers, kinds and notes forgive a slip of the pen; names on labels are
 * looked for as they are written. Best first; an empty query gives all as they stand.
 */
export function createSearch(products: readonly Product[], t: Translate) {
  const rows = products.map((product) => ({
    product,
    name: product.name,
    maker: product.maker ?? '',
    kind: product.kind ? t(`routine.kind.${product.kind}`) : '',
    notes: product.notes,
  }));
  const fuse = new Fuse(rows, {
    keys: [
      { name: 'name', weight: 3 },
      { name: 'maker', weight: 2 },
      { name: 'kind', weight: 1 },
      { name: 'notes', weight: 1 },
    ],
    threshold: 0.34,
    ignoreLocation: true,
    minMatchCharLength: 2,
  });
  const labels = products.map(({ labels: [label] }) => label?.text.toLowerCase() ?? '');
  return (query: string): Product[] => {
    const wanted = query.trim().toLowerCase();
    if (!wanted) return [...products];
    const found = new Set(fuse.search(query.trim()).map(({ item }) => item.product));
    if (wanted.length > 2)
      for (const [i, label] of labels.entries()) if (label.includes(wanted)) found.add(products[i]!);
    return [...found];
  };
}
