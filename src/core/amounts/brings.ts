import type { MoistureRole, ProteinSize, Use } from '../names/entry.ts';
import { type ProductKind, usualUse } from '../product/product.ts';
import type { ReadFor } from '../product/read-as.ts';
import { isProteinDose, type Mention, type Reading, shareOf } from '../reading/reading.ts';

/** How much a product brings, in words. */
export const steps = ['none', 'a-little', 'some', 'a-lot'] as const;
export type BringStep = (typeof steps)[number];

/** Milligrams of dry substance that stay on the hair. */
export type Milligrams = { least: number; likely: number; most: number };

/** How much, as a step: likely, and the steps between which it lies. */
export type Brought = { step: BringStep; least: BringStep; most: BringStep; mg: Milligrams };

/** What several products come to. */
export type Together = Pick<Brings, 'protein' | 'moisture'>;

export type WashStrength = 'strong' | 'mild' | 'barely';

export type Brings = {
  protein: Brought & { bySize: Record<ProteinSize, Brought> };
  moisture: Brought & { byRole: Record<MoistureRole, Brought> };
  /** How strongly it washes: of cleansers. */
  washes?: WashStrength;
  grams: number;
  /** Share of what is used that is taken to stay: 0…1. */
  stays: number;
  /** Too little of the label was read to say what is not in it. */
  unsure: boolean;
};

/** How a product is used; without grams the amount of its kind stands in. */
export type Usage = { kind: ProductKind; use?: Use; grams?: number };

/** dictionary/wash-day.json: what `bringsOf` needs of it. */
export type BringsPractice = {
  /** `own` grams are the user's, before those of the source. */
  exposure: Record<ProductKind, { grams: number; own?: number; retention: number; source: string }>;
  brings: {
    /** Milligrams from which a product brings a little, some, a lot. */
    protein: [number, number, number];
    moisture: [number, number, number];
    /** The same for all products of a wash day together. */
    day: { protein: [number, number, number]; moisture: [number, number, number] };
    /** Factor within which a usual share is taken to be known. */
    within: number;
    /** Share of a class of use that counts as protein or moisture; what is not named counts whole. */
    counts: Record<string, number>;
    /** The same in cleansers, in other rinse-offs, in products without water. */
    countsIn: Record<'cleanser' | 'rinse-off' | 'dry', Record<string, number>>;
    /** All moisture of a product without water: it keeps moisture in and brings none. */
    dry: number;
    /** Percent of strong and of mild cleansing agents from which a cleanser washes so. */
    washes: { strong: number; mild: number };
    sources: string[];
  };
  thresholds: { readAtLeast: number };
};

const sizes: ProteinSize[] = ['free', 'small', 'large', 'unknown'];
const roles: MoistureRole[] = ['humectant', 'emollient', 'occlusive'];

/** Grams used and the part of them that stays; where a product is used otherwise than usual, as its likes are. */
export function exposureOf({ kind, use, grams }: Usage, { exposure }: Pick<BringsPractice, 'exposure'>) {
  const usual = exposure[kind];
  const row =
    use === undefined || use === usualUse[kind]
      ? usual
      : exposure[use === 'rinse-off' ? 'conditioner' : 'leave-in'];
  return { grams: grams ?? usual.own ?? usual.grams, retention: row.retention, source: row.source };
}

/** Protein and moisture that one product brings as it is used: usual shares × grams × what stays. */
export function bringsOf(reading: Reading, usage: Usage, practice: BringsPractice): Brings {
  const { brings } = practice;
  const { grams, retention } = exposureOf(usage, practice);
  const used = usage.use ?? usualUse[usage.kind];
  const factor = grams * retention * 10; // percent → milligrams
  const watery = reading.mentions.some(
    ({ useClass, roles }) => roles.includes('water') || useClass === 'plant-water',
  );
  const foams =
    usage.kind === 'cleanser' && reading.mentions.some(({ roles }) => roles.includes('cleansing-strong'));
  const counted = ({ useClass = '' }: Mention): number => {
    const among = !watery ? 'dry' : foams ? 'cleanser' : used;
    const special = among === 'leave-on' ? undefined : brings.countsIn[among]?.[useClass];
    return (special ?? brings.counts[useClass] ?? 1) * (watery ? 1 : brings.dry);
  };
  const sum = (mentions: readonly Mention[], weight: (mention: Mention) => number): Milligrams => {
    const mg = { least: 0, likely: 0, most: 0 };
    for (const mention of mentions) {
      const { least, likely, most } = around(mention, brings.within);
      const part = weight(mention);
      mg.least += least * part;
      mg.likely += likely * part;
      mg.most += most * part;
    }
    return { least: cap(mg.least) * factor, likely: cap(mg.likely) * factor, most: cap(mg.most) * factor };
  };
  const protein = reading.mentions.filter(isProteinDose);
  const moist = reading.mentions.filter(({ moisture }) => moisture.length > 0);
  const ofProtein = (mentions: readonly Mention[]) =>
    brought(
      sum(mentions, (each) => brings.counts[each.useClass ?? ''] ?? 1),
      brings.protein,
    );
  const ofMoisture = (mentions: readonly Mention[]) => brought(sum(mentions, counted), brings.moisture);
  const washes = usage.kind === 'cleanser' ? washStrength(reading, practice) : undefined;
  return {
    protein: {
      ...ofProtein(protein),
      bySize: by(sizes, (size) => ofProtein(protein.filter((each) => each.protein?.size === size))),
    },
    moisture: {
      ...ofMoisture(moist),
      byRole: by(roles, (role) => ofMoisture(moist.filter(({ moisture }) => moisture.includes(role)))),
    },
    ...(washes && { washes }),
    grams,
    stays: retention,
    unsure: reading.refused !== undefined || reading.read < practice.thresholds.readAtLeast,
  };
}

