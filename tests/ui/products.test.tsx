// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { bestSource, type Product } from '../../src/core/product/product.ts';
import type { Change } from '../../src/store/remembered.ts';
import { ProductsPlace } from '../../src/ui/places/products.tsx';
import { MetAgain } from '../../src/ui/products/label/met-again.tsx';
import { priceWords } from '../../src/ui/products/price.ts';
import { createSearch } from '../../src/ui/products/search.ts';
import { translator } from '../../src/ui/words/index.ts';
import type { World } from '../../src/ui/world.ts';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeHead, madeProduct, madeRoutine } from '../keeping/made.ts';
import { choose, press, settle, type, withWords } from './pressing.ts';

const t = translator('en');
const text = () => document.body.textContent ?? '';
const put = (value: Product): Change => ({ do: 'put', thing: 'products', value });
async function open(start: Change[] = [], over: Partial<World> = {}) {
  const kept = await keptWorld(over, start);
  await act(() => kept.onDraw((world) => render(<ProductsPlace world={world} />, document.body)));
  return kept;
}
afterEach(() => render(null, document.body));

describe('adding', () => {
  it('by hand, with a pasted label; a name is needed', async () => {
    const { remembered } = await open();
    await press('button', 'Add a product');
    await type('Ingredient list', 'Aqua, Glycerin, Hydrolyzed Wheat Protein');
    await press('button', 'Keep it');
    expect(text()).toContain('A name is needed');
    await type(/^Name/, 'Harbour Gel');
    await choose('Kind', 'gel');
    await press('button', 'Keep it');
    expect(remembered().products).toMatchObject([
      {
        name: 'Harbour Gel',
        kind: 'gel',
        use: 'leave-on',
        owned: true,
        labels: [{ text: 'Aqua, Glycerin, Hydrolyzed Wheat Protein' }],
      },
    ]);
    expect(document.querySelector('.label-text')!.textContent).toContain('Hydrolyzed Wheat Protein');
  });

  it('from the page in view, merged with what is kept', async () => {
    const page = {
      url: 'https://other.example/cream',
      title: 'Cream',
      lists: [
        {
          id: 1,
          text: 'Aqua, Cetearyl Alcohol, Glycerin',
          via: 'heading',
          product: { name: 'Tidepool Curl Cream', maker: 'Marrow & Fennel', price: 12, currency: 'EUR' },
        },
      ],
    };
    const { remembered, said } = await open([put(madeProduct())], { page });
    await press('button', 'Add a product');
    await press('.from-page button', 'Keep');
    expect(said.at(-1)).toContain('this shop was added');
    expect(remembered().products).toHaveLength(1);
    expect(remembered().products[0]!.sources.map(({ url }) => url)).toEqual([
      'https://shop.example/tidepool',
      'https://other.example/cream',
    ]);
  });
});

