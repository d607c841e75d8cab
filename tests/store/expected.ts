import type { ProteinKind, ProteinSize } from '../../src/core/names/entry.ts';

/** A protein mention that must be found, as printed. */
export type ExpectedProtein = [printed: string, kind: ProteinKind, size: ProteinSize];

/**
 * Protein mentions of each good, in label order, set down by hand and apart from the lists. Kinds follow
 * the INCI naming grammar ("hydrolyzed quinoa" is the hydrolysate of a whole seed, so it only bears protein);
 * sizes are common practice (free: amino acids; small: peptides, hydrolyzed silk, keratin, collagen, elastin;
 * large: plant proteins and whole proteins; a quaternized protein keeps its parent's; else unknown).
 */
export const expected: Record<string, ExpectedProtein[]> = {
  'slipway-prewash-oil': [],
  'creamery-prewash': [
    ['Yogurt Powder', 'protein-bearing', 'unknown'],
    ['Avena Sativa (Oat) Kernel Flour', 'protein-bearing', 'unknown'],
  ],
  'splice-bond-treatment': [],
  'rivet-bond-serum': [
    ['Acetyl Tetrapeptide-3', 'peptide', 'small'],
    ['Oligopeptide-2', 'peptide', 'small'],
  ],
  'oakum-protein-treatment': [
    ['Hydrolyzed Keratin', 'hydrolyzed', 'small'],
    ['Hydrolyzed Wheat Protein', 'hydrolyzed', 'large'],
    ['Keratin Amino Acids', 'amino-acid', 'free'],
    ['Wheat Amino Acids', 'amino-acid', 'free'],
    ['Hydrolyzed Vegetable Protein PG-Propyl Silanetriol', 'hydrolyzed', 'large'],
    ['Arginine', 'amino-acid', 'free'],
  ],
  'sailcloth-strengthening-mask': [
    ['HYDROLYZED SILK', 'hydrolyzed', 'small'],
    ['HYDROLYZED COLLAGEN', 'hydrolyzed', 'small'],
    ['HYDROXYPROPYLTRIMONIUM HYDROLYZED WHEAT PROTEIN', 'quaternized', 'large'],
    ['COLLAGEN AMINO ACIDS', 'amino-acid', 'free'],
  ],
  'soapwort-gentle-cleanser': [
    ['Sodium Lauroyl Sarcosinate', 'protein-surfactant', 'unknown'],
    ['Disodium Cocoyl Glutamate', 'protein-surfactant', 'unknown'],
  ],
  'breakwater-clarifying-cleanser': [],
  'porridge-cream-cleanser': [
    ['Potassium Cocoyl Hydrolyzed Oat Protein', 'protein-surfactant', 'unknown'],
    ['Avena Sativa (Oat) Kernel Flour', 'protein-bearing', 'unknown'],
    ['Hydrolyzed Oat Protein', 'hydrolyzed', 'large'],
  ],
  'bellbuoy-conditioner': [],
  'ropewalk-conditioner': [
    ['Laurdimonium Hydroxypropyl Hydrolyzed Keratin', 'quaternized', 'small'],
    ['Cocodimonium Hydroxypropyl Hydrolyzed Rice Protein', 'quaternized', 'large'],
  ],
  'low-tide-deep-conditioner': [],
  'churn-deep-conditioner': [
    ['Whey Protein', 'whole', 'large'],
    ['Hydrolyzed Milk Protein', 'hydrolyzed', 'small'],
    ['Lac Powder', 'protein-bearing', 'unknown'],
  ],
  'heavy-weather-mask': [
    ['Hydrolyzed Soy Protein', 'hydrolyzed', 'large'],
    ['Hydrolyzed Corn Protein', 'hydrolyzed', 'large'],
    ['Hydrolyzed Wheat Protein', 'hydrolyzed', 'large'],
  ],
  'gossamer-leave-in': [
    ['Hydrolyzed Rice Protein', 'hydrolyzed', 'large'],
    ['Hydrolyzed Silk', 'hydrolyzed', 'small'],
    ['Silk Amino Acids', 'amino-acid', 'free'],
  ],
  'flaxen-leave-in-milk': [],
  'herring-gull-leave-in': [
    ['Hydrolyzed Pea Protein PG-Propyl Silanetriol', 'hydrolyzed', 'large'],
    ['Hydrolyzed Pea Protein', 'hydrolyzed', 'large'],
  ],
  'bramble-curl-cream': [
    ['Hydrolyzed Quinoa', 'protein-bearing', 'unknown'],
    ['Keratin Amino Acids', 'amino-acid', 'free'],
  ],
  'fleece-curl-cream': [],
  'scud-styling-foam': [
    ['Wheat Amino Acids', 'amino-acid', 'free'],
    ['Hydroxypropyltrimonium Hydrolyzed Wheat Protein', 'quaternized', 'large'],
    ['Soy Amino Acids', 'amino-acid', 'free'],
  ],
  'cuckoo-spit-foam': [],
  'isinglass-gel': [
    ['Hydrolyzed Marine Collagen', 'hydrolyzed', 'unknown'],
    ['Gelatin', 'whole', 'large'],
    ['Hydrolyzed Elastin', 'hydrolyzed', 'small'],
  ],
  'linen-gel': [],
  'capstan-strong-gel': [
    ['Hydrolyzed Vegetable Protein', 'hydrolyzed', 'large'],
    ['Triticum Vulgare (Wheat) Protein', 'whole', 'large'],
  ],
  'lantern-finishing-oil': [],
  'hedgerow-scalp-oil': [],
  'morning-watch-refresh-spray': [
    ['Silk Amino Acids', 'amino-acid', 'free'],
    ['Hydrolyzed Oat Protein', 'hydrolyzed', 'large'],
  ],
  'mizzle-refresh-mist': [],
  'two-berth-travel-kit': [['Hydrolyzed Rice Protein', 'hydrolyzed', 'large']],
  'long-voyage-cream': [
    ['Hydrolyzed Quinoa Protein', 'hydrolyzed', 'large'],
    ['Hydrolyzed Rice Protein', 'hydrolyzed', 'large'],
    ['Arginine', 'amino-acid', 'free'],
    ['Aspartic Acid', 'amino-acid', 'free'],
    ['Glycine', 'amino-acid', 'free'],
    ['Alanine', 'amino-acid', 'free'],
    ['Serine', 'amino-acid', 'free'],
    ['Valine', 'amino-acid', 'free'],
    ['Proline', 'amino-acid', 'free'],
    ['Threonine', 'amino-acid', 'free'],
    ['Isoleucine', 'amino-acid', 'free'],
    ['Histidine', 'amino-acid', 'free'],
    ['Phenylalanine', 'amino-acid', 'free'],
  ],
};

/** Proteins of the list behind a variant switch, and of the second product in a box. */
export const expectedElsewhere: Record<string, ExpectedProtein[]> = {
  'heavy-weather-mask': [],
  'two-berth-travel-kit': [
    ['Hydrolyzed Keratin', 'hydrolyzed', 'small'],
    ['Silk Amino Acids', 'amino-acid', 'free'],
  ],
};
