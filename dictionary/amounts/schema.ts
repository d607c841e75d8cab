/** The shape of use-levels.json. The descriptions are the documentation of each field. */
import { z } from 'zod';
import type { UseLevels } from '../../src/core/amounts/use-levels.ts';
import { protein, roles } from '../schema.ts';

const few = <T extends z.ZodType>(of: T) => z.array(of).min(1);
const optional = z.exactOptional;
const id = z.string().regex(/^[a-z0-9-]+$/u);
const percent = z.number().positive().max(100);
const kind = z.enum([
  'pre-wash',
  'bond-treatment',
  'protein-treatment',
  'cleanser',
  'rinse',
  'conditioner',
  'deep-conditioner',
  'scalp-treatment',
  'leave-in',
  'cream',
  'foam',
  'gel',
  'serum',
  'oil',
  'hairspray',
  'refresh-spray',
  'dry-shampoo',
]);

const basis = z.enum([
  'name-highest',
  'class-p95',
  'class-p90',
  'class-p75',
  'class-median',
  'class-highest',
  'frame',
  'sheets-p75',
  'sheets-median',
  'practice',
  'law',
]);

const figure = z
  .union([
    z.tuple([percent.nullable(), percent.nullable(), basis]),
    z.tuple([percent.nullable(), percent.nullable(), basis, basis]),
  ])
  .describe(
    'Highest usual percent in rinse-off and in leave-on products (null: no bound), and its basis; of leave-on its own, where they differ.',
  );

const useClass = z.strictObject({
  id,
  match: optional(z.string()).describe('Regular expression source over the normal form of a name, flags u.'),
  not: optional(z.string()),
  protein: optional(few(protein.shape.kind)),
  minute: optional(z.literal(true)),
  roles: optional(roles),
  front: optional(figure).describe('Among the first names of the list.'),
  middle: optional(figure).describe('Further back, ahead of the one-percent line. Left out: as in front.'),
  late: optional(figure).describe('Far back, ahead of the one-percent line. Left out: as further back.'),
  behind: optional(figure).describe('Behind the one-percent line. Left out: the line itself.'),
  frontWithin: optional(z.int().positive()).describe('First names among which `front` holds.'),
  asSupplied: optional(z.literal(true)).describe(
    'Listed as supplied, much of it water: holds no later name down.',
  ),
  treatment: optional(figure).describe('In a product made for it.'),
  bulk: optional(z.literal([true, 'front'])).describe(
    'May be the body of a product without water: no bound there, or none among its first names.',
  ),
  mark: optional(z.literal(true)).describe('Usual sign that the one-percent line is reached.'),
});

export const useLevelsSchema = z.strictObject({
  bases: z
    .record(basis, z.strictObject({ source: z.string(), status: z.enum(['read', 'practice']) }))
    .describe('What figures rest on: keys into sources.json, and whether the text was read.'),
  classes: few(useClass).describe('Tried in order: the first that takes a name is its class.'),
  names: z
    .record(z.string(), z.tuple([percent.nullable(), percent.nullable()]))
    .describe(
      'Highest registered use of single names where it lies below their class (basis: name-highest).',
    ),
  frames: few(z.strictObject({ id, shares: few(z.strictObject({ of: few(id), atMost: percent })) })).describe(
    'Highest shared sums by function.',
  ),
  kinds: z
    .record(kind, few(z.strictObject({ frame: id, needs: optional(few(id)), without: optional(few(id)) })))
    .describe(
      'The first frame of which one of `needs` stands among the first names, and none of `without`, is kept to.',
    ),
  otherUse: z.strictObject({ 'rinse-off': kind, 'leave-on': kind }),
  treatments: z.array(kind),
  lateFrom: z.number(),
  markFrom: z.number(),
  usualPart: z.number().positive().max(1),
  words: z.tuple([percent, percent, percent]),
}) satisfies z.ZodType<UseLevels>;
