import fc from 'fast-check';
import Fuse from 'fuse.js';
import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import type { Entry, Pattern } from '../../src/core/names/entry.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { nameForms } from '../../src/core/names/name-forms.ts';
import { keyOf, normalName } from '../../src/core/names/normal-form.ts';

const real = createLookup(entries, patterns, limits);
const made = ['from-memory'];
const small = (names: string[], rules: Pattern[] = []) =>
  createLookup(
    names.map((name): Entry => ({ name, sources: made })),
    rules,
    { ...limits, printedOften: [] },
  );

// From memory of such labels; no word of theirs may stand in the way of mending another.
describe('plain names of Finnish, Hungarian and Romanian labels', () => {
  it.each([
    ['Puhdistettu vesi', 'Aqua'],
    ['KOOKOSÖLJY', 'Cocos Nucifera Oil'],
    ['hydrolysoitu vehnäproteiini', 'Hydrolyzed Wheat Protein'],
    ['Méhviasz', 'Cera Alba'],
    ['cetil-alkohol', 'Cetyl Alcohol'],
    ['Búzafehérje-hidrolizátum', 'Hydrolyzed Wheat Protein'],
    ['Apă purificată', 'Aqua'],
    ['ulei de floarea-soarelui', 'Helianthus Annuus Seed Oil'],
    ['Unt de shea', 'Butyrospermum Parkii Butter'],
  ])('%s is %s', (printed, name) => {
    expect(real.find(printed)).toMatchObject({ how: 'alias', name });
  });
});

