import type { ShelfFacts } from '../../contract/shelf.ts';
import { productAddress } from '../../find/product/product-address.ts';
import { attribute, native, parentOf, tagOf, textOf } from '../read/dom.ts';
import { shadowRootsIn } from '../read/shadow-roots.ts';
import { type ProductLink, withoutShades } from './shades.ts';

/** One product card of a shelf. */
export type ShelfCard = {
  /** Canonical address of the product on this shop: one product has one. */
  address: string;
  /** The largest element that shows this product alone. */
  element: Element;
  /** What leads to the product, and its address as it stood there: a grid may hand both to another product. */
  link: Element;
  href: string;
  /** Where a mark may stand: the card's picture. */
  picture: Element;
  name: string;
};

const pictures = 'img,picture,svg image,video,[style*="background-image"],[role="img"]';
// Menus and footers link to products too, with pictures; trails and reviews with stars.
const around =
  'nav,footer,[role="navigation"],[role="menu"],[role="contentinfo"],[role="listbox"],[aria-hidden="true"][inert]';

/**
 * The product cards under a root: links of this shop with a picture and a name, of which several are built alike,
 * and which say in their address, in the page's data or by a price that they are products. In page order; a
 * product shown twice has two cards. Forces no layout, changes nothing.
 * @param here the page's own address: a product's page is no card of itself
 */
export function cardsIn(
  root: Document | Element | ShadowRoot,
  here: string,
  { addresses, cards: facts }: Pick<ShelfFacts, 'addresses' | 'cards'>,
): ShelfCard[] {
  const own = productAddress(here, here, addresses)?.address;
  const named = namedInData(root.nodeType === 9 ? (root as Document) : undefined, here, addresses);
  const all: ProductLink[] = [];
  const products = new Set<string>();
  for (const tree of [root, ...shadowRootsIn(root)])
    for (const link of native(tree as Element, 'querySelectorAll')('a[href]')) {
      // Menus come first and name products too; what comes after the most that is marked is not looked at.
      if (all.length > facts.most * 12 || products.size > facts.most * 2) break;
      const href = attribute(link, 'href');
      if (!href || href.startsWith('#')) continue;
      const to = addressOf(href, here, addresses);
      if (!to || to.address === own) continue;
      all.push({ link, ...to });
      products.add(to.address);
    }
  if (all.length < facts.least) return [];
  const money = new RegExp(facts.money, 'iu');
  const links = withoutShades(all, facts.deepest, money);

  // Which product an element shows: one address, or several.
  const shows = new Map<Element, string | null>();
  for (const { link, address } of links) {
    let at: Element | null = link;
    for (let up = 0; at && up <= facts.deepest + 3; up++) {
      const before = shows.get(at);
      if (before === null) break;
      if (before === undefined) shows.set(at, address);
      else if (before !== address) shows.set(at, null);
      at = parentOf(at);
    }
    for (; at && shows.get(at) !== null; at = parentOf(at))
      if (shows.has(at) && shows.get(at) !== address) shows.set(at, null);
  }

  const found = new Map<Element, { card: ShelfCard; sure: boolean; says: boolean; shape: string }>();
  for (const { link, address, saysProduct } of links) {
    if (native(link, 'closest')(around)) continue;
    const element = topOf(link, address, shows, facts.deepest);
    if (!element || found.has(element)) continue;
    const inside = insideOf(element, link);
    const picture = native(inside, 'querySelector')(pictures);
    const name = picture && nameOf(inside, links, address);
    if (!picture || !name) continue;
    const words = textOf(inside, 600);
    found.set(element, {
      card: { address, element, link, href: attribute(link, 'href'), picture, name },
      sure: named.has(address) || (money.test(words) && /\d/.test(words)),
      says: saysProduct,
      shape: shapeOf(element),
    });
    if (found.size >= facts.most) break;
  }

  // One card proves little, a row of the same build does: a few sold-out ones without a price may be among them.
  return [...Map.groupBy(found.values(), ({ shape }) => shape).values()].flatMap((alike) => {
    const products = new Set(alike.map(({ card }) => card.address)).size;
    const [sure, says] = [alike.filter((each) => each.sure).length, alike.filter((each) => each.says).length];
    const enough = says * 2 >= alike.length ? alike.length / 4 : alike.length / 2;
    return products >= facts.least && sure > 0 && sure >= enough ? alike.map(({ card }) => card) : [];
  });
}

