import * as z from 'zod/mini';
import {
  type Avoid,
  type AvoidableRole,
  damageAges,
  damageKinds,
  damageLengths,
  densities,
  type Head,
  porosities,
  type StretchTest,
  scalps,
  shapes,
  thicknesses,
  waters,
} from '../../core/hair/head.ts';
import { allergens } from '../../core/names/entry.ts';
import { toldKinds } from '../../core/names/told-as.ts';
import { type Product, type ProductFacts, productKinds } from '../../core/product/product.ts';
import type { Cadence, LogEntry, Routine, Step } from '../../core/wash-day/routine.ts';
import { mostOfPicture, type Settings, type Site, type Thing } from '../remembered.ts';

// Browsers alter lone surrogates when storing: made whole before, so that what is read is what was written.
const text = z.string().check(z.overwrite((value) => value.replace(/\p{Surrogate}/gu, '�')));
const id = text.check(z.minLength(1), z.maxLength(2000));
/** More than any label holds: a page that calls 2 MB a list does not fill the store. */
const label = text.check(z.maxLength(100_000));
const day = z.iso.date();
const moment = z.union([z.iso.datetime({ offset: true }), z.iso.date()]);
const mm = z.number().check(z.positive(), z.lte(3000));
const amount = z.number().check(z.nonnegative());
export const use = z.enum(['rinse-off', 'leave-on']);
export const kind = z.enum(productKinds);

const avoidableRoles = [
  'film-former',
  'water-liftable-film',
  'drying-alcohol',
  'cleansing-strong',
  'fragrance-allergen',
  'colourant',
  'preservative',
  'uv-filter',
  'propellant',
] as const satisfies AvoidableRole[];

const stretchTest = z.object({
  id,
  date: day,
  rest: mm,
  stretched: mm,
  after: z.exactOptional(mm),
  broke: z.boolean(),
});

const avoid = z.object({
  id,
  name: z.exactOptional(text),
  family: z.exactOptional(z.enum(allergens)),
  role: z.exactOptional(z.enum(avoidableRoles)),
  reacted: z.boolean(),
  note: z.exactOptional(text),
});

const head = z.object({
  id,
  name: text,
  thickness: z.exactOptional(z.enum(thicknesses)),
  porosity: z.exactOptional(z.enum(porosities)),
  damage: z.exactOptional(
    z.object({
      kinds: z.array(z.enum(damageKinds)),
      length: z.exactOptional(z.enum(damageLengths)),
      recent: z.exactOptional(z.enum(damageAges)),
    }),
  ),
  density: z.exactOptional(z.enum(densities)),
  shape: z.exactOptional(z.enum(shapes)),
  scalpKind: z.exactOptional(z.enum(scalps)),
  scalp: z.exactOptional(text),
  water: z.exactOptional(z.enum(waters)),
  avoid: z.array(avoid),
  stretch: z.array(stretchTest),
  setAside: z.array(text),
  uses: z.exactOptional(z.partialRecord(kind, amount)),
  allowanceByHand: z.exactOptional(z.enum(['rarely', 'sparingly', 'some', 'regular', 'often'])),
  added: moment,
});

const goods = z.enum(['not-hair', 'accessory', 'kit']);
const product = z.object({
  id,
  name: text,
  maker: z.exactOptional(text),
  kind: z.exactOptional(kind),
  goods: z.exactOptional(goods),
  use: z.exactOptional(use),
  size: z.exactOptional(amount),
  sizeUnit: z.exactOptional(z.enum(['ml', 'g'])),
  labels: z.array(z.object({ text: label, seen: moment, url: z.exactOptional(text) })),
  sources: z.array(
    z.object({
      url: text,
      price: z.exactOptional(amount),
      currency: z.exactOptional(text),
      language: z.exactOptional(text),
      variant: z.exactOptional(text),
      size: z.exactOptional(amount),
      sizeUnit: z.exactOptional(z.enum(['ml', 'g'])),
      seen: moment,
    }),
  ),
  owned: z.boolean(),
  notes: text,
  picture: z.exactOptional(id),
  added: moment,
});

