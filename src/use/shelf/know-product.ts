import { type BringStep, type Brings, bringsOf } from '../../core/amounts/brings.ts';
import type { Wish } from '../../core/plan/wish.ts';
import { type ProductFacts, pricePer100 } from '../../core/product/product.ts';
import { isProteinDose, type Reading } from '../../core/reading/reading.ts';
import type { LabelMet, PriceLimit } from '../../store/remembered.ts';
import { grantedBy } from '../acts/matters/wishes.ts';
import { judgeMet } from '../judge/judge-met.ts';
import type { Check } from '../judge/judge-product.ts';
import { factsAround, type KnownProduct } from '../judge/met-product.ts';
import type { Knowing } from '../knowing.ts';
import { passesOf } from './filters.ts';

/** One product of a shelf as it is known now: read anew, for the head and the routine in use. */
export type ShelfProduct = {
  entry: LabelMet;
  known: KnownProduct;
  reading: Reading;
  checks: Check[];
  /** By its page it is for another place than hair: it is read, not judged. */
  notForHair: boolean;
  protein: BringStep | 'unknown';
  moisture: BringStep | 'unknown';
  passes: string[];
  /** Things looked for that it is. */
  granted: Wish[];
};

/** What a label met before says today; undefined while somebody else is still reading it. */
export function knowProduct(knowing: Knowing, entry: LabelMet): ShelfProduct | undefined {
  const held = judgeMet(knowing, { text: entry.text, facts: factsAround(entry.product, entry) });
  if (!held) return undefined;
  const { known, reading, notForHair, checks } = held;
  const brings = bringsOf(reading, usageOf(known), knowing.practice.washDay);
  const protein = told(brings, brings.protein.step);
  const moisture = told(brings, brings.moisture.step);
  const sizes = new Set(
    reading.mentions.flatMap((mention) =>
      isProteinDose(mention) && mention.protein ? [mention.protein.size] : [],
    ),
  );
  const granted = notForHair ? [] : grantedBy(knowing, { reading, kind: known.kind });
  return {
    granted,
    entry,
    known,
    reading,
    checks,
    notForHair,
    protein,
    moisture,
    passes: notForHair
      ? []
      : passesOf({
          protein,
          moisture,
          sizes,
          staysOn: known.use !== 'rinse-off',
          checks,
          granted: granted.length > 0,
          kind: known.kind,
          cheap: isUnder(known.facts, knowing.remembered.settings.shelfPrice),
        }),
  };
}

/** A price in another currency is not compared, and one that is not known is under no limit. */
export function isUnder(facts: ProductFacts, limit: PriceLimit | undefined): boolean {
  const per = pricePer100(facts);
  return limit !== undefined && per !== undefined && facts.currency === limit.currency && per <= limit.most;
}

/** A product of no known kind is taken for one that stays on, the careful reading. */
const usageOf = ({ kind = 'leave-in', use }: KnownProduct) => ({ kind, ...(use && { use }) });

/** That there is none cannot be said of a label of which too little was read. */
const told = ({ unsure }: Brings, step: BringStep): BringStep | 'unknown' =>
  unsure && step === 'none' ? 'unknown' : step;
