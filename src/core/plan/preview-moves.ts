import type { Finding } from '../judge/finding.ts';
import { type WashDayInput, washDay } from '../wash-day/add-up.ts';
import type { Routine } from '../wash-day/routine.ts';
import { changeOfAll, changesOf, comeAndGo, type DayChange } from './compare-days.ts';
import { applyMoves, type Move } from './moves.ts';
import type { Candidate } from './suggest.ts';

export type MovesPreview = {
  /** The day after against the day before. */
  answer: DayChange;
  /** What would speak newly or louder, and what no more or less loud. */
  comes: Finding[];
  goes: Finding[];
  routine: Routine;
  /** Steps that stand there changed or new. */
  touched: string[];
};

/** A routine with some changes made, before anything is changed. Pure. */
export function previewMoves(
  input: WashDayInput,
  moves: readonly Move[],
  candidates: readonly Pick<Candidate, 'product' | 'reading'>[],
  newId: () => string,
): MovesPreview {
  const { routine: old, practice } = input;
  const routine = applyMoves(old, moves, practice.washDay.kinds.order, newId);
  const had = new Map(old.steps.map((step) => [step.id, step]));
  const read = new Map(candidates.map(({ product, reading }) => [product, reading]));
  const readings = new Map(
    routine.steps.map(({ id, product }) => [
      id,
      product === had.get(id)?.product ? input.readings.get(id) : read.get(product ?? ''),
    ]),
  );
  const touched = routine.steps
    .filter(({ id, product, cadence }) => {
      const old = had.get(id);
      return !old || old.product !== product || old.cadence !== cadence;
    })
    .map(({ id }) => id);
  const [before, after] = [washDay(input), washDay({ ...input, routine, readings })];
  const changes = changesOf(before.findings, after.findings);
  return {
    answer: changeOfAll(changes, 0),
    ...comeAndGo(changes, before.findings, after.findings),
    routine,
    touched,
  };
}
