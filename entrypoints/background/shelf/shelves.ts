import { browser } from 'wxt/browser';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import type { Messages } from '../../../src/contract/messages.ts';
import type { Area } from '../../../src/store/area.ts';
import type { Keeper } from '../../../src/store/keeper.ts';
import { createShelfCache } from '../../../src/store/shelf-cache.ts';
import type { Acting } from '../../../src/use/acts/acting.ts';
import type { Readings } from '../../../src/use/reading/readings.ts';
import { createKnownCards } from '../../../src/use/shelf/known-cards.ts';
import { createMetLabels } from '../../../src/use/shelf/met-labels.ts';
import { withKind } from '../knowing/kinds.ts';
import { actOnCard, type WithPicture } from './act-on-card.ts';
import { drawShelf } from './draw-shelf.ts';
import { shelfCardsIn } from './press-shelf.ts';

type Site = string | undefined;

/** What shelves are answered: marks by what was read before, labels of pages that came, acts on their cards. */
export function createShelves(keeper: Keeper, readings: Readings, acting: Acting) {
  const cache = createShelfCache(browser.storage.local as unknown as Area, shelfFacts.remembered);
  const { session } = browser.storage;
  const met = createMetLabels({ cache, session, readings, facts: shelfFacts, withKind });
  const knownCards = createKnownCards(keeper, readings, met);
  return {
    cache,
    met,
    draw: (asked: Messages['shelf']['request'], site: Site) => drawShelf(asked, site, keeper, knownCards),
    act: (asked: Messages['shelf-act']['request'], site: Site, withPicture: WithPicture) =>
      actOnCard(asked, site, keeper, met, acting, withPicture),
    /** The shelf a tab shows, product by product; null where it shows none. */
    async rows(tab: number) {
      const cards = await shelfCardsIn(tab);
      return cards && knownCards.rows(cards);
    },
  };
}
