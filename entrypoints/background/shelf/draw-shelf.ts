import type { Messages } from '../../../src/contract/messages.ts';
import type { ShelfDrawn } from '../../../src/contract/shelf.ts';
import type { Keeper } from '../../../src/store/keeper.ts';
import { drawShelfBar, drawShelfMark, drawUnread } from '../../../src/ui/describe/drawn/draw-shelf.ts';
import { saysOf } from '../../../src/ui/describe/shelf.ts';
import { originOf } from '../../../src/use/acts/matters/sites.ts';
import { filtersFor } from '../../../src/use/shelf/filters.ts';
import type { KnownCards } from '../../../src/use/shelf/known-cards.ts';
import { wordsForReader } from '../words.ts';

/** Marks and bar of a shelf in the page; of cards of the site that asks alone. */
export async function drawShelf(
  { cards, bar }: Messages['shelf']['request'],
  site: string | undefined,
  keeper: Keeper,
  knownCards: KnownCards,
): Promise<ShelfDrawn> {
  const here = cards.filter(({ address }) => originOf(address) === site);
  const remembered = await keeper.remembered();
  const { shelfTold, shelfPrice } = remembered.settings;
  if (bar.running && !shelfTold) void keeper.change([{ do: 'set', settings: { shelfTold: true } }]);
  const t = await wordsForReader(remembered);
  const known = await knownCards.of(here, remembered);
  return {
    lang: t.lang,
    dir: t.dir,
    marks: known.map(({ card, known }) =>
      known ? drawShelfMark(saysOf(known, card.name, t), t) : drawUnread(card, t),
    ),
    bar: drawShelfBar(bar, filtersFor(remembered), t, shelfPrice),
  };
}
