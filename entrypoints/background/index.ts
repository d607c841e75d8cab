import { browser } from 'wxt/browser';
import { defineBackground } from 'wxt/utils/define-background';
import { answer, ask } from '../../src/contract/messages.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import { createActing } from '../../src/use/acts/acting.ts';
import { createReach } from '../../src/use/reach/reach.ts';
import { createTabPages } from '../../src/use/tab-pages.ts';
import { admit } from './answers/admit.ts';
import { createAnswers } from './answers/answers.ts';
import { followChanges } from './follow-changes.ts';
import { practice, readingsOfDictionary } from './knowing/readings.ts';
import { listenToBrowser } from './listen.ts';
import { createPages } from './pages.ts';
import { createShelves } from './shelf/shelves.ts';
import { inTab } from './tab/in-tab.ts';

/** Tells our script in a tab. */
const tell = async (tab: number, name: 'again' | 'stop' | 'jump') =>
  name === 'again' ? ask(inTab(tab), name, {}) : ask(inTab(tab), name, null);

export default defineBackground(() => {
  const keeper = createKeeper();
  void keeper.remembered(); // on its way while the rest is set up: a worker just woken is waited for
  const { session } = browser.storage;
  const readings = readingsOfDictionary();
  const tabPages = createTabPages(session);
  const acting = createActing({
    keeper,
    session,
    practice,
    reading: (remembered) => readings.knowing(remembered).reading,
  });
  const shelves = createShelves(keeper, readings, acting);
  const parts = {
    keeper,
    readings,
    tabPages,
    pages: createPages(keeper, readings, tabPages, shelves.met.meet),
    acting,
    shelves,
    reach: createReach(browser, async () => (await keeper.remembered()).sites),
    tell,
  };
  answer(browser.runtime, createAnswers(parts), admit);
  listenToBrowser(parts);
  // A worker that was stopped before it did so, or said so.
  void parts.reach.settle().catch(() => undefined);
  void tabPages.tabs().then((tabs) => tabs.map((tab) => parts.pages.show(tab).catch(() => undefined)));
  browser.storage.local.onChanged.addListener((changes) => void followChanges(changes, parts));
  // Where the browser lets us: what is kept is none of a page's business, nor of our own script in it.
  void browser.storage.local.setAccessLevel?.({ accessLevel: 'TRUSTED_CONTEXTS' });
});
