// When a thing that was looked for is found: the labels are invented.
import { describe, expect, it } from 'vitest';
import type { Wish } from '../../../src/core/plan/wish.ts';
import type { Change } from '../../../src/store/remembered.ts';
import { endingWishes } from '../../../src/use/acts/matters/wishes.ts';
import { madeProduct, madeRoutine } from '../../keeping/made.ts';
import { knowing, nothing } from '../knowing.ts';

const gel: Wish = { kind: 'gel', protein: 'free', moisture: false, lifts: false };
const foam: Wish = { ...gel, kind: 'foam' };
const seen = '2026-01-01';
const plain = 'Aqua, Linum Usitatissimum Seed Extract, Xanthan Gum, Glycerin, Phenoxyethanol';
const product = (id: string, text = plain, owned = false) =>
  madeProduct({ id, kind: 'gel', use: 'leave-on', labels: [{ text, seen }], owned });
const filledWith = (id: string) =>
  madeRoutine({
    id: 'r',
    steps: [
      { id: 's', kind: 'gel', use: 'leave-on', optional: false, cadence: { every: 'wash' }, product: id },
    ],
  });
const put = (thing: 'products' | 'routines', value: object) => ({ do: 'put', thing, value }) as Change;

/** What is still looked for after some changes. */
function left(changes: Change[], had: Parameters<typeof knowing>[0] = {}): Wish[] {
  const before = knowing({ ...had, settings: { ...nothing.settings, wishes: [gel, foam] } });
  const after = endingWishes(before, { changes }).changes.flatMap((change) =>
    change.do === 'set' ? (change.settings.wishes ?? []) : [],
  );
  return endingWishes(before, { changes }).changes.length === changes.length ? [gel, foam] : after;
}

describe('what is looked for', () => {
  it('is found with a product that is on hand from then on', () => {
    expect(left([put('products', product('a', plain, true))])).toEqual([foam]);
  });
  it('is found with a product that comes into a routine, kept before or just now', () => {
    expect(left([put('routines', filledWith('a'))], { products: [product('a')] })).toEqual([foam]);
    expect(left([put('products', product('a')), put('routines', filledWith('a'))])).toEqual([foam]);
  });
  it('goes on while such a one is only thought of', () => {
    expect(left([put('products', product('a'))])).toEqual([gel, foam]);
  });
  it('goes on with one that is not what was looked for', () => {
    const rich = product('a', 'Aqua, PVP, Hydrolyzed Wheat Protein, Glycerin, Phenoxyethanol', true);
    expect(left([put('products', rich)])).toEqual([gel, foam]);
  });
  it('goes on after a change of what was there before', () => {
    const had = { products: [product('a', plain, true)], routines: [filledWith('a')] };
    expect(left([put('products', { ...product('a', plain, true), notes: 'x' })], had)).toEqual([gel, foam]);
    expect(left([put('routines', { ...filledWith('a'), name: 'x' })], had)).toEqual([gel, foam]);
  });
});
