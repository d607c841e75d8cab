import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Head } from '../../src/core/hair/head.ts';
import { type Aspect, answersByWeight } from '../../src/core/judge/finding.ts';
import { answerFor, answerOf, fitProduct } from '../../src/core/judge/fit.ts';
import { traitsOf } from '../../src/core/judge/traits.ts';
import type { Use } from '../../src/core/names/entry.ts';
import type { ProductKind } from '../../src/core/product/product.ts';
import {
  allowance,
  butter,
  careful,
  fatty,
  glutamate,
  glycerin,
  type Hand,
  hand,
  head,
  laureth,
  middling,
  oatExtract,
  peptide,
  practice,
  protein,
  silk,
  softener,
  thirsty,
  unknown,
  water,
  wheat,
} from './hand-read.ts';
import { randomDay } from './random-day.ts';

const findings = (parts: Hand[], of: Head | undefined, kind: ProductKind = 'leave-in', more = {}) =>
  fitProduct(
    { reading: hand(parts, more), kind },
    { practice, ...(of && { head: of, allowance: allowance(of) }) },
  );

const at = (part: Hand, percent: number): Hand => ({ ...part, share: { min: percent, max: percent } });
const arginine: Hand = {
  name: 'Arginine',
  protein: protein('free', 'amino-acid'),
  share: { min: 0, max: 3 },
};
const papain: Hand = { name: 'Papain', protein: protein('large', 'whole'), share: { min: 0, max: 3 } };
const alcohol: Hand = { name: 'Alcohol Denat.', roles: ['drying-alcohol'], share: { min: 10, max: 40 } };
const fine = head({ thickness: 'fine', porosity: 'low', damage: { kinds: [] }, scalpKind: 'oily' });
const relaxed = head({
  thickness: 'coarse',
  porosity: 'high',
  scalpKind: 'dry',
  damage: { kinds: ['relaxer'], length: 'most', recent: 'weeks' },
});
const notTold = head({ porosity: 'low', damage: { kinds: [] } });

