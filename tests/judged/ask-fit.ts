import type { Answer, Aspect } from '../../src/core/judge/finding.ts';
import { answerFor, fitProduct } from '../../src/core/judge/fit.ts';
import { contextOf, productOf } from './judge-row.ts';
import type { Row } from './rows.ts';

/** Does the product suit this head in one aspect? An avoided family decides before every aspect. */
export function askFit(head: Row, label: Row, aspect: string): Answer {
  return answerFor(fitProduct(productOf(label), contextOf(head)), aspect as Aspect);
}
