import type { Answers } from '../../../src/contract/messages.ts';
import { mayRead } from '../../../src/use/judge/read-page.ts';
import type { Parts } from '../parts.ts';
import { bring } from '../tab/bring.ts';
import { openPanel } from '../tab/panel.ts';
import { at } from './at.ts';

/** What our script on a shelf of products is answered. */
export const toShelves = ({ keeper, tabPages, shelves }: Parts): Answers => ({
  'bring-shelf': async (_, sender) => {
    const { tab, frame, site = '' } = at(sender);
    const remembered = await keeper.remembered();
    if (frame !== 0 || !mayRead({ remembered }, site)) return null;
    await bring({ tabId: tab, frameIds: [0] }, 'shelf.js');
    return { told: remembered.settings.shelfTold ?? false };
  },
  shelf: async (asked, sender) => {
    const { tab, site } = at(sender);
    const { url = site ?? '', title = '' } = sender.tab ?? {};
    // Each time: a page's own script may have led from one shelf to another.
    await tabPages.isShelf(tab, { url, title });
    return shelves.draw(asked, site);
  },
  'shelf-page': (page, sender) => shelves.met.take(page, at(sender).site),
  'shelf-act': (asked, sender) =>
    // First of all: the panel opens only within the press.
    asked.act === 'table'
      ? openPanel(at(sender).tab, 'page').then(() => ({ said: [] }))
      : shelves.act(asked, at(sender).site),
});
