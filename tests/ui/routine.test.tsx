// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { type Product, type ProductKind, usualUse } from '../../src/core/product/product.ts';
import { washDay } from '../../src/core/wash-day/add-up.ts';
import type { Routine } from '../../src/core/wash-day/routine.ts';
import type { Change } from '../../src/store/remembered.ts';
import { ProductsPlace } from '../../src/ui/places/products.tsx';
import { RoutinePlace } from '../../src/ui/places/routine.tsx';
import { rootOf } from '../../src/ui/root.tsx';
import { routineCsv, routineText } from '../../src/ui/routine/sheet/exports.ts';
import { SuggestionsCard } from '../../src/ui/routine/suggestions.tsx';
import type { Detail, World } from '../../src/ui/world.ts';
import { movedStep } from '../../src/use/acts/matters/routines.ts';
import { washDayInput } from '../../src/use/judge/wash-day-input.ts';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeHead, madeProduct } from '../keeping/made.ts';
import { choose, press, settle, type, withWords } from './pressing.ts';

const text = () => (document.body.textContent ?? '').replace(/\s+/g, ' ');
const labels = {
  plain:
    'Aqua, Cetearyl Alcohol, Behentrimonium Methosulfate, Glycerin, Helianthus Annuus Seed Oil, Stearamidopropyl Dimethylamine, Amodimethicone, Phenoxyethanol',
  free: 'Aqua, Glycerin, Xanthan Gum, Phenoxyethanol',
  silk: 'Aqua, Glycerin, Hydrolyzed Silk, Phenoxyethanol',
  wheat: 'Aqua, Hydrolyzed Wheat Protein, Glycerin, Phenoxyethanol',
  wash: 'Aqua, Sodium Cocoyl Isethionate, Cocamidopropyl Betaine, Phenoxyethanol',
};
const product = (
  id: string,
  kind: ProductKind,
  label: keyof typeof labels,
  over: Partial<Product> = {},
): Product =>
  madeProduct({
    id,
    name: `Invented ${id}`,
    kind,
    use: usualUse[kind],
    labels: [{ text: labels[label], seen: '2026-01-01T00:00:00.000Z' }],
    sources: [],
    ...over,
  });
const products = [
  product('wash', 'cleanser', 'wash'),
  product('conditioner', 'conditioner', 'plain'),
  product('wheat-gel', 'gel', 'wheat'),
  product('free-gel', 'gel', 'free'),
  product('silk-cream', 'cream', 'silk', { owned: false }),
];
const step = (id: string, kind: ProductKind, of?: string): Routine['steps'][number] => ({
  id,
  kind,
  use: usualUse[kind],
  ...(of && { product: of }),
  optional: false,
  cadence: { every: 'wash' },
});
const routine: Routine = {
  id: 'r1',
  head: 'wren',
  name: 'Sunday',
  steps: [
    step('s1', 'cleanser', 'wash'),
    step('s2', 'conditioner', 'conditioner'),
    step('s3', 'gel', 'wheat-gel'),
  ],
  added: '2026-01-01T00:00:00.000Z',
  washEvery: 7,
};
const head = madeHead({ damage: { kinds: [] }, avoid: [], stretch: [] });
const put = (thing: 'heads' | 'products' | 'routines', value: unknown) =>
  ({ do: 'put', thing, value }) as Change;
const all = [put('heads', head), ...products.map((one) => put('products', one)), put('routines', routine)];

async function open(start: Change[] = all, over: Partial<World> = {}, View = RoutinePlace) {
  const went: [string, Detail | undefined][] = [];
  const kept = await keptWorld({ go: (place, detail) => void went.push([place, detail]), ...over }, start);
  let world: World | undefined;
  const draw = rootOf<{ world: World }>(document.body, (state) => <View world={state.world} />);
  await act(() =>
    kept.onDraw((now) => {
      world = now;
      draw({ world: now });
    }),
  );
  await settle();
  return { ...kept, went, now: () => world! };
}
afterEach(() => act(() => render(null, document.body)));

