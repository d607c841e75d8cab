import { buildDay } from '../../src/core/plan/build/build.ts';
import { usualUse } from '../../src/core/product/product.ts';
import { dayInput } from './judge-day.ts';
import { productOf } from './judge-row.ts';
import { type Row, type Rows, rowOf, wordsOf } from './rows.ts';

export type BuildAnswer = {
  /** Label by kind of step. */
  steps: Record<string, string>;
  proteinStep?: string;
  missing: string[];
};

/** Which of the products on hand does each step, which carries the protein, and what is missing? */
export function askBuild(head: Row, onHand: string | readonly string[], labels: Rows): BuildAnswer {
  const candidates = (typeof onHand === 'string' ? wordsOf(onHand) : onHand).flatMap((label) => {
    const row = rowOf(labels, label);
    if (!row) throw new Error(`no label ${label}`);
    const { kind, use, reading } = productOf(row);
    return kind ? [{ product: label, kind, use: use ?? usualUse[kind], reading, owned: true }] : [];
  });
  const [plan] = buildDay({ ...dayInput(head, [], labels), candidates }).plans;
  return {
    steps: Object.fromEntries(plan?.steps.map(({ kind, product = '' }) => [kind, product]) ?? []),
    ...(plan && plan.carrier !== 'none' && { proteinStep: plan.carrier }),
    missing: plan?.missing.map(({ kind, protein }) => `${kind} (${protein})`) ?? [],
  };
}
