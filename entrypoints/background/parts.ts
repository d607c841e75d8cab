import { browser } from 'wxt/browser';
import { ask } from '../../src/contract/messages.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import { createActing } from '../../src/use/acts/acting.ts';
import { createReach } from '../../src/use/reach/reach.ts';
import { createTabPages } from '../../src/use/tabs/tab-pages.ts';
import { framesOfBrowser } from './frames.ts';
import { practice, readingsOfDictionary } from './knowing/readings.ts';
import { createShelves } from './shelf/shelves.ts';
import { inTab } from './tab/in-tab.ts';

/** Tells our script in a tab. */
const tell = async (tab: number, name: 'again' | 'stop' | 'jump'): Promise<unknown> =>
  name === 'again' ? ask(inTab(tab), name, {}) : ask(inTab(tab), name, null);

/** What the background is made of: each answers one question, the wiring hands them round. */
export function createParts() {
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
  const frames = framesOfBrowser(keeper, readings, tabPages, shelves.met);
  const reach = createReach(browser, async () => (await keeper.remembered()).sites);
  return { keeper, readings, tabPages, frames, acting, shelves, reach, tell };
}

export type Parts = ReturnType<typeof createParts>;
