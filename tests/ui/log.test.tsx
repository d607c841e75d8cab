// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type * as lessons from '../../src/core/learn/lesson.ts';
import type { LogEntry } from '../../src/core/wash-day/routine.ts';
import type { Change } from '../../src/store/remembered.ts';
import { feelWords } from '../../src/ui/log/feel-scale.tsx';
import { toCelsius, toUnits } from '../../src/ui/log/units.ts';
import { LogPlace } from '../../src/ui/places/log.tsx';
import { rootOf } from '../../src/ui/root.tsx';
import { translator } from '../../src/ui/words/index.ts';
import type { World } from '../../src/ui/world.ts';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeHead, madeProduct, madeRoutine } from '../keeping/made.ts';
import { press, settle, type, withWords } from './pressing.ts';

const fails = vi.hoisted(() => ({ lesson: false }));
vi.mock('../../src/core/learn/lesson.ts', async (real) => {
  const own = await real<typeof lessons>();
  const lessonOf: typeof own.lessonOf = (input) => {
    if (fails.lesson) throw new Error('no lesson');
    return own.lessonOf(input);
  };
  return { ...own, lessonOf };
});

const text = () => (document.body.textContent ?? '').replace(/\s+/g, ' ');
const put = (thing: 'heads' | 'products' | 'routines' | 'log', value: unknown) =>
  ({ do: 'put', thing, value }) as Change;
const head = madeHead({ avoid: [], stretch: [] });
const base = [put('heads', head), put('products', madeProduct()), put('routines', madeRoutine())];
const label = 'Aqua, Glycerin, Hydrolyzed Silk, Phenoxyethanol';
const entry = (date: string, feel: LogEntry['feel']): LogEntry => ({
  id: date,
  head: 'wren',
  date,
  done: {
    name: 'Sunday',
    steps: [{ ...madeRoutine().steps[0]!, productName: 'Tidepool Curl Cream', label }],
  },
  feel,
  notes: '',
});

async function open(start: Change[] = base, over: Partial<World> = {}) {
  const kept = await keptWorld(over, start);
  const draw = rootOf<{ world: World }>(document.body, ({ world }) => <LogPlace world={world} />);
  await act(() => kept.onDraw((world) => draw({ world })));
  await settle();
  return kept;
}
afterEach(() => act(() => render(null, document.body)));

const pick = async (name: string) => {
  const radio = document.querySelector<HTMLInputElement>(`input[aria-label="${name}"]`)!;
  await act(() => radio.click());
  await settle();
};

describe('logging a wash day', () => {
  it('tells at its field that a file is no picture', async () => {
    await open();
    await press('button', 'Log a wash day');
    const field = document.querySelector<HTMLInputElement>('input[type=file]')!;
    expect(field.getAttribute('aria-invalid')).toBe('false');
    Object.defineProperty(field, 'files', { value: [new File(['none'], 'none.png')] });
    await act(() => void field.dispatchEvent(new Event('change', { bubbles: true })));
    await settle();
    expect(field.getAttribute('aria-invalid')).toBe('true');
    const told = field.getAttribute('aria-describedby')!.split(' ');
    expect(told.map((id) => document.getElementById(id)!.textContent)).toContain(
      'This file cannot be opened as a picture here.',
    );
  });
  it('freezes the routine as it was done, with names and labels', async () => {
    const { remembered } = await open();
    await press('button', 'Log a wash day');
    await pick('very soft');
    await pick('brittle');
    await type('Temperature', '28');
    await type('Humidity', '80');
    expect(text()).toContain('28 °C, 80 % humidity, dew point 24 °C');
    expect(text()).toContain('Very humid air (dew point 24 °C)');
    await type('Notes', 'Slow to dry.');
    await press('button', /^Save$/);
    const [kept] = remembered().log;
    expect(kept).toMatchObject({
      head: 'wren',
      date: '2026-03-01',
      feel: { soft: 2, elastic: -1 },
      weather: { celsius: 28, humidity: 80 },
      notes: 'Slow to dry.',
      done: {
        name: 'Sunday',
        steps: [
          { kind: 'cream', productName: 'Tidepool Curl Cream', label: 'Aqua, Cetearyl Alcohol, Glycerin' },
        ],
      },
    });
    expect(text()).toContain('very soft, brittle');
  });
  it('ticks what is due that day: a treatment of every fourth wash is not due the wash after', async () => {
    const [step] = madeRoutine().steps;
    const { product: _, ...none } = step!;
    const mask = {
      ...none,
      id: 'mask',
      kind: 'bond-treatment' as const,
      cadence: { every: 'nth-wash' as const, n: 4 },
    };
    const routine = madeRoutine({ steps: [step!, mask] });
    const ticked = () =>
      [...document.querySelectorAll<HTMLInputElement>('input[type=checkbox]')].map(({ checked }) => checked);
    await open([...base, put('routines', routine)]);
    await press('button', 'Log a wash day');
    expect(ticked()).toEqual([true, true]);
    await act(() => render(null, document.body));
    const before = entry('2026-02-25', {});
    const done = {
      ...before.done,
      steps: routine.steps.map((each) => ({ ...each, productName: '', label: '' })),
    };
    await open([...base, put('routines', routine), put('log', { ...before, done })]);
    await press('button', 'Log a wash day');
    expect(ticked()).toEqual([true, false]);
  });

  it('leaves the weather out when half of it is told', async () => {
    const { remembered } = await open();
    await press('button', 'Log a wash day');
    await type('Temperature', '20');
    await press('button', /^Save$/);
    expect(remembered().log[0]).not.toHaveProperty('weather');
  });
  it('a day still to come is refused with a sentence', async () => {
    await open();
    await press('button', 'Log a wash day');
    await type('Day', '2026-04-01');
    expect(text()).toContain('That day is still to come.');
    expect(withWords('button', /^Save$/)).toHaveProperty('disabled', true);
  });
  it('is changed, and removed with an undo', async () => {
    const { remembered, said } = await open([...base, put('log', entry('2026-02-01', { soft: 1 }))]);
    const more = document.querySelector<HTMLDetailsElement>('.log-entry details')!;
    await act(() => {
      more.open = true;
      more.dispatchEvent(new Event('toggle'));
    });
    await press('.log-entry button', /^Change$/);
    await pick('rough');
    await press('button', /^Save$/);
    expect(remembered().log[0]!.feel).toEqual({ soft: -1 });
    await press('.log-entry button', /^Remove$/);
    expect(remembered().log).toEqual([]);
    expect(said.at(-1)).toBe('The wash day is removed.');
  });
});