let known: { here: string; by: Map<string, ReturnType<typeof productAddress>> } | undefined;

/** The product an address leads to; known from the look before, as most of a page is the same at the next. */
function addressOf(href: string, here: string, facts: ShelfFacts['addresses']) {
  if (known?.here !== here || known.by.size > 20_000) known = { here, by: new Map() };
  const to = known.by.has(href) ? known.by.get(href) : productAddress(href, here, facts);
  known.by.set(href, to);
  return to;
}

/** The largest element around a link that shows its product and no other. */
function topOf(
  link: Element,
  address: string,
  shows: Map<Element, string | null>,
  deepest: number,
): Element | undefined {
  let top: Element | undefined;
  let at: Element | null = link;
  for (let up = 0; at && up <= deepest; up++) {
    if (shows.get(at) !== address || /^(?:body|html|main)$/.test(tagOf(at))) break;
    top = at;
    at = parentOf(at);
  }
  return top;
}

/** Where the card's picture and words are looked for: in the shadow root that holds its link, where it has one. */
function insideOf(element: Element, link: Element): Element {
  const tree = native(link, 'getRootNode')();
  return native(element, 'contains')(link) || tree.nodeType !== 11 ? element : (tree as unknown as Element);
}

/** Build of a card: what it is and what holds it, without what differs from card to card. */
function shapeOf(element: Element): string {
  const shape: string[] = [];
  let at: Element | null = element;
  for (let up = 0; at && up < 3; up++) {
    const names = attribute(at, 'class')
      .split(/\s+/)
      .filter(
        (name) => up > 0 && name && !/\d|active|current|visible|hidden|first|last|sale|sold/i.test(name),
      );
    shape.push([tagOf(at), ...names.slice(0, 3)].join('.'));
    at = parentOf(at);
  }
  return shape.join('<');
}

/** What the card calls its product: a heading's words, a link's own, what its picture is called. */
function nameOf(element: Element, links: { link: Element; address: string }[], address: string): string {
  const isName = (words: string) => /\p{L}{3}/u.test(words) && words.length <= 160;
  const find = (selector: string) => [...native(element, 'querySelectorAll')(selector)];
  for (const heading of find(
    'h1,h2,h3,h4,h5,h6,[itemprop="name"],[class*="title" i],[class*="name" i],b,strong',
  )) {
    const words = textOf(heading, 161);
    if (isName(words)) return words;
  }
  const own =
    element.nodeType === 1 && tagOf(element) === 'a' ? [element, ...find('a[href]')] : find('a[href]');
  const candidates = own
    .filter((link) => links.some((each) => each.link === link && each.address === address))
    .flatMap((link) => [textOf(link, 161), attribute(link, 'aria-label'), attribute(link, 'title')]);
  for (const image of find('img[alt]')) candidates.push(attribute(image, 'alt').trim());
  return candidates.filter(isName).sort((a, b) => a.length - b.length)[0] ?? '';
}

/** Products that the page's data lists (schema.org ItemList). */
function namedInData(
  document: Document | undefined,
  here: string,
  addresses: ShelfFacts['addresses'],
): Set<string> {
  const named = new Set<string>();
  if (!document) return named;
  let room = 500_000;
  for (const script of native(document, 'querySelectorAll')('script[type="application/ld+json"]')) {
    const block = String(native(script, 'textContent') ?? '');
    room -= block.length;
    if (room < 0) break;
    if (!block.includes('ItemList')) continue;
    for (const [, said] of block.matchAll(/"(?:url|@id|item)"\s*:\s*"((?:[^"\\]|\\.){1,2000})"/g)) {
      const to = productAddress(said!.replaceAll('\\/', '/'), here, addresses);
      if (to) named.add(to.address);
    }
  }
  return named;
}
