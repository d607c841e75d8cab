import type { Answers } from '../../../src/contract/messages.ts';
import { mayRead } from '../../../src/use/judge/read-page.ts';
import type { Parts } from '../parts.ts';
import { withPicture } from '../picture/with-picture.ts';
import { bring } from '../tab/bring.ts';
import { openPanel } from '../tab/panel.ts';
import { at } from './at.ts';

/** What our script on a shelf of products is answered. */
export const toShelves = (parts: Parts): Answers => ({
  'bring-shelf': async (_, sender) => {
    const { tab, frame, site = '' } = at(sender);
    const remembered = await parts.keeper.remembered();
    if (frame !== 0 || !mayRead({ remembered }, site)) return null;
    await bring({ tabId: tab, frameIds: [0] }, 'shelf.js');
    return { told: remembered.settings.shelfTold ?? false };
  },
  shelf: async (asked, sender) => {
    const { tab, site } = at(sender);
    const { url = site ?? '', title = '' } = sender.tab ?? {};
    // Each time: a page's own script may have led from one shelf to another.
    await parts.tabPages.isShelf(tab, { url, title });
    return parts.shelves.draw(asked, site);
  },
  'shelf-page': (page, sender) => parts.shelves.met.take(page, at(sender).site),
  'shelf-act': (asked, sender) => {
    const { tab, site } = at(sender);
    // First of all: the panel opens only within the press.
    return asked.act === 'table'
      ? openPanel(tab, 'page').then(() => ({ said: [] }))
      : parts.shelves.act(asked, site, (act) => withPicture(act, tab, parts, asked.address));
  },
});
