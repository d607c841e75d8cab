// Ceilings set "as acid" (or as another form) turned into the substance as named: recomputed by molar masses
// through mf-parser (IUPAC weights). Regulation (EC) No 1223/2009, Annexes III and V; printed values to 3 places.
import { MF } from 'mf-parser';
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';

const mass = (formula: string) => new MF(formula).getInfo().mass;
const lookup = createLookup(entries, patterns, limits);
const limit = (name: string) => limits.limits.find((each) => each.name === name)!;

const acids = {
  'Benzoic Acid': 'C7H6O2',
  'Sorbic Acid': 'C6H8O2',
  'Salicylic Acid': 'C7H6O3',
  'Propionic Acid': 'C3H6O2',
  'Formic Acid': 'CH2O2',
  'Dehydroacetic Acid': 'C8H8O4',
  '4-Hydroxybenzoic Acid': 'C7H6O3',
  Chlorhexidine: 'C22H30Cl2N10',
  'Thioglycolic Acid': 'C2H4O2S',
  Ammonia: 'NH3',
};

/** name · formula · the form the law counts · its limit in % by use · how many of it in one of the named */
const salts: [string, string, keyof typeof acids, number, number | undefined, number?][] = [
  ['Sodium Benzoate', 'C7H5NaO2', 'Benzoic Acid', 2.5, 0.5],
  ['Potassium Benzoate', 'C7H5KO2', 'Benzoic Acid', 0.5, 0.5],
  ['Ammonium Benzoate', 'C7H9NO2', 'Benzoic Acid', 0.5, 0.5],
  ['Calcium Benzoate', 'C14H10CaO4', 'Benzoic Acid', 0.5, 0.5, 2],
  ['Magnesium Benzoate', 'C14H10MgO4', 'Benzoic Acid', 0.5, 0.5, 2],
  ['Potassium Sorbate', 'C6H7KO2', 'Sorbic Acid', 0.6, 0.6],
  ['Calcium Sorbate', 'C12H14CaO4', 'Sorbic Acid', 0.6, 0.6, 2],
  ['Sodium Salicylate', 'C7H5NaO3', 'Salicylic Acid', 0.5, 0.5],
  ['Sodium Propionate', 'C3H5NaO2', 'Propionic Acid', 2, 2],
  ['Calcium Propionate', 'C6H10CaO4', 'Propionic Acid', 2, 2, 2],
  ['Sodium Formate', 'CHNaO2', 'Formic Acid', 0.5, 0.5],
  ['Sodium Dehydroacetate', 'C8H7NaO4', 'Dehydroacetic Acid', 0.6, 0.6],
  ['Methylparaben', 'C8H8O3', '4-Hydroxybenzoic Acid', 0.4, 0.4],
  ['Ethylparaben', 'C9H10O3', '4-Hydroxybenzoic Acid', 0.4, 0.4],
  ['Propylparaben', 'C10H12O3', '4-Hydroxybenzoic Acid', 0.14, 0.14],
  ['Butylparaben', 'C11H14O3', '4-Hydroxybenzoic Acid', 0.14, 0.14],
  ['Sodium Methylparaben', 'C8H7NaO3', '4-Hydroxybenzoic Acid', 0.4, 0.4],
  ['Sodium Ethylparaben', 'C9H9NaO3', '4-Hydroxybenzoic Acid', 0.4, 0.4],
  ['Sodium Propylparaben', 'C10H11NaO3', '4-Hydroxybenzoic Acid', 0.14, 0.14],
  ['Sodium Butylparaben', 'C11H13NaO3', '4-Hydroxybenzoic Acid', 0.14, 0.14],
  ['Chlorhexidine Digluconate', 'C34H54Cl2N10O14', 'Chlorhexidine', 0.3, 0.3],
  ['Chlorhexidine Dihydrochloride', 'C22H32Cl4N10', 'Chlorhexidine', 0.3, 0.3],
  ['Chlorhexidine Diacetate', 'C26H38Cl2N10O4', 'Chlorhexidine', 0.3, 0.3],
  ['Ammonium Thioglycolate', 'C2H7NO2S', 'Thioglycolic Acid', 11, undefined],
  ['Potassium Thioglycolate', 'C2H3KO2S', 'Thioglycolic Acid', 11, undefined],
  ['Sodium Thioglycolate', 'C2H3NaO2S', 'Thioglycolic Acid', 11, undefined],
  ['Ammonium Hydroxide', 'NH5O', 'Ammonia', 6, 6],
];

