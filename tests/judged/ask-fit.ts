import { notBuilt } from './not-built.ts';
import type { Row } from './rows.ts';

export type FitAnswer = 'suits' | 'with-care' | 'does-not-suit' | 'cannot-tell';

/** Does the product suit this head in one aspect? An avoided family decides before every aspect. */
export function askFit(_head: Row, _label: Row, _aspect: string): FitAnswer {
  return notBuilt('askFit');
}
