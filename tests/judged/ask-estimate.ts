import { notBuilt } from './not-built.ts';
import type { Row } from './rows.ts';

export type EstimateAnswer = { low: number; high: number };

/** How much of an ingredient is likely in it, in percent? */
export function askEstimate(_label: Row, _ingredient: string): EstimateAnswer {
  return notBuilt('askEstimate');
}
