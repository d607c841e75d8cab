import { browser } from 'wxt/browser';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import { ask, type Messages } from '../../../src/contract/messages.ts';
import type { ShelfActed } from '../../../src/contract/shelf.ts';
import type { Area } from '../../../src/store/area.ts';
import type { Keeper } from '../../../src/store/keeper.ts';
import type { Remembered } from '../../../src/store/remembered.ts';
import { createShelfCache } from '../../../src/store/shelf-cache.ts';
import { drawAct } from '../../../src/ui/describe/draw-shelf.ts';
import type { Acting } from '../../../src/use/acts/acting.ts';
import { originOf } from '../../../src/use/acts/sites.ts';
import type { Readings } from '../../../src/use/reading/readings.ts';
import { type ShelfAct, shelfAct, shelfActs } from '../../../src/use/shelf/act.ts';
import { labelsFor } from '../../../src/use/shelf/labels-for.ts';
import { inTab } from '../tab/in-tab.ts';
import { wordsOf } from '../words.ts';
import { drawnShelves } from './drawn.ts';
import { metLabels } from './met.ts';

/** What shelves are answered: marks by what was read before, labels of pages that came, acts on their cards. */
export function createShelves(keeper: Keeper, readings: Readings, acting: Acting) {
  const cache = createShelfCache(browser.storage.local as unknown as Area, shelfFacts.remembered);

  const labelsOf = async (addresses: string[], { products }: Remembered) =>
    labelsFor(addresses, await cache.get(addresses), products, shelfFacts.addresses);

  return {
    cache,
    ...metLabels(cache, readings),
    ...drawnShelves(keeper, readings, labelsOf),
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
      const remembered = await keeper.remembered();
      const t = await wordsOf(remembered);
      if (act === 'open') {
        await browser.tabs.create({ url: address });
        return { said: [] };
      }
      if (act.startsWith('undo:')) return { said: drawAct(await acting.undo(act.slice('undo:'.length)), t) };
      const entry = (await labelsOf([address], remembered)).get(address);
      if (!entry || !(shelfActs as readonly string[]).includes(act)) return { said: [] };
      const asked = shelfAct({ remembered }, entry, act as ShelfAct, id);
      return { said: drawAct('reason' in asked ? { ok: false, ...asked } : await acting.act(asked, id), t) };
    },
  };
}

export type Shelves = ReturnType<typeof createShelves>;
