import { acrossHeads, byRatio, untoldOf } from '../../judge/asked.ts';
import type { HairNumbers } from '../../judge/hair-numbers.ts';
import { weightAnswer, weightOn } from '../../judge/rules/weight.ts';
import { washesBetween } from './cadence.ts';
import {
  type Day,
  type DayStep,
  distinctProducts,
  filledSteps,
  finding,
  isKind,
  mentionsOf,
  type Rule,
} from './day.ts';

/** Is one product too heavy for these strands, or do all of them together weigh them down? */
export const tooHeavy: Rule = {
  id: 'too-heavy',
  of: 'day',
  aspect: 'weight',
  sees: (step, day) =>
    step.filled && weighs(step, day)
      ? `${share(step, day)} ${step.traits.weight} ${step.traits.film} ${step.product}`
      : '',
  softens: () => false,
  mayHelp: (before) => before !== '',
  ask(day) {
    const { together } = day.practice.judge.weight;
    const steps = distinctProducts(filledSteps(day)).filter((step) => weighs(step, day));
    if (steps.length === 0) return [];
    const total = (hair: HairNumbers) =>
      steps.reduce((all, step) => all + (weightOn(step.traits, hair) * share(step, day)) / hair.carries, 0);
    const answers = steps.map((step) => ({ step, answer: weightAnswer(step, day.hair) }));
    const heavy = answers.filter(({ answer }) => answer === 'does-not-suit').map(({ step }) => step);
    const unsure = answers.filter(({ answer }) => answer === 'cannot-tell').map(({ step }) => step);
    const sum = acrossHeads(day.hair.numbers, (hair) => byRatio(total(hair) / together.suits, together.upTo));
    const rinsed = heavy.every(({ use }) => use === 'rinse-off');
    const answer =
      heavy.length > 0
        ? rinsed && sum !== 'does-not-suit'
          ? 'with-care'
          : 'does-not-suit'
        : sum === 'suits' && unsure.length > 0
          ? 'cannot-tell'
          : sum;
    const key =
      answer === 'suits'
        ? 'carried'
        : answer === 'cannot-tell'
          ? 'hair-unknown'
          : heavy.length > 0
            ? 'one'
            : 'all';
    const deciding =
      heavy.length > 0 ? heavy : answer === 'cannot-tell' && unsure.length > 0 ? unsure : steps;
    return [
      finding(
        this,
        answer,
        { key: `rules.too-heavy.${key}`, values: { n: deciding.length } },
        {
          steps: deciding,
          mentions: deciding.flatMap((step) => mentionsOf(step, step.traits.heavy)),
          unknown: untoldOf(answer, day.hair),
          extent: Math.max(...day.hair.numbers.map(total)),
        },
      ),
    ];
  },
};

/** What comes before the wash and the wash itself are gone when it dries. */
const weighs = (step: DayStep, day: Day) =>
  step.traits.weight > 0 && step.kind !== 'pre-wash' && !isKind(day, 'cleansing', step);

const share = ({ cadence }: DayStep, { washEvery }: Day) => 1 / washesBetween(cadence, washEvery);
