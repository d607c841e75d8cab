import type { CardState, ShelfRow } from '../../contract/shelf.ts';
import type { Keeper } from '../../store/keeper.ts';
import type { Remembered } from '../../store/remembered.ts';
import type { Readings } from '../reading/readings.ts';
import { knowProduct, type ShelfProduct } from './know-product.ts';
import type { MetLabels } from './met-labels.ts';
import { rowOf } from './row.ts';

/** A card of a shelf, with what is known of its product. */
export type KnownCard = { card: CardState; known: ShelfProduct | undefined };

/** What is known of the products of a shelf by what was read before. */
export function createKnownCards(
  keeper: Pick<Keeper, 'remembered'>,
  readings: Pick<Readings, 'knowing'>,
  met: Pick<MetLabels, 'of'>,
) {
  async function of(cards: readonly CardState[], remembered: Remembered): Promise<KnownCard[]> {
    const entries = await met.of(
      cards.map(({ address }) => address),
      remembered,
    );
    const knowing = readings.knowing(remembered);
    return cards.map((card) => {
      const entry = entries.get(card.address);
      return { card, known: entry && knowProduct(knowing, entry) };
    });
  }
  return {
    of,
    /** Product by product, as rows of a table. */
    rows: async (cards: readonly CardState[]): Promise<ShelfRow[]> =>
      (await of(cards, await keeper.remembered())).map(({ card, known }) =>
        known ? rowOf(known, card.name) : card,
      ),
  };
}

export type KnownCards = ReturnType<typeof createKnownCards>;
