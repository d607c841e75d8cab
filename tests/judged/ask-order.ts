import { practice } from '../../dictionary/practice.ts';
import { bringsOf } from '../../src/core/amounts/brings.ts';
import { readingOf, usageOf } from './label-reading.ts';
import type { Row } from './rows.ts';

export type More = 'A' | 'B' | 'same';
export type OrderAnswer = { moisture: More; protein: More };

/** Which of two products brings more moisture and more protein, as used? */
export function askOrder(a: Row, b: Row): OrderAnswer {
  const [one, other] = [a, b].map((row) => bringsOf(readingOf(row), usageOf(row), practice.washDay));
  const more = (what: 'moisture' | 'protein', least: number): More => {
    const [x, y] = [one![what].mg.likely, other![what].mg.likely];
    if (Math.max(x, y) < least) return 'same';
    return x >= y ? 'A' : 'B';
  };
  return { moisture: more('moisture', 0.5), protein: more('protein', 0.1) };
}
