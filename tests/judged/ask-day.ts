import { washDay } from '../../src/core/wash-day/add-up.ts';
import { dayInput, type Printed } from './judge-day.ts';
import type { Row, Rows } from './rows.ts';
import { saysOf } from './says.ts';

export type DayAnswer = { overall: 'fine' | 'with-care' | 'wrong' | 'cannot-tell'; says: string[] };

const overall = {
  suits: 'fine',
  'with-care': 'with-care',
  'does-not-suit': 'wrong',
  'cannot-tell': 'cannot-tell',
} as const;

/** Is this a sensible wash day for the head, and what is said about it? */
export function askDay(head: Row, steps: Printed, labels: Rows): DayAnswer {
  const { answer, findings } = washDay(dayInput(head, steps, labels));
  return { overall: overall[answer], says: saysOf(findings) };
}
