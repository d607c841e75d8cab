import { browser } from 'wxt/browser';
import type { Messages } from '../../../src/contract/messages.ts';
import type { ShelfActed } from '../../../src/contract/shelf.ts';
import type { Keeper } from '../../../src/store/keeper.ts';
import { drawAct } from '../../../src/ui/describe/drawn/draw-shelf.ts';
import type { Acting } from '../../../src/use/acts/acting.ts';
import type { Act } from '../../../src/use/acts/acts.ts';
import { originOf } from '../../../src/use/acts/matters/sites.ts';
import { shelfAct } from '../../../src/use/shelf/act.ts';
import type { MetLabels } from '../../../src/use/shelf/met-labels.ts';
import { wordsForReader } from '../words.ts';

/** The act with the picture that the card shows. */
export type WithPicture = (act: Act) => Promise<Act>;

/** What the user chose on a card of the site that asks, done, and what to say of it there. */
export async function actOnCard(
  { address, act, id }: Messages['shelf-act']['request'],
  site: string | undefined,
  keeper: Keeper,
  met: MetLabels,
  acting: Acting,
  withPicture: WithPicture,
): Promise<ShelfActed> {
  if (originOf(address) !== site) return { said: [] };
  if (act === 'open') {
    await browser.tabs.create({ url: address });
    return { said: [] };
  }
  const remembered = await keeper.remembered();
  const t = await wordsForReader(remembered);
  if (act.startsWith('undo:')) return { said: drawAct(await acting.undo(act.slice('undo:'.length)), t) };
  const asked = shelfAct({ remembered }, (await met.of([address], remembered)).get(address), act, id);
  if (!asked) return { said: [] };
  if ('reason' in asked) return { said: [t(asked.reason)] };
  return { said: drawAct(await acting.act(await withPicture(asked), id), t) };
}
