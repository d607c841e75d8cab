import { describe, expect, it } from 'vitest';
import type { TabPage } from '../../../src/contract/messages.ts';
import type { BarState } from '../../../src/contract/shelf.ts';
import type { ProductFacts } from '../../../src/core/product/product.ts';
import { defaultSettings } from '../../../src/store/remembered.ts';
import { drawShelfBar } from '../../../src/ui/describe/drawn/draw-shelf.ts';
import { translator } from '../../../src/ui/words/index.ts';
import { concerns } from '../../../src/use/judge/concerns.ts';
import type { Check } from '../../../src/use/judge/judge-product.ts';
import { filtersFor, passesOf } from '../../../src/use/shelf/filters.ts';
import { isUnder, knowProduct } from '../../../src/use/shelf/know-product.ts';
import { madeHead, madeRoutine } from '../../keeping/made.ts';
import { knowing, nothing } from '../knowing.ts';

describe('as one step of my wash day', () => {
  const product = {
    protein: 'none',
    moisture: 'some',
    sizes: new Set<string>(),
    staysOn: true,
    granted: false,
    cheap: false,
    kind: 'gel',
  } as const;
  const day = (answer: 'suits' | 'with-care') =>
    [{ about: 'routine', answer, findings: [] }] as unknown as Check[];
  it('passes what fits the day and is of that kind', () => {
    expect(passesOf({ ...product, checks: day('suits') })).toContain('as:gel');
    expect(passesOf({ ...product, checks: day('with-care') })).not.toContain('as:gel');
    expect(passesOf({ ...product, kind: undefined, checks: day('suits') }).join()).not.toContain('as:');
  });
  it('is offered for the steps of the day in use, once, where something here fits', () => {
    const [step] = madeRoutine().steps;
    const steps = (['gel', 'cream', 'gel'] as const).map((kind) => ({ ...step!, kind }));
    const described = { ...nothing, heads: [madeHead()] };
    const filters = filtersFor({ ...described, routines: [madeRoutine({ steps })] });
    expect(filters.filter((id) => id.startsWith('as:'))).toEqual(['as:gel', 'as:cream']);
    expect(filtersFor(described).join()).not.toContain('as:');
    const bar: BarState = {
      open: true,
      products: 3,
      read: 3,
      left: 0,
      failed: {},
      told: true,
      filters: [],
      passing: { 'as:gel': 2 },
      hides: false,
    };
    const drawn = JSON.stringify(drawShelfBar(bar, filters, translator('en')));
    expect(drawn).toContain('fits my wash day as my gel (2)');
    expect(drawn).not.toContain('as my cream');
  });
});

describe('under a price', () => {
  const limit = { most: 5, currency: 'EUR' };
  it.each<[string, Partial<ProductFacts>, boolean]>([
    ['9 € for 200 ml is', { price: 9, size: 200, currency: 'EUR' }, true],
    ['10 € for 200 ml is, at the limit', { price: 10, size: 200, currency: 'EUR' }, true],
    ['10.02 € for 200 ml is not', { price: 10.02, size: 200, currency: 'EUR' }, false],
    ['another currency is not compared', { price: 9, size: 200, currency: 'USD' }, false],
    ['no size, no answer', { price: 1, currency: 'EUR' }, false],
    ['no price, no answer', { size: 200, currency: 'EUR' }, false],
  ])('%s', (_, facts, under) => expect(isUnder({ name: 'Gel', ...facts }, limit)).toBe(under));
  it('nothing is under no limit', () =>
    expect(isUnder({ name: 'Gel', price: 1, size: 500, currency: 'EUR' }, undefined)).toBe(false));

  it('is a filter that a product passes once the reader has named it', () => {
    const entry = {
      address: 'https://shop.example/p/1',
      text: 'Aqua, Glycerin, Panthenol, Phenoxyethanol',
      product: { name: 'Gel', kind: 'gel' as const, price: 9, size: 200, currency: 'EUR' },
      readOn: '2026-02-01T00:00:00.000Z',
    };
    const passes = (shelfPrice?: typeof limit) =>
      knowProduct(
        knowing({ settings: { ...defaultSettings, ...(shelfPrice && { shelfPrice }) } }),
        entry,
      )!.passes.includes('price');
    expect([passes(), passes(limit), passes({ most: 4, currency: 'EUR' })]).toEqual([false, true, false]);
  });

  it('is offered in the bar with its own words, and only then', () => {
    const t = translator('en');
    const bar: BarState = {
      open: true,
      products: 3,
      read: 3,
      left: 0,
      failed: {},
      told: true,
      filters: [],
      passing: { price: 2 },
      hides: false,
    };
    expect(filtersFor(nothing)).not.toContain('price');
    const named = filtersFor({ ...nothing, settings: { ...defaultSettings, shelfPrice: limit } });
    const drawn = JSON.stringify(drawShelfBar(bar, named, t, limit));
    expect(drawn).toContain('under €5.00 per 100 ml or g (2)');
  });

  it('a new limit draws shelves anew, and no other page', () => {
    const page = { url: 'https://shop.example/p/1', title: '', lists: [] } satisfies TabPage;
    const changes = {
      settings: { oldValue: defaultSettings, newValue: { ...defaultSettings, shelfPrice: limit } },
    };
    expect(concerns(changes, nothing, { ...page, shelf: true })).toBe(true);
    expect(concerns(changes, nothing, page)).toBe(false);
  });
});
