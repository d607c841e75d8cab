// What strip and panel once answered differently for the same product, head and routine.

import { expect, it } from 'vitest';
import type { TabPage } from '../../src/contract/messages.ts';
import { atOnce } from '../../src/core/at-once.ts';
import type { Head } from '../../src/core/hair/head.ts';
import type { Product } from '../../src/core/product/product.ts';
import type { Routine } from '../../src/core/wash-day/routine.ts';
import { judgeMet } from '../../src/use/judge/judge-met.ts';
import { knownProduct, metOnPage } from '../../src/use/judge/met-product.ts';
import { readingPage } from '../../src/use/judge/read-page.ts';
import { done, knowing, lookup, nothing } from './knowing.ts';

const text = 'Aqua, Glycerin, Hydrolyzed Wheat Protein, Cetearyl Alcohol, Phenoxyethanol';
const head: Head = {
  id: 'wren',
  name: 'Wren',
  thickness: 'coarse',
  porosity: 'low',
  damage: { kinds: [] },
  avoid: [],
  stretch: [],
  setAside: [],
  added: '2026-01-01',
};
const routine: Routine = {
  id: 'r1',
  head: 'wren',
  name: 'Sunday',
  steps: [],
  added: '2026-01-01',
  washEvery: 7,
};
const page: TabPage = {
  url: 'https://shop.example/goods/1',
  title: 'A page',
  lists: [{ id: 0, text, via: 'names', product: { name: 'Invented Stuff', kind: 'gel', use: 'leave-on' } }],
};
const met = metOnPage(page.lists[0]!, page);

/** What the strip on the page shows, and what the panel shows of the same list. */
function shown(remembered = { ...nothing, heads: [head], routines: [routine] }) {
  const by = knowing(remembered);
  const [strip] = atOnce(readingPage(by, lookup, page));
  const { checks, known } = judgeMet(by, met)!;
  return { strip: strip!, panel: checks, known };
}

it('a kind that the reader corrects on a page is what strip and panel judge', () => {
  const before = { ...nothing, heads: [head], routines: [routine] };
  expect(shown(before).strip.known.kind).toBe('gel');
  const { remembered } = done(before, { act: 'correct-kind', met, kind: 'deep-conditioner' });
  const { strip, panel, known } = shown(remembered);
  expect([known.kind, known.use]).toEqual(['deep-conditioner', 'rinse-off']);
  expect(strip.known).toEqual(known);
  expect(strip.checks).toEqual(panel);
  expect(strip.checks.map(({ about }) => about)).toEqual(['head', 'routine']);
  expect(shown(done(remembered, { act: 'correct-kind', met }).remembered).known.kind).toBe('gel');
});

it('a correction is of that product of that page alone', () => {
  const { remembered } = done(nothing, { act: 'correct-kind', met, kind: 'oil' });
  const kindOf = (url: string, name: string) =>
    knownProduct(remembered, { text, facts: { ...met.facts, url, name } }).kind;
  expect(kindOf(`${page.url}?size=2#top`, 'Invented Stuff')).toBe('oil');
  expect(kindOf(page.url, 'Another Thing')).toBe('gel');
  expect(kindOf('https://shop.example/goods/2', 'Invented Stuff')).toBe('gel');
  expect(kindOf('https://other.example/goods/1', 'Invented Stuff')).toBe('gel');
});

it('a correction of a product that is kept is kept with it', () => {
  const first = done(nothing, { act: 'keep', met, id: 'p1' }).remembered;
  const { remembered } = done(first, { act: 'correct-kind', met, kind: 'cream' });
  expect(remembered.products).toMatchObject([{ id: 'p1', kind: 'cream', use: 'leave-on' }]);
  expect(remembered.sites).toEqual([]);
});

it('the same list in upper case with a full stop is kept for strip and panel alike', () => {
  const { remembered } = done(nothing, { act: 'keep', met, id: 'p1' });
  const other = {
    ...page,
    url: 'https://other.example/x',
    lists: [{ ...page.lists[0]!, text: `${text.toUpperCase()}.` }],
  };
  const [strip] = atOnce(readingPage(knowing(remembered), lookup, other));
  expect(strip!.known.kept?.id).toBe('p1');
  expect(knownProduct(remembered, metOnPage(other.lists[0]!, other)).kept?.id).toBe('p1');
});

it('nothing is read on a page whose site is paused', () => {
  const { remembered } = done(nothing, { act: 'pause', url: page.url });
  expect(atOnce(readingPage(knowing(remembered), lookup, page))).toEqual([]);
  const resumed = done(remembered, { act: 'resume', url: page.url }).remembered;
  expect(atOnce(readingPage(knowing(resumed), lookup, page))).toHaveLength(1);
});

it('the product of a step does not stack with itself', () => {
  const product: Product = { ...done(nothing, { act: 'keep', met, id: 'p1' }).remembered.products[0]! };
  const step = {
    id: 's',
    kind: 'gel',
    use: 'leave-on',
    product: 'p1',
    optional: false,
    cadence: { every: 'wash' },
  } as const;
  const remembered = {
    ...nothing,
    heads: [head],
    products: [product],
    routines: [{ ...routine, steps: [step] }],
  };
  const { strip } = shown(remembered);
  expect(strip.checks.find(({ about }) => about === 'routine')?.findings).toEqual([]);
});
