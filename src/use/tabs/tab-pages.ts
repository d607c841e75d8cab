import { type FoundText, type TabPage, tabPageKey } from '../../contract/messages.ts';
import { oneAtATime } from '../../store/area.ts';
import type { Session } from '../../store/undo-stack.ts';

/**
 * What each tab shows, kept in storage.session so that a worker that slept knows it. Frames of one tab write
 * in turn.
 */
export function createTabPages(session: Session) {
  const inTurn = oneAtATime(undefined, 'tab-pages');
  const get = async (tab: number): Promise<TabPage | null> => {
    const key = tabPageKey(tab);
    return ((await session.get(key))[key] as TabPage | undefined) ?? null;
  };
  return {
    get,
    /** Replaces the lists of one frame; the top frame (0) also names the page. */
    put: (tab: number, frame: number, page: TabPage) =>
      inTurn(async () => {
        const before = await get(tab);
        const others = before?.lists.filter((list) => list.frame !== frame) ?? [];
        const lists: FoundText[] = page.lists.map((list) => ({ ...list, frame }));
        const shelf = before?.shelf && before.url === page.url;
        const all = {
          ...(frame === 0 || !before ? page : before),
          ...(shelf && { shelf }),
          lists: [...others, ...lists],
        };
        await session.set({ [tabPageKey(tab)]: all });
        return all;
      }),
    /** The page of this tab is a shelf, with a list of its own or none. */
    isShelf: (tab: number, page: Pick<TabPage, 'url' | 'title'>) =>
      inTurn(async () => {
        const before = await get(tab);
        if (before?.shelf && before.url === page.url) return;
        const known = before?.url === page.url ? before : { ...page, lists: [] };
        await session.set({ [tabPageKey(tab)]: { ...known, shelf: true } });
      }),
    drop: (tab: number) => inTurn(() => session.remove([tabPageKey(tab)])),
    /** Tabs that show a page that was read. */
    tabs: async () =>
      Object.keys(await session.get(null)).flatMap((key) => {
        const [kind, tab] = key.split(':');
        return kind === 'page' ? [Number(tab)] : [];
      }),
  };
}

export type TabPages = ReturnType<typeof createTabPages>;

/** What the toolbar badge says: the protein mentions of a page, nothing where there is no list. */
export const badgeOf = (page: TabPage | null): string =>
  !page?.lists.length ? '' : String(page.lists.reduce((sum, list) => sum + (list.proteins ?? 0), 0));
