// Labels from far away, one of each kind that is read: `far-labels.ts` draws them by the hundred.
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

const lookup = createLookup(entries, patterns, limits);
const namesOf = (text: string) =>
  readLabel(text, lookup).mentions.map(({ raw, found }) => (found.how === 'none' ? `? ${raw}` : found.name));

it.each<[kind: string, text: string, names: string]>([
  ['numbers with dashes', 'INCI: 01 - Aqua 02 - Urea 03 - PEG-8', 'Aqua | Urea | PEG-8'],
  ['letters before names', 'a) Aqua b) Urea c) 1,2-Hexanediol', 'Aqua | Urea | 1,2-Hexanediol'],
  ['Roman numbers', 'i. Aqua\nii. Urea\niii. Biotin', 'Aqua | Urea | Biotin'],
  ['steps of a set', '[Step 1] Aqua, CI 15850 (RED 7 LAKE) [Step 2] Urea', 'Aqua | CI 15850 | Urea'],
  ['pictures between names', '🌿 Aqua 💧 Glycerin ✔️ Urea', 'Aqua | Glycerin | Urea'],
  ['a heart in a name', 'Aqua ❤️, Glycerin, Urea', 'Aqua | Glycerin | Urea'],
  ['cells', 'Aqua\tL-Menthol\talpha-Bisabolol\tUrea', 'Aqua | Menthol | Bisabolol | Urea'],
  [
    'explained line by line',
    'Urea – soothes it\nBiotin – balances the pH\nAqua – thins it',
    'Urea | Biotin | Aqua',
  ],
  ['dashes that part names', 'Aqua - Urea - Biotin - Parfum', 'Aqua | Urea | Biotin | Parfum'],
  [
    'a column called purpose',
    'Active ingredient Purpose Menthol 1%.....Antidandruff Inactive ingredients Aqua, Urea',
    'Menthol | Aqua | Urea',
  ],
  [
    'what a page says between names',
    'Aqua, Show more Urea, [see all] Biotin, Parfum',
    'Aqua | Urea | Biotin | Parfum',
  ],
  ['a sentence that lists', 'Made with Aqua, Urea, Biotin and Parfum.', 'Aqua | Urea | Biotin | Parfum'],
  [
    'the name in another script beside',
    '水 Water, 甘油 Glycerin, 泛醇 Panthenol',
    'Aqua | Glycerin | Panthenol',
  ],
  [
    'where it comes from, behind',
    "Xanthan Gum d'origine végétale, Urea RSPO certified, Aqua",
    'Xanthan Gum | Urea | Aqua',
  ],
  [
    'words shortened',
    'Sod. Benzoate, Pot. Sorbate, Hydrog. Palm Glycerides, Mag. Sulfate',
    'Sodium Benzoate | Potassium Sorbate | Hydrogenated Palm Glycerides | Magnesium Sulfate',
  ],
  ['signs of elements', 'Na Benzoate, K Sorbate, Aqua', 'Sodium Benzoate | Potassium Sorbate | Aqua'],
  [
    'who described the plant',
    'Aloe Barbadensis Mill. Leaf Juice, Ricinus Communis Linn. Seed Oil',
    'Aloe Barbadensis Leaf Juice | Ricinus Communis Seed Oil',
  ],
  ['part of the plant in brackets', 'Ricinus Communis (Seed) Oil, Aqua', 'Ricinus Communis Seed Oil | Aqua'],
  ['numbers of additives', 'Xanthan Gum (E415), E330 Citric Acid, Aqua', 'Xanthan Gum | Citric Acid | Aqua'],
  [
    'numbers of colours',
    'Aqua, C I 77491, Colour Index 42090, cl 77499',
    'Aqua | CI 77491 | CI 42090 | CI 77499',
  ],
  [
    'forms of a molecule',
    'Aqua, D,L-Panthenol, L-Arginine, Β-Glucan',
    'Aqua | Panthenol | Arginine | Beta-Glucan',
  ],
  ['and no form of one', 'Citric Acid, L-Menthanone, Aqua', 'Citric Acid | l-Menthanone | Aqua'],
  ['which vitamin it is', 'Vitamin E (Tocopheryl Acetate), Aqua', 'Tocopheryl Acetate | Aqua'],
  ['Turkish capitals', 'INGREDİENTS: GLİSERİN, CİTRİC ACİD', 'Glycerin | Citric Acid'],
  [
    'a heading with its own bracket',
    'Aqua, Lumovelle™ (Urea, Biotin), Parfum',
    'Aqua | Urea | Biotin | Parfum',
  ],
  [
    'as one hears it',
    'Aqua, Punica Granatum Ekstract, Fenoxyethanol',
    'Aqua | Punica Granatum Extract | Phenoxyethanol',
  ],
])('%s', (_, text, names) => {
  expect(namesOf(text).join(' | ')).toBe(names);
});

const lost =
  'Aqua (Water) Cetearyl Alcohol Glycerin Rosa Canina (Dog Rose) Seed Oil Behentrimonium Chloride Sodium Benzoate Citric Acid';
const namesOfLost =
  'Aqua | Cetearyl Alcohol | Glycerin | Rosa Canina Seed Oil | Behentrimonium Chloride | Sodium Benzoate | Citric Acid';

it('a list whose lines were lost is parted into its names', () => {
  expect(namesOf(lost).join(' | ')).toBe(namesOfLost);
});

it('and so is one whose names grew together', () => {
  const grown = lost.replace(/ (?=(?:Cetearyl|Glycerin|Rosa|Behen|Sodium|Citric))/g, '');
  expect(namesOf(grown).join(' | ')).toBe(namesOfLost);
});

it('offsets of parted names give back the letters', () => {
  for (const { raw, from, to } of readLabel(`INCI: ${lost}.`, lookup).mentions)
    expect(`INCI: ${lost}.`.slice(from, to)).toBe(raw);
});
