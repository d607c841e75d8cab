import type { Use } from '../../core/names/entry.ts';
import type { Product, ProductFacts, ProductKind } from '../../core/product/product.ts';
import { findSame } from '../../core/product/same-product.ts';
import type { Remembered } from '../../store/remembered.ts';

/** A product as it stands in a comparison, wherever it came from. */
export type Compared = {
  /** What `settings.pinned` holds: the id of a kept product, or the whole of one that is not kept, as JSON. */
  pin: string;
  name: string;
  text: string;
  maker?: string;
  kind?: ProductKind;
  use?: Use;
  size?: number;
  sizeUnit?: 'ml' | 'g';
  price?: number;
  currency?: string;
  url?: string;
};

/** A list met on a page or pasted, with what is known of its product. */
export function comparedOf(text: string, facts: ProductFacts): Compared {
  const { name, maker, kind, use, size, sizeUnit, price, currency, url } = facts;
  const known = Object.fromEntries(
    Object.entries({ name, text, maker, kind, use, size, sizeUnit, price, currency, url }).filter(
      ([, value]) => value !== undefined,
    ),
  ) as Omit<Compared, 'pin'>;
  return { ...known, pin: JSON.stringify(known) };
}

/** A kept product with its newest label and newest price. */
export function comparedProduct(product: Product): Compared {
  const [source] = product.sources;
  const priced = product.sources.find(({ price }) => price !== undefined);
  return {
    ...comparedOf(product.labels[0]?.text ?? '', {
      ...product,
      ...(priced?.price !== undefined && { price: priced.price }),
      ...(priced?.currency && { currency: priced.currency }),
      ...(source && { url: source.url }),
    }),
    pin: product.id,
  };
}

/** Pins with one more product of a page at the end, by its id where it is kept; the oldest of five goes. */
export function pinsWith(remembered: Remembered, text: string, facts: ProductFacts): string[] {
  const pins = remembered.settings.pinned ?? [];
  const pin = findSame(remembered.products, { text, facts })?.id ?? comparedOf(text, facts).pin;
  return pins.includes(pin) ? pins : [...pins, pin].slice(-4);
}

/** Pins back to products, in order; a pin whose product was forgotten, or that is no JSON of ours, is left out. */
export function pinnedOf(pins: readonly string[], products: readonly Product[]): Compared[] {
  return pins.flatMap((pin) => {
    const kept = products.find(({ id }) => id === pin);
    if (kept) return [comparedProduct(kept)];
    try {
      const value: unknown = JSON.parse(pin);
      const { name, text } = value as Partial<Compared>;
      return typeof name === 'string' && typeof text === 'string' ? [{ ...(value as Compared), pin }] : [];
    } catch {
      return [];
    }
  });
}
