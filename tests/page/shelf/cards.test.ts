// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import { productAddress } from '../../../src/find/product/product-address.ts';
import { cardsIn } from '../../../src/page/shelf/cards.ts';
import { noShelves, shelves } from './shelves.ts';

const origin = 'https://shop.example';
const look = (html: string, here = '/collections/curls') => {
  document.body.innerHTML = html;
  return cardsIn(document, origin + here, shelfFacts);
};

describe('cards of a shelf', () => {
  it.each(shelves)('$what', ({ html, shown, here }) => {
    const cards = look(html, here);
    expect(cards.map(({ address }) => address.slice(origin.length))).toEqual(shown);
    for (const { name, element, picture } of cards) {
      expect(name).toMatch(/Saltgrass|Oxbow|Lantern|Tern|Marl|Reed/);
      expect(element.contains(picture)).toBe(true);
    }
    expect(new Set(cards.map(({ element }) => element)).size).toBe(cards.length);
  });

  it.each(noShelves)('none: $what', ({ html, here }) => expect(look(html, here)).toEqual([]));

  it('custom elements with shadow roots', () => {
    document.body.innerHTML = '<div class="list"></div>';
    for (const name of ['Saltgrass Gel', 'Oxbow Cleanser', 'Lantern Cream']) {
      const host = document.createElement('shop-tile');
      host.attachShadow({
        mode: 'open',
      }).innerHTML = `<a href="/p/${name.split(' ')[0]}"><img><h3>${name}</h3></a><i>€5</i>`;
      document.body.firstElementChild!.append(host);
    }
    expect(cardsIn(document, `${origin}/`, shelfFacts).map(({ name }) => name)).toEqual([
      'Saltgrass Gel',
      'Oxbow Cleanser',
      'Lantern Cream',
    ]);
  });
});

describe('the address of a product', () => {
  it.each([
    ['/products/gel?utm_source=x&variant=4#reviews', '/products/gel'],
    ['/collections/curls/products/gel/', '/products/gel'],
    ['https://shop.example//products//gel?b=2&a=1', '/products/gel?a=1&b=2'],
    ['/de/products/gel', '/de/products/gel'],
    ['/item?id=7&gclid=abc', '/item?id=7'],
  ])('%s', (href, is) =>
    expect(productAddress(href, `${origin}/x`, shelfFacts.addresses)?.address).toBe(origin + is),
  );

  it.each([
    '',
    '/',
    'mailto:a@b.example',
    'javascript:void(0)',
    '/cart',
    '/en-gb/account/orders',
    'https://other.example/products/gel',
    'http://shop.example/products/gel',
    'https://u:p@shop.example/products/gel',
    'https://[broken',
  ])('none: %s', (href) => expect(productAddress(href, `${origin}/`, shelfFacts.addresses)).toBeUndefined());
});