describe('what the good days share', () => {
  const days = [
    entry('2026-02-01', { soft: 2, springy: 1 }),
    entry('2026-02-08', { soft: -1 }),
    entry('2026-02-15', { elastic: -2 }),
  ];
  it('is counted after three, never as proof', async () => {
    await open([...base, ...days.slice(0, 2).map((one) => put('log', one))]);
    expect(text()).toContain('After 3 wash days it shows here');
    await act(() => render(null, document.body));
    await open([...base, ...days.map((one) => put('log', one))]);
    expect(text()).toContain('3 wash days counted; 1 felt balanced.');
    expect(text()).toContain('never proof');
  });
  it('shows what differs, and says so where nothing does', async () => {
    await open([...base, ...days.map((one) => put('log', one))]);
    expect(text()).toContain('The balanced days and the others had the same in them.');
    expect(document.querySelector('.tally')).toBeNull();
    await act(() => render(null, document.body));
    const bare = days.map((one, at) =>
      at === 0
        ? one
        : {
            ...one,
            done: {
              ...one.done,
              steps: one.done.steps.map((step) => ({ ...step, label: 'Aqua, Glycerin' })),
            },
          },
    );
    await open([...base, ...bare.map((one) => put('log', one))]);
    expect(withWords('.tally tr', 'small protein')!.textContent).toContain('1 of 10 of 2');
    expect(withWords('.tally tr', 'a leave-on that mostly draws water')).toBeUndefined();
  });
  it('says how the feel moved the allowance, and sets it aside on a press', async () => {
    const { remembered } = await open([...base, ...days.map((one) => put('log', one))]);
    expect(text()).toContain(
      'Of the last 3 wash days, 2 felt rough or brittle. So protein tolerance is one step lower.',
    );
    await press('button', 'Do not count this');
    expect(remembered().heads[0]!.setAside).toEqual(['feel']);
    expect(text()).toContain('You chose to ignore that: it does not count.');
    await press('button', 'Count it again');
    expect(remembered().heads[0]!.setAside).toEqual([]);
  });
});

