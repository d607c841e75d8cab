import type { ProductKind } from '../../product/product.ts';
import type { Cadence } from '../../wash-day/routine.ts';
import { washesBetween } from '../../wash-day/rules/cadence.ts';
import type { Day, DayStep } from '../../wash-day/rules/day.ts';
import type { BuildChoice } from './choices.ts';

type Turns = { day: Day; worth: number };

/**
 * Days like this one in which one step after the wash is done by two products in turns: at one wash the best that
 * holds protein, at the next the best that holds none (protein week, moisture week). `worth` is what changes in the
 * sum of the steps: each of the two does half of the step.
 */
export function takingTurns(
  day: Day,
  choices: ReadonlyMap<ProductKind, readonly BuildChoice[]>,
  stays: ReadonlySet<string>,
): Turns[] {
  return day.practice.washDay.kinds.followUp.flatMap((kind): Turns[] => {
    const at = day.steps.findIndex((step) => step.kind === kind);
    const all = choices.get(kind) ?? [];
    const now = all.find(({ step }) => step.product === day.steps[at]?.product);
    if (!now) return [];
    const [rich, plain] = (['yes', 'no'] as const).map((protein) => {
      const those = all.filter(({ step }) => step.traits.protein === protein);
      return those.find(({ step }) => stays.has(step.product!)) ?? those[0];
    });
    const pinned = all.filter(({ step }) => stays.has(step.product!));
    if (!rich || !plain || pinned.some((each) => each !== rich && each !== plain)) return [];
    const every = Math.max(...[rich, plain].map(({ step }) => washesBetween(step.cadence, day.washEvery)));
    const turn = ({ step }: BuildChoice, from: number): DayStep => {
      const cadence: Cadence = { every: 'nth-wash', n: 2 * every, from };
      return { ...step, cadence };
    };
    const steps = day.steps.toSpliced(at, 1, turn(rich, 1), turn(plain, 1 + every));
    return [{ day: { ...day, steps }, worth: (rich.worth + plain.worth) / 2 - now.worth }];
  });
}

/** Of steps that take turns the first only: what one day holds. */
export const onOneDay = <S extends { cadence: Cadence }>(steps: readonly S[]): S[] =>
  steps.filter(({ cadence }) => cadence.every !== 'nth-wash' || (cadence.from ?? 1) === 1);
