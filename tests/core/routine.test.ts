import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Head } from '../../src/core/hair/head.ts';
import type { Finding } from '../../src/core/judge/finding.ts';
import { answerOf, fitProduct } from '../../src/core/judge/fit.ts';
import { previewAdd } from '../../src/core/plan/preview.ts';
import { productKinds, usualUse } from '../../src/core/product/product.ts';
import type { Reading } from '../../src/core/reading/reading.ts';
import { type WashDayInput, washDay } from '../../src/core/wash-day/add-up.ts';
import { rules } from '../../src/core/wash-day/rules/index.ts';
import { translator } from '../../src/ui/words/index.ts';
import {
  allowance,
  careful,
  day,
  fatty,
  glutamate,
  glycerin,
  hand,
  middling,
  type Plan,
  practice,
  silk,
  softener,
  thirsty,
  unknown,
  water,
  wheat,
} from './hand-read.ts';
import { randomDay } from './random-day.ts';

const seeds = fc.integer({ min: 1, max: 1_000_000 });
const proteinRules = new Set(
  rules.filter(({ id, aspect }) => aspect === 'protein' && !id.startsWith('treatment')).map(({ id }) => id),
);
const worst = (findings: readonly Finding[], rule: string) => {
  const answers = findings.filter((finding) => finding.rule === rule).map(({ answer }) => answer);
  return answers.includes('does-not-suit')
    ? 3
    : answers.includes('cannot-tell')
      ? 2
      : answers.includes('with-care')
        ? 1
        : 0;
};

