import { browser } from 'wxt/browser';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import type { FoundText, ListOrder, Messages } from '../../src/contract/messages.ts';
import { findingLists } from '../../src/find/lists-in.ts';
import { factsOf } from '../../src/find/product-facts.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { orderOf } from '../../src/ui/describe/order.ts';
import { originOf } from '../../src/use/acts/sites.ts';
import { inTurns } from '../../src/use/in-turns.ts';
import { mayRead, readingPage } from '../../src/use/judge/read-page.ts';
import { createNewest, type Frame } from '../../src/use/newest.ts';
import type { Readings } from '../../src/use/reading/readings.ts';
import { badgeOf, type TabPages } from '../../src/use/tab-pages.ts';
import { withKind } from './knowing/kinds.ts';
import { bring } from './tab/bring.ts';
import { wordsOf } from './words.ts';

const mostLists = 60; // of one page: a kit has a dozen

type Sent = Messages['page-lists']['request'];
type Place = Frame & { site?: string | undefined };

/** The address of a page as it says itself, on the site that the browser says it is on. */
const addressOf = (said: string, site: string | undefined): string =>
  site === undefined || originOf(said) === site ? said : `${site}/`;

/** Reads what a page sent, keeps what its tab shows, and says how to paint it. */
export function createPages(
  keeper: Keeper,
  readings: Readings,
  pages: TabPages,
  meet: (list: FoundText, url: string) => Promise<void>,
) {
  const show = async (tab: number) =>
    browser.action.setBadgeText({ tabId: tab, text: badgeOf(await pages.get(tab)) });

  const bringPainter = ({ tab, frame }: Place) => bring({ tabId: tab, frameIds: [frame] }, 'painter.js');

  const newest = createNewest();

  return {
    show,
    async read({ texts, clues, canPaint, url: said, title }: Sent, at: Place): Promise<ListOrder[]> {
      const off = newest.begin(at);
      const url = addressOf(said, at.site);
      const remembering = keeper.remembered();
      const { finder } = readings; // built, in a worker just woken, while the store is read
      const remembered = await remembering;
      if (!mayRead({ remembered }, url)) return [];
      const t = await wordsOf(remembered);
      const data = at.frame === 0 ? clues : undefined;
      const found = ((await inTurns(findingLists(texts, data, finder), off)) ?? []).slice(0, mostLists);
      const facts = found.length > 0 ? factsOf(clues) : undefined;
      const lists = found.map(({ places: _, product, ...text }, id): FoundText => {
        const named = product ?? facts;
        return { ...text, id, ...(named && { product: withKind({ ...facts, ...named }) }) };
      });
      const page = { url, title, lists };
      const read =
        (await inTurns(readingPage(readings.knowing(remembered), readings.lookup, page), off)) ?? [];
      if (off()) return [];
      const shown = read.map(({ list, proteins }) => ({ ...list, proteins }));
      // Known before it is painted: a worker stopped right after has left nothing that badge and panel lack.
      const kept = pages.put(at.tab, at.frame, { url, title, lists: shown }).catch(() => undefined);
      await Promise.all([kept, read.length > 0 && !canPaint && bringPainter(at)]);
      void show(at.tab);
      const [only] = at.frame === 0 && read.length === 1 ? shown : [];
      if (only) void meet(only, url).catch(() => undefined);
      return read.map((each) => ({
        ...orderOf(each, remembered.settings, sources, t),
        places: found[each.list.id]!.places,
      }));
    },
    async left(at: Place, url: string, title: string): Promise<void> {
      newest.begin(at);
      await pages.put(at.tab, at.frame, { url, title, lists: [] });
      await show(at.tab);
    },
    /** Nothing of this tab is read any more. */
    async drop(tab: number): Promise<void> {
      newest.forget(tab);
      await pages.drop(tab);
      await show(tab).catch(() => undefined);
    },
  };
}

export type Pages = ReturnType<typeof createPages>;