const count = z.int().check(z.positive());
/** How often, at most `most`; a turn is one of the n. */
export const cadenceOf = (most: number) => {
  const n = count.check(z.lte(most));
  return z.discriminatedUnion('every', [
    z.object({ every: z.literal('wash') }),
    z
      .object({ every: z.literal('nth-wash'), n, from: z.exactOptional(n) })
      .check(z.refine(({ n, from = 1 }) => from <= n, { path: ['from'] })),
    z.object({ every: z.literal('days'), n }),
  ]);
};
const cadence = cadenceOf(Number.MAX_SAFE_INTEGER);

const stepShape = {
  id,
  kind,
  use,
  product: z.exactOptional(id),
  optional: z.boolean(),
  cadence,
  grams: z.exactOptional(amount),
};
const step = z.object(stepShape);

const routine = z.object({
  id,
  head: id,
  name: text,
  steps: z.array(step),
  added: moment,
  washEvery: z.number().check(z.positive()),
  note: z.exactOptional(text),
});

const feel = z.exactOptional(z.number().check(z.gte(-2), z.lte(2)));
const logEntry = z.object({
  id,
  head: id,
  date: day,
  done: z.object({
    name: text,
    steps: z.array(
      z.object({ ...stepShape, productName: z.exactOptional(text), label: z.exactOptional(label) }),
    ),
  }),
  weather: z.exactOptional(
    z.object({ celsius: z.number(), humidity: z.number().check(z.gte(0), z.lte(100)) }),
  ),
  feel: z.object({ soft: feel, springy: feel, defined: feel, dry: feel, elastic: feel }),
  notes: text,
  photo: z.exactOptional(text),
  answered: z.exactOptional(z.enum(['changed', 'left'])),
});

const site = z.object({
  origin: id,
  paused: z.boolean(),
  notLists: z.array(text),
  listsAt: z.array(text),
  kinds: z.exactOptional(z.array(z.object({ page: text, name: text, kind }))),
});

/** What a page says of a product. */
export const facts = z.object({
  name: text,
  maker: z.exactOptional(text),
  kind: z.exactOptional(kind),
  goods: z.exactOptional(goods),
  use: z.exactOptional(use),
  size: z.exactOptional(amount),
  sizeUnit: z.exactOptional(z.enum(['ml', 'g'])),
  price: z.exactOptional(amount),
  currency: z.exactOptional(text),
  language: z.exactOptional(text),
  url: z.exactOptional(text),
  variant: z.exactOptional(text),
  image: z.exactOptional(text),
  category: z.exactOptional(text),
});

/** A product's page that was read, by its canonical address. */
export const labelMet = z.object({
  address: text.check(z.maxLength(2000)),
  text: label,
  product: facts,
  elsewhere: z.exactOptional(z.literal(true)),
  readOn: text,
});

/** A list that was met, with what is told of its product. */
export const met = z.object({ text: label, facts });

export const pin = z.union([z.object({ product: id }), z.object({ met })]);

/** Until lately a pin was the id of a kept product, or one that is not kept as JSON. */
const pins = z.pipe(
  z.array(z.union([pin, text])),
  z.transform((found) => found.flatMap((each) => (typeof each === 'string' ? pinFrom(each) : [each]))),
);

function pinFrom(said: string): z.infer<typeof pin>[] {
  if (!said.startsWith('{')) return said ? [{ product: said }] : [];
  try {
    const { text: list, ...rest } = JSON.parse(said) as Record<string, unknown>;
    const read = pin.safeParse({ met: { text: list, facts: rest } });
    return read.success ? [read.data] : [];
  } catch {
    return [];
  }
}