describe('properties of every wash day', () => {
  it('adding a protein-free product never raises a protein finding', () => {
    fc.assert(
      fc.property(seeds, fc.nat(8), fc.constantFrom(...productKinds), fc.nat(9), (seed, steps, kind, at) => {
        const input = randomDay(seed, steps, 0);
        const step = {
          id: 'new',
          kind,
          use: usualUse[kind],
          product: 'new',
          optional: false,
          cadence: { every: 'wash' as const },
        };
        const more: WashDayInput = {
          ...input,
          routine: { ...input.routine, steps: input.routine.steps.toSpliced(at, 0, step) },
          readings: new Map(input.readings).set('new', hand([water, glycerin, fatty])),
        };
        const before = washDay(input).findings;
        const after = washDay(more).findings;
        for (const rule of proteinRules)
          expect(worst(after, rule), rule).toBeLessThanOrEqual(worst(before, rule));
      }),
      { numRuns: 400 },
    );
  });

  it('widening a likely band never turns cannot tell into suits', () => {
    const widened = (reading: Reading, by: number[]): Reading => ({
      ...reading,
      mentions: reading.mentions.map((mention, index) => {
        const usual = Math.sqrt(Math.max(mention.share.min, mention.share.max / 20) * mention.share.max);
        const wider = 1 + by[index % by.length]! / 10;
        return { ...mention, usual, likely: { min: usual / wider, max: Math.min(100, usual * wider) } };
      }),
    });
    fc.assert(
      fc.property(
        seeds,
        fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: 1 }),
        (seed, by) => {
          const input = randomDay(seed, 6, 0);
          const readings = new Map(
            [...input.readings].map(([id, reading]) => [id, reading && widened(reading, by)] as const),
          );
          const before = washDay(input).findings;
          const after = washDay({ ...input, readings }).findings;
          for (const { id } of rules)
            if (worst(before, id) === 2) expect(worst(after, id), id).toBeGreaterThanOrEqual(1);
          for (const [id, reading] of input.readings) {
            const { kind } = input.routine.steps.find((step) => step.id === id)!;
            const context = { practice, head: input.head, allowance: input.allowance };
            const one = answerOf(fitProduct({ reading, kind }, context)).answer;
            const wide = answerOf(fitProduct({ reading: readings.get(id), kind }, context)).answer;
            if (one === 'cannot-tell') expect(wide).not.toBe('suits');
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('the order of equal steps does not matter', () => {
    const said = (input: WashDayInput) =>
      washDay(input)
        .findings.map(
          ({ rule, answer, reason, steps }) => `${rule} ${answer} ${reason.key} ${steps.toSorted().join()}`,
        )
        .toSorted();
    fc.assert(
      fc.property(seeds, (seed) => {
        const input = randomDay(seed, 7, 0);
        const { steps } = input.routine;
        const at = steps.findIndex(({ kind }, index) => steps[index + 1]?.kind === kind);
        fc.pre(at >= 0);
        const swapped = steps.with(at, steps[at + 1]!).with(at + 1, steps[at]!);
        expect(said({ ...input, routine: { ...input.routine, steps: swapped } })).toEqual(said(input));
      }),
      { numRuns: 300 },
    );
  });

  it('two looks at one day say the same, and leave it as it was', () => {
    const input = randomDay(7, 8, 0);
    const copy = structuredClone(input.routine);
    expect(washDay(input)).toEqual(washDay(input));
    expect(input.routine).toEqual(copy);
  });
});

describe('adding a product, seen before it is done', () => {
  const say = translator('en');
  const withSilk = hand([water, glycerin, silk]);
  const plain = hand([water, glycerin, fatty, softener]);
  const mildWash = hand([water, glutamate]);
  const adding = (kind: Plan['kind'], reading: Reading, how?: 'fill' | 'beside') => ({
    step: {
      id: 'new',
      kind,
      use: usualUse[kind],
      product: 'new',
      optional: false,
      cadence: { every: 'wash' as const },
    },
    reading,
    how,
  });

  it('says which product with protein it would be: a count, not a complaint', () => {
    const plans: Plan[] = [
      { kind: 'cleanser', of: mildWash },
      { kind: 'conditioner', of: hand([water, wheat, fatty, softener, softener, softener]) },
    ];
    const preview = previewAdd({ ...day(plans, thirsty), adding: adding('gel', withSilk) });
    expect(preview.counts.map(({ key, values }) => say(key, values))).toEqual([
      'Your gel would be the second product with protein.',
    ]);
    expect(preview.stacks).toEqual([]);
    expect(preview.routine.steps.map(({ kind }) => kind)).toEqual(['cleanser', 'conditioner', 'gel']);
  });

  it.each<[string, Plan[], Head, Plan['kind'], Reading, string, string[]]>([
    ['what was missing', [{ kind: 'cleanser', of: mildWash }], middling, 'conditioner', plain, 'better', []],
    [
      'hold over a cream',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'conditioner', of: plain },
      ],
      middling,
      'gel',
      hand([water]),
      'better',
      [],
    ],
    [
      'nothing this head needs',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'conditioner', of: plain },
      ],
      middling,
      'refresh-spray',
      hand([water, glycerin]),
      'same',
      [],
    ],
    [
      'protein on hair that has no use for it',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'conditioner', of: plain },
      ],
      careful,
      'gel',
      hand([water, wheat]),
      'worse',
      ['too-much-protein', 'large-proteins-stay'],
    ],
    [
      'louder is worse: one more on too many',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'conditioner', of: plain },
        { kind: 'cream', of: hand([water, wheat]) },
      ],
      careful,
      'gel',
      hand([water, wheat]),
      'worse',
      ['too-much-protein', 'large-proteins-stay'],
    ],
    [
      'a label that says nothing',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'conditioner', of: plain },
      ],
      middling,
      'gel',
      hand([unknown, unknown]),
      'cannot-tell',
      ['too-little-read'],
    ],
  ])('%s', (_, plans, of, kind, reading, answer, comes) => {
    const preview = previewAdd({ ...day(plans, of), adding: adding(kind, reading) });
    expect(preview.answer).toBe(answer);
    expect([...new Set(preview.comes.map(({ rule }) => rule))]).toEqual(comes);
  });

  it('settles what it settles, and says what it does besides', () => {
    const preview = previewAdd({
      ...day(
        [
          { kind: 'cleanser', of: mildWash },
          { kind: 'gel', of: plain },
        ],
        middling,
      ),
      adding: adding('conditioner', plain),
    });
    expect(preview.settles.map(({ key }) => key)).toEqual([
      'rules.too-little-moisture.missing',
      'rules.gain.softens',
    ]);
    expect(preview.displaces).toEqual([]);
  });

  it('fills the step of its kind, and says what is put aside', () => {
    const input = day(
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'conditioner', of: plain },
        { kind: 'gel', of: hand([water, wheat]) },
      ],
      careful,
    );
    const fill = previewAdd({ ...input, adding: adding('gel', hand([water])) });
    expect(fill.fills).toBe('s3');
    expect(fill.displaces).toHaveLength(1);
    expect(fill.answer).toBe('better');
    expect(fill.settles.map(({ key }) => key)).toContain('rules.large-proteins-stay.build-up');
    const beside = previewAdd({ ...input, adding: adding('gel', hand([water]), 'beside') });
    expect(beside.routine.steps).toHaveLength(4);
    expect(beside.displaces).toEqual([]);
  });

  it('fills an empty step first', () => {
    const input = day(
      [
        { kind: 'gel', of: plain },
        { kind: 'gel', empty: true },
      ],
      careful,
    );
    expect(previewAdd({ ...input, adding: adding('gel', hand([water])) })).toMatchObject({
      fills: 's2',
      displaces: [],
    });
  });

  it('the same product again displaces nothing', () => {
    const input = day([{ kind: 'gel', of: plain, product: 'new' }], careful);
    const preview = previewAdd({ ...input, adding: adding('gel', plain) });
    expect(preview.displaces).toEqual([]);
    expect(preview.comes).toEqual([]);
    expect(preview).toMatchObject({ answer: 'same', known: true });
    expect(preview.after).toEqual(preview.before);
  });

  it('keeps the numbers of the allowance', () => {
    expect(washDay(day([{ kind: 'gel', of: withSilk }], middling)).protein.leaveOns).toEqual({
      sure: 1,
      maybe: 0,
      allowed: allowance(middling).numbers!.leaveOns,
    });
  });
});
