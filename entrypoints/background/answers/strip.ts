import type { Acted, Messages, Told } from '../../../src/contract/messages.ts';
import { cameOf } from '../../../src/ui/describe/came-of.ts';
import { drawNotice } from '../../../src/ui/describe/drawn/draw-notice.ts';
import { actOnStrip, metAtStrip, placeFor, type StripAt } from '../../../src/use/acts/strip-act.ts';
import type { Parts } from '../parts.ts';
import { withPicture } from '../picture/with-picture.ts';
import { openPanel } from '../tab/panel.ts';
import { wordsForReader } from '../words.ts';

type Asked = Messages['strip-act']['request'];

/** What the user chose on the strip of one list, done, and what to show of it in the page. */
export async function stripAct(asked: Asked, at: StripAt, parts: Parts): Promise<Told> {
  const place = placeFor[asked.action];
  // First of all: the panel opens only within the press.
  const opened = place && openPanel(at.tab, place, wanted(asked, at, parts));
  return tell(opened ? opened.then(() => ({ ok: true })) : act(asked, at, parts), parts);
}

export const stripUndo = (key: string, parts: Parts): Promise<Told> => tell(parts.acting.undo(key), parts);

async function wanted({ action, list: id }: Asked, at: StripAt, { tabPages }: Parts) {
  const { frame } = at;
  if (action === 'picture') return { picture: { frame } };
  const list = { frame, id };
  if (action === 'person') return { list, whom: true as const };
  const met = action === 'panel' ? undefined : metAtStrip(id, await tabPages.get(at.tab), at);
  return { list, ...(met && { met }) };
}

async function act(asked: Asked, at: StripAt, parts: Parts): Promise<Acted> {
  const act = actOnStrip(asked, await parts.tabPages.get(at.tab), at);
  if ('reason' in act) return { ok: false, ...act };
  return parts.acting.act(await withPicture(act, at.tab, parts), asked.id);
}

async function tell(acting: Promise<Acted>, { keeper }: Parts): Promise<Told> {
  const acted = await acting;
  const t = await wordsForReader(await keeper.remembered());
  const came = cameOf(acted, t);
  return { drawn: came ? drawNotice(came.words, t, came.undo) : [], lang: t.lang, dir: t.dir };
}
