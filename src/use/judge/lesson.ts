import { type Lesson, type LessonInput, newestTold } from '../../core/learn/lesson.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { headInUse } from '../in-use.ts';
import type { Knowing } from '../knowing.ts';
import { candidatesOf, stillReading, washDayInput } from './wash-day-input.ts';

/** What the newest wash day of the head in use teaches, with the routine it was done by. */
export type Taught = { lesson: Lesson; routine: Routine; input: LessonInput };

/** What is to be asked of the newest wash day, and all that the answer goes by. */
export type LessonAsked = { input: LessonInput; routine: Routine; by: readonly unknown[] };

/** Undefined where it can teach nothing, belongs to no routine that is kept, or labels are still being read. */
export function lessonAsked(knowing: Knowing): LessonAsked | undefined {
  const { remembered, today } = knowing;
  const head = headInUse(remembered);
  const [entry] = head ? newestTold(head.id, { ...knowing, log: remembered.log }) : [];
  if (!head || !entry || entry.answered) return undefined;
  const steps = new Set(entry.done.steps.map(({ id }) => id));
  const routine = remembered.routines.find(
    (each) => each.head === head.id && each.steps.some(({ id }) => steps.has(id)),
  );
  if (!routine) return undefined;
  const day = washDayInput(knowing, routine);
  if (stillReading(knowing, day)) return undefined;
  const candidates = candidatesOf(knowing, true);
  // The practice in use follows from what is remembered.
  return {
    input: { ...day, head, candidates },
    routine,
    by: [remembered, today, candidates, ...day.readings.values()],
  };
}
