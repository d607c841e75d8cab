import type { Product } from '../../core/product/product.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { Remembered } from '../../store/remembered.ts';
import { headInUse, routineInUse } from '../in-use.ts';
import type { Knowing, Met } from '../knowing.ts';
import { type Check, judgeProduct, type ToJudge } from './judge-product.ts';
import { isKeptForElsewhere, isNotForHair, type KnownProduct, knownProduct } from './met-product.ts';
import { stillReading, washDayInput } from './wash-day-input.ts';

/** A product read as what it is known as, and held against the head and the routine in use. */
export type JudgedProduct = {
  reading: Reading;
  /** It is for another place: said instead of an answer. */
  notForHair: boolean;
  judged: ToJudge;
  /** None where no head is described, what was read is no list, or it is not for hair. */
  checks: Check[];
};

/** A product that was met on a page or a shelf, or pasted; undefined while somebody else is reading it. */
export function judgeMet(knowing: Knowing, met: Met): (JudgedProduct & { known: KnownProduct }) | undefined {
  const known = knownProduct(knowing.remembered, met);
  const { kept, kind, use, facts } = known;
  const reading = knowing.reading(met.text, { kind, use, facts, ...(kept && { sources: kept.sources }) });
  return (
    reading && { known, ...held(knowing, { reading, kind, use, product: kept?.id }, isNotForHair(known)) }
  );
}

/** What was judged of one store's products; it goes with the store. */
const judged = new WeakMap<Remembered, Map<Product, { today: string; held: JudgedProduct }>>();

/** Whether a product kept has been judged by what is remembered now, so that asking again costs nothing. */
export const isJudged = ({ remembered, today }: Knowing, product: Product): boolean =>
  judged.get(remembered)?.get(product)?.today === today;

/** A product kept, by its newest label; judged once for each store. */
export function judgeKept(knowing: Knowing, product: Product): JudgedProduct | undefined {
  const { remembered, today } = knowing;
  const { id, kind, use, labels } = product;
  const reading = labels[0] && knowing.reading(labels[0].text, product);
  if (!reading) return undefined;
  const before = judged.get(remembered)?.get(product);
  if (before?.today === today && before.held.reading === reading) return before.held;
  const now = held(knowing, { reading, kind, use, product: id }, isKeptForElsewhere(product));
  if (routineIsRead(knowing)) {
    const all = judged.get(remembered) ?? new Map();
    judged.set(remembered, all.set(product, { today, held: now }));
  }
  return now;
}

/** Before that, what is said of the wash day may change without anything new being remembered. */
function routineIsRead(knowing: Knowing): boolean {
  const routine = routineInUse(knowing.remembered, headInUse(knowing.remembered));
  return !routine || !stillReading(knowing, washDayInput(knowing, routine));
}

function held(knowing: Knowing, judged: ToJudge, notForHair: boolean): JudgedProduct {
  const { reading } = judged;
  const checks = notForHair || reading.refused ? [] : judgeProduct(knowing, judged);
  return { reading, judged, notForHair, checks };
}