export const settings = z.object({
  language: z.exactOptional(text),
  units: z.enum(['metric', 'imperial']),
  underline: z.object({ protein: z.boolean(), moisture: z.boolean() }),
  glyphSize: z.enum(['small', 'medium', 'large']),
  reach: z.enum(['press', 'shops', 'everywhere']),
  welcomed: z.boolean(),
  shelfTold: z.exactOptional(z.boolean()),
  pictures: z.exactOptional(z.boolean()),
  place: z.exactOptional(text),
  headInUse: z.exactOptional(text),
  routineInUse: z.exactOptional(text),
  pinned: z.exactOptional(pins),
  wishes: z.exactOptional(
    z.array(
      z.object({
        kind,
        protein: z.enum(['free', 'some']),
        moisture: z.boolean(),
        lifts: z.boolean(),
      }),
    ),
  ),
  shelfPrice: z.exactOptional(z.object({ most: amount, currency: text })),
  market: z.exactOptional(z.enum(['eu', 'other'])),
  rinseOffStays: z.exactOptional(z.number().check(z.gt(0), z.lte(1))),
  sizesBy: z.exactOptional(z.enum(['practice', 'measured'])),
});

/** One schema for each kind of thing; every stored value is parsed with it when read and before it is written. */
export const schemaOf = { heads: head, products: product, routines: routine, log: logEntry, sites: site };

/** A name of the dictionary, or what the user said it is. */
export const readAs = z.union([text, z.object({ as: z.enum(toldKinds) })]);

/** Pixels alone: an SVG could hold a script, and what is no base64 could hold anything. */
export const photo = z
  .string()
  .check(z.regex(/^data:image\/(?:png|jpeg|webp|gif|avif);base64,[A-Za-z0-9+/]+={0,2}$/));

/** A small picture of a product, as long as it may be. */
export const smallPicture = photo.check(z.maxLength(mostOfPicture));

const put = <T extends Thing, S extends z.ZodMiniType>(thing: T, value: S) =>
  z.object({ do: z.literal('put'), thing: z.literal(thing), value, was: z.exactOptional(value) });

/** A change as the one writer takes it. Anything else is refused whole. */
export const change = z.union([
  put('heads', head),
  put('products', product),
  put('routines', routine),
  put('log', logEntry),
  put('sites', site),
  z.object({
    do: z.literal('remove'),
    thing: z.enum(['heads', 'products', 'routines', 'log', 'sites'] satisfies Thing[]),
    id,
  }),
  z.object({
    do: z.literal('set'),
    settings: z.object(
      Object.fromEntries(
        Object.entries(settings.shape).map(([key, of]) => [key, z.exactOptional(of as z.ZodMiniType)]),
      ),
    ),
    unset: z.exactOptional(z.array(text)),
  }),
  z.object({ do: z.literal('read-as'), printed: id, name: z.nullable(readAs) }),
  z.object({ do: z.literal('photo'), key: id, data: z.nullable(photo) }),
  z.object({ do: z.literal('label-met'), address: id, entry: z.nullable(labelMet) }),
  z.object({ do: z.literal('snapshot') }),
]);

// The shapes of `core` and these schemas are one: a field added there and forgotten here does not compile.
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : never;
type Flat<T> = T extends object ? { [K in keyof T]: Flat<T[K]> } : T;
/** True where a schema and a type have one shape; no value fits else. */
export type SameShape<S extends z.ZodMiniType, T> = Same<Flat<z.infer<S>>, Flat<T>>;
const _same: [
  SameShape<typeof head, Head>,
  SameShape<typeof product, Product>,
  SameShape<typeof routine, Routine>,
  SameShape<typeof logEntry, LogEntry>,
  SameShape<typeof site, Site>,
  SameShape<typeof settings, Settings>,
  SameShape<typeof facts, ProductFacts>,
  SameShape<typeof step, Step>,
  SameShape<typeof cadence, Cadence>,
  SameShape<typeof avoid, Avoid>,
  SameShape<typeof stretchTest, StretchTest>,
] = [true, true, true, true, true, true, true, true, true, true, true];
void _same;
