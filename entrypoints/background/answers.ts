import { browser } from 'wxt/browser';
import type { Answers } from '../../src/contract/messages.ts';
import { lineRules } from '../../src/ui/describe/line-rules.ts';
import type { Parts } from './parts.ts';
import { pickList } from './pick.ts';
import { stripAct } from './strip.ts';

type Sender = chrome.runtime.MessageSender;
const placeOf = ({ tab, frameId = 0 }: Sender) =>
  tab?.id === undefined ? undefined : { tab: tab.id, frame: frameId };

/** What the background answers, by message. */
export const createAnswers = (parts: Parts): Answers => ({
  ...toPages(parts),
  ...toViews(parts),
});

const toPages = ({ pages, tabPages, acting, reach }: Parts): Answers => ({
  'page-lists': async (sent, sender) => {
    const at = placeOf(sender);
    return at ? pages.read(sent, at) : [];
  },
  'line-rules': async ({ seed, selectors }, sender) => {
    const at = placeOf(sender);
    if (!at) return null;
    const target = { tabId: at.tab, frameIds: [at.frame] };
    await browser.scripting.insertCSS({ target, css: lineRules(seed, selectors) });
    return null;
  },
  'page-left': async (_, sender) => {
    const at = placeOf(sender);
    if (at) void pages.left(at, sender.tab?.url ?? '', sender.tab?.title ?? '');
    return null;
  },
  // Not async: the panel opens only within the press.
  'strip-act': (asked, sender) => {
    const at = placeOf(sender);
    return at ? stripAct(asked, at, { acting, pages: tabPages }) : { ok: false, reason: 'page.done.gone' };
  },
  'list-is-here': async ({ url, selector }, { tab }) => {
    await acting.act({ act: 'list-is-here', url, selector }, `${url} ${selector}`);
    if (tab?.id !== undefined) await reach.read(tab.id);
    return null;
  },
});

const toViews = ({ keeper, readings, tabPages, acting, reach }: Parts): Answers => ({
  read: (texts) => texts.map(({ text, ...as }) => readings.read(text, as)),
  'look-up': (typed) => readings.lookUp(typed),
  close: (names) => names.map((name) => readings.lookup.close(name, 3)),
  'tab-page': ({ tab }) => tabPages.get(tab),
  act: ({ act, id }) => acting.act(act, id),
  undo: ({ key }) => acting.undo(key),
  change: (changes) => acting.act({ act: 'change', changes }, crypto.randomUUID()),
  remembered: () => keeper.remembered(),
  forget: async () => {
    await keeper.forget();
    await browser.storage.session.clear();
    await reach.forget();
    return null;
  },
  'read-tab': async ({ tab }) => {
    await reach.read(tab);
    return null;
  },
  'pick-list': async ({ tab }) => {
    await pickList(tab, keeper);
    return null;
  },
});
