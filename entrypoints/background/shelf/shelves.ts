import { browser } from 'wxt/browser';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import { ask, type Messages } from '../../../src/contract/messages.ts';
import type { ShelfActed } from '../../../src/contract/shelf.ts';
import type { Area } from '../../../src/store/area.ts';
import type { Keeper } from '../../../src/store/keeper.ts';
import { createShelfCache } from '../../../src/store/shelf-cache.ts';
import { drawAct } from '../../../src/ui/describe/draw-shelf.ts';
import type { Acting } from '../../../src/use/acts/acting.ts';
import { originOf } from '../../../src/use/acts/sites.ts';
import type { Readings } from '../../../src/use/reading/readings.ts';
import { shelfAct } from '../../../src/use/shelf/act.ts';
import { createMetLabels } from '../../../src/use/shelf/met-labels.ts';
import { withKind } from '../knowing/kinds.ts';
import { inTab } from '../tab/in-tab.ts';
import { wordsOf } from '../words.ts';
import { drawnShelves } from './drawn.ts';

/** What shelves are answered: marks by what was read before, labels of pages that came, acts on their cards. */
export function createShelves(keeper: Keeper, readings: Readings, acting: Acting) {
  const cache = createShelfCache(browser.storage.local as unknown as Area, shelfFacts.remembered);
  const { session } = browser.storage;
  const met = createMetLabels({ cache, session, readings, facts: shelfFacts, withKind });

  return {
    cache,
    met,
    ...drawnShelves(keeper, readings, met),
    /** A press from the keyboard: reads the shelf a tab shows, and looks for one first where nothing was read yet. */
    async press(tab: number, read: (tab: number) => Promise<void>): Promise<void> {
      const page = inTab(tab, 0);
      const isShelf = () => ask(page, 'shelf-cards', null).catch(() => null);
      if (!(await isShelf())) await read(tab);
      for (let n = 0; n < 12 && !(await isShelf()); n++) await new Promise((next) => setTimeout(next, 250));
      await ask(page, 'read-shelf', { told: false });
    },
    async act(
      { address, act, id }: Messages['shelf-act']['request'],
      site: string | undefined,
    ): Promise<ShelfActed> {
      if (originOf(address) !== site) return { said: [] };
      if (act === 'open') {
        await browser.tabs.create({ url: address });
        return { said: [] };
      }
      const remembered = await keeper.remembered();
      const t = await wordsOf(remembered);
      if (act.startsWith('undo:')) return { said: drawAct(await acting.undo(act.slice('undo:'.length)), t) };
      const asked = shelfAct({ remembered }, (await met.of([address], remembered)).get(address), act, id);
      if (!asked) return { said: [] };
      return { said: 'reason' in asked ? [t(asked.reason)] : drawAct(await acting.act(asked, id), t) };
    },
  };
}

export type Shelves = ReturnType<typeof createShelves>;
