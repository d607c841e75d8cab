import { notBuilt } from './not-built.ts';
import type { PlannedStep, Row, Rows } from './rows.ts';

export type DayAnswer = { overall: 'fine' | 'with-care' | 'wrong' | 'cannot-tell'; says: string[] };

/** Is this a sensible wash day for the head, and what is said about it? */
export function askDay(
  _head: Row,
  _steps: string | readonly (string | Partial<PlannedStep>)[],
  _labels: Rows,
): DayAnswer {
  return notBuilt('askDay');
}
