import { type Head, porosities, thicknesses } from '../hair/head.ts';
import { type AllowanceReading, allowances, damageOf } from '../hair/tolerance.ts';
import type { Practice } from './practice.ts';

/** What one head of hair bears and wants, in the numbers that `Traits` are told in. */
export type HairNumbers = {
  /** Dose of protein at each wash that suits, and the most that may be used with care. */
  protein: { suits: number; upTo: number };
  /** Place on the scale of tolerance, 0…4. */
  tolerance: number;
  /** Weight that the strands carry; what films on the cuticle count for. */
  carries: number;
  filmCounts: number;
  /** Softness a step of care must bring, and dryness and stiffness that may be left on. */
  wants: number;
  bearsDry: number;
  bearsStiff: number;
  /** Harshness of the wash that is borne, and power that the scalp asks for. */
  bearsWash: number;
  /** The same of a wash that comes only now and then, between others. */
  bearsSeldomWash: number;
  asksWash: number;
};

/** What `allowanceOf` tells the rules. */
export type AllowanceInUse = Partial<Pick<AllowanceReading, 'numbers' | 'exact' | 'others' | 'byHand'>>;

export type HairContext = {
  head: Head | undefined;
  allowance: AllowanceInUse | undefined;
  washEvery: number;
  practice: Practice;
};

type HairAnswers = Pick<Head, 'thickness' | 'porosity' | 'damage'>;

/** What was not told and matters: its answers are all tried. */
export type Untold = keyof HairAnswers;

/** The numbers of a head as described; as many as there are heads it may be where an answer is missing. */
export function hairNumbers(context: HairContext): { numbers: HairNumbers[]; untold: Untold[] } {
  const { head, practice } = context;
  const untold: Untold[] = [
    ...(head?.thickness ? [] : ['thickness' as const]),
    ...(head?.porosity ? [] : ['porosity' as const]),
    ...(head?.damage ? [] : ['damage' as const]),
  ];
  const known = cache.get(practice) ?? new WeakMap<object, Map<string, HairNumbers[]>>();
  cache.set(practice, known);
  const of = known.get(head ?? nobody) ?? new Map<string, HairNumbers[]>();
  known.set(head ?? nobody, of);
  const { allowance, washEvery } = context;
  const key = `${washEvery} ${allowance?.exact} ${allowance?.others} ${allowance?.byHand}`;
  let numbers = of.get(key);
  if (!numbers) {
    numbers = every(head).map((told) => numbersOf(told, context));
    of.set(key, numbers);
  }
  return { numbers, untold };
}
const cache = new WeakMap<Practice, WeakMap<object, Map<string, HairNumbers[]>>>();
const nobody = {};

function every(head: Head | undefined): HairAnswers[] {
  const damages: NonNullable<Head['damage']>[] = head?.damage
    ? [head.damage]
    : [{ kinds: [] }, { kinds: ['bleach'], length: 'most', recent: 'weeks' }];
  return (head?.thickness ? [head.thickness] : thicknesses).flatMap((thickness) =>
    (head?.porosity ? [head.porosity] : porosities).flatMap((porosity) =>
      damages.map((damage) => ({ thickness, porosity, damage })),
    ),
  );
}

/** A scale of five, read between its steps. */
function between(scale: readonly number[], at: number): number {
  const low = Math.max(0, Math.min(scale.length - 2, Math.floor(at)));
  return scale[low]! + (scale[low + 1]! - scale[low]!) * Math.max(0, Math.min(1, at - low));
}

function numbersOf(told: HairAnswers, { head, allowance, washEvery, practice }: HairContext): HairNumbers {
  const { dose, weight, care, wash } = practice.judge;
  const { density = 'medium', shape = 'curly', scalpKind: scalp = 'normal' } = head ?? {};
  const { thickness = 'medium', porosity = 'medium' } = told;
  const damage = damageOf(told.damage, practice.allowance);
  const tolerance = toleranceOf(told, head, allowance, practice);
  const wants =
    care.wants[thickness] *
    care.porosity[porosity] *
    care.shape[shape] *
    care.density[density] *
    (scalp === 'dry' ? care.dryScalp : 1) *
    (1 + care.perDamage * damage);
  const bearsWash = wash.bears + wash.scalp[scalp] + wash.shape[shape] - wash.perDamage * damage;
  return {
    protein: { suits: between(dose.suits, tolerance), upTo: between(dose.upTo, tolerance) },
    tolerance,
    carries:
      weight.carries[thickness] *
      weight.porosity[porosity] *
      weight.density[density] *
      weight.shape[shape] *
      (scalp === 'oily' ? weight.oilyScalp : 1),
    filmCounts: weight.film[porosity],
    wants: Math.min(care.atMost, wants),
    bearsDry:
      Math.max(care.bearsDryLeast, care.bearsDry[thickness] / (1 + care.dryPerDamage * damage)) *
      (scalp === 'dry' || scalp === 'flaky' ? care.dryScalpBears : 1),
    bearsStiff: care.bearsStiff[thickness],
    bearsWash: Math.max(wash.bearsLeast, bearsWash - wash.perDaysSquared / Math.max(1, washEvery) ** 2),
    bearsSeldomWash: Math.max(wash.bearsLeast, bearsWash),
    asksWash: wash.asks[scalp],
  };
}

function toleranceOf(
  told: HairAnswers,
  head: Head | undefined,
  allowance: AllowanceInUse | undefined,
  { allowance: practice }: Practice,
): number {
  const untoldDamage = head?.damage ? 0 : damageOf(told.damage, practice);
  if (allowance?.byHand && allowance.exact !== undefined) return allowance.exact;
  const { thickness = 'medium', porosity = 'medium' } = told;
  const base = head?.setAside.includes('hair') ? 'some' : practice.base[thickness][porosity];
  return clamped(allowances.indexOf(base) + (allowance?.others ?? 0) + untoldDamage);
}

const clamped = (at: number) => Math.max(0, Math.min(allowances.length - 1, at));