describe('one product against one head, aspect by aspect (common practice)', () => {
  it.each<[string, Hand[], Head | undefined, ProductKind, Aspect, string, string]>([
    ['free of protein', [water, glycerin], undefined, 'gel', 'protein', 'suits', 'free'],
    ['named peptides are no dose', [water, peptide], careful, 'gel', 'protein', 'suits', 'uncounted'],
    ['an amino acid for the pH is none', [water, arginine], careful, 'gel', 'protein', 'suits', 'uncounted'],
    ['an enzyme is none', [water, papain], careful, 'gel', 'protein', 'suits', 'uncounted'],
    [
      'a cleanser on protein is none',
      [water, glutamate],
      careful,
      'cleanser',
      'protein',
      'suits',
      'uncounted',
    ],
    [
      'an extract that bears some is none',
      [water, oatExtract],
      careful,
      'gel',
      'protein',
      'suits',
      'bearing',
    ],
    ['a little, rinsed off', [water, at(silk, 0.3)], careful, 'conditioner', 'protein', 'suits', 'uncounted'],
    [
      'much, left on, coarse and tight',
      [water, at(wheat, 3)],
      careful,
      'gel',
      'protein',
      'does-not-suit',
      'too-much-left-on',
    ],
    ['much, left on, bleached', [water, at(wheat, 2)], thirsty, 'cream', 'protein', 'suits', 'suits'],
    [
      'some, rinsed off, coarse and tight',
      [water, at(silk, 1)],
      careful,
      'conditioner',
      'protein',
      'with-care',
      'strong',
    ],
    [
      'some, left on, thickness not told',
      [water, at(wheat, 2)],
      notTold,
      'cream',
      'protein',
      'cannot-tell',
      'hair-unknown',
    ],
    [
      'butter on fine hair',
      [water, at(butter, 12), fatty],
      fine,
      'cream',
      'weight',
      'does-not-suit',
      'too-heavy',
    ],
    [
      'the same on coarse hair',
      [water, at(butter, 12), fatty],
      careful,
      'cream',
      'weight',
      'suits',
      'carried',
    ],
    [
      'butter, thickness not told',
      [water, at(butter, 12), fatty],
      notTold,
      'cream',
      'weight',
      'cannot-tell',
      'hair-unknown',
    ],
    ['a thin mist, thickness not told', [water, glycerin], notTold, 'leave-in', 'weight', 'suits', 'light'],
    [
      'sulfate on relaxed hair',
      [water, at(laureth, 12)],
      relaxed,
      'cleanser',
      'cleansing',
      'does-not-suit',
      'too-harsh',
    ],
    [
      'sulfate on untouched hair',
      [water, at(laureth, 10)],
      middling,
      'cleanser',
      'cleansing',
      'suits',
      'suits',
    ],
    ['mild on relaxed hair', [water, at(glutamate, 12)], relaxed, 'cleanser', 'cleansing', 'suits', 'suits'],
    [
      'a co-wash for an oily scalp',
      [water, fatty, softener],
      fine,
      'cleanser',
      'cleansing',
      'does-not-suit',
      'too-weak',
    ],
    [
      'alcohol second, left on dry hair',
      [water, at(alcohol, 25)],
      relaxed,
      'leave-in',
      'care',
      'does-not-suit',
      'dries',
    ],
    [
      'the same rinsed off',
      [water, at(alcohol, 25), fatty, softener, softener],
      middling,
      'conditioner',
      'care',
      'suits',
      'softens',
    ],
    [
      'a thin conditioner on dry coarse hair',
      [water, at(fatty, 4)],
      relaxed,
      'conditioner',
      'care',
      'does-not-suit',
      'thin',
    ],
    ['a rich one', [water, fatty, softener, softener], middling, 'conditioner', 'care', 'suits', 'softens'],
  ])('%s', (_, parts, of, kind, aspect, expected, key) => {
    const found = findings(parts, of, kind, { onePercentFrom: 50 });
    expect(answerFor(found, aspect)).toBe(expected);
    expect(found.find((one) => one.aspect === aspect)?.reason.key).toBe(`rules.${aspect}.${key}`);
  });

  it('a trace behind the one-percent line of a rinse-off is shown, never counted', () => {
    const parts = [water, glycerin, fatty, { ...wheat, share: { min: 0, max: 1 } }];
    const behind = findings(parts, careful, 'conditioner', { onePercentFrom: 3 });
    expect(behind.find(({ rule }) => rule === 'protein')?.reason.key).toBe('rules.protein.uncounted');
    expect(behind.find(({ rule }) => rule === 'protein')?.mentions).toEqual([{ step: 'this', index: 3 }]);
  });

  it('a size that measurement denies gives no plain no', () => {
    const measured = {
      ...wheat,
      protein: protein('large', 'hydrolyzed', { daltons: { min: 400, max: 3500 } }),
    };
    const of = (part: Hand) =>
      findings([water, at(part, 1.5)], careful, 'cream').find(({ rule }) => rule === 'protein');
    expect(of(wheat)?.answer).toBe('does-not-suit');
    expect(of(measured)).toMatchObject({
      answer: 'with-care',
      unknown: { key: 'rules.protein.size-disputed' },
    });
  });

  it('a size that is disputed counts as the reader chose, and the finding says so', () => {
    const measured = {
      ...wheat,
      protein: protein('large', 'hydrolyzed', { daltons: { min: 400, max: 3500 } }),
    };
    const by = (sizesBy: 'practice' | 'measured', part: Hand) => {
      const chosen = { ...practice, judge: { ...practice.judge, dose: { ...practice.judge.dose, sizesBy } } };
      const reading = hand([water, at(part, 1.5)]);
      const found = fitProduct({ reading, kind: 'cream' }, { practice: chosen, head: careful });
      const traits = traitsOf(reading, { kind: 'cream', use: 'leave-on' }, chosen);
      return { traits, finding: found.find(({ rule }) => rule === 'protein') };
    };
    const small = { ...measured, protein: protein('small', 'hydrolyzed') };
    const large = by('practice', measured);
    expect(large.finding).toMatchObject({
      answer: 'does-not-suit',
      unknown: { key: 'rules.protein.size-disputed-practice' },
    });
    expect(large.traits.dose).toBe(by('practice', wheat).traits.dose);
    expect(large.traits.largeDose).toBe(large.traits.dose);
    const asMeasured = by('measured', measured);
    expect(asMeasured.finding?.unknown).toEqual({ key: 'rules.protein.size-disputed-measured' });
    expect(asMeasured.traits.dose).toBe(by('measured', small).traits.dose);
    expect(asMeasured.traits.largeDose).toBe(0);
    // What nobody disputes stays as it is.
    expect(by('measured', wheat).traits.dose).toBe(by('practice', wheat).traits.dose);
  });

  it('an answer with care says its condition, no other does', () => {
    const found = findings([water, at(silk, 1)], careful, 'conditioner');
    for (const { answer, condition } of found) expect(condition !== undefined).toBe(answer === 'with-care');
  });

  it('without a label nobody can tell in any aspect', () => {
    const found = fitProduct({ reading: undefined, kind: 'cream' }, { practice, head: middling });
    for (const aspect of ['protein', 'weight', 'cleansing', 'care'] as const)
      expect(answerFor(found, aspect)).toBe('cannot-tell');
    expect(answerOf(found).reason.key).toBe('rules.too-little-read.no-label');
  });

  it('where too little was read an absence proves nothing, a find does', () => {
    const little = [water, unknown, unknown, unknown];
    expect(answerOf(findings(little, middling)).answer).toBe('cannot-tell');
    expect(answerOf(findings([...little, at(wheat, 6)], careful)).answer).toBe('does-not-suit');
  });
});