describe('one product', () => {
  const changed = madeProduct({
    labels: [
      { text: 'Aqua, Cetearyl Alcohol, Glycerin, Hydrolyzed Soy Protein', seen: '2026-02-01T10:00:00.000Z' },
      { text: 'Aqua, Cetearyl Alcohol, Glycerin, Panthenol', seen: '2026-01-02T10:00:00.000Z' },
    ],
  });

  it('shows what changed on its label, and keeps both', async () => {
    await open([put(changed)], { detail: { product: 'p1' } });
    expect(text()).toContain('Now with Hydrolyzed Soy Protein.');
    expect(text()).toContain('No longer with Panthenol.');
    expect(document.querySelectorAll('.changes li')).toHaveLength(2);
    expect(text()).toContain('1 earlier label');
    expect(text()).toContain('Aqua, Cetearyl Alcohol, Glycerin, Panthenol');
  });

  it('takes a new label by hand', async () => {
    const { remembered } = await open([put(madeProduct())], { detail: { product: 'p1' } });
    await type('New ingredient list', ' aqua, cetearyl alcohol,  Glycerin.');
    await press('.disclosed button', 'Keep it');
    expect(text()).toContain('That is the label you have');
    await type('New ingredient list', 'Aqua, Glycerin');
    await press('.disclosed button', 'Keep it');
    expect(remembered().products[0]!.labels.map((label) => label.text)).toEqual([
      'Aqua, Glycerin',
      'Aqua, Cetearyl Alcohol, Glycerin',
    ]);
    expect(text()).toContain('No longer with Cetearyl Alcohol.');
  });

  it('is corrected: kind, use, size, notes, owned', async () => {
    const { remembered } = await open([put(madeProduct())], { detail: { product: 'p1' } });
    await choose('Kind', 'deep-conditioner');
    expect(remembered().products[0]).toMatchObject({ kind: 'deep-conditioner', use: 'rinse-off' });
    await act(() => withWords('.option', 'left in')!.querySelector('input')!.click());
    await settle();
    expect(remembered().products[0]).toMatchObject({ use: 'leave-on' });
    await type('Size', '250,5');
    await type('Notes', 'green lid');
    await act(() => withWords('.check', 'I have it')!.querySelector('input')!.click());
    await settle();
    expect(remembered().products[0]).toMatchObject({ size: 250.5, notes: 'green lid', owned: false });
  });

  it('says how it sits with the head in use', async () => {
    await open(
      [
        put(madeProduct()),
        {
          do: 'put',
          thing: 'heads',
          value: madeHead({ avoid: [{ id: 'a', name: 'Glycerin', reacted: false }] }),
        },
      ],
      { detail: { product: 'p1' } },
    );
    expect(document.querySelector('.verdict')!.textContent).toContain('Glycerin');
  });

  it('has the focus on its name when opened; closed, the focus is on its row again', async () => {
    await open([put(madeProduct()), put(madeProduct({ id: 'p2', name: 'Ninth Wave Gel' }))]);
    // the place stands in the panel's section
    document.body.id = 'place';
    await press('.product-name', 'Ninth Wave Gel');
    expect(document.activeElement?.textContent).toBe('Ninth Wave Gel');
    expect(document.activeElement?.tagName).toBe('H3');
    await press('button', 'All products');
    expect(document.activeElement?.className).toBe('product-name');
    expect(document.activeElement?.textContent).toBe('Ninth Wave Gel');
    document.body.removeAttribute('id');
  });

  it('is removed with one undo for it and its steps', async () => {
    const { remembered, takeBack } = await open(
      [put(madeProduct()), { do: 'put', thing: 'routines', value: madeRoutine() }],
      { detail: { product: 'p1' } },
    );
    expect(text()).toContain('It is a step of 1 routine');
    await press('button[aria-label^="Remove Tidepool"]', 'Remove');
    expect(remembered().products).toEqual([]);
    expect(remembered().routines[0]!.steps[0]).not.toHaveProperty('product');
    await act(async () => void (await takeBack()));
    expect(remembered().products).toHaveLength(1);
    expect(remembered().routines[0]!.steps[0]!.product).toBe('p1');
  });

  it('is made one with another: steps and pins follow', async () => {
    const other = madeProduct({ id: 'p2', name: 'Tidepool Cream (travel)', sources: [] });
    const { remembered } = await open(
      [
        put(madeProduct()),
        put(other),
        {
          do: 'put',
          thing: 'routines',
          value: madeRoutine({ steps: [{ ...madeRoutine().steps[0]!, product: 'p2' }] }),
        },
        { do: 'set', settings: { pinned: [{ product: 'p2' }, { product: 'p1' }] } },
      ],
      { detail: { product: 'p1' } },
    );
    await choose('Is it the same as another?', 'p2');
    await press('button', 'Merge them');
    expect(remembered().products.map(({ id }) => id)).toEqual(['p1']);
    expect(remembered().routines[0]!.steps[0]!.product).toBe('p1');
    expect(remembered().settings.pinned).toEqual([{ product: 'p1' }]);
  });
});

describe('met again on a page', () => {
  const meet = async (list: string) => {
    const kept = await keptWorld({}, [put(madeProduct())]);
    const facts = {
      name: 'Tidepool Curl Cream',
      maker: 'Marrow & Fennel',
      url: 'https://shop.example/tidepool',
    };
    await act(() =>
      kept.onDraw((world) =>
        render(
          <MetAgain world={world} kept={world.remembered.products[0]!} text={list} facts={facts} />,
          document.body,
        ),
      ),
    );
    return kept;
  };
  it('says what changed, and keeps the new label on a press', async () => {
    const { remembered } = await meet('Aqua, Cetearyl Alcohol, Glycerin, Hydrolyzed Soy Protein');
    expect(text()).toContain('Now with Hydrolyzed Soy Protein.');
    await press('button', 'Keep the new label');
    expect(remembered().products[0]!.labels).toHaveLength(2);
    expect(text()).toBe('');
  });
  it('says nothing where nothing changed', async () => {
    await meet('aqua,  cetearyl alcohol, glycerin.');
    expect(text()).toBe('');
  });
});

