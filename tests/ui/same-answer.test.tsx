// @vitest-environment happy-dom
// The same product has the same answer wherever it is shown: by the list, in the panel, on a shelf, among the
// products kept, side by side, and on paper. Products and heads are invented.

import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { TabPage } from '../../src/contract/messages.ts';
import { atOnce } from '../../src/core/at-once.ts';
import { type ProductFacts, type ProductKind, usualUse } from '../../src/core/product/product.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { defaultSettings, type Remembered } from '../../src/store/remembered.ts';
import { drawShelfMark } from '../../src/ui/describe/drawn/draw-shelf.ts';
import { saysOf } from '../../src/ui/describe/shelf.ts';
import { stripOf } from '../../src/ui/describe/strip.ts';
import { ListReading } from '../../src/ui/page/list-reading.tsx';
import { ComparePlace } from '../../src/ui/places/compare.tsx';
import { RoutinePlace } from '../../src/ui/places/routine.tsx';
import { ProductRow } from '../../src/ui/products/product-row.tsx';
import type { World } from '../../src/ui/world.ts';
import { metOnPage } from '../../src/use/judge/met-product.ts';
import { readingPage } from '../../src/use/judge/read-page.ts';
import { readOptionsOf } from '../../src/use/practice-of.ts';
import { knowProduct } from '../../src/use/shelf/know-product.ts';
import { rowOf } from '../../src/use/shelf/row.ts';
import { headOf } from '../judged/head-of.ts';
import { readRows } from '../judged/rows.ts';
import { done, lookup, nothing } from '../use/knowing.ts';
import { fakeWorld } from './fake-world.ts';

const folder = `${import.meta.dirname}/../judged/rows`;
const labels = readRows('labels', folder)!.filter((_, at) => at % 3 !== 2);
const heads = readRows('heads', folder)!.slice(0, 3).map(headOf);

type Case = {
  name: string;
  text: string;
  kind?: ProductKind;
  more?: Partial<ProductFacts>;
  elsewhere?: true;
};
const cases: Case[] = [
  ...labels.map(({ title, label, kind }) => ({ name: title!, text: label!, kind: kind as ProductKind })),
  // What the page says must reach every place: where it is sold, that it is for the floor, that it is no list.
  ...labels.slice(0, 2).map(({ title, label, kind }) => ({
    name: `${title} sold in euro`,
    text: label!,
    kind: kind as ProductKind,
    more: { price: 9, currency: 'EUR', size: 200 },
  })),
  ...labels.slice(0, 2).map(({ title, label, kind }) => ({
    name: `${title} on a page in German`,
    text: label!,
    kind: kind as ProductKind,
    more: { language: 'de' },
  })),
  { name: 'No kind told', text: labels[3]!.label! },
  { name: 'Floor Soap', text: labels[0]!.label!, elsewhere: true },
  { name: 'Body Butter', text: labels[1]!.label!, more: { goods: 'not-hair' } },
];

const pageOf = ({ name, text, kind, more, elsewhere }: Case): TabPage => ({
  url: `https://shop.example/goods/${encodeURIComponent(name)}`,
  title: name,
  lists: [
    {
      id: 0,
      text,
      via: 'heading',
      product: { name, ...(kind && { kind, use: usualUse[kind] }), ...more },
      ...(elsewhere && { elsewhere }),
    },
  ],
});

function worldOf(remembered: Remembered, page: TabPage): World {
  const { world } = fakeWorld({ remembered, page, lookUp: undefined as never });
  world.reading = (text, as) => readLabel(text, lookup, readOptionsOf(world.practice, remembered, as));
  return world;
}

const draw = async (view: preact.JSX.Element) => {
  await act(() => render(view, document.body));
  // A row among many is judged in its turn.
  await act(() => new Promise((turn) => setTimeout(turn)));
  const answers = [...document.querySelectorAll('.answer-head')].map((each) => each.textContent);
  render(null, document.body);
  return answers;
};
afterEach(() => render(null, document.body));

/** What each place shows of one product, by its own code: the title of the answer for the head. */
async function shown(world: World, page: TabPage) {
  const { t, remembered } = world;
  const [list] = page.lists;
  const met = metOnPage(list!, page);
  const [strip] = atOnce(readingPage(world, lookup, page));
  const entry = { address: page.url, text: met.text, product: met.facts, readOn: '2026-03-01T10:00:00Z' };
  const shelf = knowProduct(world, entry)!;
  const says = saysOf(shelf, '', t);
  const by = stripOf(strip!.reading, { ...strip!, product: met.facts.name, kept: false, granted: false }, t);
  const panel = await draw(<ListReading world={world} met={met} />);
  const compare = await draw(<ComparePlace world={world} />);
  const kept = remembered.products[0];
  const row =
    kept && (await draw(<ProductRow world={world} product={kept} pictured={false} onOpen={() => {}} />));
  return {
    head: [
      by.verdicts[0]?.title,
      says.notForHair ? t('page.verdict.not-hair') : says.verdicts[0]?.title,
      panel[0],
      compare[0],
      ...(row ? [row[0]] : []),
    ],
    routine: [by.verdicts[1]?.title, says.verdicts[1]?.title, panel[1]],
    all: [strip!.checks, shelf.checks],
    row: [rowOf(shelf, '').answer, drawShelfMark(says, t).label, says.verdicts] as const,
  };
}

