import type { Product, ProductFacts } from '../../../core/product/product.ts';
import { findSame } from '../../../core/product/same-product.ts';
import type { Pin, Remembered } from '../../../store/remembered.ts';
import type { Decided, Met } from '../../knowing.ts';

export type { Pin } from '../../../store/remembered.ts';

/** A product as it stands in a comparison, wherever it came from. */
export type Compared = Omit<ProductFacts, 'variant' | 'image' | 'category'> & { pin: Pin; text: string };

/** Products side by side, at most. */
export const mostPinned = 4;

export const pinOf = (product: string): Pin => ({ product });

/** One word for one pin, for lists of them. */
export const pinKey = (pin: Pin): string => JSON.stringify('product' in pin ? pin.product : pin.met);

export const isPinOf = (a: Pin, b: Pin): boolean => pinKey(a) === pinKey(b);

/** A list met on a page or pasted, with what is known of its product. */
export function comparedMet({ text, facts }: Met): Compared {
  const { variant: _, image: __, category: ___, ...rest } = facts;
  return { ...rest, text, pin: { met: { text, facts: rest } } };
}

/** A kept product with its newest label and the newest price that is known. */
export function comparedProduct(product: Product): Compared {
  const { id, name, maker, kind, use, size, sizeUnit, labels, sources } = product;
  const priced = sources.find(({ price }) => price !== undefined);
  const facts = {
    name,
    maker,
    kind,
    use,
    size,
    sizeUnit,
    url: sources[0]?.url,
    language: sources[0]?.language,
  };
  const known = Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined));
  return {
    ...(known as ProductFacts),
    ...(priced?.price !== undefined && { price: priced.price }),
    ...(priced?.currency && { currency: priced.currency }),
    text: labels[0]?.text ?? '',
    pin: pinOf(id),
  };
}

/** What is pinned, in order; a pin whose product was forgotten is left out. */
export const pinnedProducts = ({
  settings: { pinned = [] },
  products,
}: Pick<Remembered, 'settings' | 'products'>): Compared[] =>
  pinned.flatMap((pin) => {
    if ('met' in pin) return [comparedMet(pin.met)];
    const kept = products.find(({ id }) => id === pin.product);
    return kept ? [comparedProduct(kept)] : [];
  });

const set = (pinned: Pin[]): Decided['changes'] => [{ do: 'set', settings: { pinned } }];

/** Pins one more product at the end, by its id where it is kept; the oldest of five goes. */
export function pinProduct(remembered: Remembered, what: Pin): Decided {
  const { pinned = [] } = remembered.settings;
  const kept = 'met' in what ? findSame(remembered.products, what.met) : undefined;
  const wanted = kept ? pinOf(kept.id) : what;
  if (pinned.some((each) => isPinOf(each, wanted))) return { changes: [] };
  const name = 'met' in wanted ? wanted.met.facts.name : (kept?.name ?? nameOf(remembered, wanted.product));
  return {
    changes: set([...pinned, wanted].slice(-mostPinned)),
    say: { key: 'panel.action.compare-now', values: { name } },
  };
}

export function unpin(remembered: Remembered, what: Pin): Decided {
  const { pinned = [] } = remembered.settings;
  const name = 'met' in what ? what.met.facts.name : nameOf(remembered, what.product);
  return {
    changes: set(pinned.filter((each) => !isPinOf(each, what))),
    say: { key: 'compare.unpinned', values: { name } },
  };
}

const nameOf = ({ products }: Remembered, product: string) =>
  products.find(({ id }) => id === product)?.name ?? '';
