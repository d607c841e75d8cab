import type { FoundText, TabPage } from '../../contract/messages.ts';
import type { Use } from '../../core/names/entry.ts';
import { type Product, type ProductFacts, type ProductKind, usualUse } from '../../core/product/product.ts';
import { findSame } from '../../core/product/same-product.ts';
import type { Remembered } from '../../store/remembered.ts';
import { correctedKind } from '../acts/matters/sites.ts';
import type { Met } from '../knowing.ts';

/** A list of a page with its product: at least a name, and where it was met. */
export function metOnPage(
  { text, product, elsewhere }: Pick<FoundText, 'text' | 'product' | 'elsewhere'>,
  page: Pick<TabPage, 'url' | 'title'> | null,
): Met {
  const url = product?.url ?? page?.url;
  const facts = { ...(product ?? { name: page?.title ?? '' }), ...(url && { url }) };
  return { text, facts: factsAround(facts, { elsewhere }) };
}

/** What a page says of a product, with what the list around it says: that it is for rooms, dishes or cloth. */
export const factsAround = (
  facts: ProductFacts,
  { elsewhere }: { elsewhere?: true | undefined },
): ProductFacts => (elsewhere ? { ...facts, goods: 'not-hair' } : facts);

/** By its page it is for another place than hair, and the user has not said what it is: it is read, not judged. */
export const isNotForHair = ({ kept, kind, facts }: KnownProduct): boolean =>
  kept ? isKeptForElsewhere(kept) : !kind && facts.goods === 'not-hair';

/** The same of a product kept. */
export const isKeptForElsewhere = ({ kind, goods }: Pick<Product, 'kind' | 'goods'>): boolean =>
  !kind && goods === 'not-hair';

/** What the program knows of a product that was met, the user's own word before the page's. */
export type KnownProduct = {
  /** The product kept that this one is. */
  kept: Product | undefined;
  kind: ProductKind | undefined;
  use: Use | undefined;
  /** What the page says, with that kind and use. */
  facts: ProductFacts;
};

export function knownProduct(remembered: Remembered, met: Met): KnownProduct {
  const { facts } = met;
  const kept = findSame(remembered.products, met);
  const corrected = correctedKind(remembered, facts);
  const kind = kept?.kind ?? corrected ?? facts.kind;
  const told = kind === facts.kind ? facts.use : undefined;
  const use = kept?.use ?? told ?? (kind ? usualUse[kind] : facts.use);
  return { kept, kind, use, facts: { ...facts, ...(kind && { kind }), ...(use && { use }) } };
}
