import { expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { marketOf, type Sold } from '../../src/core/amounts/market.ts';
import { readAsOf } from '../../src/core/product/read-as.ts';

const { markets } = practice;

it.each<[string, Sold[], string | undefined]>([
  ['euros', [{ currency: 'EUR', url: 'https://shop.example.com/p' }], 'eu'],
  ['pounds: the United Kingdom keeps the same annexes', [{ currency: 'GBP' }], 'eu'],
  ['dollars on a German address', [{ currency: 'USD', url: 'https://shop.example.de/p' }], 'other'],
  ['a Portuguese address', [{ url: 'https://loja.example.pt' }], 'eu'],
  ['a Brazilian address', [{ url: 'https://loja.example.com.br/p?x=1' }], 'other'],
  ['an address of no country', [{ url: 'https://shop.example.com/p.de' }], undefined],
  ['a port', [{ url: 'http://shop.example.fr:8080/p' }], 'eu'],
  ['nothing', [], undefined],
  ['two shops, one of them in the EU', [{ currency: 'USD' }, { currency: 'PLN' }], 'eu'],
  ['German, spoken in no other market', [{ language: 'de', url: 'https://shop.example.com/p' }], 'eu'],
  ['English of the United Kingdom', [{ language: 'en-GB' }], 'eu'],
  ['French of Canada', [{ language: 'fr-CA' }], 'other'],
  ['the region behind a script', [{ language: 'sr-Latn-RS' }], 'other'],
  ['a language as some servers write it', [{ language: 'de_AT' }], 'eu'],
  ['Spanish of Latin America, no single country', [{ language: 'es-419' }], undefined],
  ['English, spoken everywhere', [{ language: 'en' }], undefined],
  ['a template left as it came', [{ language: 'en-US' }], undefined],
  ['Spanish and Portuguese, spoken mostly elsewhere', [{ language: 'es' }, { language: 'pt' }], undefined],
  ['no language at all', [{ language: 'template {{ lang }}' }, { language: '' }], undefined],
  ['dollars on a German page', [{ language: 'de', currency: 'USD' }], 'other'],
  ['a German page beside a shop that says its currency', [{ language: 'de' }, { currency: 'CAD' }], 'other'],
  [
    'a German page beside an Australian address',
    [{ language: 'de' }, { url: 'https://a.example.au' }],
    'other',
  ],
])('%s', (_, sold, market) => {
  expect(marketOf(sold, markets)).toBe(market);
});

it('the reader’s own word holds before the page’s', () => {
  const facts = { currency: 'USD' };
  expect(readAsOf({ facts }, { markets }).market).toBe('other');
  expect(readAsOf({ facts }, { markets, told: 'eu' }).market).toBe('eu');
  expect(readAsOf({ facts }).market).toBeUndefined();
});
