// @vitest-environment happy-dom
// Bottles without a page: typed in by hand, completed from the dictionary, later made one with a page's product.
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import { entries } from '../../dictionary/index.ts';
import { createNameSearch } from '../../src/core/names/search-names.ts';
import type { Change } from '../../src/store/remembered.ts';
import { ProductsPlace } from '../../src/ui/places/products.tsx';
import { SameBottle } from '../../src/ui/products/label/same-bottle.tsx';
import { rootOf } from '../../src/ui/root.tsx';
import type { World } from '../../src/ui/world.ts';
import type { Met } from '../../src/use/knowing.ts';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeProduct, madeRoutine } from '../keeping/made.ts';
import { lookup } from '../use/knowing.ts';
import { choose, press, settle, type, withWords } from './pressing.ts';

const search = createNameSearch(entries, lookup.close);
const asked: Partial<World> = {
  lookUp: async (typed) =>
    search(typed).map((hit) => ({ ...hit, known: lookup.known(lookup.find(hit.name)) })),
  close: async (names) => names.map((name) => lookup.close(name)),
};
const text = () => (document.body.textContent ?? '').replace(/\s+/g, ' ');
afterEach(() => act(() => render(null, document.body)));

async function openNew() {
  const kept = await keptWorld({ ...asked, detail: { begin: 'product' } });
  const draw = rootOf<{ world: World }>(document.body, ({ world }) => <ProductsPlace world={world} />);
  await act(() => kept.onDraw((world) => draw({ world })));
  await settle();
  return kept;
}
const area = () => document.querySelector('textarea')!;

it('is typed with the names of the dictionary, kept like one from a page, and taken back', async () => {
  const { remembered, takeBack } = await openNew();
  await type('Name', 'Grey Heron Gel');
  await choose('Kind', 'gel');
  await type('Ingredient list', 'Aqua, Glyceri');
  expect(text()).toContain('Names in the dictionary');
  await press('button', /^Glycerin$/);
  expect(area().value).toBe('Aqua, Glycerin, ');
  await type('Ingredient list', 'Aqua, Glycerin, Hydrolyzed Whea');
  await press('button', /^Hydrolyzed Wheat Protein$/);
  expect(text()).toContain('3 names, 3 of them known.');
  await press('button', 'Keep it');
  expect(remembered().products).toMatchObject([
    {
      name: 'Grey Heron Gel',
      kind: 'gel',
      use: 'leave-on',
      owned: true,
      sources: [],
      labels: [{ text: 'Aqua, Glycerin, Hydrolyzed Wheat Protein,' }],
    },
  ]);
  await act(async () => void (await takeBack()));
  expect(remembered().products).toEqual([]);
});

it('a near spelling is offered and never taken by itself', async () => {
  const { remembered } = await openNew();
  await type('Name', 'Grey Heron Gel');
  await type('Ingredient list', 'Aqua, Panthenoll, Glycerin, ');
  expect(text()).toContain('“Panthenoll” is not in the dictionary. Did you mean');
  expect(area().value).toBe('Aqua, Panthenoll, Glycerin, ');
  await press('button', /^Panthenol$/);
  expect(area().value).toBe('Aqua, Panthenol, Glycerin, ');
  await type('Ingredient list', 'Aqua, Panthenoll, Glycerin');
  await press('button', 'Keep it');
  expect(remembered().products[0]!.labels[0]!.text).toBe('Aqua, Panthenoll, Glycerin');
});

const list = 'Aqua, Glycerin, Panthenol, Cetearyl Alcohol, Hydrolyzed Silk, Parfum';
const bottle = madeProduct({
  id: 'bottle',
  name: 'green bottle',
  kind: 'cream',
  sources: [],
  labels: [
    {
      text: list.toLowerCase().replaceAll(', ', '; ').replace('aqua', 'Water'),
      seen: '2026-01-02T10:00:00.000Z',
    },
  ],
});
const { maker: _, ...nameless } = bottle;
const met = (facts: Partial<Met['facts']> = {}, of = list): Met => ({
  text: of,
  facts: {
    name: 'Drift Cream',
    maker: 'Marrow & Fennel',
    kind: 'cream',
    url: 'https://shop.example/drift',
    ...facts,
  },
});
async function meet(page: Met, product: object = nameless) {
  const kept = await keptWorld(asked, [
    { do: 'put', thing: 'products', value: product } as Change,
    {
      do: 'put',
      thing: 'routines',
      value: madeRoutine({ steps: [{ ...madeRoutine().steps[0]!, product: 'bottle' }] }),
    },
  ]);
  await act(() => kept.onDraw((world) => render(<SameBottle world={world} met={page} />, document.body)));
  await settle();
  return kept;
}

it('met on a page under another name, it is made one on a press: the page’s name, one undo', async () => {
  const { remembered, said, takeBack } = await meet(met());
  expect(text()).toContain('green bottle, which you typed in, has this very list.');
  await press('button', 'Yes, merge them');
  expect(said.at(-1)).toBe('Drift Cream and what you typed in are one product now.');
  expect(remembered().products).toMatchObject([
    {
      id: 'bottle',
      name: 'Drift Cream',
      maker: 'Marrow & Fennel',
      owned: true,
      notes: 'green bottle',
      sources: [{ url: 'https://shop.example/drift' }],
    },
  ]);
  expect(remembered().products[0]!.labels).toHaveLength(2);
  expect(remembered().routines[0]!.steps[0]!.product).toBe('bottle');
  // From now on the page knows it.
  expect(document.querySelector('.card')).toBeNull();
  await act(async () => void (await takeBack()));
  expect(remembered().products[0]).toMatchObject({ name: 'green bottle', sources: [] });
});

it.each([
  ['another list', met({}, list.replace('Panthenol', 'Niacinamide')), nameless],
  [
    'another order',
    met({}, 'Aqua, Panthenol, Glycerin, Cetearyl Alcohol, Hydrolyzed Silk, Parfum'),
    nameless,
  ],
  ['another kind', met({ kind: 'gel' }), nameless],
  ['another maker', met(), { ...bottle, maker: 'Quay & Daughters' }],
  ['a product that has a page', met(), madeProduct({ id: 'bottle', labels: bottle.labels })],
  [
    'a list of two names',
    met({}, 'Aqua, Glycerin'),
    { ...nameless, labels: [{ text: 'Aqua; Glycerin', seen: '2026-01-02' }] },
  ],
])('nothing is asked of %s', async (_, page, product) => {
  await meet(page, product);
  expect(withWords('button', 'Yes, merge them')).toBeUndefined();
});
