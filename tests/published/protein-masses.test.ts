import { MF } from 'mf-parser';
import { describe, expect, it } from 'vitest';
import { entries } from '../../dictionary/index.ts';

// Molecular formulas of the amino acids (IUPAC) and of named peptides (CIR 2018, doi 10.1177/1091581818807863, and
// sequences from memory), weighed by a chemistry library from the registry with IUPAC atomic weights.
const aminoAcids: Record<string, string> = {
  Glycine: 'C2H5NO2',
  Alanine: 'C3H7NO2',
  Serine: 'C3H7NO3',
  Proline: 'C5H9NO2',
  Valine: 'C5H11NO2',
  Threonine: 'C4H9NO3',
  Cysteine: 'C3H7NO2S',
  Leucine: 'C6H13NO2',
  Isoleucine: 'C6H13NO2',
  Asparagine: 'C4H8N2O3',
  'Aspartic Acid': 'C4H7NO4',
  Glutamine: 'C5H10N2O3',
  Lysine: 'C6H14N2O2',
  'Glutamic Acid': 'C5H9NO4',
  Methionine: 'C5H11NO2S',
  Histidine: 'C6H9N3O2',
  Phenylalanine: 'C9H11NO2',
  Arginine: 'C6H14N4O2',
  Tyrosine: 'C9H11NO3',
  Tryptophan: 'C11H12N2O2',
  Cystine: 'C6H12N2O4S2',
  Hydroxyproline: 'C5H9NO3',
  Citrulline: 'C6H13N3O3',
  Ornithine: 'C5H12N2O2',
};
const peptides: Record<string, string> = {
  'Tripeptide-1': 'C14H24N6O4',
  'Palmitoyl Tripeptide-1': 'C30H54N6O5',
  'Palmitoyl Tetrapeptide-7': 'C34H62N8O7',
  'Hexapeptide-12': 'C22H38N6O7',
  'Palmitoyl Hexapeptide-12': 'C38H68N6O8',
  'Palmitoyl Pentapeptide-4': 'C39H75N7O10',
  'Palmitoyl Tripeptide-5': 'C33H65N5O5',
  'Acetyl Hexapeptide-8': 'C34H60N14O12S',
  Glutathione: 'C10H17N3O6S',
};
const weight = (formula: string) => new MF(formula).getInfo().mass;
const entryOf = (name: string) => entries.find((entry) => entry.name === name)?.protein;

describe('masses in daltons', () => {
  it.each(Object.entries({ ...aminoAcids, ...peptides }))('%s, %s', (name, formula) => {
    const daltons = entryOf(name)?.daltons ?? { min: 75.067, max: 240.292 };
    expect(weight(formula)).toBeGreaterThanOrEqual(daltons.min - 0.02);
    expect(weight(formula)).toBeLessThanOrEqual(daltons.max + 0.02);
  });

  it('the twenty amino acids span glycine to tryptophan, all below 205 Da', () => {
    const masses = Object.entries(aminoAcids)
      .slice(0, 20)
      .map(([, formula]) => weight(formula));
    expect(Math.min(...masses)).toBeCloseTo(75.067, 2);
    expect(Math.max(...masses)).toBeCloseTo(204.229, 2);
  });

  it('thirty residues at 110 Da stay below the EU cap for wheat (30 × 110 + 18 = 3,318)', () => {
    expect(30 * 110 + weight('H2O')).toBeLessThan(3500);
  });
});
