import type { FoundText } from '../../contract/messages.ts';
import type { ShelfFacts, ShelfPage, UnreadReason } from '../../contract/shelf.ts';
import type { KindReader } from '../../core/product/kind.ts';
import { findingLists } from '../../find/lists-in.ts';
import { factsOf } from '../../find/product/product-facts.ts';
import type { Remembered } from '../../store/remembered.ts';
import type { ShelfCache } from '../../store/shelf-cache.ts';
import { same } from '../../store/three-way.ts';
import type { Session } from '../../store/undo-stack.ts';
import { originOf } from '../acts/matters/sites.ts';
import { inTurns } from '../in-turns.ts';
import type { Readings } from '../reading/readings.ts';
import { labelsFor } from './labels-for.ts';
import { labelsOfPage, type TakenLabel, takePage } from './take-page.ts';

/** Pages that were open when everything was deleted: read again, and not remembered again by themselves. */
const deletedKey = 'open-when-deleted';

type By = {
  cache: ShelfCache;
  session: Pick<Session, 'get' | 'set'>;
  readings: Readings;
  facts: ShelfFacts;
} & Pick<KindReader, 'withKind'>;

/** Labels that were met: on a product's own page, or on a page a shelf asked for. */
export function createMetLabels({ cache, session, readings, facts, withKind }: By) {
  const { addresses } = facts;
  return {
    /** What is known of the products behind addresses, by address. */
    of: async (wanted: string[], { products }: Remembered) =>
      labelsFor(wanted, await cache.get(wanted), products, addresses),
    /** Everything was deleted while these pages were open. */
    async deletedWith(urls: string[]): Promise<void> {
      if (urls.length > 0) await session.set({ [deletedKey]: urls });
    },
    /** A label read on its product's own page: its shelf will know it. */
    async meet(list: FoundText, url: string): Promise<void> {
      const { [deletedKey]: deleted } = await session.get(deletedKey);
      if (Array.isArray(deleted) && deleted.includes(url)) return;
      const labels = labelsOfPage(list, url, addresses);
      const before = await cache.get(labels.map(({ address }) => address));
      const isKnown = ({ address, text, product }: TakenLabel) => {
        const known = before.get(address);
        return known?.text === text && same(known.product, product);
      };
      const readOn = new Date().toISOString();
      for (const met of labels) if (!isKnown(met)) await cache.put({ ...met, readOn });
    },
    /** A page that a shelf asked for: its label is kept, or why there is none. */
    async take(page: ShelfPage, site: string | undefined): Promise<{ why?: UnreadReason }> {
      if (originOf(page.address) !== site || originOf(page.at) !== site) return { why: 'elsewhere' };
      const lists = await inTurns(findingLists(page.texts, page.clues, readings.finder), () => false);
      const found = { lists: lists ?? [], facts: factsOf(page.clues) };
      const taken = takePage(page, found, { withKind }, facts);
      if ('why' in taken) return taken;
      const reading = readings.read(taken.text, {});
      if (reading.refused || reading.read < readings.lookup.thresholds.listAtLeast) return { why: 'no-list' };
      await cache.put({ ...taken, readOn: new Date().toISOString() });
      return {};
    },
  };
}

export type MetLabels = ReturnType<typeof createMetLabels>;
