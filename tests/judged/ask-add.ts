import { notBuilt } from './not-built.ts';
import type { PlannedStep, Row, Rows } from './rows.ts';

type Printed = string | readonly (string | Partial<PlannedStep>)[];

export type AddAnswer = { answer: 'better' | 'same' | 'worse' | 'cannot-tell'; says: string[] };

/** What does one more product do to the wash day? */
export function askAdd(_head: Row, _routine: Printed, _added: Printed, _labels: Rows): AddAnswer {
  return notBuilt('askAdd');
}
