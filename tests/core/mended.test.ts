import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { spent } from '../spent.ts';
import { damagedNames, damages } from './damaged-names.ts';
import { neverFound } from './never-found.ts';
import { seeded } from './random-day.ts';
import { scored } from './score-damaged.ts';

const lookup = createLookup(entries, patterns, limits);
const read = (text: string, readAs = {}) =>
  readLabel(text, lookup, { readAs }).mentions.map(({ found }) =>
    found.how === 'none' ? '?' : found.how === 'mended' ? `${found.name} (${found.damage})` : found.name,
  );

describe('a damaged name is read, and said to be mended', () => {
  it.each<[printed: string, names: string[]]>([
    [
      'Aqua, Stearamidopropyl, Dimethylamine, Parfum',
      ['Aqua', 'Stearamidopropyl Dimethylamine (cut)', 'Parfum'],
    ],
    ['Aqua, Polyquaternium,-11, Parfum', ['Aqua', 'Polyquaternium-11 (cut)', 'Parfum']],
    ['Aqua, Benzophenone, -4, Parfum', ['Aqua', 'Benzophenone-4 (cut)', 'Parfum']],
    ['Aqua, Butylene, Glycol', ['Aqua', 'Butylene Glycol (cut)']],
    ['Aqua • Cetearyl • Alcohol • Parfum', ['Aqua', 'Cetearyl Alcohol (cut)', 'Parfum']],
    [
      'Aqua, Hydroxypropyltrimonium, Hydrolyzed Wheat Protein',
      ['Aqua', 'Hydroxypropyltrimonium Hydrolyzed Wheat Protein (cut)'],
    ],
    ['Aqua, 2-Oleamido-1, 3-Octadecanediol', ['Aqua', '2-Oleamido-1,3-Octadecanediol (cut)']],
    [
      'Aqua, Sodium Benzoate Disodium EDTA',
      ['Aqua', 'Sodium Benzoate (run-together)', 'Disodium EDTA (run-together)'],
    ],
    ['Aqua, Glycerin Urea', ['Aqua', 'Glycerin (run-together)', 'Urea (run-together)']],
    [
      'Aqua, Hexapeptide-40 Sh-Polypeptide 9',
      ['Aqua', 'Hexapeptide-40 (run-together)', 'Sh-Polypeptide 9 (run-together)'],
    ],
    [
      'Aqua, CI 77491 Ceteareth-7, Parfum',
      ['Aqua', 'CI 77491 (run-together)', 'Ceteareth-7 (run-together)', 'Parfum'],
    ],
    [
      'Water Dimer Dilinoleyl Dimer Dilinoleate',
      ['Aqua (run-together)', 'Dimer Dilinoleyl Dimer Dilinoleate (run-together)'],
    ],
    [
      'Aqua, Propylene Glycol Dicaprylate Lepidium Sativum Sprout Extract',
      [
        'Aqua',
        'Propylene Glycol Dicaprylate (run-together)',
        'Lepidium Sativum Sprout Extract (run-together)',
      ],
    ],
    ['Aqua, RubyPowder LinoleicAcid', ['Aqua', 'Ruby Powder (run-together)', 'Linoleic Acid (run-together)']],
    [
      'Aqua, Hamamelis Virginiana • (Witch Hazel) Water, Parfum',
      ['Aqua', 'Hamamelis Virginiana Water (cut)', 'Parfum'],
    ],
    ['Aqua, Ceramide 2 0.5%', ['Aqua', 'Ceramide 2 (leftovers)']],
    ['Aqua, Inositol (Rice, Extract), Parfum', ['Aqua', 'Inositol', 'Parfum']],
    ['Aqua, Ethylhexyglycerin', ['Aqua', 'Ethylhexylglycerin (spelling)']],
    ['Aqua, Hydroxyethyl Celluose', ['Aqua', 'Hydroxyethylcellulose (spelling)']],
    ['Aqua, Niacinadmide', ['Aqua', 'Niacinamide (spelling)']],
    [
      'Aqua, Glycerin, Hydroxypropy|trimonium Honey, Urea',
      ['Aqua', 'Glycerin', 'Hydroxypropyltrimonium Honey (spelling)', 'Urea'],
    ],
    ['Aqua, Sodium Acctate', ['Aqua', 'Sodium Acetate (spelling)']],
    ['Aqua, Didecyldimonium Chlorid', ['Aqua', 'Didecyldimonium Chloride (spelling)']],
    ['Aqua, Metylisothiazolinone', ['Aqua', 'Methylisothiazolinone (spelling)']],
    ['Aqua, VaniIla Planifolia Fruit Extract', ['Aqua', 'Vanilla Planifolia Fruit Extract (spelling)']],
    ['Aqua, Vaccinium Mvrtillus Fruit Extract', ['Aqua', 'Vaccinium Myrtillus Fruit Extract (spelling)']],
    ['Aqua, Linalool1, Urea', ['Aqua', 'Linalool (leftovers)', 'Urea']],
    [
      'Aqua, Glycerin, Panthenol, Betaine, Urea Show more',
      ['Aqua', 'Glycerin', 'Panthenol', 'Betaine', 'Urea (leftovers)'],
    ],
    ['Aqua, Riboflavin q.s., Urea', ['Aqua', 'Riboflavin (leftovers)', 'Urea']],
    ['Aqua, Sodium Hydoxide', ['Aqua', 'Sodium Hydroxide (spelling)']],
    ['Aqua, Octenidine HCI, Parfum', ['Aqua', 'Octenidine HCl (spelling)', 'Parfum']],
    ['Aqua, Cetrirnonium Chloride', ['Aqua', 'Cetrimonium Chloride (spelling)']],
    ['Aqua, C0camidopropyl Betaine', ['Aqua', 'Cocamidopropyl Betaine (spelling)']],
    ['Aqua, Glycerin Ψ, Panthenol 500 mg', ['Aqua', 'Glycerin (leftovers)', 'Panthenol (leftovers)']],
  ])('%s', (printed, names) => {
    expect(read(printed)).toEqual(names);
  });

  it('says what was printed', () => {
    const [, , cut] = readLabel('Aqua, Glycerin, Butylene,\nGlycol', lookup).mentions;
    expect(cut).toMatchObject({
      raw: 'Butylene,\nGlycol',
      found: { how: 'mended', name: 'Butylene Glycol', printed: 'Butylene, Glycol', damage: 'cut' },
    });
  });
});

