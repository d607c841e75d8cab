import { type Lesson, lessonOf, newestTold } from '../../core/learn/lesson.ts';
import type { WashDayInput } from '../../core/wash-day/add-up.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { headInUse } from '../in-use.ts';
import type { Knowing } from '../knowing.ts';
import { candidatesOf, stillReading, washDayInput } from './wash-day-input.ts';

/** What the newest wash day of the head in use teaches, with the routine it was done by. */
export type Taught = { lesson: Lesson; routine: Routine; input: WashDayInput };

/** Undefined where it teaches nothing, belongs to no routine that is kept, or labels are still being read. */
export function taughtBy(knowing: Knowing): Taught | undefined {
  const { remembered } = knowing;
  const head = headInUse(remembered);
  const [entry] = head ? newestTold(head.id, { ...knowing, log: remembered.log }) : [];
  if (!head || !entry || entry.answered) return undefined;
  const steps = new Set(entry.done.steps.map(({ id }) => id));
  const routine = remembered.routines.find(
    (each) => each.head === head.id && each.steps.some(({ id }) => steps.has(id)),
  );
  if (!routine) return undefined;
  const input = washDayInput(knowing, routine);
  if (stillReading(knowing, input)) return undefined;
  const candidates = candidatesOf(knowing, true);
  // The practice in use follows from what is remembered.
  const by = [
    remembered,
    knowing.today,
    ...input.readings.values(),
    ...candidates.map(({ reading }) => reading),
  ];
  if (by.length !== last.by.length || by.some((each, at) => each !== last.by[at])) {
    const lesson = lessonOf({ ...input, head, candidates });
    last = { by, taught: lesson && { lesson, routine, input } };
  }
  return last.taught;
}

/** The last answer and all it goes by: views ask at every draw, and every change of the routine is tried for it. */
let last: { by: readonly unknown[]; taught: Taught | undefined } = { by: [], taught: undefined };
