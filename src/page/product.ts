import type { ProductFacts } from '../core/product.ts';
import type { ProductClues } from '../messages.ts';
import { attribute, native, textOf } from './dom.ts';
import { factsOf } from './product-facts.ts';

const mostLetters = 500_000; // of all JSON-LD that names a product
const mostChosen = 100;

const metaTags =
  'og:title og:brand og:url og:image og:price:amount og:price:currency product:brand product:price:amount product:price:currency';
const properties = 'name brand price priceCurrency';

/** What a document may say of the one product it shows, as it stands there: `factsOf` makes sense of it. */
export function readClues(document: Document): ProductClues {
  const all = native(document, 'querySelectorAll');
  const first = (selector: string) => all(selector)[0];
  const said: ProductClues['said'] = {};
  const hear = (name: string, selector: string, from = 'content') => {
    const element = first(selector);
    const words = element && (attribute(element, from) || textOf(element, 120));
    if (words) said[name] = words.slice(0, 2000);
  };
  for (const name of metaTags.split(' ')) hear(name, `meta[property="${name}"],meta[name="${name}"]`);
  for (const name of properties.split(' '))
    hear(name, `[itemtype*="schema.org/Product"] [itemprop="${name}"]`);
  hear('canonical', 'link[rel="canonical"]', 'href');

  let room = mostLetters;
  const data: string[] = [];
  for (const script of all('script[type="application/ld+json"]')) {
    const block = script.textContent ?? '';
    if (!block.includes('Product') || block.length > room) continue;
    room -= block.length;
    data.push(block);
  }
  const heading = first('main h1') ?? first('h1');
  return {
    base: String(native(document, 'baseURI')),
    heading: textOf(heading, 160),
    title: textOf(first('title')),
    said,
    data,
    chosen: [...all('form option:checked, form input[type="radio"]:checked')]
      .slice(0, mostChosen)
      .map((option) => textOf(option, 60) || attribute(option, 'value').slice(0, 60)),
    near: textOf(heading && holderOf(heading), 1500),
    crumbs: textOf(first('[class*="breadcrumb" i],[aria-label*="breadcrumb" i]')),
  };
}

/** What a document says of the one product it shows. Undefined without a name. */
export const readProduct = (document: Document): ProductFacts | undefined => factsOf(readClues(document));

const holderOf = (heading: Element): Node => {
  const parent = native(heading, 'parentNode') ?? heading;
  return native(parent, 'parentNode') ?? parent;
};
