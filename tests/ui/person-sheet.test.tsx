// @vitest-environment happy-dom
// One person's sheet holds nothing of anybody else: every word kept of another person carries a mark here.
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Head } from '../../src/core/hair/head.ts';
import type { Product } from '../../src/core/product/product.ts';
import type { LogEntry, Routine } from '../../src/core/wash-day/routine.ts';
import type { Change } from '../../src/store/remembered.ts';
import { HairPlace } from '../../src/ui/places/hair.tsx';
import { rootOf } from '../../src/ui/root.tsx';
import type { World } from '../../src/ui/world.ts';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeHead, madeLog, madeProduct, madeRoutine } from '../keeping/made.ts';
import { press, settle, withWords } from './pressing.ts';

const list = 'Aqua, Cetearyl Alcohol, Glycerin, Behentrimonium Methosulfate, Hydrolyzed Silk';

/** All that is kept of one person, each word marked. */
function person(mark: string): { head: Head; product: Product; routine: Routine; log: LogEntry } {
  const product = madeProduct({
    id: `p-${mark}`,
    name: `Cream ${mark}`,
    maker: `Maker ${mark}`,
    notes: `private note ${mark}`,
    labels: [{ text: `${list}, Extract ${mark}`, seen: '2026-01-02T10:00:00.000Z' }],
    sources: [
      { url: `https://shop.example/${mark}`, price: 10, currency: 'EUR', seen: '2026-01-02T10:00:00.000Z' },
    ],
  });
  const step = { ...madeRoutine().steps[0]!, id: `s-${mark}`, product: product.id };
  const routine = madeRoutine({
    id: `r-${mark}`,
    head: mark,
    name: `Sunday ${mark}`,
    note: `Squeeze ${mark}.`,
    steps: [step, { ...step, id: `g-${mark}`, kind: 'gel', product: undefined } as never].map(
      ({ product, ...rest }: Routine['steps'][number]) => (product ? { ...rest, product } : rest),
    ),
  });
  return {
    head: madeHead({
      id: mark,
      name: `Person ${mark}`,
      scalp: `scalp ${mark}`,
      avoid: [{ id: `a-${mark}`, name: `Poison ${mark}`, reacted: true, note: `itch ${mark}` }],
      stretch: [],
    }),
    product,
    routine,
    log: madeLog({
      id: `l-${mark}`,
      head: mark,
      feel: mark === 'HERON' ? { soft: -2 } : { springy: -2 },
      notes: `log note ${mark}`,
      done: { name: `Sunday ${mark}`, steps: [{ ...step, productName: `Cream ${mark}`, label: list }] },
    }),
  };
}
const put = (thing: 'heads' | 'products' | 'routines' | 'log', value: unknown) =>
  ({ do: 'put', thing, value }) as Change;
const kept = (mark: string) => {
  const { head, product, routine, log } = person(mark);
  return [put('heads', head), put('products', product), put('routines', routine), put('log', log)];
};

let saved: string[];
beforeEach(() => {
  saved = [];
});
afterEach(() => act(() => render(null, document.body)));

async function openFor(mark: string) {
  const world = await keptWorld(
    { save: (_name, _type, content) => void saved.push(String(content)) } as Partial<World>,
    [
      ...kept('HERON'),
      ...kept('PLOVER'),
      put('products', madeProduct({ id: 'shelf', name: 'Unused SHELF', notes: 'SHELF' })),
      {
        do: 'set',
        settings: {
          headInUse: mark,
          routineInUse: 'r-PLOVER',
          wishes: [{ kind: 'hairspray', protein: 'free', moisture: false, lifts: false }],
        },
      },
    ],
  );
  const draw = rootOf<{ world: World }>(document.body, ({ world }) => <HairPlace world={world} />);
  await act(() => world.onDraw((now) => draw({ world: now })));
  await settle();
  const details = [...document.querySelectorAll('details')].find((each) =>
    each.querySelector('summary')!.textContent!.includes(`Sheet of Person ${mark}`),
  )!;
  await act(() => {
    details.open = true;
    details.dispatchEvent(new Event('toggle'));
  });
  await settle();
  await press('button', 'Plain text');
  return [
    document.querySelector('.sheet')!.outerHTML,
    document.querySelector('.print-sheet')!.outerHTML,
    saved.at(-1)!,
  ];
}

it.each([
  ['HERON', 'PLOVER', 'rough'],
  ['PLOVER', 'HERON', 'limp'],
])('the sheet of %s holds all of it and nothing of %s', async (own, other, felt) => {
  const sheets = await openFor(own);
  expect(sheets).toHaveLength(3);
  for (const sheet of sheets) {
    for (const words of [
      `Person ${own}`,
      `Cream ${own}`,
      `Sunday ${own}`,
      `Squeeze ${own}.`,
      `Poison ${own} (reacted to)`,
      'Porosity: Low',
      'On wet hair, not rinsed: keeps it soft until the next wash.',
      'gel: no product yet',
      'Missing:',
      `very ${felt}`,
      'When it is dry, look and feel',
    ])
      expect(sheet).toContain(words);
    for (const mark of [other, other.toLowerCase(), `r-${other}`, 'SHELF', 'hairspray'])
      expect(sheet).not.toContain(mark);
    // What a person noted for themselves, and where they shop, is not handed out either.
    for (const mine of [`private note ${own}`, `scalp ${own}`, `itch ${own}`, `log note ${own}`, 'https://'])
      expect(sheet).not.toContain(mine);
  }
});

it('is not in the document while it is closed', async () => {
  const world = await keptWorld({}, kept('HERON'));
  const draw = rootOf<{ world: World }>(document.body, ({ world }) => <HairPlace world={world} />);
  await act(() => world.onDraw((now) => draw({ world: now })));
  await settle();
  expect(document.querySelector('.print-sheet')).toBeNull();
  expect(withWords('summary', 'Sheet of Person HERON')).toBeTruthy();
});
