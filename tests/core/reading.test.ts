import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry, Limits, Pattern } from '../../src/core/names/entry.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

const made = ['from-memory'];
const entries: Entry[] = [
  { name: 'Aqua', aliases: ['Water'], roles: ['water'], sources: made },
  { name: 'Glycerin', moisture: ['humectant'], sources: made },
  { name: 'Cetyl Alcohol', moisture: ['emollient'], roles: ['fatty-alcohol'], sources: made },
  { name: 'Phenoxyethanol', roles: ['preservative'], sources: made },
  { name: 'Parfum', roles: ['fragrance'], sources: made },
  {
    name: 'Hydrolyzed Wheat Protein',
    protein: { kind: 'hydrolyzed', size: 'large', sources: made },
    moisture: ['humectant'],
    sources: made,
  },
  {
    name: 'Palmitoyl Tripeptide-1',
    protein: { kind: 'peptide', size: 'small', minute: true, sources: made },
    sources: made,
  },
  {
    name: 'Sodium Cocoyl Glutamate',
    protein: { kind: 'protein-surfactant', size: 'unknown', sources: made },
    sources: made,
  },
  {
    name: 'Milk Extract',
    protein: { kind: 'protein-bearing', size: 'unknown', sources: made },
    sources: made,
  },
  { name: 'CI 42090', roles: ['colourant'], sources: made },
];
const patterns: Pattern[] = [];
const limits: Limits = {
  limits: [
    { name: 'Phenoxyethanol', rinseOff: 1, leaveOn: 1, sources: made },
    { name: 'Parfum', rinseOff: 4, leaveOn: 2, sources: made },
  ],
  thresholds: {
    freeBelow: 1,
    leadingWithin: 5,
    readAtLeast: 0.6,
    listAtLeast: 0.4,
    colourantsAtMost: 5,
    alphabeticalFrom: 6,
    longestText: 40_000,
  },
};
const lookup = createLookup(entries, patterns, limits);
const read = (text: string, use?: 'rinse-off' | 'leave-on') =>
  readLabel(text, lookup, use ? { use, market: 'eu' } : { market: 'eu' });

describe('strengths', () => {
  it.each([
    ['Water, Glycerin, Cetyl Alcohol', 'none', 'leading'],
    ['Water, Hydrolyzed Wheat Protein, Glycerin', 'leading', 'leading'],
    ['Water, Glycerin, Phenoxyethanol, Hydrolyzed Wheat Protein', 'trace', 'leading'],
    ['Water, Parfum, Cetyl Alcohol, Water, Aqua, Hydrolyzed Wheat Protein, Glycerin', 'present', 'leading'],
    ['Water, Palmitoyl Tripeptide-1, Cetyl Alcohol', 'trace', 'leading'],
    ['Water, Sodium Cocoyl Glutamate, Milk Extract', 'none', 'none'],
    ['Water, Glycerin, Wibble, Wobble, Webble', 'unknown', 'leading'],
    ['Wibble, Wobble, Webble', 'unknown', 'unknown'],
  ])('%s: protein %s, moisture %s', (text, protein, moisture) => {
    const reading = read(text);
    expect([reading.protein, reading.moisture]).toEqual([protein, moisture]);
  });
});

describe('shares', () => {
  it('a preservative of at most 1 % draws the one-percent line', () => {
    const { mentions, onePercentFrom, assumesLimits } = read(
      'Aqua, Cetyl Alcohol, Glycerin, Phenoxyethanol, Hydrolyzed Wheat Protein',
    );
    expect(onePercentFrom).toBe(3);
    expect(assumesLimits).toBe(true);
    expect(mentions.map(({ share }) => share.max)).toEqual(
      [100, 50, 100 / 3, 1, 1].map((x) => expect.closeTo(x, 6)),
    );
  });
  it('the use chooses the ceiling', () => {
    const max = (use?: 'rinse-off' | 'leave-on') =>
      read('Aqua, Parfum, Glycerin', use).mentions[2]!.share.max;
    expect([max('rinse-off'), max('leave-on'), max()]).toEqual([4, 2, 4]);
  });
  it('a printed share fixes its mention and lifts what stands before it', () => {
    const { mentions } = read('Aqua, Glycerin 10%, Hydrolyzed Wheat Protein');
    expect(mentions[1]!.share).toEqual({ min: 10, max: 10 });
    expect(mentions[0]!.share.min).toBe(80);
    expect(mentions[2]!.share.max).toBe(10);
  });
  it('a label that contradicts a ceiling keeps its order', () => {
    const { mentions, assumesLimits } = read('Phenoxyethanol, Aqua');
    expect(assumesLimits).toBe(false);
    expect(mentions.map(({ share }) => share)).toEqual([
      { min: 50, max: 100 },
      { min: 0, max: 50 },
    ]);
  });
  it.each([
    ['alphabetical', 'Aqua, Cetyl Alcohol, Glycerin, Hydrolyzed Wheat Protein, Milk Extract, Phenoxyethanol'],
    ['a single name', 'Hydrolyzed Wheat Protein'],
  ])('%s says nothing about amounts', (_, text) => {
    const reading = read(text);
    expect(reading.order).toBe('uninformative');
    expect(reading.onePercentFrom).toBeUndefined();
    expect(reading.protein).toBe('present');
  });
  it('colourants stand where they like', () => {
    const { mentions } = read('Aqua, Glycerin, Phenoxyethanol, CI 42090');
    expect(mentions[3]!.share).toEqual({ min: 0, max: 5 });
  });
});

describe('brackets', () => {
  it.each([
    ['Aqua (Water, Glycerin), Parfum', 3],
    ['Hydrolyzed Wheat Protein (Milk Extract, Wibble), Aqua', 2],
  ])('%s: %i mentions', (text, n) => {
    expect(read(text).mentions).toHaveLength(n);
  });
});

describe('any text', () => {
  it('protein takes precedence over humectant', () => {
    expect(read('Hydrolyzed Wheat Protein').mentions[0]!.moisture).toEqual([]);
  });
  it('a name read as another is an alias', () => {
    const { mentions } = readLabel('Wibble', lookup, { readAs: { Wibble: 'Glycerin' } });
    expect(mentions[0]!.found).toEqual({ how: 'alias', name: 'Glycerin' });
    expect(mentions[0]!.moisture).toEqual(['humectant']);
  });
  it('2 MB are refused, emptiness is no list', () => {
    expect(read('Aqua, '.repeat(350_000)).refused).toBe('too-long');
    expect(read('').refused).toBe('no-list');
    expect(read(' ,,, ').refused).toBe('no-list');
  });
  it('never throws, and offsets give back the letters', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.constantFrom(
            'Aqua',
            'Glycerin',
            ', ',
            '(',
            ')',
            '[',
            '\u200b',
            '\n',
            '5%',
            '•',
            'Ω',
            '/',
            '.',
            '*',
          ),
          {
            maxLength: 60,
          },
        ),
        (pieces) => {
          const text = pieces.join('');
          for (const { raw, from, to, share } of read(text).mentions) {
            expect(text.slice(from, to)).toBe(raw);
            expect(share.min).toBeLessThanOrEqual(share.max);
          }
        },
      ),
    );
  });
});
