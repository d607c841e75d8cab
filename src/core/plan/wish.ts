import type { WashDayPractice } from '../judge/practice.ts';
import { type ProductKind, usualUse } from '../product/product.ts';
import type { Reading } from '../reading/reading.ts';
import type { DayStep } from '../wash-day/rules/day.ts';
import { type Sure, staysOn, type Traits, traitsOf } from '../wash-day/rules/traits.ts';

/** The kind of product that would settle a wash day: a protein-free gel, a strong cleanser. Can filter a shelf. */
export type Wish = {
  kind: ProductKind;
  /** Free of protein, or holding some that is not large. */
  protein: 'free' | 'some';
  /** Brings moisture without weight. */
  moisture: boolean;
  /** Lifts films. */
  lifts: boolean;
};

/** One wish of each sort that can make a difference, for every kind. */
export const wishes = ({ kinds }: WashDayPractice): Wish[] =>
  kinds.wished.flatMap((kind) =>
    (['free', 'some'] as const).map((protein) => ({
      kind,
      protein,
      moisture: kinds.moisture.includes(kind),
      lifts: kinds.cleansing.includes(kind),
    })),
  );

/** A wish as the step it would be, for the rules. */
export function wishedStep(wish: Wish): DayStep {
  const traits: Traits = {
    read: 'enough',
    protein: wish.protein === 'some' ? 'yes' : 'no',
    doses: wish.protein === 'some' ? [0] : [],
    large: [],
    largeAboveTrace: [],
    bearing: [],
    minute: [],
    surfactants: [],
    moist: wish.moisture ? 'yes' : 'no',
    moisture: [],
    heavy: [],
    humectantsInFront: [],
    film: undefined,
    films: [],
    lifts: wish.lifts ? 'strong' : undefined,
    unread: [],
  };
  const id = `wish-${wish.kind}-${wish.protein}`;
  return {
    id,
    product: id,
    kind: wish.kind,
    use: usualUse[wish.kind],
    optional: false,
    cadence: { every: 'wash' },
    reading: undefined,
    traits,
    filled: true,
  };
}

/** Whether a product is such a one. */
export function fulfils(
  reading: Reading | undefined,
  kind: ProductKind | undefined,
  wish: Wish,
  practice: WashDayPractice,
): Sure {
  if (kind !== undefined && kind !== wish.kind) return 'no';
  const traits = traitsOf(reading, practice);
  if (traits.read === 'none') return 'maybe';
  const weighs = staysOn(usualUse[wish.kind]) && traits.heavy.length > 0;
  const answers: Sure[] = [
    kind === undefined ? 'maybe' : 'yes',
    wish.protein === 'free' ? opposite[traits.protein] : traits.large.length > 0 ? 'no' : traits.protein,
    wish.moisture ? traits.moist : 'yes',
    !wish.lifts || traits.lifts === 'strong' ? 'yes' : traits.read === 'little' ? 'maybe' : 'no',
    weighs || traits.film === 'strong' ? 'maybe' : 'yes',
  ];
  return answers.includes('no') ? 'no' : answers.includes('maybe') ? 'maybe' : 'yes';
}

const opposite: Record<Sure, Sure> = { yes: 'no', no: 'yes', maybe: 'maybe' };
