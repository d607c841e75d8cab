// Small readings and days made by hand, so that rules are tested without dictionary or label grammar.
import { practice } from '../../dictionary/practice.ts';
import type { Head } from '../../src/core/hair/head.ts';
import { allowanceOf } from '../../src/core/hair/tolerance.ts';
import type {
  Allergen,
  MoistureRole,
  Protein,
  ProteinSize,
  Range,
  Role,
} from '../../src/core/names/entry.ts';
import type { Candidate } from '../../src/core/plan/suggest.ts';
import { type ProductKind, usualUse } from '../../src/core/product/product.ts';
import type { Mention, Reading, Strength } from '../../src/core/reading/reading.ts';
import type { WashDayInput } from '../../src/core/wash-day/add-up.ts';
import type { LogEntry, Routine, Step } from '../../src/core/wash-day/routine.ts';

export { practice };

export type Hand = {
  name?: string;
  protein?: Protein;
  moisture?: MoistureRole[];
  roles?: Role[];
  allergens?: Allergen[];
  mayBe?: Allergen[];
  share?: Range;
  unread?: string[];
};

export const protein = (
  size: ProteinSize,
  kind: Protein['kind'] = 'hydrolyzed',
  more: object = {},
): Protein => ({
  kind,
  size,
  sources: ['common-practice'],
  ...more,
});

export const water: Hand = { name: 'Aqua', roles: ['water'], share: { min: 30, max: 95 } };
export const glycerin: Hand = { name: 'Glycerin', moisture: ['humectant'], share: { min: 1, max: 30 } };
export const fatty: Hand = {
  name: 'Cetearyl Alcohol',
  moisture: ['emollient'],
  roles: ['fatty-alcohol'],
  share: { min: 1, max: 20 },
};
export const softener: Hand = {
  name: 'Behentrimonium Methosulfate',
  roles: ['cationic-conditioner'],
  share: { min: 1, max: 8 },
};
export const butter: Hand = {
  name: 'Butyrospermum Parkii Butter',
  moisture: ['emollient', 'occlusive'],
  share: { min: 1, max: 20 },
};
export const silk: Hand = { name: 'Hydrolyzed Silk', protein: protein('small'), share: { min: 0, max: 1 } };
export const wheat: Hand = {
  name: 'Hydrolyzed Wheat Protein',
  protein: protein('large'),
  allergens: ['wheat'],
  share: { min: 0, max: 10 },
};
export const oatExtract: Hand = {
  name: 'Avena Sativa Kernel Extract',
  protein: protein('unknown', 'protein-bearing'),
  allergens: ['oat'],
  share: { min: 0, max: 5 },
};
export const peptide: Hand = {
  name: 'Palmitoyl Tripeptide-1',
  protein: protein('small', 'peptide', { minute: true }),
  share: { min: 0, max: 1 },
};
export const glutamate: Hand = {
  name: 'Sodium Cocoyl Glutamate',
  protein: protein('unknown', 'protein-surfactant'),
  roles: ['cleansing-mild'],
  share: { min: 1, max: 30 },
};
export const laureth: Hand = {
  name: 'Sodium Laureth Sulfate',
  roles: ['cleansing-strong'],
  share: { min: 1, max: 30 },
};
export const silicone: Hand = { name: 'Dimethicone', roles: ['film-former'], share: { min: 0, max: 10 } };
export const pvp: Hand = { name: 'PVP', roles: ['water-liftable-film'], share: { min: 0, max: 10 } };
export const unknown: Hand = { name: 'Zzyzx Blend', unread: [], share: { min: 0, max: 10 } };

export function hand(parts: Hand[], more: Partial<Reading> = {}): Reading {
  let at = 0;
  const mentions = parts.map((part): Mention => {
    const raw = part.name ?? 'Something';
    const from = at;
    at += raw.length + 2;
    return {
      raw,
      from,
      to: from + raw.length,
      found: part.unread ? { how: 'none', close: part.unread } : { how: 'exact', name: raw },
      ...(part.protein && { protein: part.protein }),
      moisture: part.moisture ?? [],
      roles: part.roles ?? [],
      allergens: part.allergens ?? [],
      mayBe: part.mayBe ?? [],
      share: part.share ?? { min: 0, max: 5 },
    };
  });
  const read = parts.filter((part) => !part.unread).length / Math.max(1, parts.length);
  const strength = (some: (mention: Mention) => boolean): Strength => {
    const those = mentions.filter(some);
    if (those.length === 0) return read < 0.6 ? 'unknown' : 'none';
    if (those.every(({ share }) => share.max <= 1)) return 'trace';
    return those.some((mention) => mention.share.max > 1 && mentions.indexOf(mention) < 5)
      ? 'leading'
      : 'present';
  };
  return {
    mentions,
    order: 'descending',
    protein: strength(({ protein }) => protein !== undefined && !protein.minute),
    moisture: strength(({ moisture }) => moisture.length > 0),
    read,
    assumesLimits: false,
    ...more,
  };
}

export const head = (more: Partial<Head> = {}): Head => ({
  id: 'wren',
  name: 'Wren',
  avoid: [],
  stretch: [],
  setAside: [],
  added: '2026-01-01',
  ...more,
});
export const careful = head({ thickness: 'coarse', porosity: 'low', damage: { kinds: [] } });
export const middling = head({ thickness: 'medium', porosity: 'medium', damage: { kinds: [] } });
export const sparing = head({ thickness: 'coarse', porosity: 'medium', damage: { kinds: [] } });
export const thirsty = head({
  thickness: 'fine',
  porosity: 'high',
  damage: { kinds: ['bleach'], length: 'most', recent: 'weeks' },
});

export const today = '2026-03-01';
export const allowance = (of: Head) => allowanceOf(of, practice.allowance, { today, log: [] });

export type Plan = { kind: ProductKind; of?: Reading | undefined; empty?: true } & Partial<Step>;

/** A routine of steps `s1`, `s2` …, each with a product of its own unless it says otherwise. */
export function day(
  plans: Plan[],
  of?: Head,
  more: Partial<WashDayInput> & { washEvery?: number } = {},
): WashDayInput {
  const steps = plans.map(
    ({ of: _, empty, ...plan }, index): Step => ({
      id: `s${index + 1}`,
      use: usualUse[plan.kind],
      ...(empty ? {} : { product: `p${index + 1}` }),
      optional: false,
      cadence: { every: 'wash' },
      ...plan,
    }),
  );
  const routine: Routine = {
    id: 'r1',
    head: 'wren',
    name: 'Sunday',
    steps,
    added: '2026-01-01',
    washEvery: more.washEvery ?? 7,
  };
  return {
    routine,
    readings: new Map(plans.map((plan, index) => [steps[index]!.id, plan.of])),
    ...(of && { head: of, allowance: allowance(of) }),
    log: [],
    today,
    practice,
    ...more,
  };
}

export const logged = (date: string, more: Partial<LogEntry> = {}, kinds: ProductKind[] = []): LogEntry => ({
  id: `log-${date}`,
  head: 'wren',
  date,
  done: {
    name: 'Sunday',
    steps: kinds.map((kind, index) => ({
      id: `l${index}`,
      kind,
      use: usualUse[kind],
      product: `p-${kind}`,
      optional: false,
      cadence: { every: 'wash' },
    })),
  },
  feel: {},
  notes: '',
  ...more,
});

/** A product on hand, or only thought of. */
export const candidate = (product: string, kind: ProductKind, reading: Reading, owned = true): Candidate => ({
  product,
  kind,
  use: usualUse[kind],
  reading,
  owned,
});