describe('the one change a wash day speaks for', () => {
  const cream = madeProduct({
    id: 'wheat',
    name: 'Marram Cream',
    labels: [
      {
        text: 'Aqua, Cetearyl Alcohol, Glycerin, Behentrimonium Methosulfate, Hydrolyzed Wheat Protein, Hydrolyzed Silk, Phenoxyethanol, Panthenol, Parfum',
        seen: '2026-01-02T10:00:00.000Z',
      },
    ],
  });
  const step = { ...madeRoutine().steps[0]!, product: 'wheat' };
  const start = [
    put('heads', head),
    put('products', {
      ...madeProduct(),
      labels: [{ ...cream.labels[0]!, text: cream.labels[0]!.text.replace(/Hydrolyzed[^,]+, /g, '') }],
    }),
    put('products', cream),
    put('routines', madeRoutine({ steps: [step] })),
    put('log', {
      ...entry('2026-02-22', { soft: -2 }),
      done: { name: 'Sunday', steps: [{ ...step, productName: 'Marram Cream' }] },
    }),
  ];
  it('is shown with its reason before it is done, done in one press, and taken back', async () => {
    const { remembered, said, takeBack } = await open(start);
    expect(text()).toContain('The wash day felt rough or brittle. One day is little to go by');
    expect(text()).toContain(
      'Protein at every wash can make hair rough or brittle. One change to try in Sunday:',
    );
    expect(document.querySelector('#lesson strong')!.textContent).toContain('Tidepool Curl Cream');
    expect(remembered().routines[0]!.steps[0]!.product).toBe('wheat');
    await press('button', 'Make this change');
    expect(remembered().routines[0]!.steps[0]!.product).toBe('p1');
    expect(said.at(-1)).toBe('Sunday is changed. See how the next wash day feels.');
    expect(document.querySelector('#lesson')).toBeNull();
    expect(text()).toContain('Something was changed after this day.');
    await act(async () => void (await takeBack()));
    await settle();
    expect(remembered().routines[0]!.steps[0]!.product).toBe('wheat');
    expect(document.querySelector('#lesson')).not.toBeNull();
  });
  it('is left on a press, and asked again where the day is told otherwise', async () => {
    const { remembered } = await open(start);
    await press('button', 'Leave it as it is');
    expect(remembered().log[0]!.answered).toBe('left');
    expect(remembered().routines[0]!.steps[0]!.product).toBe('wheat');
    expect(document.querySelector('#lesson')).toBeNull();
    const more = document.querySelector<HTMLDetailsElement>('.log-entry details')!;
    await act(() => {
      more.open = true;
      more.dispatchEvent(new Event('toggle'));
    });
    await press('.log-entry button', /^Change$/);
    await pick('brittle');
    await press('button', /^Save$/);
    expect(remembered().log[0]).not.toHaveProperty('answered');
    expect(document.querySelector('#lesson')).not.toBeNull();
  });
  it('says what was otherwise than the time before', async () => {
    await open([...start, put('log', entry('2026-02-15', { soft: 1 }))]);
    expect(text()).toContain('Different from last time');
    expect(text()).toContain('Marram Cream instead of Tidepool Curl Cream (cream)');
  });
  it('says so once, with the lesson, and of a day that felt well on its own card', async () => {
    const said = () => text().split('Different from last time').length - 1;
    await open([...start, put('log', entry('2026-02-15', { soft: 1 }))]);
    expect(said()).toBe(1);
    expect(document.querySelector('#lesson')!.textContent).toContain('Different from last time');
    await act(() => render(null, document.body));
    const well = { ...entry('2026-02-22', { soft: 2 }), weather: { celsius: 28, humidity: 80 } };
    well.done = { ...well.done, steps: [] };
    await open([...base, put('log', entry('2026-02-15', { soft: 1 })), put('log', well)]);
    expect(document.querySelector('#lesson')).toBeNull();
    expect(document.querySelector('.log-entry')!.textContent).toContain(
      'Tidepool Curl Cream (cream) was left out',
    );
    expect(said()).toBe(1);
  });
  it('where it cannot be worked out, the day’s own card says what was otherwise', async () => {
    fails.lesson = true;
    await open([...start, put('log', entry('2026-02-15', { soft: 1 }))]);
    fails.lesson = false;
    expect(document.querySelector('#lesson')).toBeNull();
    expect(document.querySelector('.log-entry')!.textContent).toContain('Different from last time');
  });
  it('nothing of it while the day felt well', async () => {
    await open([...start.slice(0, 4), put('log', entry('2026-02-22', { soft: 2 }))]);
    expect(document.querySelector('#lesson')).toBeNull();
  });
});

it('says the feel in words', () => {
  expect(feelWords(translator('en'), { soft: 2, springy: -1, defined: 0, dry: -2 })).toBe(
    'very soft, limp, very greasy',
  );
});

it.each([
  [20, 68],
  [-40, -40],
  [37.8, 100],
])('%d °C is %d °F', (celsius, fahrenheit) => {
  expect(toUnits(celsius, true)).toBe(fahrenheit);
  expect(toCelsius(fahrenheit, true)).toBeCloseTo(celsius, 1);
  expect(toUnits(celsius, false)).toBe(celsius);
});