describe('nothing is mended on a guess', () => {
  it.each([
    'PEG-21 Dimethicon Wax',
    'Sodium Laurth Sulfate', // laureth by one letter, lauryl by two
    'Hydrolyzed Pee Protein', // short words are exact
    'Dilaureth-4 Phosphate', // another substance, made of chemical stems
    'Methanol Acetate',
    'Perfluoroheptane',
    'Carbolic Lather',
    'Quaternium-76 Hydrolyzed Collagen', // one substance, and another kind of protein than its last words
    'Lanolin Alcool',
    'collage',
    'insulin',
  ])('%s', (printed) => {
    expect(
      read(`Aqua, ${printed}, Parfum`)
        .join()
        .match(/\((?:spelling|run-together|cut)\)/),
    ).toBeNull();
  });

  it('prose stays unread', () => {
    const mended = Object.values(neverFound)
      .flat()
      .flatMap((text) =>
        read(text)
          .filter((name) => /\((?:cut|run|spell|left)/.test(name))
          .map((name) => `${text} → ${name}`),
      );
    expect(mended).toEqual([]);
  });
});

it('a refused mend stays refused', () => {
  expect(read('Aqua, Niacinadmide', { Niacinadmide: '' })).toEqual(['Aqua', '?']);
  expect(read('Aqua, Butylene, Glycol', { 'Butylene, Glycol': '' })[1]).toBe('?');
  expect(read('Aqua, Glycerin Urea', { 'Glycerin Urea': '' })).toEqual(['Aqua', '?']);
});

it.each(['constructor', 'toString', '__proto__', 'hasOwnProperty', 'valueOf', '&constructor; x'])(
  '%s is a text like any other',
  (text) => {
    for (const printed of [text, `Aqua, ${text}, Parfum`, `${text} Extract, ${text}: Aqua`])
      expect(() => readLabel(printed, lookup, { readAs: {} })).not.toThrow();
    expect(read(`Aqua, ${text}, Parfum`).at(-1)).toBe('Parfum');
  },
);

describe('names of the dictionary damaged at random', () => {
  const rows = scored(
    damagedNames(
      entries.map(({ name }) => name),
      6000,
      20261126,
    ),
    lookup,
  );
  const mended = rows.filter((row) => row.mended);
  const told = (some: typeof rows) =>
    some.map(({ kind, printed, said }) => `${kind}: ${printed} → ${said}`).join('\n');

  it('every kind of damage is drawn', () => {
    expect(rows.length).toBeGreaterThanOrEqual(5000);
    expect(new Set(rows.map(({ kind }) => kind))).toEqual(new Set(damages));
  });

  it('at most one mended name in five hundred is wrong', () => {
    const wrong = rows.filter(({ verdict }) => verdict === 'wrong');
    expect(mended.length).toBeGreaterThan(1500);
    expect(wrong.length, told(wrong)).toBeLessThanOrEqual(mended.length / 500);
  });

  it('a mend never makes another kind of protein', () => {
    const changed = rows.filter(({ protein }) => protein);
    expect(changed.length, told(changed)).toBe(0);
  });

  it('nine in ten are read', () => {
    const right = rows.filter(({ verdict }) => verdict === 'right');
    expect(right.length / rows.length).toBeGreaterThan(0.9);
  });
});

it('a long text of unknown words is read in its time', () => {
  const draw = seeded(5);
  const word = () => Array.from({ length: 9 }, () => 'aeiostrnlmh'[Math.floor(draw() * 11)]).join('');
  const text = Array.from({ length: 900 }, () => `${word()} ${word()}`).join(', ');
  readLabel('Aqua, Niacinadmide', lookup); // the words are gathered once
  const took = spent(() => expect(readLabel(text, lookup).mentions.length).toBeGreaterThan(500));
  expect(took).toBeLessThan(4000);
});
