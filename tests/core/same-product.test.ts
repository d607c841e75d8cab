import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Product, ProductFacts } from '../../src/core/product/product.ts';
import {
  isSameProduct,
  keepMet,
  mergeProducts,
  pageAddress,
  plainName,
} from '../../src/core/product/same-product.ts';
import { madeProduct } from '../keeping/made.ts';

const text = 'Aqua, Cetearyl Alcohol, Glycerin';
const kept = madeProduct();
const met = (over: Partial<ProductFacts>, list = text, now = '2026-02-01T10:00:00.000Z') => ({
  facts: { name: 'Tidepool Curl Cream', ...over },
  text: list,
  now,
});

describe('the same product', () => {
  it.each<[string, Partial<ProductFacts>, string, boolean]>([
    ['the same maker and name', { maker: 'Marrow & Fennel' }, 'Aqua', true],
    [
      'written another way',
      { name: 'TIDEPOOL curl cream – 200 ml', maker: 'Marrow and Fennel' },
      'Aqua',
      false,
    ],
    [
      'case, accents and size',
      { name: 'Tidépool CURL Cream, 500ml', maker: 'marrow & fennel' },
      'Aqua',
      true,
    ],
    [
      'the maker printed before the name',
      { name: 'Marrow & Fennel Tidepool Curl Cream', maker: 'Marrow & Fennel' },
      '',
      true,
    ],
    ['another maker', { maker: 'Ninth Wave' }, text, false],
    ['no maker, same list', {}, ' aqua,  Cetearyl alcohol, GLYCERIN. ', true],
    ['no maker, another list', {}, 'Aqua, Glycerin', false],
    ['the same page', { url: 'https://shop.example/tidepool/?utm=1#list' }, 'Aqua', true],
    [
      'the same page, another product of the set',
      { name: 'Tidepool Gel', url: 'https://shop.example/tidepool' },
      text,
      false,
    ],
    ['another name', { name: 'Tidepool Gel', maker: 'Marrow & Fennel' }, text, false],
  ])('%s', (_what, facts, list, same) => {
    expect(isSameProduct(kept, met(facts, list))).toBe(same);
  });

  it('from two shops is one product with two sources', () => {
    const { product, happened } = keepMet(
      [kept],
      met({
        maker: 'Marrow & Fennel',
        url: 'https://other.example/cream',
        price: 12,
        currency: 'EUR',
        size: 150,
      }),
      'new',
    );
    expect(happened).toBe('source-added');
    expect(product.id).toBe('p1');
    expect(product.sources.map(({ url, size }) => [url, size])).toEqual([
      ['https://shop.example/tidepool', undefined],
      ['https://other.example/cream', 150],
    ]);
    expect(product.size).toBe(200);
  });

  it('met again on its page has its price renewed, not a second source', () => {
    const { product, happened } = keepMet(
      [kept],
      met({ maker: 'Marrow & Fennel', url: 'https://shop.example/tidepool?x=2', price: 15 }),
      'new',
    );
    expect(happened).toBe('same');
    expect(product.sources).toMatchObject([{ price: 15 }]);
  });

  it('with a changed label keeps both, newest first', () => {
    const { product, happened } = keepMet(
      [kept],
      met(
        { maker: 'Marrow & Fennel', url: 'https://shop.example/tidepool' },
        `${text}, Hydrolyzed Soy Protein`,
      ),
      'new',
    );
    expect(happened).toBe('label-changed');
    expect(product.labels.map((label) => label.text)).toEqual([`${text}, Hydrolyzed Soy Protein`, text]);
  });

  it('an old list on another shop is no news; back on its own page it is', () => {
    const page = 'https://shop.example/tidepool';
    const maker = 'Marrow & Fennel';
    const once = keepMet([kept], met({ maker, url: page }, `${text}, Hydrolyzed Soy Protein`), '').product;
    const elsewhere = keepMet([once], met({ maker, url: 'https://other.example/x' }), '');
    expect([elsewhere.happened, elsewhere.product.labels.length]).toEqual(['source-added', 2]);
    const back = keepMet([once], met({ maker, url: page }), '');
    expect([back.happened, back.product.labels[0]!.text, back.product.labels.length]).toEqual([
      'label-changed',
      text,
      2,
    ]);
  });

  it('what the reader corrected is not overwritten', () => {
    const corrected = madeProduct({ kind: 'leave-in', use: 'leave-on', notes: 'mine' });
    const { product } = keepMet([corrected], met({ maker: 'Marrow & Fennel', kind: 'cream', size: 999 }), '');
    expect(product).toMatchObject({ kind: 'leave-in', size: 200, notes: 'mine', owned: true });
  });

  it('a new product takes the usual use of its kind, and is only considered', () => {
    expect(keepMet([], met({ kind: 'gel' }), 'n')).toMatchObject({
      happened: 'new',
      product: { id: 'n', use: 'leave-on', owned: false },
    });
  });

  it('keeping the same thing twice is keeping it once', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(undefined, 'A', 'B'),
        fc.constantFrom('X', 'Y'),
        fc.constantFrom('Aqua', 'Aqua, Glycerin', ''),
        fc.option(fc.constantFrom('https://a.example/p', 'https://b.example/p'), { nil: undefined }),
        (maker, name, list, url) => {
          const one = met({ name, ...(maker && { maker }), ...(url && { url }) }, list);
          const first = keepMet([kept], one, 'n');
          const again = keepMet([kept, first.product], one, 'm');
          // Nothing to know it by but a name: two of these may be two products.
          if (!maker && !list && !url) return;
          expect(again.product).toEqual(first.product);
          expect(again.happened).toBe('same');
        },
      ),
    );
  });
});

describe('merging two that are one', () => {
  it('loses no label, source or note', () => {
    const other: Product = madeProduct({
      id: 'p9',
      labels: [{ text: 'Aqua, Panthenol', seen: '2026-02-01T00:00:00.000Z' }],
      sources: [{ url: 'https://other.example/x', seen: '2026-02-01T00:00:00.000Z' }],
      notes: 'smells of rain',
      added: '2025-12-01T00:00:00.000Z',
    });
    const merged = mergeProducts(madeProduct({ notes: 'mine' }), other);
    expect(merged.id).toBe('p1');
    expect(merged.labels.map((label) => label.text)).toEqual(['Aqua, Panthenol', text]);
    expect(merged.sources).toHaveLength(2);
    expect(merged.notes).toBe('mine\nsmells of rain');
    expect(mergeProducts(merged, other).notes).toContain('smells of rain');
  });
});

it('names and pages', () => {
  expect(plainName('  L’Écume — Gel 8.5 fl. oz ')).toBe('l ecume gel');
  expect(pageAddress('https://a.example/p/?q=1#x')).toBe('https://a.example/p');
  expect(pageAddress('not a page')).toBeUndefined();
});
