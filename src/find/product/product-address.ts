import type { AddressFacts } from '../../contract/shelf.ts';

/** An address on the same shop, as the one product it shows is remembered by. */
export type ProductAddress = {
  /** Absolute, without fragment, tracking and variant: one product has one. */
  address: string;
  /** A word of its path says that products stand there. */
  saysProduct: boolean;
};

/**
 * The address of a product a link of a page leads to; undefined where it leads off this shop, nowhere, or to a
 * place that shows no product. Parameters are put in order, so one product met twice is one.
 * @param href as printed in the link
 * @param base address of the page the link stands on
 */
export function productAddress(href: string, base: string, facts: AddressFacts): ProductAddress | undefined {
  const [to, here] = [urlOf(href, base), urlOf(base)];
  if (!to || !here || to.origin !== here.origin || !/^https?:$/.test(to.protocol)) return undefined;
  if (to.username || to.password || to.href.length > 2000) return undefined;
  let path = to.pathname.replace(/\/{2,}/g, '/').replace(/(?<=.)\/$/, '');
  for (const within of facts.within) path = path.replace(new RegExp(within, 'iu'), '');
  const words = path.toLowerCase().split('/').filter(Boolean);
  const first = words.find(
    (word) => !/^[a-z]{2}(?:[-_][a-z]{2})?$/.test(word) || facts.product.includes(word),
  );
  if (!first || facts.elsewhere.some((word) => new RegExp(`^${word}$`, 'u').test(first))) return undefined;
  const dropped = [...facts.tracking, ...facts.variant].map((each) => new RegExp(each, 'iu'));
  const kept = [...to.searchParams]
    .filter(([name]) => !dropped.some((each) => each.test(name)))
    .sort(([a, x], [b, y]) => a.localeCompare(b, 'en') || x.localeCompare(y, 'en'));
  const query = new URLSearchParams(kept).toString();
  const saysProduct = words
    .slice(0, -1)
    .some((word) => facts.product.some((each) => new RegExp(`^${each}$`, 'u').test(word)));
  return { address: `${to.origin}${path}${query && `?${query}`}`, saysProduct };
}

function urlOf(href: string, base?: string): URL | undefined {
  try {
    return new URL(href, base);
  } catch {
    return undefined;
  }
}