const kinds = (of: Routine | undefined) => of?.steps.map(({ kind }) => kind);

describe('before there is a routine', () => {
  it('asks whose hair first', async () => {
    const { went } = await open([]);
    await press('button', 'Describe the hair');
    expect(went).toEqual([['hair', undefined]]);
  });
  it('begins with the usual steps', async () => {
    const { remembered } = await open([put('heads', head)]);
    await press('button', 'Start with the usual steps');
    expect(kinds(remembered().routines[0])).toEqual(['cleanser', 'conditioner', 'leave-in', 'gel']);
    expect(remembered().settings.routineInUse).toBe(remembered().routines[0]!.id);
  });
});

describe('findings and suggestions', () => {
  it('stand beside the step that decides them', async () => {
    await open();
    const gel = document.querySelector('[data-step="s3"]')!.textContent!;
    expect(gel).toContain('too much protein');
    expect(gel).toContain('large protein stays on');
    expect(document.querySelector('[data-step="s2"] .note')).toBeNull();
  });
  it('one press takes the smallest change, and it can be taken back', async () => {
    const { remembered, takeBack } = await open();
    expect(document.querySelector('#suggestions')!.textContent).toContain(
      'gel: Invented free-gel instead of Invented wheat-gel.',
    );
    await press('#suggestions button', 'Do this');
    expect(remembered().routines[0]!.steps[2]!.product).toBe('free-gel');
    expect(text()).toContain('Nothing is too much and nothing is missing.');
    expect(document.querySelector('#suggestions')).toBeNull();
    await act(async () => void (await takeBack()));
    await settle();
    expect(remembered().routines[0]!.steps[2]!.product).toBe('wheat-gel');
  });
  it('one line alone: what it would change is shown first, the changed row is marked, and it can be taken back', async () => {
    const { remembered, takeBack } = await open();
    await press('#suggestions button', 'Swap');
    expect(document.querySelector('#suggestions')!.textContent).toContain(
      'By itself this makes the day better.',
    );
    expect(document.querySelector('#suggestions')!.textContent).toMatch(
      /What it fixes.*contains more protein than your hair/s,
    );
    expect(remembered().routines[0]!.steps[2]!.product).toBe('wheat-gel');
    await press('#suggestions button', 'Do only this');
    expect(remembered().routines[0]!.steps[2]!.product).toBe('free-gel');
    expect(document.querySelector('.step-row.changed')!.textContent).toContain('changed just now');
    expect(document.querySelectorAll('.step-row.changed')).toHaveLength(1);
    await act(async () => void (await takeBack()));
    await settle();
    expect(remembered().routines[0]!.steps[2]!.product).toBe('wheat-gel');
  });
  it('what was found for the routine before is not offered for the one that stands now', async () => {
    const { now } = await open();
    await act(() => render(null, document.body));
    const card = (of: Routine) => {
      const input = washDayInput(now(), of);
      return <SuggestionsCard world={now()} input={input} day={washDay(input)} onChanged={() => {}} />;
    };
    await act(() => render(card(routine), document.body));
    await settle();
    expect(text()).toContain('gel: Invented free-gel instead of Invented wheat-gel.');
    // As it is drawn first, before anything is asked for it.
    render(card(movedStep(routine, 's3', 0)), document.body);
    expect(text()).not.toContain('instead of');
    await expect.poll(text, { timeout: 10_000 }).toContain('Leave out Invented wheat-gel (gel).');
  });
  it('looks among considered products by itself, and says that they are no more than that', async () => {
    const considered = products.map((one) => (one.id === 'free-gel' ? { ...one, owned: false } : one));
    await open([
      put('heads', head),
      ...considered.map((one) => put('products', one)),
      put('routines', routine),
    ]);
    expect(document.querySelector('#suggestions')!.textContent).toContain(
      'gel: Invented free-gel (thinking about it) instead of Invented wheat-gel.',
    );
  });
  it('where nothing on hand settles it, says what kind of product would, and the products filter by it', async () => {
    const thirsty = madeHead({ thickness: 'fine', porosity: 'high', avoid: [], stretch: [] });
    const dry: Routine = { ...routine, steps: routine.steps.slice(0, 1) };
    const start = [
      put('heads', thirsty),
      put('products', products[0]),
      put('products', products[4]),
      put('routines', dry),
    ];
    const { went } = await open(start);
    expect(text()).toContain('Nothing you have fixes it.');
    await press('#suggestions button', /^Look for/);
    expect(went[0]![0]).toBe('products');
    await act(() => render(null, document.body));
    await open(start, { detail: went[0]![1]! }, ProductsPlace);
    expect(text()).toContain('Only what is, or may be, a');
    expect(withWords('.window-list', 'Invented silk-cream')).toBeUndefined();
  });
});

