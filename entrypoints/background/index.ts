import { browser } from 'wxt/browser';
import { defineBackground } from 'wxt/utils/define-background';
import { answer, ask } from '../../src/contract/messages.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import { createActing } from '../../src/use/acting.ts';
import { createAnswers } from './answers.ts';
import { followChanges } from './follow-changes.ts';
import { createReadings, practice } from './knowing.ts';
import { listenToBrowser } from './listen.ts';
import { createPages } from './pages.ts';
import { createReach } from './reach.ts';
import { createTabPages } from './tab-pages.ts';

export default defineBackground(() => {
  const keeper = createKeeper();
  void keeper.remembered(); // on its way while the lookup is built: a worker just woken is waited for
  const { session } = browser.storage;
  const readings = createReadings();
  const tabPages = createTabPages(session);
  const parts = {
    keeper,
    readings,
    tabPages,
    pages: createPages(keeper, readings, tabPages),
    acting: createActing({ keeper, session, practice }),
    reach: createReach(browser, async () => (await keeper.remembered()).sites),
    tell: (tab: number, name: 'again' | 'stop' | 'jump') =>
      ask({ sendMessage: (message: unknown) => browser.tabs.sendMessage(tab, message) }, name, null),
  };
  answer(browser.runtime, createAnswers(parts));
  listenToBrowser(parts);
  followChanges(parts);
});
