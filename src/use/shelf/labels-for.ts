import type { AddressFacts } from '../../contract/shelf.ts';
import type { Product } from '../../core/product/product.ts';
import { productAddress } from '../../find/product/product-address.ts';
import type { LabelMet } from '../../store/remembered.ts';

/**
 * Labels of these addresses: those met while browsing, and those of kept products that were met there. The later
 * reading of one page counts.
 */
export function labelsFor(
  wanted: readonly string[],
  met: ReadonlyMap<string, LabelMet>,
  products: readonly Product[],
  facts: AddressFacts,
): Map<string, LabelMet> {
  const labels = new Map(met);
  const asked = new Set(wanted);
  for (const product of products) {
    const [label] = product.labels;
    for (const { url, price, currency, language, size } of label ? product.sources : []) {
      const address = productAddress(url, url, facts)?.address;
      if (!address || !asked.has(address) || (labels.get(address)?.readOn ?? '') >= label!.seen) continue;
      const { name, maker, kind, use, sizeUnit } = product;
      const holds = size ?? product.size;
      labels.set(address, {
        address,
        text: label!.text,
        readOn: label!.seen,
        product: {
          name,
          url,
          ...(maker && { maker }),
          ...(kind && { kind }),
          ...(use && { use }),
          ...(holds && { size: holds }),
          ...(sizeUnit && { sizeUnit }),
          ...(price !== undefined && { price }),
          ...(currency && { currency }),
          ...(language && { language }),
        },
      });
    }
  }
  return labels;
}
