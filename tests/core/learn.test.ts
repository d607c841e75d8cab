// What a logged wash day teaches. Which sign speaks of what is common practice; products and days are invented.
import { describe, expect, it } from 'vitest';
import type { Head } from '../../src/core/hair/head.ts';
import { differed } from '../../src/core/learn/differed.ts';
import { type LessonInput, lessonOf } from '../../src/core/learn/lesson.ts';
import { signOf } from '../../src/core/learn/signs.ts';
import { applyMoves } from '../../src/core/plan/moves.ts';
import { type Candidate, suggest } from '../../src/core/plan/suggest.ts';
import { type ProductKind, usualUse } from '../../src/core/product/product.ts';
import type { Feel, LogEntry, Routine } from '../../src/core/wash-day/routine.ts';
import {
  butter,
  candidate,
  careful,
  day,
  fatty,
  glutamate,
  glycerin,
  hand,
  laureth,
  logged,
  middling,
  type Plan,
  practice,
  silicone,
  silk,
  softener,
  thirsty,
  water,
  wheat,
} from './hand-read.ts';

const plain = hand([water, glycerin, fatty, softener]);
const mild = hand([water, glutamate]);
const light = hand([water, glycerin]);
const withWheat = hand([water, glycerin, wheat]);
const heavy = hand([butter, { ...silicone, share: { min: 5, max: 10 } }, water]);

const doneAs = ({ name, steps }: Routine): LogEntry['done'] => ({ name, steps });

/** A wash day as planned that felt so, on the newest of the dates. */
function felt(plans: Plan[], head: Head, feels: Feel[], candidates: Candidate[] = []): LessonInput {
  const input = day(plans, head);
  const log = feels.map((feel, i) =>
    logged(`2026-02-${String(28 - 7 * i).padStart(2, '0')}`, { feel, done: doneAs(input.routine) }),
  );
  return { ...input, head, candidates, log };
}

describe('what was wrong', () => {
  it.each<[Feel, ReturnType<typeof signOf>]>([
    [{ soft: -1 }, 'stiff'],
    [{ elastic: -2 }, 'stiff'],
    [{ springy: -1 }, 'limp'],
    [{ springy: -2, dry: -1 }, 'coated'],
    [{ dry: 2 }, 'dry'],
    [{ defined: -1 }, 'frizzy'],
    [{ soft: 2, springy: 1 }, undefined],
    [{ soft: 0 }, undefined],
    [{}, undefined],
  ])('%j is %s', (feel, sign) => expect(signOf(feel, practice.allowance.feel)).toBe(sign));
});

