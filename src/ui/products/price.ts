import {
  bestSource,
  offerOf,
  type Product,
  type ProductSource,
  priceOfGrams,
  pricePer100,
} from '../../core/product/product.ts';
import { dotted } from '../describe/dotted.ts';
import { money } from '../describe/money.ts';
import type { Translate } from '../words/index.ts';

type Sized = Pick<Product, 'size' | 'sizeUnit'>;
type Priced = Pick<ProductSource, 'price' | 'currency' | 'size' | 'sizeUnit'>;

/**
 * "€7.00 for 100 ml · about €0.42 a wash": what it costs for its amount and, where `grams` of it are used at a
 * wash, for each; undefined where size or price is not known.
 */
export function amountPriceWords(
  t: Translate,
  product: Sized,
  source: Priced,
  grams?: number,
): string | undefined {
  const offered = offerOf(product, source);
  const per = pricePer100(offered);
  if (per === undefined) return undefined;
  const of = (price: number) => money(price, source.currency, t.lang);
  const wash = grams === undefined ? undefined : priceOfGrams(offered, grams);
  return dotted([
    t('products.per-100', { price: of(per), unit: offered.sizeUnit }),
    ...(wash === undefined ? [] : [t('products.per-wash', { price: of(wash) })]),
  ]);
}

/** "€14.00 · €7.00 for 100 ml · about €0.42 a wash"; undefined where a source says no price. */
export function priceWords(t: Translate, product: Sized, source: Priced, grams?: number): string | undefined {
  if (source.price === undefined) return undefined;
  return dotted([money(source.price, source.currency, t.lang), amountPriceWords(t, product, source, grams)]);
}

/** Price for 100 ml or g of the best source; infinite where it is not known, so that those come last. */
export function per100(product: Product): number {
  const source = bestSource(product);
  return (source && pricePer100(offerOf(product, source))) ?? Number.POSITIVE_INFINITY;
}

/** "200 ml" in the user's own digits. */
export const sizeWords = (t: Translate, { size, sizeUnit }: Pick<Product, 'size' | 'sizeUnit'>) =>
  size === undefined ? undefined : `${new Intl.NumberFormat(t.lang).format(size)} ${sizeUnit ?? 'ml'}`;

/** A day as people write it. */
export const dayWords = (t: Translate, iso: string) =>
  new Intl.DateTimeFormat(t.lang, { dateStyle: 'medium' }).format(new Date(iso));

/** Host of a page, without www. */
export function shopOf(url: string): string {
  try {
    return new URL(url).host.replace(/^www\./, '');
  } catch {
    return url;
  }
}