describe('the avoid list', () => {
  const avoiding = (avoid: Partial<Head['avoid'][number]>) =>
    head({ ...middling, avoid: [{ id: 'a', reacted: false, ...avoid }] });
  it.each<[string, Hand[], Head, string, string]>([
    ['a family', [water, wheat], avoiding({ family: 'wheat' }), 'does-not-suit', 'holds'],
    [
      'a family reacted to',
      [water, wheat],
      avoiding({ family: 'wheat', reacted: true }),
      'does-not-suit',
      'reacted',
    ],
    ['a name, in any case', [water, glycerin], avoiding({ name: 'glycerin' }), 'does-not-suit', 'holds'],
    [
      'a name inside a longer one is asked',
      [water, fatty],
      avoiding({ name: 'alcohol' }),
      'cannot-tell',
      'nearly',
    ],
    [
      'a close spelling is asked, not decided',
      [water, glycerin, { name: 'Glycerinn', unread: ['Glycerin'] }],
      avoiding({ name: 'Glycerin' }),
      'does-not-suit',
      'holds',
    ],
    [
      'a close spelling alone',
      [water, fatty, { name: 'Glycerinn', unread: ['Glycerin'] }],
      avoiding({ name: 'Glycerin' }),
      'cannot-tell',
      'nearly',
    ],
    [
      'an unread name after a reaction',
      [water, glycerin, unknown],
      avoiding({ family: 'nut', reacted: true }),
      'cannot-tell',
      'reacted-unread',
    ],
    [
      'fragrance by role',
      [water, { name: 'Parfum', roles: ['fragrance'] }],
      avoiding({ family: 'fragrance' }),
      'does-not-suit',
      'holds',
    ],
    ['nothing of it', [water, glycerin], avoiding({ family: 'nut' }), 'suits', 'clear'],
  ])('%s', (_, parts, of, expected, key) => {
    const found = findings(parts, of, 'gel');
    expect(found.find(({ rule }) => rule === 'avoid-list')).toMatchObject({
      answer: expected,
      reason: { key: `rules.avoid-list.${key}` },
    });
  });

  it('an avoided family is never overruled', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const { routine, readings } = randomDay(seed, 5, 0);
        for (const { id, kind, use } of routine.steps) {
          const reading = readings.get(id)!;
          const found = fitProduct(
            { reading, kind, use },
            { practice, head: avoiding({ family: 'wheat' }), allowance: allowance(middling) },
          );
          if (reading.mentions.some(({ allergens }) => allergens.includes('wheat')))
            for (const aspect of ['protein', 'weight', 'cleansing', 'care'] as const)
              expect(answerFor(found, aspect)).toBe('does-not-suit');
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('properties of every product', () => {
  const heads = [careful, middling, thirsty, fine, relaxed];
  const harder = (a: string, b: string) =>
    answersByWeight.indexOf(a as never) < answersByWeight.indexOf(b as never);

  it('rinsed off it is never judged harder than the same label left on', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.constantFrom(...heads), (seed, of) => {
        for (const [, reading] of randomDay(seed, 4, 0).readings) {
          const as = (use: Use) =>
            fitProduct({ reading, kind: 'leave-in', use }, { practice, head: of, allowance: allowance(of) });
          for (const aspect of ['protein', 'weight', 'care'] as const)
            expect(harder(answerFor(as('rinse-off'), aspect), answerFor(as('leave-on'), aspect))).toBe(false);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('the same product gives the same answer twice', () => {
    const [reading] = [...randomDay(3, 4, 0).readings.values()];
    const once = () =>
      fitProduct({ reading, kind: 'cream' }, { practice, head: fine, allowance: allowance(fine) });
    expect(once()).toEqual(once());
  });
});