describe('the one change a wash day speaks for', () => {
  it('stiff with protein in the cream: the cream without it', () => {
    const lesson = lessonOf(
      felt(
        [
          { kind: 'cleanser', of: mild },
          { kind: 'conditioner', of: plain },
          { kind: 'cream', of: withWheat },
        ],
        middling,
        [{ soft: -1 }],
        [candidate('free', 'cream', plain), candidate('more', 'cream', withWheat)],
      ),
    );
    expect(lesson).toMatchObject({ sign: 'stiff', n: 1, of: 1 });
    expect(lesson!.proposed).toEqual({
      change: 'routine',
      cause: 'protein',
      moves: [{ do: 'swap', step: 's3', with: { product: 'free', alternatives: [], owned: true } }],
    });
  });
  it('stiff with a treatment at every wash: the treatment more seldom', () => {
    const lesson = lessonOf(
      felt(
        [
          { kind: 'protein-treatment', of: withWheat },
          { kind: 'cleanser', of: mild },
          { kind: 'conditioner', of: plain },
        ],
        careful,
        [{ elastic: -1 }],
      ),
    );
    expect(lesson!.proposed).toMatchObject({ cause: 'protein', moves: [{ do: 'space', step: 's1' }] });
  });
  it('limp without any protein: one that carries some', () => {
    const lesson = lessonOf(
      felt(
        [
          { kind: 'cleanser', of: mild },
          { kind: 'conditioner', of: plain },
          { kind: 'leave-in', of: light },
        ],
        thirsty,
        [{ springy: -2 }],
        [
          candidate('strong', 'leave-in', hand([water, glycerin, silk])),
          candidate('plain', 'leave-in', light),
        ],
      ),
    );
    expect(lesson!.proposed).toMatchObject({
      cause: 'strength',
      moves: [{ do: 'swap', step: 's3', with: { product: 'strong' } }],
    });
  });
  it('coated under films that a mild wash leaves: a wash that lifts them, now and then', () => {
    const lesson = lessonOf(
      felt(
        [
          { kind: 'cleanser', of: mild },
          { kind: 'conditioner', of: plain },
          { kind: 'serum', of: hand([silicone]) },
        ],
        middling,
        [{ dry: -1 }],
        [candidate('clear', 'cleanser', hand([water, laureth, softener]))],
      ),
    );
    expect(lesson!.sign).toBe('coated');
    expect(lesson!.proposed).toEqual({
      change: 'routine',
      cause: 'films',
      moves: [
        {
          do: 'add',
          step: 'new-clear',
          kind: 'cleanser',
          use: 'rinse-off',
          with: { product: 'clear', alternatives: [], owned: true },
        },
        { do: 'space', step: 'new-clear', cadence: { every: 'nth-wash', n: 4 } },
      ],
    });
  });
  it('dry with little that softens: what softens more', () => {
    const lesson = lessonOf(
      felt(
        [
          { kind: 'cleanser', of: mild },
          { kind: 'conditioner', of: light },
        ],
        middling,
        [{ dry: 2 }],
        [candidate('rich', 'conditioner', hand([water, fatty, softener]))],
      ),
    );
    expect(lesson!.proposed).toMatchObject({
      cause: 'moisture',
      moves: [{ do: 'swap', step: 's2', with: { product: 'rich' } }],
    });
  });
  it('limp under weight: the lighter of the two', () => {
    const lesson = lessonOf(
      felt(
        [
          { kind: 'cleanser', of: mild },
          { kind: 'conditioner', of: hand([water, fatty, softener, wheat]) },
          { kind: 'cream', of: heavy },
        ],
        { ...middling, thickness: 'fine' },
        [{ springy: -1 }],
        [candidate('lighter', 'cream', light)],
      ),
    );
    expect(lesson!.proposed).toMatchObject({
      cause: 'weight',
      moves: [{ do: 'swap', step: 's3', with: { product: 'lighter' } }],
    });
  });
  it('what is on hand goes before what is thought of', () => {
    const plans: Plan[] = [
      { kind: 'cleanser', of: mild },
      { kind: 'conditioner', of: plain },
      { kind: 'cream', of: withWheat },
    ];
    const of = (candidates: Candidate[]) =>
      lessonOf(felt(plans, middling, [{ soft: -2 }], candidates))!.proposed;
    const thought = candidate('thought', 'cream', plain, false);
    expect(of([thought, candidate('owned', 'cream', light)])).toMatchObject({
      moves: [{ with: { product: 'owned' } }],
    });
    expect(of([thought])).toMatchObject({ moves: [{ with: { product: 'thought', owned: false } }] });
  });
  it('nothing on hand: what to look for', () => {
    const lesson = lessonOf(
      felt(
        [
          { kind: 'cleanser', of: mild },
          { kind: 'conditioner', of: light },
        ],
        middling,
        [{ dry: 1 }],
      ),
    );
    expect(lesson!.proposed).toMatchObject({ change: 'wish', wish: { moisture: true } });
  });
  it('a tolerance set by hand gives way one step where most days speak against it', () => {
    const head = { ...middling, allowanceByHand: 'often' as const };
    const input = felt([{ kind: 'cream', of: withWheat }], head, [
      { soft: -1 },
      { soft: -2 },
      { elastic: -1 },
    ]);
    expect(lessonOf(input)!.proposed).toMatchObject({ change: 'profile', from: 'often', to: 'regular' });
    expect(lessonOf({ ...input, head: { ...head, setAside: ['feel'] } })!.proposed.change).not.toBe(
      'profile',
    );
  });
});

