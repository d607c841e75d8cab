import type { Head } from '../../../core/hair/head.ts';
import type { Wish } from '../../../core/plan/wish.ts';
import type { LogEntry, Routine } from '../../../core/wash-day/routine.ts';
import type { Change, Remembered } from '../../../store/remembered.ts';
import type { Decided } from '../../knowing.ts';
import { wishFor } from './wishes.ts';

/** What a wash day spoke for: a routine or head as it shall be, a thing to look for, or nothing. */
export type LessonAnswer = { routine: Routine } | { head: Head } | { wish: Wish } | 'left';

const words = { routine: 'log.learn.done', head: 'log.learn.done-head', wish: 'routine.wish.kept' };

/** Does what a wash day spoke for, or leaves it; either way the day is not asked again. One change, one undo. */
export function answerLesson(remembered: Remembered, entry: LogEntry, answer: LessonAnswer): Decided {
  const day: Change = {
    do: 'put',
    thing: 'log',
    value: { ...entry, answered: answer === 'left' ? 'left' : 'changed' },
  };
  if (answer === 'left') return { changes: [day], say: { key: 'log.learn.left' } };
  if ('routine' in answer)
    return {
      changes: [{ do: 'put', thing: 'routines', value: answer.routine }, day],
      say: { key: words.routine, values: { name: answer.routine.name } },
    };
  if ('head' in answer)
    return {
      changes: [{ do: 'put', thing: 'heads', value: answer.head }, day],
      say: { key: words.head, values: { name: answer.head.name } },
    };
  return { changes: [...wishFor(remembered, answer.wish).changes, day], say: { key: words.wish } };
}
