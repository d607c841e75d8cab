import { browser } from 'wxt/browser';
import type { Answers } from '../../../src/contract/messages.ts';
import { lineRules } from '../../../src/ui/describe/line-rules.ts';
import { siteOf } from '../../../src/use/acts/sites.ts';
import { mayRead } from '../../../src/use/judge/read-page.ts';
import type { Parts } from '../parts.ts';
import { bring } from '../tab/bring.ts';
import { openPanel } from '../tab/panel.ts';
import { at } from './at.ts';
import { stripAct, stripUndo } from './strip.ts';

/** What our scripts in pages are answered. */
export const toPages = (parts: Parts): Answers => ({
  'page-lists': (sent, sender) => parts.pages.read(sent, at(sender)),
  'line-rules': async ({ seed, selectors }, sender) => {
    const { tab, frame } = at(sender);
    const target = { tabId: tab, frameIds: [frame] };
    await browser.scripting.insertCSS({ target, css: lineRules(seed, selectors) });
    return null;
  },
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
  'shelf-act': (asked, sender) =>
    // First of all: the panel opens only within the press.
    asked.act === 'table'
      ? openPanel(at(sender).tab, 'page').then(() => ({ said: [] }))
      : parts.shelves.act(asked, at(sender).site),
  'page-left': (_, sender) => {
    void parts.pages.left(at(sender), sender.tab?.url ?? '', sender.tab?.title ?? '');
    return null;
  },
  'site-here': async (_, sender) => {
    const { sites } = await parts.keeper.remembered();
    const { paused = false, listsAt = [] } = siteOf(sites, at(sender).site ?? '') ?? {};
    return { paused, listsAt };
  },
  // Not async: the panel opens only within the press.
  'strip-act': (asked, sender) => stripAct(asked, at(sender), parts),
  'strip-undo': ({ key }) => stripUndo(key, parts),
  'list-is-here': async ({ selector }, sender) => {
    const { tab, site } = at(sender);
    if (site) await parts.acting.act({ act: 'list-is-here', url: site, selector }, `${site} ${selector}`);
    await parts.reach.read(tab);
    return null;
  },
});
