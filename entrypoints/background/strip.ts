import type { Acted, TabPage } from '../../src/contract/messages.ts';
import type { StripAction } from '../../src/contract/paint-order.ts';
import type { Acting } from '../../src/use/acting.ts';
import { metOnPage } from '../../src/use/met-product.ts';
import { openPanel } from './panel.ts';
import type { TabPages } from './tab-pages.ts';

const places: Partial<Record<StripAction, string>> = { panel: 'page', add: 'routine', compare: 'compare' };

/** What the reader chose on the strip of one list. */
export async function stripAct(
  { list, action, id }: { list: number; action: StripAction; id: string },
  { tab, frame }: { tab: number; frame: number },
  { acting, pages }: { acting: Acting; pages: TabPages },
): Promise<Acted> {
  const place = places[action];
  if (place) {
    await openPanel(tab, place, { frame, id: list });
    return { ok: true };
  }
  const page: TabPage | null = await pages.get(tab);
  const found = page?.lists.find((each) => each.id === list && (each.frame ?? 0) === frame);
  if (!page || !found) return { ok: false, reason: 'page.done.gone' };
  if (action === 'pause') return acting.act({ act: 'pause', url: page.url }, id);
  if (action === 'not-a-list') return acting.act({ act: 'not-a-list', url: page.url, text: found.text }, id);
  return acting.act({ act: 'keep', met: metOnPage(found, page), id }, id);
}
