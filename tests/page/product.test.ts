// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import kindWords from '../../dictionary/kinds.json' with { type: 'json' };
import { createKindReader } from '../../src/core/product/kind.ts';
import type { KindWords } from '../../src/core/product/kind-words.ts';
import type { ProductKind } from '../../src/core/product/product.ts';
import { factsOf } from '../../src/find/product/product-facts.ts';
import { readClues } from '../../src/page/read/product.ts';

const { withKind } = createKindReader(kindWords as KindWords);
const read = (head: string, body: string) => {
  document.head.innerHTML = head;
  document.body.innerHTML = body;
  return factsOf(readClues(document));
};

it('reads JSON-LD, the product of the heading first', () => {
  const data = {
    '@graph': [
      { '@type': 'BreadcrumbList', itemListElement: [] },
      { '@type': 'Product', name: 'Another Gel', offers: { price: '1.00', priceCurrency: 'EUR' } },
      {
        '@type': ['Product'],
        name: 'Lowtide Co-Wash 250 ml',
        brand: { '@type': 'Brand', name: 'Tidewick &amp; Daughters' },
        category: 'Hair > Cleansers',
        image: ['https://shop.example/a.jpg'],
        offers: [{ '@type': 'Offer', price: 18.5, priceCurrency: 'eur', url: '/p/lowtide' }],
      },
    ],
  };
  expect(
    read(
      `<title>Lowtide Co-Wash 250 ml – Tidewick</title><link rel="canonical" href="https://shop.example/p/lowtide"><script type="application/ld+json">${JSON.stringify(data)}</script><script type="application/ld+json">{broken</script>`,
      '<h1>Lowtide Co-Wash 250 ml</h1>',
    ),
  ).toMatchObject({
    name: 'Lowtide Co-Wash 250 ml',
    maker: 'Tidewick & Daughters',
    size: 250,
    sizeUnit: 'ml',
    price: 18.5,
    currency: 'EUR',
    url: 'https://shop.example/p/lowtide',
    image: 'https://shop.example/a.jpg',
  });
});

it('reads microdata and meta tags', () => {
  expect(
    read(
      '<meta property="og:title" content="x"><meta property="product:price:amount" content="1.299,00"><meta property="product:price:currency" content="SEK">',
      '<div itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">Barley Mask</h1><span itemprop="brand">Oatfield</span></div><p>8.5 fl oz / 250 ml</p>',
    ),
  ).toMatchObject({
    name: 'Barley Mask',
    maker: 'Oatfield',
    price: 1299,
    currency: 'SEK',
    size: 250,
    sizeUnit: 'ml',
  });
});

it('reads the language of the page, or else of its card', () => {
  const told = (lang: string, head: string) => {
    const page = new Window().document;
    page.documentElement.lang = lang;
    page.head.innerHTML = head;
    page.body.innerHTML = '<h1>Barley Mask</h1>';
    return factsOf(readClues(page as never))?.language;
  };
  expect(told('de-at', '')).toBe('de-AT');
  expect(told('', '<meta property="og:locale" content="sv_SE">')).toBe('sv-SE');
  expect(told('{{ lang }}', '<meta property="og:locale" content="sv_SE">')).toBe('sv-SE');
  expect(told('', '<meta name="language" content="§">')).toBeUndefined();
});

it('reads a bare page, and nothing without a name', () => {
  const facts = read(
    '<title>Saltmarsh Gel | Harrow Lane</title>',
    '<main><h1>Saltmarsh Gel</h1><p>5 oz</p><form><label><input type="radio" value="150 g"></label><label><input type="radio" checked value="300 g"></label></form></main>',
  );
  expect(facts).toMatchObject({ name: 'Saltmarsh Gel', variant: '300 g', size: 300, sizeUnit: 'g' });
  expect(facts?.price).toBeUndefined();
  expect(read('', '')).toBeUndefined();
});

it('gathers clues of a bounded size, whatever a page holds', () => {
  const block = JSON.stringify({ '@type': 'Product', name: 'Fen Rinse', description: 'x'.repeat(150_000) });
  const huge = block.replace('x', 'x'.repeat(2e6));
  const script = (text: string) => `<script type="application/ld+json">${text}</script>`;
  const facts = read(
    script(huge) + script(block).repeat(9),
    `<h1>${'y'.repeat(1e5)}</h1><form>${'<input type="radio" checked value="250 ml">'.repeat(400)}</form>`,
  );
  expect(facts).toMatchObject({ name: 'Fen Rinse', variant: '250 ml' });
  expect(JSON.stringify(readClues(document)).length).toBeLessThan(520_000);
});

it.each<[string, string, ProductKind | undefined]>([
  ['Harebell Leave-In Conditioner', '', 'leave-in'],
  ['Lowtide Co-Wash', '', 'cleanser'],
  ['Shampooing boucles', '', 'cleanser'],
  ['Locken Spülung', '', 'conditioner'],
  ['Keratin Treatment', '', 'protein-treatment'],
  ['Barley Mask', 'Home · Hair', 'deep-conditioner'],
  ['Saltmarsh Gel', 'Home · Hair styling', 'gel'],
  ['Curl Cream', '', 'cream'],
  ['Rich Cream', 'Home · Body', undefined],
  ['Face Cream', 'Home · Care', undefined],
  ['Quench', 'Home · Hair · Conditioner', 'conditioner'],
  ['Aceite capilar para el cabello', '', 'oil'],
  ['Day-two Curl Refresher', '', 'refresh-spray'],
  ['Шампоан за къдрава коса', '', 'cleanser'],
  ['Bond Builder', '', 'bond-treatment'],
  ['Gift card', '', undefined],
  ['Sailcloth Strengthening Mask', 'All goods › Protein treatments', 'protein-treatment'],
  ['Churn Deep Mask', 'All goods › Deep conditioners', 'deep-conditioner'],
])('%s (%s) is %s', (name, category, kind) => {
  expect(withKind({ name, category }).kind).toBe(kind);
  expect(withKind({ name, category }).use).toBe(
    kind && ['leave-in', 'cream', 'foam', 'gel', 'oil', 'refresh-spray'].includes(kind)
      ? 'leave-on'
      : kind && 'rinse-off',
  );
});
