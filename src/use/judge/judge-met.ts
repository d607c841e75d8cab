import type { Product } from '../../core/product/product.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { Knowing, Met } from '../knowing.ts';
import { type Check, type Judged, judgeProduct } from './judge-product.ts';
import { isKeptForElsewhere, isNotForHair, type KnownProduct, knownProduct } from './met-product.ts';

/** A product read as what it is known as, and held against the head and the routine in use. */
export type Held = {
  reading: Reading;
  /** It is for another place: said instead of an answer. */
  notForHair: boolean;
  judged: Judged;
  /** None where no head is described, what was read is no list, or it is not for hair. */
  checks: Check[];
};

/** A product that was met on a page or a shelf, or pasted; undefined while somebody else is reading it. */
export function judgeMet(knowing: Knowing, met: Met): (Held & { known: KnownProduct }) | undefined {
  const known = knownProduct(knowing.remembered, met);
  const { kept, kind, use, facts } = known;
  const reading = knowing.reading(met.text, { kind, use, facts, ...(kept && { sources: kept.sources }) });
  return (
    reading && { known, ...held(knowing, { reading, kind, use, product: kept?.id }, isNotForHair(known)) }
  );
}

/** A product kept, by its newest label. */
export function judgeKept(knowing: Knowing, product: Product): Held | undefined {
  const { id, kind, use, labels } = product;
  const reading = labels[0] && knowing.reading(labels[0].text, product);
  return reading && held(knowing, { reading, kind, use, product: id }, isKeptForElsewhere(product));
}

function held(knowing: Knowing, judged: Judged, notForHair: boolean): Held {
  const { reading } = judged;
  const checks = notForHair || reading.refused ? [] : judgeProduct(knowing, judged);
  return { reading, judged, notForHair, checks };
}
