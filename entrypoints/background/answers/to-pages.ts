import { browser } from 'wxt/browser';
import type { Answers } from '../../../src/contract/messages.ts';
import { lineRules } from '../../../src/ui/describe/drawn/line-rules.ts';
import { taughtOf } from '../../../src/use/acts/matters/sites.ts';
import type { Parts } from '../parts.ts';
import { at } from './at.ts';
import { stripAct, stripUndo } from './strip.ts';

/** What our scripts in pages are answered, but for shelves. */
export const toPages = (parts: Parts): Answers => ({
  'page-lists': (sent, sender) => parts.frames.read(sent, at(sender)),
  'line-rules': async ({ seed, selectors }, sender) => {
    const { tab, frame } = at(sender);
    const target = { tabId: tab, frameIds: [frame] };
    await browser.scripting.insertCSS({ target, css: lineRules(seed, selectors) });
    return null;
  },
  'page-left': (_, sender) => {
    void parts.frames.left(at(sender), sender.tab?.url ?? '', sender.tab?.title ?? '');
    return null;
  },
  'site-here': async (_, sender) => taughtOf((await parts.keeper.remembered()).sites, at(sender).site),
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
