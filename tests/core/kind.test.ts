import { describe, expect, it } from 'vitest';
import kinds from '../../dictionary/kinds.json' with { type: 'json' };
import { createKindReader } from '../../src/core/product/kind.ts';
import type { KindWords } from '../../src/core/product/kind-words.ts';
import { spent } from '../spent.ts';
import { kindTitles, trickyTitles } from './kinds.ts';

const { recognise, withKind } = createKindReader(kinds as KindWords);
const rows = Object.entries(kindTitles).map(
  ([kind, titles]) => [kind, titles.split(/;/).map((title) => title.trim().replace(/\s+/g, ' '))] as const,
);

describe('the noun for the form decides', () => {
  it.each(rows)('%s', (kind, titles) => {
    const wrong = titles.flatMap((printed) => {
      const [name = '', category = ''] = printed.split(' @ ');
      const read = recognise({ name, category }).kind;
      return kind.split('|').includes(read) ? [] : [`${printed}: ${read}`];
    });
    expect(wrong).toEqual([]);
  });
});

it.each(trickyTitles.split('\n').map((row) => row.split('|')))('%s: %s', (kind, printed = '', other) => {
  const [name = '', category = ''] = printed.split(' @ ');
  expect([kind, other]).toContain(recognise({ name, category }).kind);
});

// Common practice: what a product promises or is made with is no kind.
const promises = [
  'Bond Repair',
  'Protein-Rich',
  'Keratin',
  'Oil-Infused',
  'Refreshing',
  'Detangling',
  'Deep-Conditioning',
  'Reviving',
  'Strengthening',
  'Anti-Frizz',
  'Volumising',
  'Rice Water',
  'Coconut Milk',
  'Honey & Oat',
];
const nouns: [string, string][] = [
  ['Shampoo', 'cleanser'],
  ['Co-Wash', 'cleanser'],
  ['Conditioner', 'conditioner'],
  ['Leave-In', 'leave-in'],
  ['Curl Cream', 'cream'],
  ['Styling Gel', 'gel'],
  ['Curl Foam', 'foam'],
  ['Hair Oil', 'oil'],
  ['Hair Serum', 'serum'],
  ['Hairspray', 'hairspray'],
  ['Dry Shampoo', 'dry-shampoo'],
];
it.each(nouns)('%s stays what it is, whatever it promises', (noun, kind) => {
  for (const promise of promises) {
    expect(recognise({ name: `${promise} ${noun}` }).kind, `${promise} ${noun}`).toBe(kind);
    expect(recognise({ name: `${noun} with ${promise} Care` }).kind, `${noun} with ${promise}`).toBe(kind);
    expect(recognise({ name: `${promise} ${noun}, 250 ml`, category: 'Hair > Treatments' }).kind).toBe(kind);
  }
});

it('says how it is used, and keeps what is known', () => {
  expect(recognise({ name: 'Scalp Serum' })).toEqual({ kind: 'scalp-treatment', use: 'leave-on' });
  expect(recognise({ name: 'Scalp Scrub' })).toEqual({ kind: 'scalp-treatment', use: 'rinse-off' });
  expect(recognise({ name: 'Satin Bonnet' })).toEqual({ kind: 'accessory', use: 'none' });
  expect(recognise({ name: 'Lowtide' })).toEqual({ kind: 'unknown', use: 'none' });
  expect(recognise({ name: 'Lowtide', category: 'Hair > Gels' })).toEqual({ kind: 'gel', use: 'leave-on' });
  expect(withKind({ name: 'Curl Gift Set' })).toEqual({ name: 'Curl Gift Set', goods: 'kit' });
  expect(withKind({ name: 'Curl Gel', kind: 'cream' })).toEqual({
    name: 'Curl Gel',
    kind: 'cream',
    use: 'leave-on',
  });
});

it('reads a title of any length in no time', () => {
  const long = 'shampoo pour cheveux '.repeat(20_000);
  expect(spent(() => recognise({ name: long, category: long }))).toBeLessThan(200);
});