describe('searching', () => {
  const products = [
    madeProduct(),
    madeProduct({
      id: 'p2',
      name: 'Harbour Gel',
      maker: 'Ninth Wave',
      kind: 'gel',
      labels: [{ text: 'Aqua, Panthenol', seen: '2026-01-02' }],
      notes: 'blue lid',
    }),
    madeProduct({ id: 'p3', name: 'Saltmarsh Foam', maker: 'Ninth Wave', kind: 'foam', labels: [] }),
  ];
  const all = (from: readonly Product[], query: string) => {
    const work = createSearch(from, t)(query);
    let step = work.next();
    while (!step.done) step = work.next();
    return step.value;
  };
  const found = (query: string) => all(products, query).map(({ id }) => id);
  it.each([
    ['', ['p1', 'p2', 'p3']],
    ['harbour', ['p2']],
    ['harbor gel', ['p2']], // a slip of the pen
    ['ninth', ['p2', 'p3']],
    ['blue lid', ['p2']],
    ['panthenol', ['p2']], // on the label
    ['xyzzy', []],
  ])('%j', (query, ids) => expect(found(query).toSorted()).toEqual(ids));

  // A figure for the task budget is measured in a browser (tests/browser/keep-many.test.ts); this only holds the shape.
  it('500 products: all are found by one letter less', () => {
    const many = Array.from({ length: 500 }, (_, i) =>
      madeProduct({ id: `m${i}`, name: `Product ${i} of many` }),
    );
    expect(all(many, 'product 499 of many')[0]!.id).toBe('m499');
  });
});

it('stands newest first, by name, or by price for the same amount', async () => {
  const make = (id: string, name: string, price: number | undefined, day: number) =>
    put(
      madeProduct({
        id,
        name,
        size: 100,
        sources: price === undefined ? [] : [{ url: id, price, currency: 'EUR', seen: '2026-01-01' }],
        added: `2026-01-0${day}T00:00:00.000Z`,
      }),
    );
  // Search and filters come with eight products; five of them cost the most and are last by every order.
  const others = [1, 2, 3, 4, 5].map((n) => ({ ...make(`o${n}`, `Yew ${n}`, 50, 1) }));
  await open([...others, make('a', 'Birch 2', 9, 2), make('b', 'Birch 10', 40, 3), make('c', 'Alder', 3, 4)]);
  const names = () =>
    [...document.querySelectorAll('.product-name')].map((name) => name.textContent).slice(0, 3);
  expect(names()).toEqual(['Alder', 'Birch 10', 'Birch 2']);
  await choose('In order of', 'name');
  expect(names()).toEqual(['Alder', 'Birch 2', 'Birch 10']);
  await choose('In order of', 'price');
  expect(names()).toEqual(['Alder', 'Birch 2', 'Birch 10']);
  await type(/^Search/, 'birch');
  expect(document.querySelectorAll('.product-name')).toHaveLength(2);
});

describe('prices', () => {
  it.each([
    [{ price: 14, currency: 'EUR' }, { size: 200 }, '€14.00\u00a0· €7.00 for 100 ml'],
    [
      { price: 14, currency: 'EUR', size: 100, sizeUnit: 'g' as const },
      { size: 200 },
      '€14.00\u00a0· €14.00 for 100 g',
    ],
    [{ price: 14, currency: 'EUR' }, {}, '€14.00'],
    [{ price: 9.5 }, { size: 50 }, '9.5\u00a0· 19 for 100 ml'],
    [{}, { size: 50 }, undefined],
    [{ price: 3, currency: 'nonsense' }, {}, '3.00 nonsense'],
  ])('%j of %j', (source, product, words) => expect(priceWords(t, product, source)).toBe(words));

  it('for a wash, where it is known how much that takes', () => {
    const words = (source: object, grams?: number) => priceWords(t, { size: 200 }, source, grams);
    expect(words({ price: 14, currency: 'EUR' }, 6)).toBe(
      '€14.00\u00a0· €7.00 for 100 ml\u00a0· about €0.42 a wash',
    );
    expect(words({ price: 14, currency: 'EUR' })).toBe('€14.00\u00a0· €7.00 for 100 ml');
    expect(words({ currency: 'EUR' }, 6)).toBeUndefined();
  });

  it('the best is the cheapest for its amount, among one currency', () => {
    const product = madeProduct({
      sources: [
        { url: 'a', price: 14, currency: 'EUR', seen: '2026-01-01' },
        { url: 'b', price: 10, currency: 'EUR', size: 100, seen: '2026-01-01' },
        { url: 'c', price: 13, currency: 'EUR', seen: '2026-01-01' },
        { url: 'd', price: 1, currency: 'JPY', seen: '2026-01-01' },
      ],
    });
    expect(bestSource(product)!.url).toBe('c');
  });
});
