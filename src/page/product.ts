import type { ProductFacts } from '../core/product.ts';
import { attribute, native, textOf } from './dom.ts';

type Facts = { [key: string]: unknown };

const millilitres: Record<string, number> = { ml: 1, cl: 10, l: 1000, fl: 29.5735 };
const grams: Record<string, number> = { g: 1, kg: 1000, oz: 28.3495 };

/**
 * What a document says of the one product it shows: from JSON-LD, microdata, meta tags and headings, in this
 * order. The kind is told from the words by `withKind` (src/core/product-kind.ts). Undefined without a name.
 */
export function readProduct(document: Document): ProductFacts | undefined {
  const all = (selector: string) => native(document, 'querySelectorAll')(selector);
  const first = (selector: string) => all(selector)[0];
  const said = (selector: string) => {
    const element = first(selector);
    return element ? attribute(element, 'content') || textOf(element, 120) : '';
  };
  const meta = (name: string) => said(`meta[property="${name}"],meta[name="${name}"]`);
  const inScope = (name: string) => said(`[itemtype*="schema.org/Product"] [itemprop="${name}"]`);

  const heading = textOf(first('main h1') ?? first('h1'), 160);
  const title = textOf(first('title'), 200);
  const known = productOf(embeddedObjects(document), `${heading} ${title}`);
  const offer = offerOf(known);
  const name = plain(known.name) || inScope('name') || heading || meta('og:title') || title;
  if (!name) return undefined;

  const maker =
    plain(known.brand) ||
    plain(known.manufacturer) ||
    meta('product:brand') ||
    meta('og:brand') ||
    inScope('brand');
  const price = amount(
    plain(offer.price) ||
      plain(offer.lowPrice) ||
      meta('product:price:amount') ||
      meta('og:price:amount') ||
      inScope('price'),
  );
  const currency = (
    plain(offer.priceCurrency) ||
    meta('product:price:currency') ||
    meta('og:price:currency') ||
    inScope('priceCurrency')
  ).toUpperCase();
  const variant = [...all('form option:checked, form input[type="radio"]:checked')]
    .map((option) => textOf(option, 60) || attribute(option, 'value').slice(0, 60))
    .filter((words) => /\p{L}|\d ?(?:ml|g)/u.test(words) && !/^(?:on|choose|select|default)/i.test(words))[0];
  const near = first('main h1') ?? first('h1');
  const size =
    [
      plain(known.size),
      plain(known.weight),
      variant ?? '',
      name,
      heading,
      title,
      textOf(near && holderOf(near), 1500),
    ]
      .map(sizeIn)
      .find(Boolean) ?? {};
  const canonical = first('link[rel="canonical"]');
  const url = address(
    (canonical && attribute(canonical, 'href')) || meta('og:url') || plain(offer.url),
    document,
  );
  const image = address(meta('og:image') || plain(known.image), document);
  const crumbs = first('[class*="breadcrumb" i],[aria-label*="breadcrumb" i]');
  return {
    name: name.slice(0, 160),
    ...(maker ? { maker: maker.slice(0, 80) } : {}),
    ...size,
    ...(price ? { price } : {}),
    ...(/^[A-Z]{3}$/.test(currency) ? { currency } : {}),
    ...(url ? { url } : {}),
    ...(variant ? { variant } : {}),
    ...(image ? { image } : {}),
    category: [plain(known.category), title, textOf(crumbs, 200)].filter(Boolean).join(' · ').slice(0, 400),
  };
}

/** Every object of the document's JSON-LD blocks, outer before inner. Broken blocks are passed over. */
function embeddedObjects(document: Document): Facts[] {
  const found: Facts[] = [];
  const walk = (value: unknown, depth: number) => {
    if (depth > 12 || typeof value !== 'object' || value === null || found.length > 2000) return;
    if (!Array.isArray(value)) found.push(value as Facts);
    for (const inner of Object.values(value)) walk(inner, depth + 1);
  };
  for (const script of native(document, 'querySelectorAll')('script[type="application/ld+json"]')) {
    try {
      walk(JSON.parse((script.textContent ?? '').slice(0, 500_000)), 0);
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
    .replace(/<[^>]*>/g, '')
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

const holderOf = (heading: Element): Node => {
  const parent = native(heading, 'parentNode') ?? heading;
  return native(parent, 'parentNode') ?? parent;
};

/** An absolute web address, or nothing: what a page names is not always one. */
function address(url: string, document: Document): string | undefined {
  if (!url) return undefined;
  try {
    const { href, protocol } = new URL(url, document.baseURI);
    return /^https?:$/.test(protocol) ? href : undefined;
  } catch {
    return undefined;
  }
}
