import type { ProductClues } from '../../contract/messages.ts';
import { localeOf } from '../../core/amounts/market.ts';
import type { ProductFacts } from '../../core/product/product.ts';
import { isStandard } from '../text/embedded.ts';

type Facts = { [key: string]: unknown };

const millilitres: Record<string, number> = { ml: 1, cl: 10, l: 1000, fl: 29.5735 };
const longestValue = 20_000; // letters of one value that are looked at
const grams: Record<string, number> = { g: 1, kg: 1000, oz: 28.3495 };

/**
 * What a page says of the one product it shows: from JSON-LD, microdata, meta tags and headings, in this
 * order. The kind is told from the words by `withKind` (src/core/product/kind.ts). Undefined without a name.
 * Runs in the background: the page's own script only gathers the clues (src/page/read/product.ts).
 */
export function factsOf({
  base,
  heading,
  title,
  said,
  data,
  chosen,
  near,
  crumbs,
}: ProductClues): ProductFacts | undefined {
  const known = productOf(embeddedObjects(data), `${heading} ${title}`);
  const offer = offerOf(known);
  const name = plain(known.name) || said.name || heading || said['og:title'] || title;
  if (!name) return undefined;

  const maker =
    plain(known.brand) ||
    plain(known.manufacturer) ||
    said['product:brand'] ||
    said['og:brand'] ||
    said.brand;
  const price = amount(
    plain(offer.price) ||
      plain(offer.lowPrice) ||
      said['product:price:amount'] ||
      said['og:price:amount'] ||
      said.price ||
      '',
  );
  const currency = (
    plain(offer.priceCurrency) ||
    said['product:price:currency'] ||
    said['og:price:currency'] ||
    said.priceCurrency ||
    ''
  ).toUpperCase();
  const variant = chosen.find(
    (words) => /\p{L}|\d ?(?:ml|g)/u.test(words) && !/^(?:on|choose|select|default)/i.test(words),
  );
  const size =
    [plain(known.size), plain(known.weight), variant ?? '', name, heading, title, near]
      .map(sizeIn)
      .find(Boolean) ?? {};
  // Region and all: a shop in one language may sell under another law.
  const language = (localeOf(said.language) ?? localeOf(said['og:locale']))?.baseName;
  const url = address(said.canonical || said['og:url'] || plain(offer.url), base);
  const image = address(said['og:image'] || plain(known.image), base);
  return {
    name: name.slice(0, 160),
    ...(maker ? { maker: maker.slice(0, 80) } : {}),
    ...size,
    ...(price ? { price } : {}),
    ...(/^[A-Z]{3}$/.test(currency) ? { currency } : {}),
    ...(language ? { language } : {}),
    ...(url ? { url } : {}),
    ...(variant ? { variant } : {}),
    ...(image ? { image } : {}),
    category: [plain(known.category), title, crumbs].filter(Boolean).join(' · ').slice(0, 400),
  };
}

/** Every object of JSON-LD blocks, outer before inner. Broken blocks are passed over. */
function embeddedObjects(blocks: string[]): Facts[] {
  const found: Facts[] = [];
  const walk = (value: unknown, depth: number) => {
    if (depth > 12 || typeof value !== 'object' || value === null || found.length > 2000) return;
    if (!Array.isArray(value)) found.push(value as Facts);
    for (const inner of Object.values(value)) walk(inner, depth + 1);
  };
  for (const block of blocks) {
    if (!block.includes('Product') || !isStandard(block)) continue;
    try {
      walk(JSON.parse(block), 0);
    } catch {}
  }
  return found;
}

/** The product a page is about: among several, the one its heading or title names. */
function productOf(objects: Facts[], heading: string): Facts {
  const products = objects.filter(
    (object) => /Product(?:Group)?$/.test(String([object['@type']].flat()[0])) && object.name,
  );
  return products.find((object) => heading.includes(plain(object.name))) ?? products[0] ?? {};
}

function offerOf(product: Facts): Facts {
  const variant = [product.hasVariant].flat()[0] as Facts | undefined;
  const offers = [product.offers ?? variant?.offers].flat()[0] as Facts | undefined;
  const price = [offers?.priceSpecification].flat()[0] as Facts | undefined;
  return { ...price, ...offers };
}

/** A string, a number, or the name or value of what stands in its place; entities and tags are undone. */
function plain(value: unknown): string {
  if (Array.isArray(value)) return plain(value[0]);
  if (typeof value === 'number') return String(value);
  if (typeof value === 'object' && value !== null) {
    const { name, value: inner, url, unitText } = value as Facts;
    return plain(name ?? (inner === undefined ? url : `${plain(inner)} ${plain(unitText)}`));
  }
  if (typeof value !== 'string') return '';
  return value
    .slice(0, longestValue)
    .replace(/<[^<>]{0,400}>/g, '')
    .replace(/&amp;/g, '&')
    .replace(/&#0?39;|&rsquo;/g, '’')
    .replace(/&quot;/g, '"')
    .replace(/\s+/g, ' ')
    .trim();
}

/** "1.299,00" → 1299; "12,90 €" → 12.9. */
function amount(text: string): number | undefined {
  const digits = /\d[\d.,\s]*/
    .exec(text)?.[0]
    .replace(/\s/g, '')
    .replace(/[.,](?=\d{3}(?:\D|$))/g, '')
    .replace(',', '.');
  const value = Number.parseFloat(digits ?? '');
  return value > 0 ? value : undefined;
}

/** The size words print: millilitres before ounces, volume before weight. */
function sizeIn(text: string): Pick<ProductFacts, 'size' | 'sizeUnit'> | undefined {
  let found: Pick<ProductFacts, 'size' | 'sizeUnit'> | undefined;
  let rank = 0;
  for (const [, digits, unit] of text
    .slice(0, longestValue)
    .toLowerCase()
    .matchAll(/(?<![\d.,])(\d+(?:[.,]\d+)?)\s?(ml|cl|l|fl|kg|g|oz)(?![a-z])/g)) {
    const value = amount(digits!) ?? 0;
    const volume = millilitres[unit!];
    const size = Math.round(value * (volume ?? grams[unit!]!) * 10) / 10;
    const order = unit === 'ml' || unit === 'cl' ? 4 : unit === 'g' ? 3 : unit === 'fl' ? 2 : 1;
    if (size < 1 || size > 5500 || order <= rank) continue;
    rank = order;
    found = { size, sizeUnit: volume ? 'ml' : 'g' };
  }
  return found;
}

/** An absolute web address, or nothing: what a page names is not always one. */
function address(url: string, base: string): string | undefined {
  if (!url) return undefined;
  try {
    const { href, protocol } = new URL(url, base);
    return /^https?:$/.test(protocol) ? href : undefined;
  } catch {
    return undefined;
  }
}
