// What the strip and the cards say. The small dictionary is invented from memory; sentences are the catalogue's.

import { describe, expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { bringsFor } from '../../src/core/amounts/brings.ts';
import type { Answer, Finding } from '../../src/core/judge/finding.ts';
import type { Entry } from '../../src/core/names/entry.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import type { ProductKind } from '../../src/core/product/product.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { dotted } from '../../src/ui/describe/dotted.ts';
import { cardOf, glyphsOf, marksOf } from '../../src/ui/describe/mark.ts';
import { shareWords } from '../../src/ui/describe/share.ts';
import { stripOf } from '../../src/ui/describe/strip.ts';
import { sumsOf } from '../../src/ui/describe/sums.ts';
import { verdictOf } from '../../src/ui/describe/verdict.ts';
import { glyphs } from '../../src/ui/glyphs/shapes.ts';
import { english, translator } from '../../src/ui/words/index.ts';
import type { Check } from '../../src/use/judge/judge-product.ts';

const sources = ['common-practice'];
const made = (name: string, rest: Partial<Entry> = {}): Entry => ({ name, sources, ...rest });
const protein = (name: string, size: 'free' | 'small' | 'large', rest = {}): Entry =>
  made(name, { protein: { kind: 'hydrolyzed', size, sources, ...rest } });
const lookup = createLookup(
  [
    made('Aqua'),
    made('Glycerin', { moisture: ['humectant'] }),
    made('Cetyl Alcohol', { moisture: ['emollient'] }),
    protein('Hydrolyzed Wheat Protein', 'large', { daltons: { min: 400, max: 3500 } }),
    protein('Hydrolyzed Rice Protein', 'large'),
    protein('Hydrolyzed Silk', 'small'),
    made('Oat Extract', { protein: { kind: 'protein-bearing', size: 'unknown', sources } }),
    made('Sodium Cocoyl Glutamate', { protein: { kind: 'protein-surfactant', size: 'unknown', sources } }),
    made('Phenoxyethanol'),
    made('Parfum', { aliases: ['Fragrance'] }),
  ],
  [],
  {
    limits: [{ name: 'Phenoxyethanol', rinseOff: 1, leaveOn: 1, sources }],
    thresholds: {
      freeBelow: 1,
      leadingWithin: 5,
      readAtLeast: 0.6,
      listAtLeast: 0.4,
      colourantsAtMost: 5,
      alphabeticalFrom: 6,
      longestText: 4000,
    },
  },
);
const t = translator('en');
const read = (text: string) => readLabel(text, lookup, { market: 'eu' });
const sums = (text: string, kind?: ProductKind) => {
  const reading = read(text);
  return sumsOf(reading, t, bringsFor(reading, { kind }, practice.washDay));
};

describe('the strip sums up', () => {
  it.each([
    [
      'Glycerin, Aqua, Phenoxyethanol, Hydrolyzed Wheat Protein, Hydrolyzed Rice Protein',
      '2 proteins, both large, at most 1 % each\u00a0· mostly moisture',
    ],
    ['Glycerin, Aqua, Hydrolyzed Silk', '1 protein, small, at most 33.3 %\u00a0· mostly moisture'],
    [
      'Aqua, Hydrolyzed Silk, Hydrolyzed Wheat Protein, Hydrolyzed Rice Protein',
      '3 proteins: 2 large and 1 small, at most 50 % each\u00a0· no moisture',
    ],
    ['Glycerin, Aqua, Parfum', 'no protein\u00a0· mostly moisture'],
    ['Glycerin, Aqua, Oat Extract', 'no protein for certain; 1 name may contain some\u00a0· mostly moisture'],
    ['Aqua, Sodium Cocoyl Glutamate, Parfum', 'no protein\u00a0· no moisture'],
    [
      'Glycerin, Aqua, Parfum, Hydrolyzed Silk, Zorblax',
      '1 protein, small, at most 25 %\u00a0· mostly moisture\u00a0· 1 name not known',
    ],
    [
      'Zorblax, Aqua, Quentin, Mortimer',
      'protein: cannot tell\u00a0· moisture: cannot tell\u00a0· 3 names not known',
    ],
    [
      `Aqua, ${'Glycerin, '.repeat(500)}`,
      'This text is too long to be one ingredient list, so it was not read.',
    ],
  ])('%s', (text, words) => {
    expect(sums(text)).toBe(words);
  });

  it('says amounts in words where the kind of product is known, and how a cleanser washes', () => {
    expect(sums('Aqua, Glycerin, Hydrolyzed Wheat Protein', 'leave-in')).toMatch(
      /^(a little|some|a lot of) protein \(large\)\u00a0· (a little|some|a lot of) moisture \(draws water\)$/,
    );
    expect(sums('Aqua, Glycerin', 'cleanser')).toMatch(/^hardly washes\u00a0· no protein\u00a0· /);
  });

  it('says that goods for another place are not for hair', () => {
    const { verdicts } = stripOf(
      read('Glycerin, Aqua'),
      { product: 'Dish soap', checks: [], notForHair: true, brings: undefined, kept: false },
      t,
    );
    expect(verdicts).toMatchObject([{ answer: 'cannot-tell', title: 'Not for hair' }]);
  });

  it('says why nothing can be told without a head, and offers to keep only what is not kept', () => {
    const strip = (kept: boolean) =>
      stripOf(read('Glycerin, Aqua'), { product: 'Foam', checks: [], brings: undefined, kept }, t);
    expect(strip(false).verdicts).toMatchObject([{ answer: 'cannot-tell', title: 'Cannot tell yet' }]);
    expect(strip(false).label).toBe('Strandline: ingredients of Foam');
    expect(strip(false).actions.map(({ id }) => id)).toContain('keep');
    expect(strip(true).actions.map(({ id }) => id)).not.toContain('keep');
    expect(strip(true).actions).toContainEqual({ id: 'picture', word: 'Read the picture in view' });
  });

  const because = (rule: string, aspect: Finding['aspect'], answer: Answer, rest: Partial<Finding> = {}) =>
    ({
      aspect,
      rule,
      answer,
      steps: ['this'],
      mentions: [],
      reason: { key: 'shell.undo' },
      ...rest,
    }) as Finding;
  const check = (answer: Answer, deciding: Finding[], who = 'Wren'): Check => ({
    about: 'head',
    who,
    answer,
    findings: deciding,
    deciding,
    decides: [],
  });
  it.each([
    ['suits', 'Wren', 'Fits Wren'],
    ['with-care', 'Wren', 'Fits Wren, with care'],
    ['does-not-suit', 'Wren', 'Not for Wren'],
    ['cannot-tell', 'Wren', 'Cannot tell yet for Wren'],
    ['does-not-suit', 'My hair', 'Not for your hair'],
  ] as const)('%s, of %s: %s', (answer, who, title) => {
    expect(verdictOf(check(answer, [], who), t).title).toBe(title);
  });
  it('a verdict has one reason first, with care its condition too, and each other sentence once', () => {
    const first = because('b', 'weight', 'with-care', {
      reason: { key: 'shell.undo' },
      condition: { key: 'shell.dismiss' },
    });
    const second = because('c', 'protein', 'with-care', { unknown: { key: 'shell.dismiss' } });
    const third = because('d', 'care', 'with-care', { reason: { key: 'shell.name' } });
    expect(verdictOf(check('with-care', [first, second, third]), t)).toEqual({
      answer: 'with-care',
      title: 'Fits Wren, with care',
      why: ['Undo', 'Dismiss'],
      more: ['Strandline'],
    });
  });
  it('what it does comes before what is not on it', () => {
    const clear = because('avoid-list', 'avoid', 'suits');
    const mild = because('cleansing', 'cleansing', 'suits', { reason: { key: 'shell.name' } });
    expect(verdictOf(check('suits', [clear, mild]), t)).toMatchObject({
      why: ['Strandline'],
      more: ['Undo'],
    });
  });
});

describe('a card', () => {
  const reading = read('Aqua, Glycerin, Hydrolyzed Wheat Protein, Fragrance, Zorblax');

  it('says what a protein is, its size in daltons and where the share comes from', () => {
    const card = cardOf(2, reading, t, { 'common-practice': { title: 'Common practice' } })!;
    expect(card.title).toBe('Hydrolyzed Wheat Protein');
    expect(card.kind).toBe('hydrolyzed protein, large');
    expect(card.lines.join(' ')).toMatch(/400 to 3,500 daltons/);
    expect(card.share.max).toBeCloseTo(100 / 3);
    expect(card.shareWords).toBe('Place 3 of 5: 0 to 33.3 %.');
    expect(card.source).toBe('Source: Common practice');
  });

  it('gives the INCI name of a name printed otherwise, and none for a name not known', () => {
    expect(cardOf(3, reading, t, {})!.lines[0]).toBe('INCI name: Parfum.');
    expect(cardOf(4, reading, t, {})).toBeUndefined();
  });

  it('a list whose order says nothing says so', () => {
    const sorted = read(
      'Aqua, Cetyl Alcohol, Glycerin, Hydrolyzed Silk, Oat Extract, Parfum, Phenoxyethanol',
    );
    expect(shareWords(3, sorted, t)).toBe('The order of this list says nothing about amounts.');
  });
});

it('marks stand on the letters of the label, in order, each with a line of its kind', () => {
  const text = 'Aqua, Glycerin, Hydrolyzed Silk, Oat Extract, Sodium Cocoyl Glutamate';
  const marks = marksOf(read(text), t, {});
  expect(marks.map(({ from, to, line }) => [text.slice(from, to), line])).toEqual([
    ['Glycerin', 'moisture'],
    ['Hydrolyzed Silk', 'small'],
    ['Oat Extract', 'bearing'],
  ]);
});

it('a card on the page names its sources in few words, where there are such', () => {
  const sources = { 'common-practice': { title: 'Common practice, at length', short: 'practice' } };
  const [mark] = marksOf(read('Hydrolyzed Wheat Protein'), t, sources);
  const words = JSON.stringify(mark!.card);
  expect(words).toContain('Source: practice');
  expect(words).not.toContain('at length');
});

it('every glyph there is can be drawn, and every word of the page catalogue is a word', () => {
  for (const { width, height, shapes } of Object.values(glyphs)) {
    expect(width * height).toBeGreaterThan(0);
    expect(shapes.length).toBeGreaterThan(0);
    for (const { d } of shapes) expect(d).toMatch(/^M[\d\s.,MLHVCSQAZaz-]+$/);
  }
  expect(glyphsOf({ moisture: ['humectant', 'occlusive'] })).toEqual(['draws', 'seals']);
  for (const [key, word] of Object.entries(english)) if (key.startsWith('page.')) expect(word).not.toBe('');
});

it('a dot between parts stays at the end of its line', () => {
  expect(dotted(['Quoin', undefined, '200 ml'])).toBe('Quoin\u00a0· 200 ml');
  expect(dotted([])).toBe('');
});
