import { attribute, native, parentOf, textOf } from '../read/dom.ts';

/** A link of a page, and the product it leads to. */
export type ProductLink = { link: Element; address: string; saysProduct: boolean };

const titles = 'h1,h2,h3,h4,h5,h6,[itemprop="name"],[class*="title" i],[class*="name" i]';
const mostShades = 12;
const longestShade = 24; // letters: a shade is named in a word or two

/**
 * The links without those that lead from a product's card to other shades of it: one card names one product in
 * its titles, and what else it links to is small, and has neither a title nor a price of its own.
 */
export function withoutShades(links: ProductLink[], deepest: number, money: RegExp): ProductLink[] {
  const within = new Map<Element, Map<string, ProductLink[]>>();
  for (const each of links)
    for (let at: Element | null = each.link, up = 0; at && up <= deepest; at = parentOf(at), up++) {
      const here = within.get(at) ?? new Map<string, ProductLink[]>();
      within.set(at, here);
      if (here.size > mostShades) break;
      const same = here.get(each.address);
      if (same) same.push(each);
      else here.set(each.address, [each]);
    }
  const shades = new Set<ProductLink>();
  for (const [card, byAddress] of within) {
    if (byAddress.size < 2 || byAddress.size > mostShades) continue;
    const own = ownOf(card, byAddress);
    if (own === undefined) continue;
    const others = [...byAddress].flatMap(([address, of]) => (address === own ? [] : of));
    if (others.every(({ link }) => isBare(link, money))) for (const each of others) shades.add(each);
  }
  return shades.size > 0 ? links.filter((each) => !shades.has(each)) : links;
}

/** The one product that an element's titles name; undefined where there are several, or none. */
function ownOf(card: Element, byAddress: Map<string, ProductLink[]>): string | undefined {
  const named = new Set<string>();
  const addressOf = (link: Element | null) =>
    [...byAddress].find(([, of]) => of.some((each) => each.link === link))?.[0];
  for (const title of native(card, 'querySelectorAll')(titles)) {
    const address = addressOf(
      native(title, 'closest')('a[href]') ?? native(title, 'querySelector')('a[href]'),
    );
    if (address) named.add(address);
    if (named.size > 1) return undefined;
  }
  return [...named][0];
}

function isBare(link: Element, money: RegExp): boolean {
  const words = textOf(link, longestShade + 1);
  const said = attribute(link, 'aria-label').length;
  return (
    words.length <= longestShade && said <= 80 && !money.test(words) && !native(link, 'querySelector')(titles)
  );
}
