import type { Practice, WashDayPractice } from '../judge/practice.ts';
import { type Sure, type Traits, traitsOf } from '../judge/traits.ts';
import { type ProductKind, usualUse } from '../product/product.ts';
import type { Reading } from '../reading/reading.ts';
import type { DayStep } from '../wash-day/rules/day.ts';
import { isMedicated } from './medicated.ts';

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

/** A wish as the step it would be, for the rules: as good a product of its kind as can be. */
export function wishedStep(wish: Wish, { judge }: Practice): DayStep {
  const some = wish.protein === 'some';
  const traits: Traits = {
    read: 'enough',
    protein: some ? 'yes' : 'no',
    dose: some ? judge.dose.matters : 0,
    largeDose: 0,
    doseAsMeasured: some ? judge.dose.matters : 0,
    builds: some ? judge.dose.matters : 0,
    named: some,
    doses: some ? [0] : [],
    large: [],
    disputed: [],
    uncounted: [],
    bearing: [],
    weight: 0,
    film: 0,
    heavy: [],
    soft: wish.moisture ? judge.care.atMost : 0,
    rich: wish.moisture ? judge.care.atMost : 0,
    stiff: 0,
    dry: 0,
    softeners: [],
    stiffeners: [],
    dryers: [],
    humectantsInFront: [],
    films: { mild: [], strong: [] },
    wash: wish.lifts
      ? { harsh: 0, power: judge.wash.asks.oily, lifts: 'mild', creamy: false, scalp: false }
      : undefined,
    cleansers: [],
    bond: false,
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
  practice: Practice,
): Sure {
  if ((kind !== undefined && kind !== wish.kind) || isMedicated(reading)) return 'no';
  const { judge } = practice;
  const traits = traitsOf(reading, { kind: wish.kind, use: usualUse[wish.kind] }, practice);
  if (traits.read === 'none') return 'maybe';
  const unless = (test: boolean): Sure => (test ? 'yes' : traits.read === 'little' ? 'maybe' : 'no');
  const answers: Sure[] = [
    kind === undefined ? 'maybe' : 'yes',
    wish.protein === 'free' ? opposite[traits.protein] : traits.large.length > 0 ? 'no' : traits.protein,
    wish.moisture ? unless(traits.soft >= judge.care.wants.fine) : 'yes',
    wish.lifts ? unless(traits.wash?.lifts !== undefined && traits.wash.harsh <= judge.wash.bears) : 'yes',
    usualUse[wish.kind] === 'leave-on' && traits.weight > judge.weight.carries.fine ? 'maybe' : 'yes',
  ];
  return answers.includes('no') ? 'no' : answers.includes('maybe') ? 'maybe' : 'yes';
}

const opposite: Record<Sure, Sure> = { yes: 'no', no: 'yes', maybe: 'maybe' };
