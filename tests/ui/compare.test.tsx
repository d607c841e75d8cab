// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { Head } from '../../src/core/hair/head.ts';
import type { Mention, Reading } from '../../src/core/reading/reading.ts';
import { settings as settingsSchema } from '../../src/store/schema/schemas.ts';
import { addedShares, align, split } from '../../src/ui/compare/align.ts';
import { ComparePlace } from '../../src/ui/places/compare.tsx';
import type { World } from '../../src/ui/world.ts';
import { comparedMet, type Pin, pinKey, pinnedProducts, pinOf } from '../../src/use/acts/matters/pins.ts';
import { creamText, fakeWorld, gelText, nothing } from './fake-world.ts';

const mention = (raw: string, name?: string, share = { min: 0, max: 10 }) =>
  ({
    raw,
    found: name ? { how: 'alias', name } : { how: 'none', close: [] },
    moisture: [],
    share,
  }) as unknown as Mention;
const reading = (...mentions: Mention[]) => ({ mentions }) as unknown as Reading;

describe('aligning', () => {
  const rows = align([
    reading(mention('Water', 'Aqua'), mention('Glycerin', 'Glycerin'), mention('Mystery X')),
    reading(mention('Eau', 'Aqua'), mention('MYSTERY X'), mention('Panthenol', 'Panthenol')),
  ]);
  it('joins names by what they were found as, unknown ones by their letters', () => {
    expect(rows.map(({ name, at }) => [name, at])).toEqual([
      ['Aqua', [0, 0]],
      ['Glycerin', [1, undefined]],
      ['Mystery X', [2, 1]],
      ['Panthenol', [undefined, 2]],
    ]);
  });
  it('splits into both, some and only', () => {
    const { all, some, only } = split(rows, 2);
    expect(all.map(({ name }) => name)).toEqual(['Aqua', 'Mystery X']);
    expect(some).toEqual([]);
    expect(only.map((each) => each.map(({ name }) => name))).toEqual([['Glycerin'], ['Panthenol']]);
  });
  it('with one product nothing is "only" there', () => {
    expect(split(align([reading(mention('Water', 'Aqua'))]), 1).only).toEqual([[]]);
  });
  it('adds shares as ranges, never beyond the whole', () => {
    const share = { min: 40, max: 70 };
    expect(
      addedShares([mention('a', 'a', share), mention('b', 'b', share), mention('c', 'c', share)]),
    ).toEqual({
      min: 100,
      max: 100,
    });
    expect(addedShares([])).toEqual({ min: 0, max: 0 });
  });
});

describe('pins', () => {
  const cream = comparedMet({
    text: creamText,
    facts: { name: 'Cream', price: 14, currency: 'EUR', size: 200 },
  });
  it('hold the whole of a product that is not kept', () => {
    const settings = { ...nothing.settings, pinned: [cream.pin] };
    expect(pinnedProducts({ settings, products: [] })).toEqual([cream]);
  });
  it('of a product that was forgotten are left out', () => {
    const settings = { ...nothing.settings, pinned: [pinOf('gone')] };
    expect(pinnedProducts({ settings, products: [] })).toEqual([]);
  });
  it('of an older store, ids and JSON in one list, are read; what means nothing is left out', () => {
    const pinned = ['p1', '{"name":"Gel","text":"Aqua","price":3}', '{"name":1}', '{', ''];
    expect(settingsSchema.parse({ ...nothing.settings, pinned }).pinned).toEqual([
      { product: 'p1' },
      { met: { text: 'Aqua', facts: { name: 'Gel', price: 3 } } },
    ]);
  });
});

const pin = (text: string, name: string, price: number) =>
  comparedMet({ text, facts: { name, price, currency: 'EUR', size: 200, sizeUnit: 'ml', kind: 'gel' } }).pin;
const draw = async (over: Partial<World> = {}) => {
  const { world, told } = fakeWorld(over);
  await act(() => render(<ComparePlace world={world} />, document.body));
  return told;
};

