import { browser } from 'wxt/browser';
import { shelfFacts } from '../../dictionary/shelf.ts';
import { ask, type FoundText, type Messages } from '../../src/contract/messages.ts';
import type { ShelfActed, ShelfDrawn, ShelfRow, Unread } from '../../src/contract/shelf.ts';
import { listsIn } from '../../src/find/lists-in.ts';
import { factsOf } from '../../src/find/product-facts.ts';
import type { Area } from '../../src/store/area.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import type { Remembered } from '../../src/store/remembered.ts';
import { createShelfCache } from '../../src/store/shelf-cache.ts';
import { same } from '../../src/store/three-way.ts';
import { drawAct, drawShelfBar, drawShelfMark, drawUnread } from '../../src/ui/describe/draw-shelf.ts';
import { saysOf } from '../../src/ui/describe/shelf.ts';
import type { Acting } from '../../src/use/acts/acting.ts';
import { originOf } from '../../src/use/acts/sites.ts';
import { headInUse, routineInUse } from '../../src/use/in-use.ts';
import { type ShelfAct, shelfAct, shelfActs } from '../../src/use/shelf/act.ts';
import { filtersFor } from '../../src/use/shelf/filters.ts';
import { knowProduct } from '../../src/use/shelf/know-product.ts';
import { labelsFor } from '../../src/use/shelf/labels-for.ts';
import { rowOf } from '../../src/use/shelf/row.ts';
import { labelsOfPage, type Taken, takePage } from '../../src/use/shelf/take-page.ts';
import { withKind } from './kinds.ts';
import type { Readings } from './knowing.ts';
import { wordsOf } from './words.ts';

type Sent<N extends 'shelf' | 'shelf-page' | 'shelf-act'> = Messages[N]['request'];

/** The page a tab shows, without its frames. */
export const shelfIn = (tab: number) => ({
  sendMessage: (message: unknown) => browser.tabs.sendMessage(tab, message, { frameId: 0 }),
});

/** Pages that were open when everything was deleted: read again, and not remembered again by themselves. */
const deletedKey = 'open-when-deleted';

/** What shelves are answered: marks by what was read before, labels of pages that came, acts on their cards. */
export function createShelves(keeper: Keeper, readings: Readings, acting: Acting) {
  const cache = createShelfCache(browser.storage.local as unknown as Area, shelfFacts.remembered);

  const labelsOf = async (addresses: string[], { products }: Remembered) =>
    labelsFor(addresses, await cache.get(addresses), products, shelfFacts.addresses);

  return {
    cache,
    /** Everything was deleted while these pages were open. */
    async deletedWith(urls: string[]): Promise<void> {
      if (urls.length > 0) await browser.storage.session.set({ [deletedKey]: urls });
    },
    /** A label read on its product's own page: its shelf will know it. */
    async meet(list: FoundText, url: string): Promise<void> {
      const { [deletedKey]: deleted } = await browser.storage.session.get(deletedKey);
      if (Array.isArray(deleted) && deleted.includes(url)) return;
      const labels = labelsOfPage(list, url, shelfFacts.addresses);
      const before = await cache.get(labels.map(({ address }) => address));
      const isKnown = ({ address, text, product }: Taken) => {
        const known = before.get(address);
        return known?.text === text && same(known.product, product);
      };
      const readOn = new Date().toISOString();
      for (const met of labels) if (!isKnown(met)) await cache.put({ ...met, readOn });
    },
    async draw({ cards, bar }: Sent<'shelf'>, site: string | undefined): Promise<ShelfDrawn> {
      const here = cards.filter(({ address }) => originOf(address) === site);
      const remembered = await keeper.remembered();
      if (bar.running && !remembered.settings.shelfTold)
        void keeper.change([{ do: 'set', settings: { shelfTold: true } }]);
      const t = await wordsOf(remembered);
      const entries = await labelsOf(
        here.map(({ address }) => address),
        remembered,
      );
      const knowing = readings.knowing(remembered);
      const head = headInUse(remembered);
      const marks = here.map((card) => {
        const entry = entries.get(card.address);
        const known = entry && knowProduct(knowing, entry);
        return known ? drawShelfMark(saysOf(known, card.name, t), t) : drawUnread(card, t);
      });
      return {
        lang: t.lang,
        dir: t.dir,
        marks,
        bar: drawShelfBar(
          bar,
          filtersFor({
            head: Boolean(head),
            routine: Boolean(routineInUse(remembered, head)),
            wish: (remembered.settings.wishes ?? []).length > 0,
            price: remembered.settings.shelfPrice !== undefined,
          }),
          t,
          remembered.settings.shelfPrice,
        ),
      };
    },
    /** The shelf a tab shows, product by product; null where it shows none. */
    async rows(tab: number): Promise<ShelfRow[] | null> {
      const page = shelfIn(tab);
      const cards = await ask(page, 'shelf-cards', null).catch(() => null);
      if (!cards) return null;
      const remembered = await keeper.remembered();
      const knowing = readings.knowing(remembered);
      const entries = await labelsOf(
        cards.map(({ address }) => address),
        remembered,
      );
      return cards.map((card) => {
        const entry = entries.get(card.address);
        const known = entry && knowProduct(knowing, entry);
        return known ? rowOf(known, card.name) : card;
      });
    },
    /** A press from the keyboard: reads the shelf a tab shows, and looks for one first where nothing was read yet. */
    async press(tab: number, read: (tab: number) => Promise<void>): Promise<void> {
      const page = shelfIn(tab);
      const isShelf = () => ask(page, 'shelf-cards', null).catch(() => null);
      if (!(await isShelf())) await read(tab);
      for (let n = 0; n < 12 && !(await isShelf()); n++) await new Promise((next) => setTimeout(next, 250));
      await ask(page, 'read-shelf', null);
    },
    async take(page: Sent<'shelf-page'>, site: string | undefined): Promise<{ why?: Unread }> {
      if (originOf(page.address) !== site || originOf(page.at) !== site) return { why: 'elsewhere' };
      const taken = takePage(
        page,
        { lists: listsIn(page.texts, page.clues, readings.finder), facts: factsOf(page.clues) },
        { withKind },
        shelfFacts,
      );
      if ('why' in taken) return taken;
      const reading = readings.read(taken.text, {});
      if (reading.refused || reading.read < readings.lookup.thresholds.listAtLeast) return { why: 'no-list' };
      await cache.put({ ...taken, readOn: new Date().toISOString() });
      return {};
    },
    async act({ address, act, id }: Sent<'shelf-act'>, site: string | undefined): Promise<ShelfActed> {
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
