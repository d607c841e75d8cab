import type { Acted, Messages, Told } from '../../../src/contract/messages.ts';
import type { Drawing, StripAction } from '../../../src/contract/paint-order.ts';
import { drawNotice } from '../../../src/ui/describe/draw-notice.ts';
import { originOf } from '../../../src/use/acts/sites.ts';
import { metOnPage } from '../../../src/use/judge/met-product.ts';
import type { Parts } from '../parts.ts';
import { withPicture } from '../picture/with-picture.ts';
import { openPanel } from '../tab/panel.ts';
import { wordsOf } from '../words.ts';

const places: Partial<Record<StripAction, string>> = {
  panel: 'page',
  add: 'routine',
  compare: 'compare',
  picture: 'page',
};

/** Where a strip stands: its tab, its frame, and the site that the browser says it is on. */
export type StripAt = { tab: number; frame: number; site: string | undefined };

/** What the reader chose on the strip of one list, done, and what to show of it in the page. */
export async function stripAct(
  asked: Messages['strip-act']['request'],
  at: StripAt,
  parts: Parts,
): Promise<Told> {
  const place = places[asked.action];
  // First of all: the panel opens only within the press.
  const what =
    asked.action === 'picture'
      ? { picture: { frame: at.frame } }
      : { list: { frame: at.frame, id: asked.list } };
  const opened = place && openPanel(at.tab, place, what);
  return tell(opened ? opened.then(() => ({ ok: true })) : act(asked, at, parts), parts);
}

export const stripUndo = (key: string, parts: Parts): Promise<Told> => tell(parts.acting.undo(key), parts);

async function act(
  { list, action, id }: Messages['strip-act']['request'],
  { tab, frame, site }: StripAt,
  parts: Parts,
): Promise<Acted> {
  const { acting, tabPages } = parts;
  const page = await tabPages.get(tab);
  const found = page?.lists.find((each) => each.id === list && each.frame === frame);
  if (!page || !found || originOf(page.url) !== site) return { ok: false, reason: 'page.done.gone' };
  const met = metOnPage(found, page);
  if (action === 'pause') return acting.act({ act: 'pause', url: page.url }, id);
  if (action === 'not-a-list') return acting.act({ act: 'not-a-list', url: page.url, text: met.text }, id);
  return acting.act(await withPicture({ act: 'keep', met, id }, tab, parts), id);
}

/** What came of an act, in the reader's words; what could not be kept is said as in the panel. */
async function tell(acting: Promise<Acted>, { keeper }: Parts): Promise<Told> {
  const acted = await acting;
  const t = await wordsOf(await keeper.remembered());
  const told = (drawn: Drawing[]): Told => ({ drawn, lang: t.lang, dir: t.dir });
  if (!acted.ok) return told(drawNotice(t('shell.not-kept', { reason: t(acted.reason) }), t));
  const { say, undo } = acted;
  return told(say ? drawNotice(t(say.key, say.values), t, undo) : []);
}