describe('the place', () => {
  const pinned = (...pins: Pin[]) => ({ ...nothing, settings: { ...nothing.settings, pinned: pins } });
  afterEach(() => render(null, document.body));

  it('says what to do when there is nothing', async () => {
    await draw();
    expect(document.querySelector('.empty h3')?.textContent).toBe('Nothing to compare yet');
  });
  it('stands two side by side with protein, moisture, price and names', async () => {
    await draw({ remembered: pinned(pin(creamText, 'Cream', 14), pin(gelText, 'Gel', 8)) });
    const text = document.body.textContent ?? '';
    expect(
      [...document.querySelectorAll('.side-by-side')[0]!.querySelectorAll('thead th')].map(
        (th) => th.textContent,
      ),
    ).toEqual(['Cream', 'Gel']);
    expect(text).toMatch(/€7\.00 for 100 ml/);
    expect(text).toMatch(/€4\.00 for 100 ml/);
    expect(text).toContain('Only in Cream (4)');
    expect(text).toContain('Only in Gel (1)');
    expect(text).toContain('In both (5)');
    expect(text).toContain('Large proteins');
  });
  it('sets the product of the page beside the pinned one while browsing', async () => {
    const page = {
      url: 'https://shop.example/2',
      title: 'Two',
      lists: [{ id: 0, text: gelText, via: 'open', product: { name: 'Passing Gel' } }],
    };
    const told = await draw({ remembered: pinned(pin(creamText, 'Cream', 14)), page });
    expect(
      [...document.querySelectorAll('.side-by-side')[0]!.querySelectorAll('thead th')].map(
        (th) => th.textContent,
      ),
    ).toEqual(['Cream', 'Passing Gel']);
    await act(async () => (document.querySelector('[aria-label="Pin Passing Gel"]') as HTMLElement).click());
    expect(told.changes[0]).toMatchObject({
      do: 'set',
      settings: { pinned: [expect.anything(), { met: { facts: { name: 'Passing Gel' } } }] },
    });
  });
  it('says what one alone needs: a second, and first of all a pin when it is only in view', async () => {
    await draw({ remembered: pinned(pin(creamText, 'Cream', 14)) });
    expect(document.body.textContent).toContain('Cream is ready to compare.');
    const page = {
      url: 'https://shop.example/2',
      title: 'Two',
      lists: [{ id: 0, text: gelText, via: 'open', product: { name: 'Passing Gel' } }],
    };
    await draw({ remembered: nothing, page });
    expect(document.body.textContent).toContain('Passing Gel is on the page in view. Pin it before');
  });
  it('where two fit, shows the first pinned and the newest', async () => {
    const pins = ['A', 'B', 'C'].map((name) => pin(gelText, name, 8));
    await draw({ remembered: pinned(...pins) });
    expect(
      [...document.querySelectorAll('.side-by-side')[0]!.querySelectorAll('thead th')].map(
        (th) => th.textContent,
      ),
    ).toEqual(['A', 'C']);
    expect(document.body.textContent).toContain('1 more product is chosen');
  });
});

describe('adding from the shelf', () => {
  afterEach(() => render(null, document.body));
  it('puts the shelf in order only when asked, and pins what is chosen', async () => {
    const shelf = ['Zephyr Gel', 'Amber Gel'].map((name) => ({
      id: name,
      name,
      labels: [{ text: gelText, seen: '2026-01-01' }],
      sources: [],
      owned: true,
      notes: '',
      added: '2026-01-01',
    }));
    const pinned = [comparedMet({ text: creamText, facts: { name: 'Cream' } }).pin];
    const { world, told } = fakeWorld({
      remembered: { ...nothing, products: shelf, settings: { ...nothing.settings, pinned } },
    });
    await act(() => render(<ComparePlace world={world} />, document.body));
    const details = [...document.querySelectorAll('details')].find((each) =>
      each.querySelector('summary')?.textContent?.includes('Add a product'),
    )!;
    expect(details.querySelectorAll('option')).toHaveLength(1);
    await act(() => {
      details.open = true;
      details.dispatchEvent(new Event('toggle'));
    });
    expect([...details.querySelectorAll('option')].map((each) => each.textContent)).toEqual([
      'Choose…',
      'Amber Gel',
      'Zephyr Gel',
    ]);
    const select = details.querySelector('select')!;
    await act(() => {
      select.value = pinKey(pinOf('Amber Gel'));
      select.dispatchEvent(new Event('change', { bubbles: true }));
    });
    expect(told.changes).toEqual([{ do: 'set', settings: { pinned: [...pinned, pinOf('Amber Gel')] } }]);
  });
});

describe('which one', () => {
  const wren: Head = {
    id: 'wren',
    name: 'Wren',
    thickness: 'coarse',
    porosity: 'low',
    damage: { kinds: [] },
    avoid: [{ id: 'a', name: 'Hydrolyzed Silk', reacted: false }],
    stretch: [],
    setAside: [],
    added: '2026-01-01',
  };
  const remembered = (head: Head, ...texts: [string, string, number][]) => ({
    ...nothing,
    heads: [head],
    settings: { ...nothing.settings, pinned: texts.map(([text, name, price]) => pin(text, name, price)) },
  });
  const decision = () => [...document.querySelectorAll('.decision > p')].map((p) => p.textContent);
  afterEach(() => render(null, document.body));

  it('is said first, for the person in use, then in what they differ', async () => {
    await draw({ remembered: remembered(wren, [creamText, 'Cream', 14], [gelText, 'Gel', 8]) });
    const [first, ...lines] = decision();
    expect(first).toMatch(/^For Wren: (rather |perhaps )?Gel/);
    expect(lines).toContain('Gel costs less for the same amount.');
    expect(lines.find((line) => line?.startsWith('Protein: Cream a lot and Gel next to none'))).toBeDefined();
  });
  it('is neither where both are alike, and nothing differs then', async () => {
    await draw({ remembered: remembered({ ...wren, avoid: [] }, [gelText, 'A', 8], [gelText, 'B', 8]) });
    expect(decision()).toHaveLength(1);
    expect(decision()[0]).toMatch(
      /^(Both fit Wren|None of them is for Wren|Cannot tell yet which fits Wren)/,
    );
  });
  it('of one alone says nothing', async () => {
    await draw({ remembered: remembered(wren, [gelText, 'A', 8]) });
    expect(decision()).toEqual([]);
  });
});
