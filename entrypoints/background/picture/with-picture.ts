import type { Act } from '../../../src/use/acts/acts.ts';
import { pictureWanted } from '../../../src/use/acts/picture-wanted.ts';
import type { Parts } from '../parts.ts';
import { takePicture } from './take-picture.ts';

const patience = 2000; // ms that keeping a product waits for its picture, at most

/** The act, with a small picture of the product where one is wanted and the browser lets us see the page. */
export async function withPicture(
  act: Act,
  tab: number | undefined,
  { keeper, tabPages }: Pick<Parts, 'keeper' | 'tabPages'>,
  card?: string,
): Promise<Act> {
  if (tab === undefined || (act.act !== 'keep' && act.act !== 'add')) return act;
  const [remembered, page] = await Promise.all([keeper.remembered(), tabPages.get(tab)]);
  const wanted = pictureWanted(act, remembered, page, card);
  if (!wanted) return act;
  const picture = await Promise.race([
    takePicture(tab, wanted).catch(() => undefined),
    new Promise<undefined>((late) => setTimeout(late, patience)),
  ]);
  return picture ? { ...act, picture } : act;
}
