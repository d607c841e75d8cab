import type { LabelMet } from '../../store/remembered.ts';
import type { Act } from '../acts/acts.ts';
import { headInUse, routineInUse } from '../in-use.ts';
import { knownProduct } from '../judge/met-product.ts';
import type { Knowing } from '../knowing.ts';

/**
 * What a press on a shelf's card comes to, as an act like any other: keep, add or pin. A reason (word key) where it
 * cannot be done from here; undefined where it is none of these, or nothing is known of the card.
 */
export function shelfAct(
  knowing: Pick<Knowing, 'remembered'>,
  entry: LabelMet | undefined,
  act: string,
  id: string,
): Act | { reason: string } | undefined {
  if (!entry) return undefined;
  const { text, product } = entry;
  const met = { text, facts: product };
  const { kept, kind, facts } = knownProduct(knowing.remembered, met);
  if (act === 'keep') return { act: 'keep', met, id };
  if (act === 'pin') return { act: 'pin', pin: kept ? { product: kept.id } : { met } };
  if (act !== 'add') return undefined;
  const routine = routineInUse(knowing.remembered, headInUse(knowing.remembered));
  if (!routine) return { reason: 'shelf.no-routine' };
  if (!kind) return { reason: 'shelf.no-kind' };
  return {
    act: 'add',
    met: { text, facts },
    kind,
    how: 'beside',
    routine,
    ids: { product: id, step: `${id}-step` },
  };
}
