import type { Act } from '../../../src/use/acts/acts.ts';
import { knownProduct } from '../../../src/use/judge/met-product.ts';
import type { Parts } from '../parts.ts';
import { takePicture } from './take-picture.ts';

const patience = 2000; // ms that keeping a product waits for its picture, at most

/**
 * The act with a small picture of the product, where the act keeps one that the tab shows and that has none yet, the
 * reader wants pictures, and the browser lets us see the page.
 */
export async function withPicture(
  act: Act,
  tab: number | undefined,
  { keeper, tabPages }: Pick<Parts, 'keeper' | 'tabPages'>,
): Promise<Act> {
  if (tab === undefined || (act.act !== 'keep' && act.act !== 'add')) return act;
  const [remembered, page] = await Promise.all([keeper.remembered(), tabPages.get(tab)]);
  const { text, facts } = act.met;
  const shown = page?.lists.find((list) => list.frame === 0 && list.text === text);
  if (!shown || remembered.settings.pictures === false) return act;
  if (knownProduct(remembered, act.met).kept?.picture) return act;
  const picture = await Promise.race([
    takePicture(tab, facts.image ?? shown.product?.image).catch(() => undefined),
    new Promise<undefined>((late) => setTimeout(late, patience)),
  ]);
  return picture ? { ...act, picture } : act;
}
