/** The shape of the files by which lists are found. Each list of words says why it is there. */
import { z } from 'zod';

const why = z.string().min(10).describe('What these words tell, and how far.');
const word = z
  .string()
  .min(1)
  .regex(/^\S(?:.*\S)?$/u, 'no spaces at the ends');
const words = z.array(word).min(1).describe('A star at an end stands for any letters there.');
const optional = z.exactOptional;
const group = z.strictObject({ why, words });
const file = { why, sources: z.array(z.string()).min(1).describe('Keys into ../sources.json.') };

const headings = z.strictObject({
  ...file,
  words: z.array(
    z.strictObject({
      lang: z.string(),
      words,
      weak: optional(words).describe('They head other things too: only alone on a line or before a colon.'),
    }),
  ),
  slips: group.describe('Read with a slip or two.'),
  full: group.describe('Beside a heading: the whole list follows.'),
  teasers: group
    .extend({
      actives: words,
      spoken: words.describe('Of shops, not of labels: “our”, “best”.'),
      alone: words,
    })
    .describe('A choice of names follows.'),
  asides: group.describe('What a heading may hold beside its own words.'),
});
const denials = z.strictObject({
  ...file,
  before: group.extend({ loose: words.describe('Of pages only: a label prints them in names.') }),
  glued: group,
  alone: group,
});
const goods = z.strictObject({
  ...file,
  goods: z.array(group.extend({ good: z.string() })).describe('Words in names that other goods print.'),
});
const shared = z.strictObject({
  ...file,
  groups: z.array(z.strictObject({ why, names: words })),
  forms: group.describe('Plain-English names that end so are food as often.'),
  pressed: group.describe('Unknown names that end so are built like names.'),
});
const own = z.strictObject({
  ...file,
  plain: group,
  built: group,
  frequent: group,
  single: group,
  latin: group,
});
const around = z.strictObject({ ...file, cosmetic: group, elsewise: group, home: group });
const prose = z.strictObject({ ...file, words: group, goesOn: group, endsOn: group, ends: group });

export const remarksSchema = z.strictObject({
  ...file,
  prose: group,
  small: group,
  origin: group,
  beside: group,
  substance: group,
  does: group,
  grown: group,
  praise: group,
  goods: group,
  cautions: group,
  abroad: group,
  sizes: group,
  leads: group,
});

export const labelSchema = z.strictObject({
  ...file,
  heads: group,
  lists: group,
  ofList: group,
  active: group,
  inactive: group,
  key: group,
  notes: group,
  may: group,
  mayAround: group,
  traces: group,
  contain: group,
  allergens: group,
  holding: group,
  leftOut: group,
  notSo: group,
  below: group,
  orLess: group,
  and: group,
  andOnce: group,
  or: group,
  of: group,
  parts: group,
  fill: group,
  pure: group,
  codes: group,
  coded: group,
  counted: group,
  seeFor: group,
  stated: group,
  drugs: group,
  friendly: group,
});

export const findingSchema = z.strictObject({
  headings,
  denials,
  goods,
  shared,
  own,
  around,
  prose,
  genera: z.array(z.string()),
});
