import type { Day } from '../wash-day/rules/day.ts';
import { distinctProducts, filledSteps, isKind, staysOn } from '../wash-day/rules/day.ts';
import { perWash } from '../wash-day/rules/protein/too-much-protein.ts';
import { tooHeavy } from '../wash-day/rules/too-heavy.ts';
import { tooLittleMoisture } from '../wash-day/rules/too-little-moisture.ts';
import type { Cause } from './learn-practice.ts';

const extentOf = (rule: typeof tooHeavy, day: Day): number | undefined => {
  const [found] = rule.ask(day);
  return found?.unknown ? undefined : found?.extent;
};

const doseOf = (day: Day) =>
  distinctProducts(filledSteps(day)).reduce((all, step) => all + perWash(step, day), 0);

/** How much of a cause a planned day holds, less being better; 0 where it cannot be told. In the rules' own measures. */
export const causes: Record<Cause, (day: Day) => number> = {
  /** Doses at each wash. */
  protein: doseOf,
  /** The dose that is missing to one that matters; what was not read may hold one. */
  strength: (day) =>
    filledSteps(day).some(({ traits }) => traits.protein === 'maybe')
      ? 0
      : Math.max(0, day.practice.judge.dose.matters - doseOf(day)),
  /** Stiffness of all that is left on, per percent. */
  hold: (day) =>
    filledSteps(day)
      .filter(staysOn)
      .reduce((all, { traits }) => all + traits.stiff, 0),
  /** Softness that is missing to the most that is of use, and leave-ons that undo it. */
  moisture: (day) => {
    const extent = extentOf(tooLittleMoisture, day);
    return extent === undefined ? 0 : Math.max(0, extent + day.practice.judge.moisture.most);
  },
  /** Against what these strands carry. */
  weight: (day) => extentOf(tooHeavy, day) ?? 0,
  /** Products whose films no cleanser of the day lifts. */
  films: (day) => {
    const steps = filledSteps(day);
    const lifts = new Set(steps.flatMap(({ traits }) => traits.wash?.lifts ?? []));
    if (lifts.has('strong')) return 0;
    return steps.filter(
      (step) =>
        !isKind(day, 'cleansing', step) &&
        step.traits.films.strong.length + (lifts.has('mild') ? 0 : step.traits.films.mild.length) > 0,
    ).length;
  },
  /** The harshest wash. */
  harsh: (day) => Math.max(0, ...filledSteps(day).map(({ traits }) => traits.wash?.harsh ?? 0)),
};
