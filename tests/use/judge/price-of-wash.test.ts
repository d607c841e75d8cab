import { describe, expect, it } from 'vitest';
import type { Product } from '../../../src/core/product/product.ts';
import { washPrices } from '../../../src/use/judge/price-of-wash.ts';
import { madeProduct } from '../../keeping/made.ts';
import { knowing } from '../knowing.ts';

const at = (price: number, currency = 'EUR') => ({
  url: 'x',
  price,
  currency,
  seen: '2026-01-02T10:00:00.000Z',
});
const gel = (id: string, over: Partial<Product>) =>
  madeProduct({ id, kind: 'gel', use: 'leave-on', size: 300, sources: [], ...over });

// Worked by hand: 6 g of a gel (dictionary/wash-day.json) out of 300 at 15.00 are 0.30.
describe('the price of a wash', () => {
  const products = [
    gel('a', { sources: [at(15)] }),
    gel('cheaper', { sources: [at(15), { ...at(20), size: 1000 }] }),
    gel('dollars', { sources: [at(15, 'USD')] }),
    gel('no price', {}),
    gel('not asked', { sources: [at(15)] }),
  ];
  const { of, currency } = washPrices(
    knowing({ products }),
    products.slice(0, 4).map(({ id }) => id),
  );
  it('is that of the usual grams where no step says otherwise, by the cheapest source for its amount', () => {
    expect(of.get('a')).toBeCloseTo(0.3);
    expect(of.get('cheaper')).toBeCloseTo(0.12);
  });
  it('is that of the grams its step says, as wherever a price of a wash is shown', () => {
    const step = {
      id: 's',
      kind: 'gel',
      use: 'leave-on',
      optional: false,
      cadence: { every: 'wash' },
    } as const;
    const own = knowing({
      products,
      heads: [{ id: 'h', name: 'Wren', avoid: [], stretch: [], setAside: [], added: '2026-01-01' }],
      routines: [
        {
          id: 'r',
          head: 'h',
          name: 'Sunday',
          washEvery: 7,
          added: '2026-01-01',
          steps: [{ ...step, product: 'a', grams: 12 }],
        },
      ],
    });
    expect(washPrices(own, ['a', 'cheaper']).of.get('a')).toBeCloseTo(0.6);
    expect(washPrices(own, ['a', 'cheaper']).of.get('cheaper')).toBeCloseTo(0.12);
  });
  it('is not known without a price, nor beside another currency', () => {
    expect([...of.keys()]).toEqual(['a', 'cheaper']);
    expect(currency).toBe('EUR');
  });
});
