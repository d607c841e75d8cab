import { browser } from 'wxt/browser';
import { type Answers, ask } from '../../src/contract/messages.ts';
import { lineRules } from '../../src/ui/describe/line-rules.ts';
import { siteOf } from '../../src/use/acts/sites.ts';
import { mayRead } from '../../src/use/judge/read-page.ts';
import { siteOfSender } from './admit.ts';
import { bring } from './bring.ts';
import { closedParts } from './closed-parts.ts';
import { inTab } from './in-tab.ts';
import { openPanel } from './panel.ts';
import type { Parts } from './parts.ts';
import { pickList } from './pick.ts';
import { type StripAt, stripAct, stripUndo } from './strip.ts';

type Sender = chrome.runtime.MessageSender;
/** Where a script of ours stands; every one stands in a tab. */
function at(sender: Sender): StripAt {
  const { tab, frameId: frame = 0 } = sender;
  if (tab?.id === undefined) throw new Error('not in a tab');
  return { tab: tab.id, frame, site: siteOfSender(sender) };
}

/** What the background answers, by message. */
export const createAnswers = (parts: Parts): Answers => ({ ...toPages(parts), ...toViews(parts) });

const toPages = (parts: Parts): Answers => ({
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
  'shelf-page': (page, sender) => parts.shelves.take(page, at(sender).site),
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

const toViews = ({ shelves, keeper, readings, tabPages, acting, reach }: Parts): Answers => ({
  read: (texts) => texts.map(({ text, ...as }) => readings.read(text, as)),
  'look-up': (typed) => readings.lookUp(typed),
  close: (names) => names.map((name) => readings.lookup.close(name, 3)),
  'shelf-rows': ({ tab }) => shelves.rows(tab),
  'labels-met': () => shelves.cache.count(),
  'forget-labels': async () => {
    await shelves.cache.clear();
    return null;
  },
  'press-shelf': async ({ tab }) => {
    await ask(inTab(tab, 0), 'read-shelf', { told: true });
    return null;
  },
  'tab-page': ({ tab }) => tabPages.get(tab),
  act: ({ act, id }) => acting.act(act, id),
  undo: ({ key }) => acting.undo(key),
  change: (changes) => acting.act({ act: 'change', changes }, crypto.randomUUID()),
  remembered: () => keeper.remembered(),
  forget: async () => {
    const open = await Promise.all((await tabPages.tabs()).map((tab) => tabPages.get(tab)));
    // Before the store tells of its going: open pages are read again at once.
    await browser.storage.session.clear();
    await shelves.deletedWith(open.flatMap((page) => page?.url ?? []));
    await keeper.forget();
    await reach.forget();
    return null;
  },
  'read-tab': async ({ tab }) => {
    await reach.read(tab);
    return null;
  },
  'closed-parts': ({ tab }) => closedParts(tab, readings.finder),
  'pick-list': async ({ tab }) => {
    await pickList(tab, keeper);
    return null;
  },
});
