import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planFileOf } from '../../src/core/plan/plan-file.ts';
import type { Step } from '../../src/core/wash-day/routine.ts';
import { planFileAtMost, readPlanFile } from '../../src/store/files/plan-file.ts';
import { nothingRemembered, type Remembered } from '../../src/store/remembered.ts';
import { takenAs } from '../../src/use/acts/matters/plan-file.ts';
import { tried } from '../run/fuzz-runs.ts';
import { madeProduct, madeRoutine } from './made.ts';

const step = (id: string, over: Partial<Step> = {}): Step => ({
  id,
  kind: 'cream',
  use: 'leave-on',
  optional: false,
  cadence: { every: 'wash' },
  ...over,
});
const secret = madeProduct({ notes: 'from my sister', owned: true });
const gel = madeProduct({
  id: 'p2',
  name: 'Slack Water Gel',
  kind: 'gel',
  labels: [{ text: 'Aqua, Linum Usitatissimum Seed Extract', seen: '2026-01-02T10:00:00.000Z' }],
  sources: [],
});
const routine = madeRoutine({
  note: 'Squeeze, do not rub.',
  steps: [
    step('a', { product: 'p1', grams: 4 }),
    step('b', { kind: 'gel', product: 'p2', cadence: { every: 'nth-wash', n: 2 }, optional: true }),
    step('c', { kind: 'oil', cadence: { every: 'days', n: 9 } }),
    step('d', { kind: 'gel', product: 'p2' }),
  ],
});
const plan = planFileOf(routine, [secret, gel, madeProduct({ id: 'p9', name: 'Not in it' })], '2026-03-01');
const written = JSON.stringify(plan);
const nobody: Remembered = nothingRemembered();
let nth = 0;
const making = { newId: () => `new-${++nth}`, today: '2026-03-02' };
const changed = (over: object) => readPlanFile(JSON.stringify({ ...plan, ...over }));

describe('a plan as a file', () => {
  it('is read as it was written, and holds nothing else', () => {
    expect(readPlanFile(written)).toEqual({ ok: true, plan });
    for (const kept of ['sister', 'shop.example', '"wren"', 'EUR', '"price"', 'Not in it', '"owned"'])
      expect(written).not.toContain(kept);
  });
  it('keeps who takes turns with whom, as version 2: readers of 1 would have both on one day', () => {
    const turn = (from: number) => ({ every: 'nth-wash' as const, n: 2, from });
    const steps = [step('a', { cadence: turn(1) }), step('b', { cadence: turn(2) })];
    const turns = planFileOf(madeRoutine({ steps }), [], '2026-03-01');
    expect([plan.version, turns.version]).toEqual([1, 2]);
    expect(readPlanFile(JSON.stringify(turns))).toEqual({ ok: true, plan: turns });
    expect(takenAs(nobody, turns, 'robin', making).routine.steps.map(({ cadence }) => cadence)).toEqual([
      turn(1),
      turn(2),
    ]);
  });
  it('is read by the words of its description', () => {
    const [, example] = readFileSync('DEVELOPERS.md', 'utf8').match(
      /```json\n(\{\n {2}"strandline": "wash-day-plan".*?\n\})\n```/s,
    )!;
    expect(readPlanFile(example!)).toMatchObject({
      ok: true,
      plan: { name: 'Sunday', steps: [{ product: 'p1' }] },
    });
  });
  it('becomes the same routine for another head, with products that are only considered', () => {
    const taken = takenAs(nobody, plan, 'robin', making);
    expect(taken.products.map(({ name, owned, sources }) => [name, owned, sources])).toEqual([
      [secret.name, false, []],
      [gel.name, false, []],
    ]);
    expect(taken.routine).toMatchObject({ head: 'robin', name: 'Sunday', note: routine.note, washEvery: 7 });
    const bare = ({ id: _, product: __, ...rest }: Step) => rest;
    expect(taken.routine.steps.map(bare)).toEqual(routine.steps.map(bare));
    expect(taken.routine.steps[1]!.product).toBe(taken.routine.steps[3]!.product);
  });
  it('changes nothing of a product that is here: its own label counts', () => {
    const mine = madeProduct({
      id: 'mine',
      labels: [{ text: 'Aqua, Glycerin', seen: '2026-02-02T10:00:00.000Z' }],
    });
    const taken = takenAs({ ...nobody, products: [mine] }, plan, 'robin', making);
    expect(taken.products.map(({ name }) => name)).toEqual([gel.name]);
    expect(taken.routine.steps[0]!.product).toBe('mine');
    expect(taken.had).toEqual([mine.name]);
  });
});