/** The practice where another part of a rinse-off is taken to stay: cleansers keep their ratio to the rest. */
export function withStays<P extends BringsPractice>(practice: P, rinseOff: number | undefined): P {
  if (rinseOff === undefined) return practice;
  const usual = practice.exposure.conditioner.retention;
  const exposure = Object.fromEntries(
    Object.entries(practice.exposure).map(([kind, row]) => [
      kind,
      usualUse[kind as ProductKind] === 'rinse-off'
        ? { ...row, retention: (row.retention * rinseOff) / usual }
        : row,
    ]),
  );
  return { ...practice, exposure };
}

/** What several products of one wash day come to, in the steps of a whole day. */
export function together(all: readonly Together[], { brings: { day } }: BringsPractice): Together {
  const sum = (pick: (each: Together) => Brought, from: readonly number[]): Brought =>
    brought(
      all.map(pick).reduce(
        (mg, each) => ({
          least: mg.least + each.mg.least,
          likely: mg.likely + each.mg.likely,
          most: mg.most + each.mg.most,
        }),
        { least: 0, likely: 0, most: 0 },
      ),
      from,
    );
  return {
    protein: {
      ...sum(({ protein }) => protein, day.protein),
      bySize: by(sizes, (size) => sum(({ protein }) => protein.bySize[size], day.protein)),
    },
    moisture: {
      ...sum(({ moisture }) => moisture, day.moisture),
      byRole: by(roles, (role) => sum(({ moisture }) => moisture.byRole[role], day.moisture)),
    },
  };
}

/** The step of a whole day that a dose of protein comes to: a dose is a percent of a cream that stays on. */
export function stepOfDose(dose: number, { exposure: { cream }, brings }: BringsPractice): BringStep {
  return stepOf(dose * cream.grams * cream.retention * 10, brings.day.protein);
}

/** What a product brings, where its kind is known and its label could be read. */
export const bringsFor = (
  reading: Reading | undefined,
  { kind, use }: ReadFor,
  practice: BringsPractice,
): Brings | undefined =>
  reading && !reading.refused && kind
    ? bringsOf(reading, { kind, ...(use && { use }) }, practice)
    : undefined;

const cap = (percent: number) => Math.min(100, percent);

/** The share of a mention in percent: usual, and the least and most it is taken to be. */
function around(mention: Mention, within: number): Milligrams {
  const share = shareOf(mention);
  const likely = mention.usual ?? Math.max(share.min, share.max / within);
  return {
    least: Math.max(share.min, likely / within),
    likely,
    most: Math.max(likely, Math.min(share.max, likely * within)),
  };
}

const stepOf = (mg: number, from: readonly number[]): BringStep =>
  steps[from.filter((least) => mg >= least).length]!;

const brought = (mg: Milligrams, from: readonly number[]): Brought => ({
  step: stepOf(mg.likely, from),
  least: stepOf(mg.least, from),
  most: stepOf(mg.most, from),
  mg,
});

const by = <K extends string>(keys: readonly K[], value: (key: K) => Brought) =>
  Object.fromEntries(keys.map((key) => [key, value(key)])) as Record<K, Brought>;

function washStrength({ mentions }: Reading, { brings }: BringsPractice): WashStrength {
  const percent = (role: 'cleansing-strong' | 'cleansing-mild') =>
    mentions
      .filter(({ roles }) => roles.includes(role))
      .reduce((all, mention) => all + around(mention, brings.within).likely, 0);
  if (percent('cleansing-strong') >= brings.washes.strong) return 'strong';
  return percent('cleansing-mild') + percent('cleansing-strong') >= brings.washes.mild ? 'mild' : 'barely';
}