it.each(salts)('%s (%s) from %s', (name, formula, acid, rinseOff, leaveOn, of = 1) => {
  const factor = mass(formula) / (of * mass(acids[acid]));
  expect(limit(name).rinseOff).toBeCloseTo(rinseOff * factor, 3);
  if (leaveOn === undefined) expect(limit(name).leaveOn).toBeUndefined();
  else expect(limit(name).leaveOn).toBeCloseTo(leaveOn * factor, 3);
});

// The printed values of the conversion; the SCCS's 0.19 % "as esters" for propyl- and butylparaben lies between.
it('printed values', () => {
  const both = (name: string) => [limit(name).rinseOff, limit(name).leaveOn];
  expect(both('Sodium Benzoate')).toEqual([2.95, 0.59]);
  expect(both('Potassium Sorbate')).toEqual([0.804, 0.804]);
  expect(both('Sodium Salicylate')).toEqual([0.58, 0.58]);
  expect(both('Sodium Dehydroacetate')).toEqual([0.678, 0.678]);
  expect(both('Methylparaben')).toEqual([0.441, 0.441]);
  expect(both('Ethylparaben')).toEqual([0.481, 0.481]);
  expect(both('Propylparaben')).toEqual([0.183, 0.183]);
  expect(both('Butylparaben')).toEqual([0.197, 0.197]);
  expect(both('Chlorhexidine Digluconate')).toEqual([0.533, 0.533]);
  expect(limit('Propylparaben').leaveOn!).toBeLessThan(0.19);
  expect(limit('Butylparaben').leaveOn!).toBeGreaterThan(0.19);
});

// Annex V and III as they stand, by use: rinse-off, leave-on.
it.each([
  ['Benzoic Acid', 2.5, 0.5],
  ['Phenoxyethanol', 1, 1],
  ['Benzyl Alcohol', 1, 1],
  ['Salicylic Acid', 3, 2], // Annex III 98: above the 0.5 allowed as preservative
  ['Iodopropynyl Butylcarbamate', 0.02, 0.01],
  ['Methylisothiazolinone', 0.0015, undefined], // not allowed in leave-on products
  ['Methylchloroisothiazolinone', 0.0015, undefined],
  ['Piroctone Olamine', 1, 0.5],
  ['Climbazole', 2, 0.2], // Annex III 310, anti-dandruff shampoo
  ['o-Phenylphenol', 0.2, 0.15],
  ['Cetrimonium Chloride', 2.5, 1], // Annex III 286, Regulation (EU) 866/2014
  ['Behentrimonium Chloride', 5, 3], // 287; leave-on from memory
  ['Hydrogen Peroxide', 12, 12],
] as const)('%s: %s in rinse-off, %s in leave-on', (name, rinseOff, leaveOn) => {
  expect(limit(name).rinseOff).toBe(rinseOff);
  expect(limit(name).leaveOn).toBe(leaveOn);
});

it.each([
  'Behentrimonium Methosulfate', // 286 and 287 name chlorides
  'Formaldehyde', // prohibited substances are no ceilings
  'Zinc Pyrithione',
  'Quaternium-15',
  'Isobutylparaben',
  'Caprylyl Glycol', // preservatives in practice, not in law
  'Ethylhexylglycerin',
  'Sodium Sulfite', // hair straighteners may hold far more
])('%s has no ceiling', (name) => {
  expect(lookup.find(name).how).not.toBe('none');
  expect(limit(name)?.rinseOff ?? limit(name)?.leaveOn).toBeUndefined();
});

it('every limited substance is found, and its ceiling with it', () => {
  const lost = limits.limits.filter(({ name, rinseOff }) => {
    const found = lookup.find(name);
    return found.how === 'none' || lookup.ceiling(found, 'rinse-off') !== rinseOff;
  });
  expect(lost.map(({ name }) => name)).toEqual([]);
});

// ECHA export of Annexes II and III, 16 May 2024, and summaries of the acts: dates as in dictionary/sources.json.
it.each([
  ['Zinc Pyrithione', 'banned', '2022-03-01'],
  ['Butylphenyl Methylpropional', 'banned', '2022-03-01'],
  ['Salicylic Acid', 'limited', '2021-10-01'],
  ['BHT', 'limited', '2023-07-01'],
  ['Hexyl Salicylate', 'limited', '2026-05-01'],
  ['Cyclopentasiloxane', 'limited', '2020-01-31'],
] as const)('%s is %s since %s', (name, change, from) => {
  expect(lookup.lawOf(lookup.find(name))).toEqual({ change, from });
});

it('an old ceiling is no news, and an unlimited name has no law', () => {
  for (const name of ['Phenoxyethanol', 'Glycerin'])
    expect(lookup.lawOf(lookup.find(name)), name).toBeUndefined();
});
