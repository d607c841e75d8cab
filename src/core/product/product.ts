import type { Use } from '../names/entry.ts';

export const productKinds = [
  'pre-wash',
  'bond-treatment',
  'protein-treatment',
  'cleanser',
  'rinse',
  'conditioner',
  'deep-conditioner',
  'scalp-treatment',
  'leave-in',
  'cream',
  'foam',
  'gel',
  'serum',
  'oil',
  'hairspray',
  'refresh-spray',
  'dry-shampoo',
] as const;

export type ProductKind = (typeof productKinds)[number];

/** What is for sale where it is no single product of a wash day. */
export type OtherGoods =
  /** For another place than the head's hair, or with no place in a wash day: colour, relaxer, supplement. */
  | 'not-hair'
  /** A brush, a cap, a device, a voucher. */
  | 'accessory'
  /** Several products sold as one. */
  | 'kit';

/** Rinse-off or leave-on as a kind usually is; the user may correct it. Common practice. */
export const usualUse: Record<ProductKind, Use> = {
  'pre-wash': 'rinse-off',
  'bond-treatment': 'rinse-off',
  'protein-treatment': 'rinse-off',
  cleanser: 'rinse-off',
  rinse: 'rinse-off',
  conditioner: 'rinse-off',
  'deep-conditioner': 'rinse-off',
  'scalp-treatment': 'leave-on',
  'leave-in': 'leave-on',
  cream: 'leave-on',
  foam: 'leave-on',
  gel: 'leave-on',
  serum: 'leave-on',
  oil: 'leave-on',
  hairspray: 'leave-on',
  'refresh-spray': 'leave-on',
  'dry-shampoo': 'leave-on',
};

/** What a page says of the product whose list it prints. Everything but the name may be missing. */
export type ProductFacts = {
  name: string;
  maker?: string;
  kind?: ProductKind;
  /** Set where the words name goods that are no single product of a wash day; then `kind` is absent. */
  goods?: OtherGoods;
  use?: Use;
  /** Millilitres (grams taken as millilitres where only a weight is printed; `sizeUnit` says which). */
  size?: number;
  sizeUnit?: 'ml' | 'g';
  price?: number;
  /** ISO 4217. */
  currency?: string;
  /** The page's, BCP 47. */
  language?: string;
  url?: string;
  variant?: string;
  image?: string;
  /** Words around the product that may name its kind: page title, breadcrumb, category. */
  category?: string;
};

/** Price for 100 ml (or 100 g), or undefined where size or price is not known. */
export function pricePer100(product: Pick<ProductFacts, 'price' | 'size'>): number | undefined {
  if (!product.price || !product.size) return undefined;
  return (product.price / product.size) * 100;
}

/** Price of so many grams; a gram is taken as a millilitre. */
export function priceOfGrams(
  product: Pick<ProductFacts, 'price' | 'size'>,
  grams: number,
): number | undefined {
  const per = pricePer100(product);
  return per === undefined ? undefined : (per * grams) / 100;
}

export type LabelText = {
  text: string;
  /** ISO date-time at which this text was met. */
  seen: string;
  /** Page it was met on; absent when it was typed or pasted. */
  url?: string;
};

/** One page that sells it. Its own size, where that differs, is what its price is for. */
export type ProductSource = {
  url: string;
  price?: number;
  currency?: string;
  /** The page's, BCP 47. */
  language?: string;
  variant?: string;
  size?: number;
  sizeUnit?: 'ml' | 'g';
  seen: string;
};

/** A product kept by the user. */
export type Product = {
  id: string;
  name: string;
  maker?: string;
  kind?: ProductKind;
  /** What its page called it where that is no product of a wash day; a kind the user gives comes before it. */
  goods?: OtherGoods;
  use?: Use;
  size?: number;
  sizeUnit?: 'ml' | 'g';
  /** Latest label first; earlier ones are kept when a label changes. */
  labels: LabelText[];
  sources: ProductSource[];
  owned: boolean;
  notes: string;
  /** Key of its small picture among the photos. */
  picture?: string;
  added: string;
};

/** What a source asks for its amount: price and size as far as they are known, the product's own size else. */
export function offerOf(
  product: Pick<Product, 'size' | 'sizeUnit'>,
  source: Pick<ProductSource, 'price' | 'size' | 'sizeUnit'>,
) {
  const { size, sizeUnit = 'ml' } = source.size === undefined ? product : source;
  const { price } = source;
  return { ...(price !== undefined && { price }), ...(size !== undefined && { size }), sizeUnit };
}

/** The cheapest source for its amount, else the first with a price. Prices in other currencies are not compared. */
export function bestSource(product: Product): ProductSource | undefined {
  const priced = product.sources.filter(({ price }) => price !== undefined);
  const [first] = priced;
  const per = (source: ProductSource) => pricePer100(offerOf(product, source)) ?? Number.POSITIVE_INFINITY;
  return priced.filter(({ currency }) => currency === first?.currency).toSorted((a, b) => per(a) - per(b))[0];
}