describe('changing the steps', () => {
  it('by the handle and the arrow keys, said with an undo', async () => {
    const { remembered, said } = await open();
    const handle = document.querySelector<HTMLElement>('[data-step="s3"] .handle')!;
    expect(handle.getAttribute('aria-label')).toBe('Move the gel, place 3 of 3: drag, or use the arrow keys');
    await act(
      () => void handle.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', bubbles: true })),
    );
    await settle();
    expect(kinds(remembered().routines[0])).toEqual(['cleanser', 'gel', 'conditioner']);
    expect(said.at(-1)).toBe('gel moved to place 2 of 3.');
  });
  it('by buttons; the first cannot go up', async () => {
    const { remembered } = await open();
    expect(document.querySelector<HTMLButtonElement>('[data-step="s1"] .up')!.disabled).toBe(true);
    await act(() => document.querySelector<HTMLElement>('[data-step="s1"] .down')!.click());
    await settle();
    expect(kinds(remembered().routines[0])).toEqual(['conditioner', 'cleanser', 'gel']);
  });
  it('adds, duplicates, removes', async () => {
    const { remembered } = await open();
    await choose('One more step', 'oil');
    await press('.add-step button', 'Add');
    expect(kinds(remembered().routines[0])).toEqual(['cleanser', 'conditioner', 'gel', 'oil']);
    await press('[data-step="s3"] button', 'Change');
    await press('[data-step="s3"] button', 'Duplicate');
    expect(remembered().routines[0]!.steps.filter(({ product: of }) => of === 'wheat-gel')).toHaveLength(2);
    await press('[data-step="s3"] button', 'Remove');
    expect(kinds(remembered().routines[0])).toEqual(['cleanser', 'conditioner', 'gel', 'oil']);
  });
  it('gives a step its product, and uses it as the product is', async () => {
    const { remembered } = await open();
    await press('[data-step="s3"] button', 'Change');
    await choose('Product', 'silk-cream');
    expect(remembered().routines[0]!.steps[2]).toMatchObject({
      product: 'silk-cream',
      use: 'leave-on',
      kind: 'gel',
    });
    await choose('Product', '');
    expect(remembered().routines[0]!.steps[2]).not.toHaveProperty('product');
  });
  it('moves to any place and no further', () => {
    expect(kinds(movedStep(routine, 's1', 9))).toEqual(['conditioner', 'gel', 'cleanser']);
    expect(kinds(movedStep(routine, 's3', -4))).toEqual(['gel', 'cleanser', 'conditioner']);
    expect(movedStep(routine, 'nobody', 0)).toBe(routine);
  });
});

