import type { LabelWords } from '../label/label-words.ts';
/** The dictionary's shapes as `core` sees them. Facts reach `core` as arguments of these types. */

import type { UseLevels } from '../amounts/use-levels.ts';

/** Inclusive range; the unit is named where the range is used. */
export type Range = { min: number; max: number };

export type ProteinKind =
  | 'amino-acid'
  | 'peptide'
  | 'hydrolyzed'
  | 'quaternized'
  | 'whole'
  | 'protein-bearing'
  | 'protein-surfactant';

/** free: amino acids. small: enters the fibre as commonly sold. large: stays on it as a film. Common practice. */
export type ProteinSize = 'free' | 'small' | 'large' | 'unknown';

export type Protein = {
  kind: ProteinKind;
  size: ProteinSize;
  /** Published molar mass range in daltons (g/mol), where there is one. */
  daltons?: Range;
  /** Used below 10 ppm (named cosmetic peptides): shown, never counted as a dose. */
  minute?: true;
  /** Where common practice and measurement disagree: word key of the one sentence that says so. */
  disagreement?: string;
  /** Keys into dictionary/sources.json. */
  sources: string[];
};

export type MoistureRole = 'humectant' | 'emollient' | 'occlusive';

/** What else the routine rules need to know. */
export type Role =
  | 'water'
  | 'film-forming-humectant'
  | 'cleansing-strong'
  | 'cleansing-mild'
  | 'cationic-conditioner'
  | 'fatty-alcohol'
  | 'film-former' // lifts only with a cleanser: silicones water does not lift, polyquats, waxes
  | 'water-liftable-film' // film that water lifts
  | 'bond-builder'
  | 'drying-alcohol'
  | 'acid'
  | 'alkali'
  | 'preservative'
  | 'fragrance'
  | 'fragrance-allergen'
  | 'colourant'
  | 'chelating'
  | 'thickener'
  | 'emulsifier'
  | 'solvent'
  | 'propellant'
  | 'uv-filter'
  | 'active'
  | 'medicated'; // against a disease of the scalp: for a doctor to propose, never for a plan

/** What an avoid list may name as a family. */
export const allergens = [
  'wheat',
  'nut',
  'peanut',
  'milk',
  'egg',
  'soy',
  'oat',
  'sesame',
  'fish',
  'shellfish',
  'gluten-cereal',
  'lupin',
  'mustard',
  'celery',
  'coconut',
  'bee-products',
  'latex',
  'sulphite',
  'fragrance',
  'sensitizer',
] as const;

export type Allergen = (typeof allergens)[number];

/**
 * The words that name the source of a family, as phrases over the normal form: `*` stands for letters of a word,
 * `…` for words in between. Look-alikes are taken out of the name before the other words are looked for.
 */
export type SourceWords = {
  family: Allergen;
  says: string[];
  /** Names of no named source that may be made from it. */
  mayBe?: string[];
  /** Look-alikes: phrases that say nothing of this family. */
  not?: string[];
  /** Beside one of these words a named source is only "may be": a leaf of the nut tree. */
  softens?: string[];
  /** Names of a scent: other sources beside these words are notes of it, unless an oil or extract is named. */
  silences?: { words: string[]; unless: string[] };
  /** Keys into dictionary/sources.json. */
  sources: string[];
};

/** One ingredient. Its path is its family file; `name` is its INCI name in the case labels print. */
export type Entry = {
  name: string;
  /** Other printed names: common names, retired names, other languages, spellings no rule covers. */
  aliases?: string[];
  /** CosIng functions, lower case, where CosIng names any. No legal force, no claim of effect. */
  functions?: string[];
  protein?: Protein;
  moisture?: MoistureRole[];
  roles?: Role[];
  allergens?: Allergen[];
  /** Keys into dictionary/sources.json; `common-practice` and `from-memory` are keys there too. */
  sources: string[];
};

/** A rule of the naming grammar: names that match take these properties. */
export type Pattern = {
  id: string;
  /** Regular expression source over the normal form of a name (see lookup.ts), flags `u`. */
  match: string;
  /** Patterns are tried in file order; a name that also matches `not` is left to later ones. */
  not?: string;
  /** Stretches of which every name it takes has at least one: spares building the expression for other names. */
  needs?: string[];
  protein?: Protein;
  moisture?: MoistureRole[];
  roles?: Role[];
  allergens?: Allergen[];
  sources: string[];
  /** At least two names it must find, and one it must not: tested. */
  examples: string[];
  counterexamples: string[];
};

export type Use = 'rinse-off' | 'leave-on';

/** A ceiling in percent by weight of the substance as named on the label, where the law of a market sets one. */
export type Limit = {
  name: string;
  rinseOff?: number;
  leaveOn?: number;
  /** Date (ISO) from which this ceiling holds, where it is no older than 2020. */
  since?: string;
  /** Date (ISO) from which the EU allows none of it in new goods. */
  banned?: string;
  sources: string[];
};

/** Thresholds of reading, all marked with their source in the dictionary. */
export type Thresholds = {
  /** Percent below which order is free: 1. */
  freeBelow: number;
  /** `leading`: among the first this many mentions, ahead of the one-percent line. */
  leadingWithin: number;
  /** `unknown` when less than this share of mentions is found. */
  readAtLeast: number;
  /** Text found on a page is taken for a cosmetic list when at least this share of its names is found. */
  listAtLeast: number;
  /** Most that one colourant or "may contain" name is taken to be, in percent: the law sets no order for them. */
  colourantsAtMost: number;
  /** Lists this long or longer that stand in alphabetical order say nothing about amounts. */
  alphabeticalFrom: number;
  /** Letters of the longest text that is read; more is refused with a sentence. */
  longestText: number;
  /** Where each comes from: keys into dictionary/sources.json by the names above. */
  sources?: Record<string, string>;
};

export type Limits = {
  limits: Limit[];
  thresholds: Thresholds;
  /** Usual shares by class and kind: dictionary/amounts. Without them no likely share is told. */
  usual?: UseLevels;
  /** Words of sources, asked of every name: dictionary/allergens.json. */
  sourceWords?: SourceWords[];
  /** Words that name nothing, and what labels are taken apart by: `dictionary/finding/`. */
  labelWords?: LabelWords;
  /** Names that a rule reads and labels print often, so that their misprints are known: dictionary/printed-often.json. */
  printedOften?: string[];
};
