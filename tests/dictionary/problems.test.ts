import { describe, expect, it } from 'vitest';
import type { Entry } from '../../src/core/names/entry.ts';
import { type Dictionary, problemsOf, readDictionary } from '../run/dictionary-problems.ts';

const real = readDictionary();

it('the dictionary has no problems (npm run dictionary)', () => {
  expect(problemsOf(real)).toEqual([]);
});

describe('a problem is told in a sentence that names the entry', () => {
  const entry = (name: string, more: Partial<Entry> = {}): Entry => ({ name, sources: ['a'], ...more });
  const problems = (families: Dictionary['families'], sources = ['a'], printedOften: string[] = []) =>
    problemsOf({
      families,
      patterns: [
        {
          id: 'p',
          match: '^hydrolyzed ',
          protein: { kind: 'hydrolyzed', size: 'large', sources: ['a'] },
          sources: ['a'],
          examples: [],
          counterexamples: [],
        },
      ],
      limits: { thresholds: { ...real.limits.thresholds, sources: {} }, limits: [] },
      printedOften,
      sources,
      elsewhere: [],
    });

  it.each([
    ['no problem', { oils: [entry('Argan Oil', { aliases: ['Huile d’Argan'] })] }, undefined],
    ['two entries of one normal form', { oils: [entry('Argan Oil'), entry('ARGAN OIL')] }, 'ARGAN OIL'],
    [
      'an alias that is another’s name',
      { oils: [entry('A Oil', { aliases: ['B Oil'] }), entry('B Oil')] },
      'B Oil',
    ],
    [
      'an alias of two',
      { oils: [entry('A Oil', { aliases: ['C Oil'] }), entry('B Oil', { aliases: ['C Oil'] })] },
      'C Oil',
    ],
    [
      'an alias that is its own name',
      { oils: [entry('A-B Oil', { aliases: ['A B Oil'] })] },
      'repeats the name',
    ],
    ['an alias twice', { oils: [entry('A Oil', { aliases: ['Çay', 'Cay'] })] }, 'repeats another alias'],
    ['an unknown source', { oils: [entry('A Oil', { sources: ['a', 'b'] })] }, 'not in sources.json'],
    ['protein matter elsewhere', { oils: [entry('Hydrolyzed Wool')] }, 'proteins file'],
    ['protein matter in its place', { 'proteins-x': [entry('Hydrolyzed Wool')] }, undefined],
  ] as [string, Dictionary['families'], string | undefined][])('%s', (_what, families, says) => {
    const told = problems(families);
    if (says === undefined) expect(told).toEqual([]);
    else expect(told.join(' ')).toContain(says);
  });

  it('a source that nothing uses', () => {
    expect(problems({ oils: [entry('A Oil')] }, ['a', 'z'])).toEqual(['The source “z” is used by nothing.']);
  });

  it('a name printed often that an entry has, or nothing', () => {
    const told = problems({ oils: [entry('Argan Oil')] }, ['a'], ['Hydrolyzed Wool', 'Argan Oil', 'Nothing']);
    expect(told.map((each) => each.split(' is ')[0])).toEqual(['“Argan Oil”', '“Nothing”']);
  });
});