describe('routines of a head', () => {
  it('are copied with steps of their own, and the copy is in use', async () => {
    const { remembered } = await open();
    await press('button', 'Make a copy');
    const [first, copy] = remembered().routines;
    expect(copy).toMatchObject({ name: 'Sunday, copy', head: 'wren' });
    expect(copy!.steps.map(({ id }) => id)).not.toEqual(first!.steps.map(({ id }) => id));
    expect(remembered().settings.routineInUse).toBe(copy!.id);
    expect(document.querySelector('h2')!.textContent).toBe('Sunday, copy');
  });
});

describe('a product from a page', () => {
  const facts = { name: 'Met Cream', kind: 'cream', url: 'https://shop.example/met' } as const;
  const detail = { add: { text: labels.silk, facts } };
  it('is previewed before anything changes, then kept and planned', async () => {
    const { remembered, went } = await open(all, { detail });
    expect(document.querySelector('#adding')!.textContent).toContain(
      'Your cream would be the second product with protein.',
    );
    expect(remembered().products).toHaveLength(products.length);
    await press('#adding button', /^Add to routine$/);
    const kept = remembered().products.find(({ name }) => name === 'Met Cream')!;
    expect(kept).toMatchObject({ owned: false, kind: 'cream' });
    expect(kinds(remembered().routines[0])).toEqual(['cleanser', 'conditioner', 'cream', 'gel']);
    expect(remembered().routines[0]!.steps[2]!.product).toBe(kept.id);
    expect(went.at(-1)).toEqual(['routine', undefined]);
  });
  it('as the first of a routine comes with the usual steps around it, empty and free to stay so', async () => {
    const { remembered } = await open([put('heads', head)], { detail });
    await press('#adding button', /^Add to routine$/);
    const { steps } = remembered().routines[0]!;
    expect(steps.map(({ kind, product: of, optional }) => [kind, Boolean(of), optional])).toEqual([
      ['cleanser', false, true],
      ['conditioner', false, true],
      ['leave-in', false, true],
      ['cream', true, false],
      ['gel', false, true],
    ]);
  });
  it('or alone', async () => {
    const { remembered } = await open([put('heads', head)], { detail });
    await press('#adding label', /usual steps/);
    await press('#adding button', /^Add to routine$/);
    expect(kinds(remembered().routines[0])).toEqual(['cream']);
  });
  it('of no known kind is asked about', async () => {
    await open(all, { detail: { add: { text: labels.silk, facts: { name: 'Met' } } } });
    expect(withWords('#adding button', /^Add to routine$/)).toHaveProperty('disabled', true);
    await choose('Add it as', 'gel');
    expect(withWords('#adding button', /^Add to routine$/)).toHaveProperty('disabled', false);
    expect(document.querySelector('#adding')!.textContent).toContain(
      'It takes the place of the gel you have there now.',
    );
  });
});

