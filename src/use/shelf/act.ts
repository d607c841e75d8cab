import type { LabelMet } from '../../store/remembered.ts';
import type { Act } from '../acts/acts.ts';
import { headInUse, routineInUse } from '../in-use.ts';
import { knownProduct } from '../judge/met-product.ts';
import type { Knowing } from '../knowing.ts';

export const shelfActs = ['keep', 'add', 'pin'] as const;
export type ShelfAct = (typeof shelfActs)[number];

/**
 * What a press on a shelf's card comes to, as an act like any other. A reason (word key) where it cannot be done
 * from here.
 */
export function shelfAct(
  knowing: Pick<Knowing, 'remembered'>,
  { text, product }: LabelMet,
  act: ShelfAct,
  id: string,
): Act | { reason: string } {
  const met = { text, facts: product };
  const { kept, kind, facts } = knownProduct(knowing.remembered, met);
  if (act === 'keep') return { act: 'keep', met, id };
  if (act === 'pin') return { act: 'pin', pin: kept ? { product: kept.id } : { met } };
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