describe('no change is proposed', () => {
  const plans: Plan[] = [{ kind: 'cream', of: withWheat }];
  it('after a day that felt well, one that was answered, an old one, another person’s', () => {
    const of = (over: Partial<LogEntry>) => {
      const input = felt(plans, middling, [{ soft: -1 }]);
      return lessonOf({ ...input, log: input.log.map((entry) => ({ ...entry, ...over })) });
    };
    expect(of({})).toBeDefined();
    expect(of({ feel: { soft: 2 } })).toBeUndefined();
    expect(of({ answered: 'left' })).toBeUndefined();
    expect(of({ date: '2025-01-01' })).toBeUndefined();
    expect(of({ head: 'someone' })).toBeUndefined();
  });
  it('leaves out no step that a day is made of', () => {
    expect(lessonOf(felt(plans, middling, [{ soft: -1 }]))!.proposed).not.toMatchObject({
      moves: [{ do: 'omit' }],
    });
    const may: Plan[] = [
      { kind: 'conditioner', of: plain },
      { kind: 'cream', of: withWheat, optional: true },
    ];
    expect(lessonOf(felt(may, middling, [{ soft: -1 }]))!.proposed).toMatchObject({
      moves: [{ do: 'omit', step: 's2' }],
    });
  });
  it('where the routine is another by now', () => {
    const input = felt(plans, middling, [{ soft: -1 }]);
    const routine = {
      ...input.routine,
      steps: input.routine.steps.map((step) => ({ ...step, product: 'new' })),
    };
    expect(lessonOf({ ...input, routine })!.proposed).toEqual({ change: 'none', why: 'changed-since' });
  });
});

// Whatever the day: a change that is proposed can be made, and no rule speaks newly against the day after it.
it('a proposed change never leaves a day that suggestions would call worse', () => {
  const kinds: ProductKind[] = ['cleanser', 'conditioner', 'leave-in', 'cream', 'gel', 'protein-treatment'];
  const labels = [
    plain,
    mild,
    light,
    withWheat,
    heavy,
    hand([water, laureth]),
    hand([water, silk, glycerin]),
  ];
  let seed = 7;
  const pick = <T>(from: readonly T[]): T => {
    seed = (seed * 48_271) % 2_147_483_647;
    return from[seed % from.length]!;
  };
  let proposed = 0;
  for (let i = 0; i < 300; i++) {
    const plans = kinds.filter(() => pick([true, true, false])).map((kind) => ({ kind, of: pick(labels) }));
    const candidates = Array.from({ length: 6 }, (_, n) => candidate(`c${n}`, pick(kinds), pick(labels)));
    const feel = pick<Feel>([{ soft: -1 }, { springy: -1 }, { dry: 1 }, { dry: -1 }, { defined: -2 }]);
    const head = pick([middling, careful, thirsty]);
    const input = felt(plans, head, [feel], candidates);
    const lesson = lessonOf(input);
    if (lesson?.proposed.change !== 'routine') continue;
    proposed++;
    const routine = applyMoves(input.routine, lesson.proposed.moves, practice.washDay.kinds.order, () => 'x');
    const read = new Map(candidates.map(({ product, reading }) => [product, reading]));
    const readings = new Map(
      routine.steps.map(({ id, product }) => [id, read.get(product!) ?? input.readings.get(id)]),
    );
    const clashes = (of: LessonInput) => {
      const { answer } = suggest({ ...of, candidates: [] });
      return answer === 'settled';
    };
    if (clashes(input)) expect(clashes({ ...input, routine, readings }), JSON.stringify(plans)).toBe(true);
  }
  expect(proposed).toBeGreaterThan(50);
});

it('says what was done otherwise than the time before', () => {
  const step = (kind: ProductKind, productName: string) => ({
    id: kind,
    kind,
    use: usualUse[kind],
    optional: false,
    cadence: { every: 'wash' as const },
    productName,
  });
  const entry = (date: string, steps: LogEntry['done']['steps'], more: Partial<LogEntry> = {}) =>
    logged(date, { done: { name: 'Sunday', steps }, ...more });
  const before = entry('2026-02-01', [step('gel', 'Linen'), step('cream', 'Tidepool')], {
    weather: { celsius: 5, humidity: 50 },
  });
  const now = entry('2026-02-08', [step('gel', 'Marram'), step('oil', 'Drift')], {
    weather: { celsius: 28, humidity: 80 },
  });
  expect(differed(now, before)).toMatchObject([
    { what: 'other', kind: 'gel', name: 'Marram', before: 'Linen' },
    { what: 'more', kind: 'oil', name: 'Drift' },
    { what: 'less', kind: 'cream', name: 'Tidepool' },
    { what: 'air', dew: 24, before: -5 },
  ]);
  expect(differed(now, now)).toEqual([]);
});
