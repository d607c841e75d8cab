import { browser } from 'wxt/browser';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import type { FoundText, ListOrder, Messages } from '../../src/contract/messages.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { orderOf } from '../../src/ui/describe/order.ts';
import { mayRead } from '../../src/use/judge/read-page.ts';
import { addressOn, readSent } from '../../src/use/judge/read-sent.ts';
import { createNewest, type Frame } from '../../src/use/newest.ts';
import type { Readings } from '../../src/use/reading/readings.ts';
import { badgeOf, type TabPages } from '../../src/use/tab-pages.ts';
import { withKind } from './knowing/kinds.ts';
import { bring } from './tab/bring.ts';
import { wordsOf } from './words.ts';

type At = Frame & { site?: string | undefined };

/** Reads what a page sent, keeps what its tab shows, and says how to paint it. */
export function createPages(
  keeper: Keeper,
  readings: Readings,
  pages: TabPages,
  meet: (list: FoundText, url: string) => Promise<void>,
) {
  const show = async (tab: number) =>
    browser.action.setBadgeText({ tabId: tab, text: badgeOf(await pages.get(tab)) });

  const newest = createNewest();

  return {
    show,
    async read(sent: Messages['page-lists']['request'], at: At): Promise<ListOrder[]> {
      const off = newest.begin(at);
      const { tab, frame } = at;
      const page = { ...sent, url: addressOn(at.site, sent.url) };
      const remembering = keeper.remembered();
      const { finder } = readings; // built, in a worker just woken, while the store is read
      const remembered = await remembering;
      if (!mayRead({ remembered }, page.url)) return [];
      const t = await wordsOf(remembered);
      const by = { finder, lookup: readings.lookup, withKind };
      const read = await readSent(page, frame === 0, readings.knowing(remembered), by, off);
      if (off()) return [];
      const lists = read.map(({ list, proteins }) => ({ ...list, proteins }));
      const { url, title } = page;
      // Known before it is painted: a worker stopped right after has left nothing that badge and panel lack.
      const kept = pages.put(tab, frame, { url, title, lists }).catch(() => undefined);
      const toPaint = read.length > 0 && !sent.canPaint;
      await Promise.all([kept, toPaint && bring({ tabId: tab, frameIds: [frame] }, 'painter.js')]);
      void show(tab);
      const [only] = frame === 0 && lists.length === 1 ? lists : [];
      if (only) void meet(only, url).catch(() => undefined);
      return read.map((each) => ({
        ...orderOf(each, remembered.settings, remembered.heads.length > 1, sources, t),
        places: each.places,
      }));
    },
    async left(at: At, url: string, title: string): Promise<void> {
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