describe('taken along', () => {
  it('on paper the picture lies flat, so that a page holds it', async () => {
    await open();
    const chart = () => document.querySelector('#wash-day .wash-day-chart')!.getAttribute('class');
    expect(chart()).toContain('narrow');
    await act(async () => void dispatchEvent(new Event('beforeprint')));
    expect(chart()).toContain('wide');
    await act(async () => void dispatchEvent(new Event('afterprint')));
    expect(chart()).toContain('narrow');
  });
  it('as text: numbered steps, findings, what may stay, the caution', async () => {
    const { now } = await open();
    const day = washDay(washDayInput(now(), routine));
    const said = routineText(now(), routine, day);
    expect(said).toMatch(/3\. gel: Invented wheat-gel\n {3}.*protein.*\n {3}not a fit: too much protein/);
    expect(said).toContain('Test what is new on a small spot');
  });
  it('as one sheet: hair in words, amount, when and why, which contains protein, what to watch, a note of one’s own', async () => {
    const { now, remembered } = await open();
    await type('Your note', 'Squeeze, do not rub.');
    expect(remembered().routines[0]!.note).toBe('Squeeze, do not rub.');
    const kept = remembered().routines[0]!;
    const said = routineText(now(), kept, washDay(washDayInput(now(), kept)));
    const sheets = ['.sheet', '.print-sheet'].map((each) => document.querySelector(each)!.textContent!);
    for (const words of [said, ...sheets])
      for (const part of [
        'Strand: Coarse · Porosity: Low · Damage: none',
        'Squeeze, do not rub.',
        'every wash day. On wet hair, last: holds the shape as it dries.',
        'The protein is in: gel (Invented wheat-gel).',
        'Straw-like, stiff or snapping',
        'March 1, 2026',
      ])
        expect(words.replaceAll('\u00a0', ' ')).toContain(part);
    expect(sheets[0]).toMatch(/gel Invented wheat-gel \(contains protein\)about [\d.]+ g/);
    await type('Your note', '');
    expect(remembered().routines[0]).not.toHaveProperty('note');
  });
  it('as CSV: a row a step, formulas guarded', async () => {
    const evil = product('evil', 'gel', 'wheat', { name: '=HYPERLINK("https://x.example")' });
    const of = { ...routine, steps: [...routine.steps.slice(0, 2), step('s3', 'gel', 'evil')] };
    const { now } = await open([
      put('heads', head),
      ...products.map((one) => put('products', one)),
      put('products', evil),
      put('routines', of),
    ]);
    const lines = (await routineCsv(now(), of, washDay(washDayInput(now(), of)))).split('\r\n');
    expect(lines).toHaveLength(4);
    expect(lines[0]).toContain('order,kind,product,use,every');
    expect(lines[3]).toContain(`"'=HYPERLINK(""https://x.example"")"`);
  });
});

describe('a day built under a price', () => {
  const at = (price: number) => [
    { url: 'https://shop.example/x', price, currency: 'EUR', seen: '2026-01-01' },
  ];
  const priced = [
    // 9.6 g of a shampoo out of 96 at 10.00 are 1.00; 6 g of a gel out of 60 at 20.00 are 2.00.
    product('wash', 'cleanser', 'wash', { size: 96, sources: at(10) }),
    product('free-gel', 'gel', 'free', { size: 60, sources: at(20) }),
    product('conditioner', 'conditioner', 'plain'),
  ];
  const start = [put('heads', head), ...priced.map((one) => put('products', one)), put('routines', routine)];
  const offer = () => document.querySelector('#build .offer')?.textContent?.replace(/\s+/g, ' ');

  it('says what a wash costs and what is not known, and leaves out what costs too much', async () => {
    await open(start);
    await press('#build button', /^Build from/);
    expect(offer()).toContain('About €3.00 a wash, 1 product without a known price.');
    await type('Price of a wash, at most', '1.5');
    await press('#build button', /^Build from/);
    expect(offer()).toContain('About €1.00 a wash, 1 product without a known price.');
    expect(document.querySelector('#build .offer ol')!.textContent).not.toContain('free-gel');
  });
  it('asks for no price where none is known', async () => {
    await open();
    expect(document.querySelector('#build')!.textContent).not.toContain('Price of a wash');
  });
});

