import { browser } from 'wxt/browser';
import { defineBackground } from 'wxt/utils/define-background';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { practice } from '../../dictionary/practice.ts';
import { answer, ask, type FoundText, panelGoKey } from '../../src/contract/messages.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { createNameSearch } from '../../src/core/names/search-names.ts';
import { withKind } from '../../src/core/product/kind.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { listsIn } from '../../src/find/lists-in.ts';
import { factsOf } from '../../src/find/product-facts.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import { keyParts } from '../../src/store/keys.ts';
import type { Remembered } from '../../src/store/remembered.ts';
import { bestLanguage, wordsFor } from '../../src/ui/words/languages.ts';
import { checksOf } from './checks.ts';
import { keeping, listIsHere, notAList, pausing } from './choices.ts';
import { orderOf } from './orders.ts';
import { createReach, siteOf } from './reach.ts';
import { badgeOf, createTabPages } from './tab-pages.ts';

/** ISO date of the reader's own day. */
const today = () => {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((n) => String(n).padStart(2, '0'))
    .join('-');
};

/** Firefox's own name for the panel. */
type WithSidebar = { sidebarAction?: { open(): Promise<void> } };

export default defineBackground(() => {
  const keeper = createKeeper();
  void keeper.remembered(); // on its way while the lookup is built: a worker just woken is waited for
  const lookup = createLookup(entries, patterns, limits);
  const searchNames = createNameSearch(entries, lookup.close);
  const pages = createTabPages(browser.storage.session);
  const reach = createReach(browser, async () => (await keeper.remembered()).sites);
  /** Words in the reader's language; files of the extension itself, no network. */
  const wordsOf = ({ settings }: Pick<Remembered, 'settings'>) =>
    wordsFor(bestLanguage([settings.language, browser.i18n.getUILanguage()]), async (language) =>
      (await fetch((browser.runtime as typeof chrome.runtime).getURL(`words/${language}.json`))).json(),
    );
  const to = (tab: number) => ({ sendMessage: (message: unknown) => browser.tabs.sendMessage(tab, message) });
  const tell = (tab: number, name: 'again' | 'stop' | 'jump') => ask(to(tab), name, null);

  /** Lets the reader point at an element of a tab's page. */
  async function pick(tab: number) {
    const target = { tabId: tab };
    const leave = (words: string) => {
      globalThis.strandlinePickWords = words;
    };
    const t = await wordsOf(await keeper.remembered());
    await browser.scripting.executeScript({ target, func: leave, args: [t('page.pick')] });
    await browser.scripting.executeScript({ target, files: ['picker.js'] });
  }

  /** Called within the press that asks for it: the browser opens the panel only then. */
  function openPanel(tab: number, place: string, list?: number) {
    const opened = browser.sidePanel?.open({ tabId: tab }) ?? (browser as WithSidebar).sidebarAction?.open();
    const go = { tab, place, nth: Date.now(), ...(list === undefined ? {} : { list }) };
    return Promise.all([opened, browser.storage.session.set({ [panelGoKey]: go })]);
  }

  async function showBadge(tab: number) {
    const text = badgeOf(await pages.get(tab));
    await browser.action.setBadgeText({ tabId: tab, text });
  }

  answer(browser.runtime, {
    async 'page-lists'({ texts, clues, canPaint, url, title }, { tab, frameId = 0 }) {
      if (tab?.id === undefined) return [];
      const remembered = await keeper.remembered();
      const site = siteOf(remembered.sites, url);
      if (site?.paused) return [];
      const t = await wordsOf(remembered);
      const found = listsIn(texts, frameId === 0 ? clues : undefined);
      const facts = found.length > 0 ? factsOf(clues) : undefined;
      const met = found.flatMap(({ places, product, ...text }, id) => {
        const named = product ?? facts;
        const list: FoundText = { ...text, id, ...(named && { product: withKind({ ...facts, ...named }) }) };
        const order = orderOf(list, lookup, {
          remembered,
          site,
          t,
          checks: (reading) =>
            checksOf(reading, list.product, { remembered, lookup, practice, today: today() }),
        });
        return order ? [{ list, order: { ...order, places } }] : [];
      });
      const { id } = tab;
      const lists = met.map(({ list, order }) => ({ ...list, proteins: order.proteinMentions }));
      // The page waits for its painter only; badge and panel follow.
      void pages.put(id, frameId, { url, title, lists }).then(() => showBadge(id));
      if (lists.length > 0 && !canPaint) await bringPainter(id, frameId);
      return met.map(({ order }) => order);
    },
    async 'page-left'(_, { tab, frameId = 0 }) {
      if (tab?.id === undefined) return null;
      const { id, url = '', title = '' } = tab;
      void pages.put(id, frameId, { url, title, lists: [] }).then(() => showBadge(id));
      return null;
    },
    read: (texts) =>
      texts.map(({ text, use, readAs }) =>
        readLabel(text, lookup, { ...(use ? { use } : {}), ...(readAs ? { readAs } : {}) }),
      ),
    'look-up': (typed) =>
      searchNames(typed).map((hit) => ({ ...hit, known: lookup.known(lookup.find(hit.name)) })),
    close: (names) => names.map((name) => lookup.close(name, 3)),
    'tab-page': ({ tab }) => pages.get(tab),
    change: (changes) => keeper.change(changes),
    remembered: () => keeper.remembered(),
    async forget() {
      await keeper.forget();
      await browser.storage.session.clear();
      await reach.forget();
      return null;
    },
    async 'open-panel'({ place, list }, { tab }) {
      if (tab?.id !== undefined) await openPanel(tab.id, place, list);
      return null;
    },
    async act({ list: id, action }, { tab, frameId = 0 }) {
      if (tab?.id === undefined) return null;
      const list = frameId * 1000 + id;
      if (action === 'panel') await openPanel(tab.id, 'page', list);
      else if (action === 'add') await openPanel(tab.id, 'routine', list);
      else if (action === 'compare') await openPanel(tab.id, 'compare', list);
      else {
        const [page, remembered] = [await pages.get(tab.id), await keeper.remembered()];
        const found = page?.lists.find((each) => each.id === list);
        if (!page || !found) return null;
        if (action === 'pause') await keeper.change(pausing(remembered, page.url));
        else if (action === 'not-a-list') await keeper.change(notAList(remembered, page.url, found.text));
        else
          await keeper.change(
            keeping(remembered, page, found, crypto.randomUUID(), new Date().toISOString()),
          );
      }
      return null;
    },
    async 'read-tab'({ tab }) {
      await reach.read(tab);
      return null;
    },
    async 'pick-list'({ tab }) {
      await pick(tab);
      return null;
    },
    async 'list-is-here'({ url, selector }, { tab }) {
      await keeper.change(listIsHere(await keeper.remembered(), url, selector));
      if (tab?.id !== undefined) await reach.read(tab.id);
      return null;
    },
  });

  const bringPainter = (tab: number, frame: number) =>
    browser.scripting.executeScript({
      target: { tabId: tab, frameIds: [frame] },
      files: ['painter.js'],
    });

  browser.action.onClicked.addListener((tab) => {
    if (tab.id === undefined) return;
    void openPanel(tab.id, 'page');
    void reach.read(tab.id).catch(() => undefined);
  });

  async function makeMenus() {
    const t = await wordsOf(await keeper.remembered());
    browser.contextMenus.removeAll(() => {
      browser.contextMenus.create({
        id: 'selection',
        contexts: ['selection'],
        title: t('page.menu.selection'),
      });
      browser.contextMenus.create({ id: 'pick', contexts: ['page'], title: t('page.menu.pick') });
    });
  }

  browser.runtime.onInstalled.addListener(({ reason }) => {
    void reach.sync();
    // Once, and not in the build that tests and the demo drive: there a tab of its own would come in between.
    if (reason === 'install' && import.meta.env.MODE !== 'localhost')
      void browser.tabs.create({ url: 'welcome.html' });
    void browser.action.setBadgeBackgroundColor({ color: '#6b2a5b' });
    void browser.action.setBadgeTextColor({ color: '#ffffff' });
    void makeMenus();
  });
  browser.runtime.onStartup.addListener(() => {
    void reach.sync();
    void keeper.sweep();
  });
  browser.permissions.onAdded.addListener(() => void reach.sync());
  browser.permissions.onRemoved.addListener(() => void reach.sync());

  browser.contextMenus.onClicked.addListener(({ menuItemId, selectionText = '' }, tab) => {
    const id = tab?.id;
    if (id === undefined) return;
    if (menuItemId === 'selection') {
      void openPanel(id, 'page');
      void reach.read(id).then(() => ask(to(id), 'read-selection', { text: selectionText }));
    } else void pick(id);
  });
  browser.commands.onCommand.addListener((command, tab) => {
    if (command !== 'jump-to-strip' || tab?.id === undefined) return;
    const id = tab.id;
    void tell(id, 'jump').catch(() => reach.read(id));
  });

  browser.tabs.onRemoved.addListener((tab) => void pages.drop(tab));
  browser.tabs.onUpdated.addListener((tab, { status }) => {
    if (status === 'loading') void pages.drop(tab);
  });
  // Whatever is remembered may change what a strip says.
  browser.storage.local.onChanged.addListener(async (changes) => {
    const { sites } = await keeper.remembered();
    for (const tab of await pages.tabs()) {
      const page = await pages.get(tab);
      const paused = page && siteOf(sites, page.url)?.paused;
      void tell(tab, paused ? 'stop' : 'again').catch(() => undefined);
    }
    const kinds = Object.keys(changes).map((key) => keyParts(key)[0]);
    if (kinds.includes('sites')) void reach.sync();
    if (kinds.includes('settings')) void makeMenus();
  });
});
