/** The shape of a dictionary file. The descriptions are the documentation of each field. */
import { z } from 'zod';
import type { Entry, Limits, Pattern, SourceWords } from '../src/core/names/entry.ts';
import { cosingFunctions } from './cosing-functions.ts';

const name = z
  .string()
  .regex(/^.{2,}$|^[\p{Script=Han}\p{Script=Hangul}]$/u, 'two letters, or one that is a word by itself')
  .regex(/^\S(.*\S)?$/u, 'no spaces at the ends')
  .regex(/^(?!.* {2})/u, 'no double spaces');
const few = <T extends z.ZodType>(of: T) => z.array(of).min(1);
const optional = z.exactOptional;

const sources = few(z.string()).describe('Keys into sources.json. A fact without a source is left out.');
const range = z.strictObject({ min: z.number().nonnegative(), max: z.number().positive() });

export const protein = z.strictObject({
  kind: z.enum([
    'amino-acid',
    'peptide',
    'hydrolyzed',
    'quaternized',
    'whole',
    'protein-bearing',
    'protein-surfactant',
  ]),
  size: z.enum(['free', 'small', 'large', 'unknown']),
  daltons: optional(range).describe('Published molar mass range, g/mol. Left out where none was found.'),
  minute: optional(z.literal(true)).describe('Used below 10 ppm: shown, never counted as a dose.'),
  disagreement: optional(z.string()).describe('Word key of the sentence on practice against measurement.'),
  sources,
});

const moisture = few(z.enum(['humectant', 'emollient', 'occlusive']));
export const roles = few(
  z.enum([
    'water',
    'film-forming-humectant',
    'cleansing-strong',
    'cleansing-mild',
    'cationic-conditioner',
    'fatty-alcohol',
    'film-former',
    'water-liftable-film',
    'bond-builder',
    'drying-alcohol',
    'acid',
    'alkali',
    'preservative',
    'fragrance',
    'fragrance-allergen',
    'colourant',
    'chelating',
    'thickener',
    'emulsifier',
    'solvent',
    'propellant',
    'uv-filter',
    'active',
    'medicated',
  ]),
);
const allergen = z.enum([
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
]);
const allergens = few(allergen);

export const entrySchema = z.strictObject({
  name: name.describe('INCI name in the case labels print.'),
  aliases: optional(few(name)).describe('Other printed names: common, retired, in other languages.'),
  functions: optional(few(z.enum(cosingFunctions))).describe('CosIng functions, lower case. No legal force.'),
  protein: optional(protein),
  moisture: optional(moisture).describe('What it does for the moisture of hair.'),
  roles: optional(roles).describe('What else the routine rules ask about.'),
  allergens: optional(allergens).describe('Families an avoid list may name.'),
  sources,
}) satisfies z.ZodType<Entry>;

export const patternSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/u),
  match: z.string().describe('Regular expression source over the normal form of a name, flags u.'),
  not: optional(z.string()).describe('Names that also match this are left to later patterns.'),
  needs: optional(few(z.string())).describe('At least one of these stands in every name it takes.'),
  protein: optional(protein),
  moisture: optional(moisture),
  roles: optional(roles),
  allergens: optional(allergens),
  sources,
  examples: z.array(name).min(2),
  counterexamples: z.array(name).min(1),
}) satisfies z.ZodType<Pattern>;

const phrases = few(z.string().regex(/^(?!.* {2})\S(.*\S)?$/u, 'one space between words')).describe(
  'Words over the normal form; * for letters of a word, … for words in between.',
);

export const sourceWordsSchema = z.strictObject({
  family: allergen,
  says: phrases.describe('Names the source outright.'),
  mayBe: optional(phrases).describe('Names of no named source that may be made from it.'),
  not: optional(phrases).describe('Look-alikes, taken out of the name first.'),
  softens: optional(phrases).describe('Beside one of these a named source is only "may be".'),
  silences: optional(z.strictObject({ words: phrases, unless: phrases })).describe(
    'Names of a scent: other sources beside them are notes of it, unless one of the second words is there.',
  ),
  sources,
}) satisfies z.ZodType<SourceWords>;

const titleWords = few(z.string().regex(/^(?!.* {2})\S(.*\S)?$/u));

export const kindWordsSchema = z.strictObject({
  nouns: z.array(
    z.strictObject({
      kind: z.string().describe('A kind of product, or spray: what it is then, the other words say.'),
      tier: z.enum(['step', 'texture', 'carrier']),
      last: optional(titleWords).describe('Nouns that stand after what describes them.'),
      first: optional(titleWords).describe('Nouns that stand before it.'),
    }),
  ),
  marks: z.record(z.string(), titleWords).describe('What stands beside a noun and changes what it is.'),
  goods: z.strictObject({
    kit: titleWords,
    notKit: titleWords,
    accessory: z.strictObject({ last: titleWords, first: titleWords }),
    never: titleWords.describe('For animals, beards, lashes, nails, the house: wherever it stands.'),
    process: titleWords.describe('Colour, bleach, relaxer, perm.'),
    swallowed: titleWords,
    elsewhere: titleWords.describe('Other places of a body, unless hair is named too.'),
    hair: titleWords,
  }),
  breaks: titleWords.describe('Words after which the title says for whom, or with what.'),
  headFirst: titleWords.describe('Words of languages that put the noun first.'),
  sources,
});

export const limitsSchema = z.strictObject({
  limits: z.array(
    z.strictObject({
      name,
      rinseOff: optional(z.number().positive().max(100)),
      leaveOn: optional(z.number().positive().max(100)),
      since: optional(z.iso.date()).describe('From when, where the ceiling is no older than 2020.'),
      banned: optional(z.iso.date()).describe('From when none is allowed in new goods.'),
      sources,
    }),
  ),
  thresholds: z.strictObject({
    freeBelow: z.number(),
    leadingWithin: z.number(),
    readAtLeast: z.number(),
    listAtLeast: z.number(),
    colourantsAtMost: z.number(),
    alphabeticalFrom: z.number(),
    longestText: z.number(),
    sources: optional(z.record(z.string(), z.string())),
  }),
}) satisfies z.ZodType<Omit<Limits, 'sourceWords' | 'remarks' | 'printedOften'>>;

export const printedOftenSchema = z
  .array(name)
  .describe(
    'Names that a rule of the grammar reads and labels print often: mending holds misprints against them.',
  );

export const sourcesSchema = z.record(
  z.string().regex(/^[a-z0-9-]+$/u),
  z.strictObject({
    title: z.string().describe('Citation: who, what, where, when.'),
    short: optional(z.string()).describe('The same in a few words, where there is no room.'),
    note: optional(z.string()).describe('How far it was checked, and what it does not say.'),
  }),
);
