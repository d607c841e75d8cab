import type { TabPage } from '../../contract/messages.ts';
import type { Remembered } from '../../store/remembered.ts';
import { knownProduct } from '../judge/met-product.ts';
import type { Act } from './acts.ts';

export type PictureWanted = { on: string | undefined; said?: string | undefined; card?: string };

/**
 * Where the act keeps a product that the tab's own page shows, that has no picture yet, and the user wants
 * pictures: the address of the picture by the page's word, if it has one; of a product on a shelf, its own address;
 * and `on` which page it is shown: by now the tab may have gone on to another.
 * @param card address of the product's page, where the tab shows it on a shelf
 */
export function pictureWanted(
  act: Extract<Act, { act: 'keep' | 'add' }>,
  remembered: Remembered,
  page: TabPage | null,
  card?: string,
): PictureWanted | undefined {
  const { text, facts } = act.met;
  const shown = page?.lists.find((list) => list.frame === 0 && list.text === text);
  if ((!shown && !card) || remembered.settings.pictures === false) return undefined;
  if (knownProduct(remembered, act.met).kept?.picture) return undefined;
  const on = page?.url;
  return card ? { card, on } : { said: facts.image ?? shown?.product?.image, on };
}
