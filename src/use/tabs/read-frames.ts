import type { FoundText, ListOrder, Messages } from '../../contract/messages.ts';
import type { PaintOrder } from '../../contract/paint-order.ts';
import type { KindReader } from '../../core/product/kind.ts';
import type { Keeper } from '../../store/keeper.ts';
import type { Remembered } from '../../store/remembered.ts';
import { mayRead, type ReadList } from '../judge/read-page.ts';
import { addressOn, readSent } from '../judge/read-sent.ts';
import type { Readings } from '../reading/readings.ts';
import { createNewest, type Frame } from './newest.ts';
import { badgeOf, type TabPages } from './tab-pages.ts';

type At = Frame & { site?: string | undefined };
type By = {
  keeper: Pick<Keeper, 'remembered'>;
  readings: Pick<Readings, 'finder' | 'lookup' | 'knowing'>;
  tabPages: TabPages;
  /** How a list is painted, in the user's language. */
  drawing(remembered: Remembered): Promise<(list: ReadList) => PaintOrder>;
  bringPainter(at: Frame): Promise<unknown>;
  setBadge(tab: number, text: string): Promise<unknown>;
  /** The one list of a product's own page: its shelf will know it. */
  meet(list: FoundText, url: string): Promise<unknown>;
} & Pick<KindReader, 'withKind'>;

/** Reads what the frames of tabs send, keeps what each tab shows, and says how to paint it. */
export function createFrames({ keeper, readings, tabPages, withKind, ...by }: By) {
  const newest = createNewest();
  const show = async (tab: number) => by.setBadge(tab, badgeOf(await tabPages.get(tab)));

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
      const draw = await by.drawing(remembered);
      const reader = { finder, lookup: readings.lookup, withKind };
      const read = await readSent(page, frame === 0, readings.knowing(remembered), reader, off);
      if (off()) return [];
      const lists = read.map(({ list, proteins }) => ({ ...list, proteins }));
      const { url, title } = page;
      // Known before it is painted: a worker stopped right after has left nothing that badge and panel lack.
      const kept = tabPages.put(tab, frame, { url, title, lists }).catch(() => undefined);
      const toPaint = read.length > 0 && !sent.canPaint;
      await Promise.all([kept, toPaint && by.bringPainter({ tab, frame })]);
      void show(tab);
      const [only] = frame === 0 && lists.length === 1 ? lists : [];
      if (only) void by.meet(only, url).catch(() => undefined);
      return read.map((each) => ({ ...draw(each), places: each.places }));
    },
    /** The page of this frame moved on. */
    async left(at: Frame, url: string, title: string): Promise<void> {
      newest.begin(at);
      await tabPages.put(at.tab, at.frame, { url, title, lists: [] });
      await show(at.tab);
    },
    /** Nothing of this tab is read any more. */
    async drop(tab: number): Promise<void> {
      newest.forget(tab);
      await tabPages.drop(tab);
      await show(tab).catch(() => undefined);
    },
  };
}

export type Frames = ReturnType<typeof createFrames>;
