import { acrossHeads, untoldOf } from '../../judge/asked.ts';
import type { Answer } from '../../judge/finding.ts';
import { answersByWeight } from '../../judge/finding.ts';
import { harshAnswer } from '../../judge/rules/cleansing.ts';
import { washesBetween } from './cadence.ts';
import { type Day, type DayStep, filledSteps, finding, isKind, mentionsOf, type Rule } from './day.ts';

/** Is a cleanser too harsh for this hair as often as it comes? */
export const harshCleansing: Rule = {
  id: 'harsh-cleansing',
  of: 'day',
  aspect: 'cleansing',
  sees: (step, day) =>
    step.filled && isKind(day, 'cleansing', step)
      ? `${harshnessOf(step, day)} ${washesBetween(step.cadence, day.washEvery) > 1} ${step.traits.wash?.scalp} ${step.traits.read}`
      : '',
  mayHelp: (before) => before !== '',
  ask(day) {
    const asked = filledSteps(day)
      .filter((step) => isKind(day, 'cleansing', step) && step.traits.wash && step.traits.read !== 'none')
      .map((step) => ({ step, answer: cleansingAnswer(step, day) }));
    if (asked.length === 0) return [];
    const answer = answersByWeight.find((each) => asked.some((one) => one.answer === each))!;
    const deciding = asked.filter((one) => one.answer === answer).map(({ step }) => step);
    const key = {
      suits: 'mild-enough',
      'with-care': 'strong',
      'does-not-suit': 'too-harsh',
      'cannot-tell': 'hair-unknown',
    }[answer];
    return [
      finding(
        this,
        answer,
        { key: `rules.harsh-cleansing.${key}` },
        {
          steps: deciding,
          mentions:
            answer === 'suits' ? [] : deciding.flatMap((step) => mentionsOf(step, step.traits.cleansers)),
          condition: answer === 'with-care' ? { key: 'rules.harsh-cleansing.seldom' } : undefined,
          unknown: untoldOf(answer, day.hair),
          extent: Math.max(...asked.map(({ step }) => harshnessOf(step, day))),
        },
      ),
    ];
  },
};

/** The same wash is milder on hair that meets it seldom. */
function harshnessOf({ traits, cadence }: DayStep, { washEvery, practice }: Day): number {
  const often = 1 + practice.judge.wash.perDoubling * Math.log2(washesBetween(cadence, washEvery));
  return (traits.wash?.harsh ?? 0) / often;
}

const cleansingAnswer = (step: DayStep, day: Day): Answer =>
  acrossHeads(day.hair.numbers, (hair) =>
    harshAnswer(
      { ...step.traits.wash!, harsh: harshnessOf(step, day) },
      hair,
      day.hair,
      washesBetween(step.cadence, day.washEvery) > 1 ? hair.bearsSeldomWash : hair.bearsWash,
    ),
  );
