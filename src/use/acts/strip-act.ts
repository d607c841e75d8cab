import type { TabPage } from '../../contract/messages.ts';
import type { StripAction } from '../../contract/paint-order.ts';
import { metOnPage } from '../judge/met-product.ts';
import type { Met } from '../knowing.ts';
import type { Act } from './acts.ts';
import { originOf } from './matters/sites.ts';

/** Where a strip stands: its tab, its frame, and the site that the browser says it is on. */
export type StripAt = { tab: number; frame: number; site: string | undefined };

/** The panel's place that a press on a strip opens, where it opens one. */
export const placeFor: Partial<Record<StripAction, string>> = {
  panel: 'page',
  add: 'routine',
  compare: 'compare',
  person: 'page',
  picture: 'page',
};

/** What stands where a strip was pressed; undefined where it has gone from the tab. */
export function metAtStrip(list: number, page: TabPage | null, { frame, site }: StripAt): Met | undefined {
  const found = page?.lists.find((each) => each.id === list && each.frame === frame);
  return page && found && originOf(page.url) === site ? metOnPage(found, page) : undefined;
}

/**
 * What any other press on the strip of one list comes to, as an act like any other; a reason (word key) where the
 * list has gone from the tab.
 * @param id of the product, where it is to be kept
 */
export function actOnStrip(
  { list, action, id }: { list: number; action: StripAction; id: string },
  page: TabPage | null,
  at: StripAt,
): Act | { reason: string } {
  const met = metAtStrip(list, page, at);
  if (!page || !met) return { reason: 'page.done.gone' };
  if (action === 'pause') return { act: 'pause', url: page.url };
  if (action === 'not-a-list') return { act: 'not-a-list', url: page.url, text: met.text };
  return { act: 'keep', met, id };
}
