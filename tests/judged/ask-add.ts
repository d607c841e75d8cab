import type { DayChange } from '../../src/core/plan/compare-days.ts';
import { previewAdd } from '../../src/core/plan/preview.ts';
import { dayInput, type Printed, stepOf } from './judge-day.ts';
import { type Row, type Rows, stepsOf } from './rows.ts';
import { saysOf } from './says.ts';

export type AddAnswer = { answer: DayChange; says: string[] };

/** What does one more product do to the wash day? */
export function askAdd(head: Row, routine: Printed, added: Printed, labels: Rows): AddAnswer {
  const { step, reading } = stepOf(stepsOf(added)[0]!, labels, 'added');
  const preview = previewAdd({
    ...dayInput(head, routine, labels),
    adding: { step, reading, how: 'beside' },
  });
  return { answer: preview.answer, says: saysOf(preview.comes) };
}