describe('two that take turns', () => {
  const turn = (from: number) => ({ every: 'nth-wash' as const, n: 2, from });
  const masks = [
    product('plain-mask', 'deep-conditioner', 'plain'),
    product('silk-mask', 'deep-conditioner', 'silk'),
  ];
  const turns = {
    ...routine,
    steps: [
      step('s1', 'cleanser', 'wash'),
      { ...step('s2', 'deep-conditioner', 'silk-mask'), cadence: turn(1) },
      { ...step('s3', 'deep-conditioner', 'plain-mask'), cadence: turn(2) },
    ],
  };
  const start = [...all.slice(0, -1), ...masks.map((one) => put('products', one)), put('routines', turns)];

  it('alternate in the strip of days, each named by its product', async () => {
    await open(start);
    const strip = [...document.querySelectorAll('.run-day')].map((each) => each.textContent!);
    expect(strip.slice(0, 4).map((words) => /protein/.test(words))).toEqual([true, false, true, false]);
    await press('.run-day', strip[1]!);
    expect(document.querySelector('#run')!.textContent).toContain('Invented plain-mask');
    expect(document.querySelector('[data-step="s3"]')!.textContent).toContain('wash day 2 of every 2');
  });
  it('say their turn in the table', async () => {
    const { now } = await open(start);
    const lines = (await routineCsv(now(), turns, washDay(washDayInput(now(), turns)))).split('\r\n');
    const at = lines[0]!.split(',').indexOf('turn');
    expect(lines.slice(1).map((line) => line.split(',')[at])).toEqual(['', '1', '2']);
  });
  it('are set at the step; a turn that the rhythm has no more is dropped', async () => {
    const { remembered } = await open(start);
    const cadence = () => remembered().routines[0]!.steps[2]!.cadence;
    await press('[data-step="s3"] .step-buttons .button', 'Change');
    await type('Which of these wash days', '1');
    expect(cadence()).toEqual({ every: 'nth-wash', n: 2, from: 1 });
    await type('Which of these wash days', '3');
    expect(cadence()).toEqual({ every: 'nth-wash', n: 2, from: 1 });
    expect(text()).toContain('A whole number from 1 to 2.');
    await type('Which of these wash days', '2');
    await type('Every how many wash days', '1');
    expect(cadence()).toEqual({ every: 'nth-wash', n: 1 });
  });
});

describe('the picture', () => {
  it('has a row for each step, the allowance in boxes, and all of it in words', async () => {
    await open();
    const chart = document.querySelector('.wash-day-chart')!;
    expect(chart.querySelectorAll('.row')).toHaveLength(3);
    expect(chart.querySelectorAll('.allowance .box')).toHaveLength(1);
    expect(chart.querySelectorAll('.box.over')).toHaveLength(1);
    expect(chart.querySelectorAll('.row .bars')).not.toHaveLength(0);
    // Three boxes a side; the likely step is as many of them, and is printed in words beneath.
    for (const bars of chart.querySelectorAll('.bars')) {
      expect(bars.querySelectorAll('rect')).toHaveLength(6);
      for (const side of bars.querySelectorAll('.protein, .moisture')) {
        const filled = side.querySelectorAll('.step-on').length;
        expect(side.querySelector('.step-words')!.textContent).toBe(
          ['next to none', 'a little', 'some', 'a lot'][filled],
        );
      }
    }
    expect(chart.querySelector('.total .bars')).not.toBeNull();
    expect(chart.querySelector('desc')!.textContent).toMatch(
      /gel: Invented wheat-gel\. .*protein.*The whole day: /s,
    );
  });
  it('has a second column where steps alternate, and the day comes to more on it', async () => {
    const now = {
      ...routine,
      steps: [
        ...routine.steps.slice(0, 2),
        { ...step('s3', 'gel', 'wheat-gel'), cadence: { every: 'nth-wash' as const, n: 4 } },
      ],
    };
    await open([...all.slice(0, -1), put('routines', now)]);
    const chart = document.querySelector('.wash-day-chart')!;
    expect(chart.querySelectorAll('.column-title')).toHaveLength(2);
    expect(chart.querySelectorAll('.total .bars')).toHaveLength(2);
    expect([...chart.querySelectorAll('.unread')].map((each) => each.textContent)).toContain('not this time');
  });
  it('marks the product that is one too many', async () => {
    const more = {
      ...routine,
      steps: [...routine.steps.slice(0, 2), step('c', 'cream', 'silk-cream'), step('s3', 'gel', 'wheat-gel')],
    };
    await open([...all.slice(0, -1), put('routines', more)]);
    expect(document.querySelector('.wash-day-chart')!.querySelectorAll('.row .box.over')).toHaveLength(2);
  });
});
