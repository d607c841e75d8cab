import type { FoundText } from '../../contract/messages.ts';
import type { AddressFacts, ShelfFacts, ShelfPage, UnreadReason } from '../../contract/shelf.ts';
import type { KindReader } from '../../core/product/kind.ts';
import type { ProductFacts } from '../../core/product/product.ts';
import { plainName } from '../../core/product/same-product.ts';
import type { ListIn } from '../../find/lists-in.ts';
import { productAddress } from '../../find/product/product-address.ts';
import type { LabelMet } from '../../store/remembered.ts';

/** A label that was met, ready to be kept. */
export type TakenLabel = Omit<LabelMet, 'readOn'>;

/**
 * What a page that came after a press says of its product, or why nothing: it asks to log in, builds what it shows
 * by script, is about something else, or holds no list.
 * @param found the lists in its letters, and what it says of its product
 */
export function takePage(
  page: ShelfPage,
  { lists, facts }: { lists: ListIn[]; facts: ProductFacts | undefined },
  { withKind }: Pick<KindReader, 'withKind'>,
  { pages, addresses }: Pick<ShelfFacts, 'pages' | 'addresses'>,
): TakenLabel | { why: UnreadReason } {
  if (lists.length === 0) return { why: whyNone(page, pages) };
  const named = [facts?.name ?? '', ...lists.map(({ product }) => product?.name ?? '')];
  if (isElsewhere(page, facts, addresses) && !named.some((name) => isAlike(name, page.name)))
    return { why: 'other-product' };
  const list =
    lists.length === 1 ? lists[0] : lists.find(({ product }) => isAlike(product?.name ?? '', page.name));
  if (!list) return { why: 'several' };
  const name = list.product?.name ?? facts?.name ?? page.name;
  return {
    address: page.address,
    text: list.text,
    ...(list.elsewhere && { elsewhere: true as const }),
    product: withKind({ ...facts, name: name || page.address, url: page.address }),
  };
}

/**
 * The one list of a product's own page: under the address it was met at, as a card may link to it, and under what
 * the page calls its own. None where it has no name, or stands where nothing is sold.
 */
export function labelsOfPage(
  { text, product, elsewhere }: FoundText,
  url: string,
  facts: AddressFacts,
): TakenLabel[] {
  if (!product?.name) return [];
  const addresses = [url, ...(product.url ? [product.url] : [])].flatMap(
    (href) => productAddress(href, url, facts)?.address ?? [],
  );
  return [...new Set(addresses)].map((address) => ({
    address,
    text,
    product: { ...product, url: address },
    ...(elsewhere && { elsewhere }),
  }));
}

function whyNone(
  { letters, asksPassword }: ShelfPage,
  { thinBelow, loginBelow }: ShelfFacts['pages'],
): UnreadReason {
  if (asksPassword && letters < loginBelow) return 'login';
  return letters < thinBelow ? 'by-script' : 'no-list';
}

/** Whether the shop led to another address than the one asked for, by redirect or by what the page calls its own. */
function isElsewhere(
  { address, at }: ShelfPage,
  facts: ProductFacts | undefined,
  addresses: AddressFacts,
): boolean {
  const of = (href: string | undefined) => href && productAddress(href, at, addresses)?.address;
  return of(at) !== address || (facts?.url !== undefined && of(facts.url) !== address);
}

/** Two names of one product share most of the shorter one's words. */
function isAlike(a: string, b: string): boolean {
  const [of, and] = [a, b].map(
    (name) =>
      new Set(
        plainName(name)
          .split(' ')
          .filter((word) => word.length > 2),
      ),
  );
  const least = Math.min(of!.size, and!.size);
  return least > 0 && [...of!].filter((word) => and!.has(word)).length * 2 >= least;
}
