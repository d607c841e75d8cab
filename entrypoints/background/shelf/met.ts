import { browser } from 'wxt/browser';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import type { FoundText, Messages } from '../../../src/contract/messages.ts';
import type { Unread } from '../../../src/contract/shelf.ts';
import { findingLists } from '../../../src/find/lists-in.ts';
import { factsOf } from '../../../src/find/product-facts.ts';
import type { ShelfCache } from '../../../src/store/shelf-cache.ts';
import { same } from '../../../src/store/three-way.ts';
import { originOf } from '../../../src/use/acts/sites.ts';
import { inTurns } from '../../../src/use/in-turns.ts';
import type { Readings } from '../../../src/use/reading/readings.ts';
import { labelsOfPage, type Taken, takePage } from '../../../src/use/shelf/take-page.ts';
import { withKind } from '../knowing/kinds.ts';

/** Pages that were open when everything was deleted: read again, and not remembered again by themselves. */
const deletedKey = 'open-when-deleted';

/** Labels that were met: on a product's own page, or on a page a shelf asked for. */
export function metLabels(cache: ShelfCache, readings: Readings) {
  return {
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
    async take(page: Messages['shelf-page']['request'], site: string | undefined): Promise<{ why?: Unread }> {
      if (originOf(page.address) !== site || originOf(page.at) !== site) return { why: 'elsewhere' };
      const lists = await inTurns(findingLists(page.texts, page.clues, readings.finder), () => false);
      const taken = takePage(
        page,
        { lists: lists ?? [], facts: factsOf(page.clues) },
        { withKind },
        shelfFacts,
      );
      if ('why' in taken) return taken;
      const reading = readings.read(taken.text, {});
      if (reading.refused || reading.read < readings.lookup.thresholds.listAtLeast) return { why: 'no-list' };
      await cache.put({ ...taken, readOn: new Date().toISOString() });
      return {};
    },
  };
}
