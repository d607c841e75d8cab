import { ask, type Messages } from '../../../src/contract/messages.ts';
import type { CardState, ShelfDrawn, ShelfRow } from '../../../src/contract/shelf.ts';
import type { Keeper } from '../../../src/store/keeper.ts';
import type { Remembered } from '../../../src/store/remembered.ts';
import { drawShelfBar, drawShelfMark, drawUnread } from '../../../src/ui/describe/draw-shelf.ts';
import { saysOf } from '../../../src/ui/describe/shelf.ts';
import { originOf } from '../../../src/use/acts/sites.ts';
import type { Readings } from '../../../src/use/reading/readings.ts';
import { filtersFor } from '../../../src/use/shelf/filters.ts';
import { knowProduct } from '../../../src/use/shelf/know-product.ts';
import type { MetLabels } from '../../../src/use/shelf/met-labels.ts';
import { rowOf } from '../../../src/use/shelf/row.ts';
import { inTab } from '../tab/in-tab.ts';
import { wordsOf } from '../words.ts';

/** What a shelf shows by what was read before: marks and bar in the page, rows in the panel. */
export function drawnShelves(keeper: Keeper, readings: Readings, met: Pick<MetLabels, 'of'>) {
  /** Tells of a card what is known of its product. */
  async function knowing(cards: CardState[], remembered: Remembered) {
    const entries = await met.of(
      cards.map(({ address }) => address),
      remembered,
    );
    const by = readings.knowing(remembered);
    return ({ address }: CardState) => {
      const entry = entries.get(address);
      return entry && knowProduct(by, entry);
    };
  }

  return {
    async draw({ cards, bar }: Messages['shelf']['request'], site: string | undefined): Promise<ShelfDrawn> {
      const here = cards.filter(({ address }) => originOf(address) === site);
      const remembered = await keeper.remembered();
      if (bar.running && !remembered.settings.shelfTold)
        void keeper.change([{ do: 'set', settings: { shelfTold: true } }]);
      const t = await wordsOf(remembered);
      const knownOf = await knowing(here, remembered);
      const marks = here.map((card) => {
        const known = knownOf(card);
        return known ? drawShelfMark(saysOf(known, card.name, t), t) : drawUnread(card, t);
      });
      return {
        lang: t.lang,
        dir: t.dir,
        marks,
        bar: drawShelfBar(bar, filtersFor(remembered), t, remembered.settings.shelfPrice),
      };
    },
    /** The shelf a tab shows, product by product; null where it shows none. */
    async rows(tab: number): Promise<ShelfRow[] | null> {
      const cards = await ask(inTab(tab, 0), 'shelf-cards', null).catch(() => null);
      if (!cards) return null;
      const knownOf = await knowing(cards, await keeper.remembered());
      return cards.map((card) => {
        const known = knownOf(card);
        return known ? rowOf(known, card.name) : card;
      });
    },
  };
}