const agree = (seen: Awaited<ReturnType<typeof shown>>) => {
  expect(new Set(seen.head).size, `${seen.head}`).toBe(1);
  expect(seen.head[0]).toBeTruthy();
  expect(new Set(seen.routine).size, `${seen.routine}`).toBe(1);
  expect(seen.all[1]).toEqual(seen.all[0]);
  const [row, mark, verdicts] = seen.row;
  if (row)
    expect(
      verdicts.some(({ answer, title }) => answer === row && mark.includes(title)),
      mark,
    ).toBe(true);
};

describe.each(heads.map((head) => [head.name, head] as const))('%s', (_, head) => {
  const routine = {
    id: 'r1',
    head: head.id,
    name: 'Sunday',
    washEvery: 4,
    added: '2026-01-01',
    steps: [
      { id: 's1', kind: 'cleanser', use: 'rinse-off', optional: false, cadence: { every: 'wash' } },
      {
        id: 's2',
        kind: 'leave-in',
        use: 'leave-on',
        product: 'p1',
        optional: false,
        cadence: { every: 'wash' },
      },
    ],
  } satisfies Remembered['routines'][number];
  const first = { ...nothing, settings: defaultSettings, heads: [head], routines: [routine] };

  it.each(cases)('$name, met', async (of) => {
    const page = pageOf(of);
    agree(await shown(worldOf(first, page), page));
  });

  it.each(cases.filter(({ kind }) => kind).slice(0, 8))('$name, kept and in the routine', async (of) => {
    const page = pageOf(of);
    const { name, text, kind = 'gel', more } = of;
    const { price, currency, language } = more ?? {};
    const kept: Remembered['products'][number] = {
      id: 'p1',
      name,
      kind: kind === 'gel' ? 'cream' : kind,
      use: usualUse[kind],
      labels: [{ text, seen: '2026-01-01' }],
      sources: [
        {
          url: page.url,
          seen: '2026-01-01',
          ...(price && { price }),
          ...(currency && { currency }),
          ...(language && { language }),
        },
      ],
      owned: true,
      notes: '',
      added: '2026-01-01',
    };
    const world = worldOf({ ...first, products: [kept] }, page);
    agree(await shown(world, page));
  });

  it.each(cases.slice(-2))(
    '$name, kept as its page told it, is for no hair until the reader says a kind',
    async (of) => {
      const page = pageOf(of);
      const met = metOnPage(page.lists[0]!, page);
      const { remembered } = done(first, { act: 'keep', met, id: 'p1' });
      const seen = await shown(worldOf(remembered, page), page);
      agree(seen);
      expect(seen.head).toHaveLength(5);
      expect(seen.head[0]).toBe('Not for hair');
      const told = done(remembered, { act: 'correct-kind', met, kind: 'cream' }).remembered;
      const after = await shown(worldOf(told, page), page);
      agree(after);
      expect(after.head[0]).not.toBe('Not for hair');
    },
  );

  it('a kind that the reader corrected holds in every place', async () => {
    const page = pageOf({ ...cases[0]!, kind: 'cream' });
    const met = metOnPage(page.lists[0]!, page);
    const { remembered } = done(first, { act: 'correct-kind', met, kind: 'cleanser' });
    const world = worldOf(remembered, page);
    expect(atOnce(readingPage(world, lookup, page))[0]!.known.kind).toBe('cleanser');
    agree(await shown(world, page));
  });

  it('paper says what the wash day says', async () => {
    const page = pageOf(cases[0]!);
    const product = {
      id: 'p1',
      name: 'Leave-in',
      kind: 'leave-in',
      use: 'leave-on',
      labels: [{ text: labels.find(({ kind }) => kind === 'protein-treatment')!.label!, seen: '2026-01-01' }],
      sources: [],
      owned: true,
      notes: '',
      added: '2026-01-01',
    } satisfies Remembered['products'][number];
    const world = worldOf({ ...first, products: [product] }, page);
    await act(() => render(<RoutinePlace world={world} />, document.body));
    await expect.poll(() => document.querySelector('.print-sheet')).not.toBeNull();
    const sheet = document.querySelector('.print-sheet')!;
    const words = (within: Element) => within.textContent!.replace(/\s+/g, ' ');
    const printed = [...sheet.querySelectorAll('.finding')].map((each) => [each.className, words(each)]);
    sheet.remove();
    const onScreen = [...document.querySelectorAll('.finding')].map((each) => words(each));
    expect(printed.length).toBeGreaterThan(0);
    for (const [, said] of printed)
      expect(
        onScreen.some((each) => each.includes(said!)),
        said,
      ).toBe(true);
  });
});
