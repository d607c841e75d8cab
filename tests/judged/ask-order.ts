import { notBuilt } from './not-built.ts';
import type { Row } from './rows.ts';

export type More = 'A' | 'B' | 'same';
export type OrderAnswer = { moisture: More; protein: More };

/** Which of two products brings more moisture and more protein, as used? */
export function askOrder(_a: Row, _b: Row): OrderAnswer {
  return notBuilt('askOrder');
}
