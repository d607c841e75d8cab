import type { Said } from '../../core/judge/finding.ts';
import type { ProductKind } from '../../core/product/product.ts';
import type { ReadAs } from '../../core/reading/reading.ts';
import type { Change } from '../../store/remembered.ts';
import type { Decided, Knowing, Met } from '../knowing.ts';
import { type Pin, pinProduct, unpin } from './matters/pins.ts';
import { correctKind, keepProduct, mergeInto, removeProduct } from './matters/products.ts';
import { type Adding, addToRoutine, fillStep } from './matters/routines.ts';
import { listIsHere, notAList, pauseSite, resumeSite, unlearnSite } from './matters/sites.ts';

/**
 * Everything a user can ask to be done, as plain data: it travels in a message and is decided in the writer's
 * turn, by what is remembered then. Ids of what may be new come along, so that asking twice does it once.
 */
export type Act =
  /** `as` is the product it is, where the user said so; `picture` a small one of its page, as a data URL. */
  | { act: 'keep'; met: Met; id: string; owned?: boolean; as?: string; picture?: string }
  | { act: 'remove'; product: string }
  | { act: 'merge'; kept: string; other: string }
  | { act: 'correct-kind'; met: Met; kind?: ProductKind }
  | ({ act: 'add' } & Adding)
  | { act: 'fill-step'; routine: string; step: string; product?: string }
  | { act: 'pin' | 'unpin'; pin: Pin }
  | { act: 'pause' | 'resume' | 'unlearn'; url: string }
  | { act: 'not-a-list'; url: string; text: string }
  | { act: 'list-is-here'; url: string; selector: string }
  | { act: 'read-as'; printed: string; name: ReadAs[string] | null }
  /** Changes that a form made of what it shows. */
  | { act: 'change'; changes: Change[]; say?: Said };

/** What an act may look at. */
export type Deciding = Pick<Knowing, 'remembered' | 'practice'> & { now: string };

/** What an act comes to, by what is remembered. Pure. */
export function decide(act: Act, deciding: Deciding): Decided {
  const { remembered, now } = deciding;
  switch (act.act) {
    case 'keep':
      return keepProduct(remembered, { ...act, now });
    case 'remove':
      return removeProduct(remembered, act.product);
    case 'merge':
      return mergeInto(remembered, act.kept, act.other);
    case 'correct-kind':
      return correctKind(remembered, act.met, act.kind);
    case 'add':
      return addToRoutine(deciding, act, now);
    case 'fill-step':
      return fillStep(remembered, { ...act, product: act.product });
    case 'pin':
      return pinProduct(remembered, act.pin);
    case 'unpin':
      return unpin(remembered, act.pin);
    case 'pause':
      return pauseSite(remembered, act.url);
    case 'resume':
      return resumeSite(remembered, act.url);
    case 'unlearn':
      return unlearnSite(remembered, act.url);
    case 'not-a-list':
      return notAList(remembered, act.url, act.text);
    case 'list-is-here':
      return listIsHere(remembered, act.url, act.selector);
    case 'read-as':
      return readAs(act.printed, act.name);
    case 'change':
      return act;
  }
}

/** A name is read as one of the dictionary, as what the user says it is, or (empty) as printed; null takes that back. */
function readAs(printed: string, name: ReadAs[string] | null): Decided {
  const changes: Change[] = [{ do: 'read-as', printed, name }];
  if (name === null) return { changes, say: { key: 'panel.read-as.dropped', values: { printed } } };
  if (name === '') return { changes, say: { key: 'panel.mended.left', values: { printed } } };
  if (typeof name === 'string')
    return { changes, say: { key: 'panel.read-as.done', values: { printed, name } } };
  return { changes, say: { key: `panel.told.so.${name.as}`, values: { printed } } };
}
