// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { planFileOf } from '../../src/core/plan/plan-file.ts';
import { type ProductKind, usualUse } from '../../src/core/product/product.ts';
import { openPanelStore } from '../../src/store/files/panel-store.ts';
import type { Change } from '../../src/store/remembered.ts';
import { RoutinePlace } from '../../src/ui/places/routine.tsx';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeHead, madeProduct, madeRoutine } from '../keeping/made.ts';
import { choose, press, settle } from './pressing.ts';

const labels = {
  wash: 'Aqua, Sodium Cocoyl Isethionate, Cocamidopropyl Betaine, Phenoxyethanol',
  plain:
    'Aqua, Cetearyl Alcohol, Behentrimonium Methosulfate, Glycerin, Helianthus Annuus Seed Oil, Stearamidopropyl Dimethylamine, Amodimethicone, Phenoxyethanol',
  wheat: 'Aqua, Hydrolyzed Wheat Protein, Glycerin, Phenoxyethanol',
  free: 'Aqua, Glycerin, Xanthan Gum, Phenoxyethanol',
};
const product = (id: string, kind: ProductKind, label: keyof typeof labels) =>
  madeProduct({
    id,
    name: `Invented ${id}`,
    kind,
    use: usualUse[kind],
    labels: [{ text: labels[label], seen: '2026-01-01T00:00:00.000Z' }],
    sources: [],
  });
const theirs = [
  product('wash', 'cleanser', 'wash'),
  product('rinse', 'conditioner', 'plain'),
  product('wheat', 'gel', 'wheat'),
];
const routine = madeRoutine({
  name: 'From a teacher',
  note: 'Squeeze, do not rub.',
  steps: theirs.map(({ id, kind, use }) => ({
    id: `s-${id}`,
    kind: kind!,
    use: use!,
    product: id,
    optional: false,
    cadence: { every: 'wash' },
  })),
});
const plan = JSON.stringify(planFileOf(routine, theirs, '2026-03-01'));
const put = (thing: 'heads' | 'products' | 'routines', value: unknown) =>
  ({ do: 'put', thing, value }) as Change;
// Coarse, low porosity: this hair takes no large protein.
const me = madeHead({ id: 'me', name: 'Wren', damage: { kinds: [] }, avoid: [], stretch: [] });

const text = () => (document.body.textContent ?? '').replace(/\s+/g, ' ');
async function open(start: Change[]) {
  const kept = await keptWorld({}, start);
  const store = async () => openPanelStore(kept.keeper);
  await act(() =>
    kept.onDraw((world) => render(<RoutinePlace world={{ ...world, store }} />, document.body)),
  );
  await settle();
  return kept;
}
async function pick(content: string) {
  const input = document.querySelector<HTMLInputElement>('input[type=file]')!;
  Object.defineProperty(input, 'files', { value: [new File([content], 'x.json')], configurable: true });
  await act(() => void input.dispatchEvent(new Event('change', { bubbles: true })));
  for (let turn = 0; turn < 5; turn++) await settle();
}
afterEach(async () => {
  vi.unstubAllGlobals();
  await act(() => render(null, document.body));
});

describe('a plan from someone', () => {
  it('is shown and held against this hair, and nothing is kept until told', async () => {
    const { remembered } = await open([put('heads', me), put('products', product('free', 'gel', 'free'))]);
    await pick(plan);
    expect(text()).toContain('Squeeze, do not rub.');
    expect(text()).toContain('For Wren: not a fit');
    expect(text()).toContain('It brings 3 products you do not have');
    expect(text()).toMatch(/For this hair \(Wren\), change:\s*gel: Invented free instead of Invented wheat/);
    expect(remembered()).toMatchObject({ routines: [] });
    expect(remembered().products).toHaveLength(1);
    await press('button', 'Keep it with these changes');
    expect(remembered().products.map(({ name, owned }) => [name, owned])).toEqual([
      ['Invented free', true],
      ['Invented wash', false],
      ['Invented rinse', false],
      ['Invented wheat', false],
    ]);
    const [kept] = remembered().routines;
    expect(kept).toMatchObject({ head: 'me', name: 'From a teacher', note: 'Squeeze, do not rub.' });
    expect(kept!.steps.at(-1)!.product).toBe('free');
    expect(remembered().settings.routineInUse).toBe(kept!.id);
  });
  it('shows how far it is while it looks for what to change', async () => {
    const told: ((data: unknown) => void)[] = [];
    class Slow {
      set onmessage(hear: (event: { data: unknown }) => void) {
        told.push((data) => hear({ data }));
      }
      postMessage() {}
      terminate() {}
    }
    vi.stubGlobal('Worker', Slow);
    await open([put('heads', me), put('products', product('free', 'gel', 'free'))]);
    await pick(plan);
    expect(text()).toContain('Looking through your products');
    await act(() => told.at(-1)!({ share: 0.5 }));
    expect(document.querySelector('progress')!.value).toBe(0.5);
    await act(() => told.at(-1)!({ done: { answer: 'none', wanted: [], complete: true, upTo: 3 } }));
    await settle();
    expect(document.querySelector('progress')).toBeNull();
    expect(text()).toContain('No single kind of product would either');
  });
  it('is kept as it is, and taken back whole', async () => {
    const { remembered, takeBack } = await open([put('heads', me)]);
    await pick(plan);
    await press('button', 'Keep it as it is');
    expect(remembered().routines[0]!.steps).toHaveLength(3);
    await act(async () => void (await takeBack()));
    expect(remembered()).toMatchObject({ routines: [], products: [] });
  });
  it('that is none is told in a sentence', async () => {
    const { remembered } = await open([put('heads', me)]);
    await pick('{"strandline":"wash-day-plan","version":99}');
    expect(text()).toContain('This plan was made by a newer Strandline');
    expect(remembered().routines).toEqual([]);
  });
});

describe('a plan for another of my people', () => {
  it('is copied with what must change, and who is in view stays', async () => {
    const thirsty = madeHead({
      id: 'ash',
      name: 'Ash',
      thickness: 'fine',
      porosity: 'high',
      avoid: [],
      stretch: [],
    });
    const start = [
      put('heads', { ...thirsty, damage: { kinds: ['bleach'], length: 'most', recent: 'weeks' } }),
      put('heads', me),
      ...theirs.map((one) => put('products', one)),
      put('products', product('free', 'gel', 'free')),
      put('routines', { ...routine, head: 'ash' }),
      { do: 'set', settings: { headInUse: 'ash', routineInUse: routine.id } } as Change,
    ];
    const { remembered } = await open(start);
    await choose('For whom', 'me');
    for (let turn = 0; turn < 5; turn++) await settle();
    expect(text()).toContain('For Wren: not a fit');
    await press('button', 'Keep it with these changes');
    const copy = remembered().routines.find(({ head }) => head === 'me')!;
    expect(copy.steps.at(-1)!.product).toBe('free');
    expect(remembered().routines.find(({ head }) => head === 'ash')).toEqual({ ...routine, head: 'ash' });
    expect(remembered().settings).toMatchObject({ headInUse: 'ash', routineInUse: routine.id });
  });
});