describe('one normal form for what printers write differently', () => {
  it.each([
    ['CETEARYL  ALCOHOL', 'Cetearyl Alcohol'],
    ['Cetearyl\nAlcohol', 'Cetearyl Alcohol'],
    ['Cetearyl Alcohol*', 'Cetearyl Alcohol'],
    ['Cetearyl Alcohol.', 'Cetearyl Alcohol'],
    ['Cetearyl Alcohol™', 'Cetearyl Alcohol'],
    ['Cetearylalcohol', 'Cetearyl Alcohol'],
    ['Cet\u00adearyl Alco\u200bhol', 'Cetearyl Alcohol'],
    ['Сetearyl Аlcohol', 'Cetearyl Alcohol'], // Cyrillic С and А
    ['Αrginine', 'Arginine'], // Greek Α
    ['Hydrolysed Wheat Protein', 'Hydrolyzed Wheat Protein'],
    ['Hydrolised Wheat Proteins', 'Hydrolyzed Wheat Protein'],
    ['Sodium Laureth Sulphate', 'Sodium Laureth Sulfate'],
    ['Aluminium Hydroxide', 'Aluminum Hydroxide'],
    ['Silk Amino Acid', 'Silk Amino Acids'],
    ['PEG 40 Hydrogenated Castor Oil', 'PEG-40 Hydrogenated Castor Oil'],
    ['PEG–40 Hydrogenated Castor Oil', 'PEG-40 Hydrogenated Castor Oil'],
    ['Polyquaternium 10', 'Polyquaternium-10'],
    ['Caprylic / Capric Triglyceride', 'Caprylic/Capric Triglyceride'],
    ['Caprylic\\Capric Triglyceride', 'Caprylic/Capric Triglyceride'],
    ['1.2-Hexanediol', '1,2-Hexanediol'],
    ['α-Isomethyl Ionone', 'Alpha-Isomethyl Ionone'],
    ['Karité', 'Karite'],
    ['Lysine Hydrochloride', 'Lysine HCl'],
    ['ＧＬＹＣＥＲＩＮ', 'Glycerin'],
  ])('%j is %s', (printed, name) => {
    expect(keyOf(normalName(printed))).toBe(keyOf(normalName(name)));
  });

  it.each([
    ['PEG-12', 'PEG-19'],
    ['Glycine', 'Glycerin'],
    ['Lauryl Alcohol', 'Laureth Alcohol'],
    ['Вода', 'Boda'], // a word all in Cyrillic is left alone
    ['Polysorbate 20', 'Polysorbate 80'],
  ])('%s is not %s', (one, other) => {
    expect(keyOf(normalName(one))).not.toBe(keyOf(normalName(other)));
  });

  it('is its own normal form, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), (text) => {
        const once = normalName(text);
        expect(keyOf(normalName(once))).toBe(keyOf(once));
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

describe('forms of a printed name, best first', () => {
  it.each([
    ['Helianthus Annuus (Sunflower) Seed Oil', 'Helianthus Annuus Seed Oil'],
    ['Aqua/Water/Eau', 'Water'],
    ['Aqua (Water)', 'Water'],
    ['Vitamin E (Tocopherol)', 'Tocopherol'],
    ['Shea Butter (Butyrospermum Parkii)', 'Butyrospermum Parkii'],
    ['Organic Aloe Vera (Aloe Barbadensis) Leaf Juice', 'Aloe Barbadensis Leaf Juice'],
    ['Organic Argan Oil', 'Argan Oil'],
    ['Niacinamide 5%', 'Niacinamide'],
    ['Preservative: Phenoxyethanol', 'Phenoxyethanol'],
    ['Glycerin - humectant', 'Glycerin'],
    ['Sodium Coco-Sulfate (from coconut)', 'Sodium Coco-Sulfate'],
    ['Glycerin derived from vegetables', 'Glycerin'],
  ])('%s may be %s', (printed, form) => {
    expect(nameForms(printed)).toContain(form);
  });
  it('a bracket glued to its word is no remark', () => {
    expect(nameForms('Poly(Leucine/Benzyl Glutamate)')).not.toContain('Leucine');
  });
  it('a plain name has one form', () => {
    expect(nameForms('Cetearyl Alcohol')).toEqual(['Cetearyl Alcohol']);
  });
});

describe('how a name was found', () => {
  it.each([
    ['GLYCERIN', 'exact', 'Glycerin'],
    ['Helianthus Annuus (Sunflower) Seed Oil', 'exact', 'Helianthus Annuus Seed Oil'],
    ['Weizenprotein hydrolysiert', 'alias', 'Hydrolyzed Wheat Protein'],
    ['Palmitoyl Tripeptide-999', 'pattern', 'Palmitoyl Tripeptide-999'],
  ])('%s: %s', (printed, how, name) => {
    expect(real.find(printed)).toEqual({ how, name });
  });
  it('not at all', () => {
    expect(real.find('Wibble Wobble')).toEqual({ how: 'none', close: [] });
    expect(real.known(real.find('Wibble Wobble')).protein).toBeUndefined();
  });
  it('an INCI name wins over an alias, an entry over a pattern', () => {
    const lookup = createLookup(
      [
        { name: 'Alpha', aliases: ['Beta'], sources: made },
        { name: 'Beta', roles: ['solvent'], sources: made },
      ],
      [
        {
          id: 'any',
          match: '^(?:beta|gamma)$',
          roles: ['acid'],
          sources: made,
          examples: [],
          counterexamples: [],
        },
      ],
      limits,
    );
    expect(lookup.find('Beta')).toEqual({ how: 'exact', name: 'Beta' });
    expect(lookup.known(lookup.find('Beta')).roles).toEqual(['solvent']);
    expect(lookup.known(lookup.find('Gamma')).roles).toEqual(['acid']);
  });
});

describe('close spellings are offered, never used', () => {
  it.each([
    ['Cetaeryl Alcohol', 'Cetearyl Alcohol'],
    ['Glycern', 'Glycerin'],
    ['Hydrolyzed Weat Protein', 'Hydrolyzed Wheat Protein'],
    ['Phenoxyethnaol', 'Phenoxyethanol'],
    ['Behentrimonuim Chloride', 'Behentrimonium Chloride'],
    ['Sodium Benzoat', 'Sodium Benzoate'],
    ['Potasium Sorbate', 'Potassium Sorbate'],
    ['Dimethcone', 'Dimethicone'],
    ['Panthenoll', 'Panthenol'],
  ])('%s → %s', (printed, name) => {
    expect(real.find(printed).how).toBe('none');
    expect(real.close(printed)).toContain(name);
  });

  it.each([
    ['Isopropyl Alcohol', 'Stearyl Alcohol'],
    ['Stearyl Alcohol', 'Isopropyl Alcohol'],
    ['Sodium Lauryl Sulfate', 'Sodium Laureth Sulfate'],
    ['Cetyl Alcohol', 'Cetearyl Alcohol'],
    ['Glycine', 'Glycerin'],
    ['PEG-12', 'PEG-19'],
    ['PEG-12 Dimethicone', 'PEG-19 Dimethicone'],
    ['Methylparaben', 'Ethylparaben'],
    ['Dimethicone', 'Dimethiconol'],
    ['Stearyl Stearate', 'Stearoyl Stearate'],
    ['Sodium Sulfite', 'Sodium Sulfate'],
    ['Propylene Glycol', 'Butylene Glycol'],
    ['Isostearic Acid', 'Stearic Acid'],
    ['Tocopherol', 'Tocopheryl'],
    ['CI 77491', 'CI 77492'],
    ['TEA', 'DEA'],
    ['Lauroyl Lysine', 'Lauryl Lysine'],
    ['Caprylic Acid', 'Capric Acid'],
  ])('%s is never offered as %s', (printed, name) => {
    expect(small([name]).find(printed).how).toBe('none');
    expect(small([name]).close(printed)).toEqual([]);
    expect(real.close(printed)).not.toContain(name);
  });

  it('numbers are equal in whatever is offered', () => {
    const digits = (name: string) => name.match(/\d+/g)?.join(' ') ?? '';
    for (const { name } of entries.filter((entry) => /\d/.test(entry.name)).slice(0, 400)) {
      const typo = name.replace(/([a-z])([a-z])(?=[a-z]*$)/, '$2$1');
      for (const offered of real.close(typo)) expect(digits(offered)).toBe(digits(name));
    }
  });

  it('any text is answered', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
        expect(real.close(text).length).toBeLessThanOrEqual(3);
        expect(['exact', 'alias', 'pattern', 'none']).toContain(real.find(text).how);
      }),
      { numRuns: 300 },
    );
  });
});

it('at least 100 times faster than a fuzzy search over all names', () => {
  const noisy = entries
    .filter((_, i) => i % Math.floor(entries.length / 40) === 0)
    .slice(0, 40)
    .map(({ name }, i) => (i % 2 ? name.replace(/(.)(.)(?=.{2}$)/, '$2$1') : `${name.toUpperCase()} *`));
  const fuse = new Fuse(
    entries.map(({ name }) => name),
    { threshold: 0.4 },
  );
  const ours = () => {
    for (const name of noisy) if (real.find(name).how === 'none') real.close(name);
  };
  for (let i = 0; i < 20; i++) ours();
  const median = (times: number[]) => times.toSorted((a, b) => a - b)[times.length >> 1]!;
  const time = (run: () => void) => {
    const start = performance.now();
    run();
    return performance.now() - start;
  };
  const mine = median(Array.from({ length: 9 }, () => time(ours)));
  const theirs = time(() => {
    for (const name of noisy.slice(0, 4)) fuse.search(name.slice(0, 32));
  });
  // Four of forty searched, so ten times that; machines differ, so a wide margin: `npm run bench` prints the figures.
  expect((theirs * 10) / mine).toBeGreaterThan(100);
});
