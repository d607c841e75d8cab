import { proposable } from '../plan/medicated.ts';
import { type MoveOption, optionsOf, type StepChoice } from '../plan/moves.ts';
import type { Candidate } from '../plan/suggest.ts';
import { wishedStep, wishes } from '../plan/wish.ts';
import { type Day, type DayStep, dayStep, isKind } from '../wash-day/rules/day.ts';
import { treatmentDaysOf } from '../wash-day/rules/protein/treatments-apart.ts';
import type { Cause } from './learn-practice.ts';

/**
 * Every single change that products on hand and thought of admit; what is added comes as often as it should. A wash
 * that lifts every film comes now and then, in no place of the usual one (common practice).
 */
export function optionsFor(day: Day, candidates: readonly Candidate[], cause: Cause): MoveOption[] {
  const placed = new Set(day.steps.map(({ product }) => product));
  const choices = proposable(candidates, placed).map(
    ({ product, kind, use, reading, owned }): StepChoice => ({
      step: dayStep(
        { id: `new-${product}`, kind, use, product, optional: false, cadence: { every: 'wash' } },
        reading,
        day.practice,
      ),
      fill: { product, alternatives: [], owned },
    }),
  );
  return optionsOf(day, choices)
    .filter(({ move, from }) => move.do !== 'omit' || canGo(day, from!))
    .filter(({ move, to }) => cause !== 'films' || move.do !== 'swap' || to!.traits.wash?.lifts !== 'strong')
    .map((option) => inRhythm(day, option, cause));
}

/** What may be left out, what treats, and the second of two; a day keeps what it is made of. */
const canGo = (day: Day, step: DayStep) =>
  step.optional ||
  isKind(day, 'strengthening', step) ||
  day.steps.some(({ id, kind, filled }) => filled && id !== step.id && kind === step.kind);

/** The same for products that nobody has yet; what lifts films is a wash. */
export const wishesFor = (day: Day, cause: Cause): MoveOption[] =>
  optionsOf(
    day,
    wishes(day.practice.washDay)
      .filter(({ lifts }) => cause !== 'films' || lifts)
      .map((wish): StepChoice => ({ step: wishedStep(wish, day.practice), fill: { wish } })),
  ).filter(({ move }) => 'with' in move);

function inRhythm(day: Day, option: MoveOption, cause: Cause): MoveOption {
  const { move, to } = option;
  if (move.do !== 'add' || !to) return option;
  const n = everyNth(day, to, cause);
  return n > 1 ? { ...option, to: { ...to, cadence: { every: 'nth-wash', n } } } : option;
}

function everyNth(day: Day, step: DayStep, cause: Cause): number {
  if (isKind(day, 'strengthening', step))
    return Math.ceil(treatmentDaysOf(step, day) / Math.max(1, day.washEvery));
  return cause === 'films' && isKind(day, 'cleansing', step) ? day.practice.learn.clarifyEvery : 1;
}