describe('a plan from a stranger', () => {
  const no = (reading: ReturnType<typeof readPlanFile>) =>
    reading.ok ? 'taken' : reading.said.key.slice(10);
  it.each([
    ['', 'not-json'],
    [written.slice(0, -20), 'not-json'],
    ['null', 'not-ours'],
    ['[]', 'not-ours'],
    ['{"strandline":"everything","version":7}', 'everything'],
    [`{"x":${'['.repeat(200_000)}${']'.repeat(200_000)}}`, 'not-ours'],
    [' '.repeat(planFileAtMost + 1), 'too-big'],
    ['<script>alert(1)</script>', 'not-json'],
  ])('%#: is told in a word and gives nothing', (content, why) => {
    expect(no(readPlanFile(content))).toBe(why);
  });
  it.each<[object, string]>([
    [{ version: 3 }, 'newer'],
    [{ version: 0 }, 'wrong'],
    [{ made: 'yesterday' }, 'wrong'],
    [{ washEvery: 0 }, 'wrong'],
    [{ washEvery: 1e9 }, 'wrong'],
    [{ name: '' }, 'wrong'],
    [{ name: 'x'.repeat(201) }, 'wrong'],
    [{ products: [] }, 'wrong'],
    [{ products: [plan.products[0], plan.products[0], plan.products[1]] }, 'wrong'],
    [{ products: [{ ...plan.products[0], label: 'x'.repeat(12_001) }, plan.products[1]] }, 'wrong'],
    [{ steps: [{ ...plan.steps[0], kind: '__proto__' }] }, 'wrong'],
    [{ steps: [{ ...plan.steps[0], cadence: { every: 'nth-wash', n: 0 } }] }, 'wrong'],
    [{ steps: [{ ...plan.steps[0], cadence: { every: 'nth-wash', n: 2, from: 3 } }] }, 'wrong'],
    [{ steps: [{ ...plan.steps[0], cadence: { every: 'nth-wash', n: 2, from: 0 } }] }, 'wrong'],
    [{ steps: [{ ...plan.steps[0], grams: -1 }] }, 'wrong'],
    [{ steps: Array(61).fill(plan.steps[2]) }, 'wrong'],
  ])('%j is refused', (over, why) => {
    expect(no(changed(over))).toBe(why);
  });
  it('says where it is wrong', () => {
    expect(changed({ steps: [plan.steps[0], { ...plan.steps[1], use: 'eaten' }] })).toEqual({
      ok: false,
      said: { key: 'plan.file.wrong', values: { where: 'steps[2].use' } },
    });
  });
  it('leaves out what it does not know, and marks that would turn the writing round', () => {
    const reading = changed({
      name: 'Sun\u202Eyad\u0000',
      photos: { a: 'data:image/png;base64,AAAA' },
      heads: [{ id: 'x' }],
    });
    expect(reading).toMatchObject({ ok: true, plan: { name: 'Sunyad' } });
    expect(Object.keys(reading.ok ? reading.plan : {})).toEqual(Object.keys(plan));
    const evil = readPlanFile(written.replace('{', '{"__proto__":{"note":"x","polluted":1},'));
    expect(evil.ok).toBe(true);
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });
  it('of any shape never throws, and what is taken is a whole plan', () => {
    const odd = fc.oneof(fc.jsonValue(), fc.constantFrom('__proto__', -0, 1e308, '', '\uD800', null, [], {}));
    const paths: (string | number)[][] = [
      ...Object.keys(plan).map((key) => [key]),
      ...plan.products.flatMap((one, at) => Object.keys(one).map((key) => ['products', at, key])),
      ...plan.steps.flatMap((one, at) => Object.keys(one).map((key) => ['steps', at, key])),
      ['steps', 1, 'cadence', 'n'],
    ];
    return tried(
      'fields of a plan',
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...paths), odd), { minLength: 1, maxLength: 4 }),
        (edits) => {
          const copy = JSON.parse(written) as Record<string | number, unknown>;
          for (const [path, value] of edits) {
            const at = path
              .slice(0, -1)
              .reduce<unknown>((now, key) => (now as Record<string | number, unknown>)?.[key], copy);
            if (typeof at === 'object' && at !== null)
              (at as Record<string | number, unknown>)[path.at(-1)!] = structuredClone(value); // else it could hold itself
          }
          const reading = readPlanFile(JSON.stringify(copy));
          if (!reading.ok) return;
          expect(readPlanFile(JSON.stringify(reading.plan))).toEqual(reading);
          expect(takenAs(nobody, reading.plan, 'robin', making).routine.steps).toHaveLength(
            reading.plan.steps.length,
          );
        },
      ),
      400,
    );
  });
  it('of any text never throws', () =>
    tried(
      'any text as a plan',
      fc.property(fc.string(), (text) => void readPlanFile(text)),
      300,
    ));
});
