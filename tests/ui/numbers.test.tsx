// @vitest-environment happy-dom
// Every number shown is written as the language writes it: views, strip and cards in German, with numbers that have
// decimals wherever there may be one. Invented products; the catalogue is the real one.
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import german from '../../src/assets/words/de.json' with { type: 'json' };
import type { TabPage } from '../../src/contract/messages.ts';
import type { Drawing } from '../../src/contract/paint-order.ts';
import type { Change } from '../../src/store/remembered.ts';
import { marksOf } from '../../src/ui/describe/mark.ts';
import { money } from '../../src/ui/describe/money.ts';
import { degreesWords } from '../../src/ui/log/units.ts';
import { loadPlace, placeNames, Shell } from '../../src/ui/shell.tsx';
import { translator } from '../../src/ui/words/index.ts';
import type { Detail, World } from '../../src/ui/world.ts';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeHead, madeLog, madeProduct, madeRoutine } from '../keeping/made.ts';
import { settle } from './pressing.ts';

const t = translator('de', german);
const label = 'Aqua, Glycerin 3.5%, Cetearyl Alcohol, Hydrolyzed Silk, Hydrolyzed Wheat Protein, Parfum';
const put = (thing: 'heads' | 'products' | 'routines' | 'log', value: unknown) =>
  ({ do: 'put', thing, value }) as Change;
const product = (id: string, kind: string, use: string) =>
  madeProduct({
    id,
    name: `Ware ${id}`,
    kind,
    use,
    size: 62.5,
    sizeUnit: 'ml',
    labels: [{ text: label, seen: '2026-01-02T10:00:00.000Z' }],
    sources: [
      { url: `https://shop.example/${id}`, price: 13.5, currency: 'EUR', seen: '2026-01-02T10:00:00.000Z' },
    ],
  } as never);
const steps = (['p1', 'p2'] as const).map((id, i) => ({
  ...madeRoutine().steps[0]!,
  id,
  product: id,
  kind: i ? ('conditioner' as const) : ('cream' as const),
  use: i ? ('rinse-off' as const) : ('leave-on' as const),
  grams: 3.5,
}));
const day = (id: string, date: string) =>
  madeLog({
    id,
    date,
    done: { name: 'Sonntag', steps: steps.map((step) => ({ ...step, productName: 'Ware', label })) },
    weather: { celsius: 21.5, humidity: 55.5 },
  });
const start: Change[] = [
  put(
    'heads',
    madeHead({
      stretch: [{ id: 's1', date: '2026-02-20', rest: 100.5, stretched: 128.5, after: 101.5, broke: false }],
    }),
  ),
  put('products', product('p1', 'cream', 'leave-on')),
  put('products', product('p2', 'conditioner', 'rinse-off')),
  put('routines', madeRoutine({ steps })),
  put('log', day('l1', '2026-02-15')),
  put('log', day('l2', '2026-02-22')),
];
const page: TabPage = {
  url: 'https://shop.example/p/1',
  title: 'Eine Seite',
  lists: [
    {
      id: 4,
      text: label,
      via: 'open',
      product: {
        name: 'Hafencreme',
        kind: 'cream',
        size: 62.5,
        sizeUnit: 'ml',
        price: 13.5,
        currency: 'EUR',
      },
    },
  ],
};

/** Numbers with a point, but for thousands ("3.000"), dates ("1.2.", "1.2.2026") and what a label or a file prints. */
const withPoint = (text: string) =>
  text
    .replaceAll('3.5%', '')
    .replace(/\b\d{1,2}\.\d{1,2}\.(?:\d{2,4})?/g, '')
    .match(/.{0,30}\d\.(?!\d{3}(?!\d))\d.{0,20}/g) ?? [];

/** Everything a view says or has written in it, also what is read out. */
function shown(): string[] {
  const elements = [...document.body.querySelectorAll('*')];
  const own = elements.flatMap((each) =>
    [...each.childNodes].filter(({ nodeType }) => nodeType === 3).map(({ textContent }) => textContent ?? ''),
  );
  const told = elements.flatMap((each) =>
    ['aria-label', 'title', 'placeholder', 'aria-valuetext'].map((name) => each.getAttribute(name) ?? ''),
  );
  const written = elements.flatMap((each) =>
    each.tagName === 'INPUT' && !['radio', 'checkbox', 'range'].includes((each as HTMLInputElement).type)
      ? [(each as HTMLInputElement).value]
      : [],
  );
  return [...own, ...told, ...written];
}

/** Presses whatever opens something in place, once, and says all that was shown on the way. */
async function everything(): Promise<string[]> {
  const seen = shown();
  const pressed = new Set<string>();
  for (let turn = 0; turn < 40; turn++) {
    const next = [...document.querySelectorAll<HTMLElement>('[aria-expanded=false]')].find(
      (each) => !pressed.has(each.textContent ?? ''),
    );
    if (!next) break;
    pressed.add(next.textContent ?? '');
    await act(() => next.click());
    await settle();
    seen.push(...shown());
  }
  return seen;
}

const wordsIn = (drawing: Drawing): string[] => {
  if (!Array.isArray(drawing)) return [String(drawing)];
  const [, , ...children] = drawing;
  return children.flatMap(wordsIn);
};

async function open(place: (typeof placeNames)[number], detail?: Detail) {
  const shelf: World['shelf'] = {
    rows: async () => [
      {
        address: 'https://shop.example/a',
        name: 'Ware',
        state: 'read',
        answer: 'suits',
        per100: 21.6,
        currency: 'EUR',
      },
    ],
  } as never;
  const kept = await keptWorld({ t, page, shelf, ...(detail && { detail }) }, start);
  await act(() =>
    kept.onDraw((world) =>
      render(
        <Shell world={world} place={place} said={undefined} onDismiss={() => undefined} />,
        document.body,
      ),
    ),
  );
  await settle();
}
afterEach(() => act(() => render(null, document.body)));

describe('numbers in German', () => {
  it.each([
    ...placeNames.map((place) => [place, undefined] as const),
    ['products', { product: 'p1' }] as const,
  ])('%s %j', async (place, detail) => {
    await loadPlace(place);
    await open(place, detail);
    const all = await everything();
    expect(all.join(' ').length).toBeGreaterThan(200);
    expect(withPoint(all.join('\n'))).toEqual([]);
  });

  it('marks and cards in the page', async () => {
    const { world } = await keptWorld({ t, page }, start);
    const reading = world().reading(label, { kind: 'cream', use: 'leave-on' })!;
    const words = marksOf(reading, t, sources).flatMap(({ card, label: said }) => [
      said,
      ...card.flatMap(wordsIn),
    ]);
    expect(withPoint(words.join('\n'))).toEqual([]);
    expect(words.join(' ')).toMatch(/\d,\d/);
  });

  it('a temperature, and a price in what is no currency', () => {
    expect(degreesWords(21.5, false, 'de')).toBe('21,5 °C');
    expect(money(3.5, 'XYZW', 'de')).toBe('3,50 XYZW');
    expect(money(3.5, undefined, 'fr')).toBe('3,5');
  });
});
