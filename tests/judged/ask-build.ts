import { notBuilt } from './not-built.ts';
import type { Row, Rows } from './rows.ts';

export type BuildAnswer = {
  /** Label by kind of step. */
  steps: Record<string, string>;
  proteinStep?: string;
  missing: string[];
};

/** Which of the products on hand does each step, which carries the protein, and what is missing? */
export function askBuild(_head: Row, _onHand: string | readonly string[], _labels: Rows): BuildAnswer {
  return notBuilt('askBuild');
}
