import { acrossHeads, untoldOf } from '../../../judge/asked.ts';
import { worseOf } from '../../../judge/finding.ts';
import { doseAnswer, proteinAnswer } from '../../../judge/rules/protein.ts';
import { washesBetween } from '../cadence.ts';
import {
  type Day,
  type DayStep,
  distinctProducts,
  filledSteps,
  finding,
  mentionsOf,
  type Rule,
} from '../day.ts';

/** Do the doses of protein, as much of each as stays and as often as it comes, exceed what this hair takes? */
export const tooMuchProtein: Rule = {
  id: 'too-much-protein',
  of: 'day',
  aspect: 'protein',
  sees: (step, day) =>
    step.filled && step.traits.protein === 'yes'
      ? `${perWash(step, day)} ${step.traits.dose} ${step.traits.doseAsMeasured} ${step.kind} ${step.product}`
      : '',
  softens: () => false,
  mayHelp: (before, after) => before !== '' && (after === '' || dose(after) < dose(before)),
  ask(day) {
    const steps = distinctProducts(filledSteps(day)).filter(({ traits }) => traits.protein === 'yes');
    if (steps.length === 0) return [];
    const sum = (of: (step: DayStep) => number) => steps.reduce((all, step) => all + of(step), 0);
    const total = sum((step) => perWash(step, day));
    const measured = sum((step) => (step.traits.doseAsMeasured * perWash(step, day)) / step.traits.dose);
    const added = acrossHeads(day.hair.numbers, (hair) => doseAnswer(total, measured, hair));
    // One that is too much by itself stays so, however seldom it comes.
    const alone = steps.filter((step) => proteinAnswer(step, day.hair) === 'does-not-suit');
    const untold = steps.some((step) => proteinAnswer(step, day.hair) === 'cannot-tell');
    const answer =
      alone.length > 0
        ? worseOf(added, 'with-care')
        : untold && added !== 'suits'
          ? worseOf(added, 'cannot-tell')
          : added;
    const key =
      answer === 'suits'
        ? 'within'
        : answer === 'cannot-tell'
          ? 'hair-unknown'
          : alone.length > 0
            ? 'one'
            : 'all';
    const deciding = key === 'one' ? alone : steps;
    return [
      finding(
        this,
        answer,
        { key: `rules.too-much-protein.${key}`, values: { n: deciding.length } },
        {
          steps: deciding,
          mentions: deciding.flatMap((step) => mentionsOf(step, step.traits.doses)),
          unknown: untoldOf(answer, day.hair),
          extent: total,
        },
      ),
    ];
  },
};

const dose = (look: string) => Number(look.split(' ')[0]);

/** Dose of a step, spread over the washes at which it is left out. */
export const perWash = ({ traits, cadence }: DayStep, { washEvery }: Pick<Day, 'washEvery'>) =>
  traits.dose / washesBetween(cadence, washEvery);
