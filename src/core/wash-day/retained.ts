import { exposureOf } from '../amounts/brings.ts';
import type { WashDayPractice } from '../judge/practice.ts';
import type { MoistureRole, ProteinSize, Range } from '../names/entry.ts';
import { isProtein, type Mention, type Reading } from '../reading/reading.ts';
import type { Step } from './routine.ts';

/** Milligrams as ranges: protein by size (doses only), matter that may bear protein, moisture by role. */
export type Amounts = {
  protein: Record<ProteinSize, Range>;
  bearing: Range;
  moisture: Record<MoistureRole, Range>;
  /** Every moisture mention once, though it may have several roles. */
  moistureAll: Range;
};

export type StepStays = Amounts & {
  step: string;
  grams: number;
  /** Share of what is used that is taken to stay: 0…1. */
  retention: number;
  /** Row of the exposure table that stands in. */
  source: string;
  /** No label was read: the amounts are not known, not zero. */
  unread: boolean;
};

export type Stays = { steps: StepStays[]; day: Amounts & { unread: number } };

const none = (): Range => ({ min: 0, max: 0 });
const plus = (a: Range, b: Range): Range => ({ min: a.min + b.min, max: a.max + b.max });

const sizes: ProteinSize[] = ['free', 'small', 'large', 'unknown'];
const roles: MoistureRole[] = ['humectant', 'emollient', 'occlusive'];

/**
 * What stays on the hair: grams × share × retention, interval arithmetic, in milligrams. The retention is the
 * published exposure table's, set for skin and named here as a stand-in for hair (SCCS/1647/22). It ranks and
 * draws; the rules decide. Steps without a product stay out.
 */
export function staysOf(
  steps: readonly (Step & { reading: Reading | undefined; filled: boolean })[],
  practice: WashDayPractice,
): Stays {
  const each = steps.filter(({ filled }) => filled).map((step) => staysOfStep(step, practice));
  const sum = (pick: (amounts: Amounts) => Range) => each.map(pick).reduce(plus, none());
  return {
    steps: each,
    day: {
      protein: by(sizes, (size) => sum(({ protein }) => protein[size])),
      bearing: sum(({ bearing }) => bearing),
      moisture: by(roles, (role) => sum(({ moisture }) => moisture[role])),
      moistureAll: sum(({ moistureAll }) => moistureAll),
      unread: each.filter(({ unread }) => unread).length,
    },
  };
}

const by = <K extends string>(keys: readonly K[], value: (key: K) => Range) =>
  Object.fromEntries(keys.map((key) => [key, value(key)])) as Record<K, Range>;

function staysOfStep(step: Step & { reading: Reading | undefined }, practice: WashDayPractice): StepStays {
  const exposure = exposureOf(step, practice);
  const mentions = step.reading?.mentions ?? [];
  // Percent → milligrams left: 1 % of 1 g is 10 mg. Parts of one product never come to more than all of it.
  const left = (test: (mention: Mention) => boolean): Range => {
    const total = mentions
      .filter(test)
      .map((mention) =>
        mention.protein?.minute
          ? { min: 0, max: Math.min(mention.share.max, practice.thresholds.minuteAtMost) }
          : mention.share,
      )
      .reduce(plus, none());
    const factor = exposure.grams * exposure.retention * 10;
    return { min: Math.min(100, total.min) * factor, max: Math.min(100, total.max) * factor };
  };
  return {
    step: step.id,
    ...exposure,
    unread: mentions.length === 0,
    protein: by(sizes, (size) => left((mention) => mention.protein?.size === size && isProtein(mention))),
    bearing: left(({ protein }) => protein?.kind === 'protein-bearing'),
    moisture: by(roles, (role) => left(({ moisture }) => moisture.includes(role))),
    moistureAll: left(({ moisture }) => moisture.length > 0),
  };
}
