import { type PanelGo, panelGoKey } from '../../src/contract/messages.ts';
import { isUndoKey } from '../../src/store/undo-stack.ts';
import { isPlace } from '../../src/ui/shell.tsx';
import { createTabPages } from '../../src/use/tab-pages.ts';
import { reachOf } from './reach.ts';
import type { State } from './state.ts';

/** `?tab=ID` holds the panel to one tab: the panel as a whole page. */
export function heldTab(query: URLSearchParams): number | undefined {
  return query.has('tab') ? Number(query.get('tab')) || 0 : undefined;
}

/** Follows the tab in view: what was read there, and what the browser lets us read. */
export function followTab(
  browser: typeof chrome,
  state: State,
  held: number | undefined,
  on: {
    toTab(name: 'read-tab' | 'pick-list' | 'closed-parts', tab: number): Promise<unknown>;
    sent(go: PanelGo): Promise<void>;
    drawSoon(): void;
  },
) {
  // A panel that opens acts on a press of just now, and on no older one.
  let lastSent = Date.now() - 5000;
  let newest = 0;
  const tabPages = createTabPages(browser.storage.session);

  async function look() {
    const turn = ++newest;
    const active = await tabInView();
    const id = active?.id ?? -1;
    // Straight from where the background keeps it: a sleeping worker need not wake for this.
    const seen = await tabPages.get(id);
    const may = await reachOf(browser.permissions, seen?.url ?? active?.url, (name) =>
      on.toTab(name, id),
    ).catch(() => undefined);
    // The reader may have turned to another tab meanwhile; the newest look counts.
    if (turn !== newest) return;
    state.tab = id < 0 ? undefined : { id, ...(active?.url && { url: active.url }) };
    state.page = seen;
    state.reach = may;
    await goWhereSent();
    on.drawSoon();
  }

  async function tabInView() {
    if (held === undefined) return (await browser.tabs.query({ active: true, currentWindow: true }))[0];
    return held > 0 ? browser.tabs.get(held).catch(() => undefined) : undefined;
  }

  /** The strip or the toolbar opened the panel for something: go there once. */
  async function goWhereSent() {
    const { [panelGoKey]: sent } = await browser.storage.session.get<{ [panelGoKey]?: PanelGo }>(panelGoKey);
    if (!sent || sent.tab !== state.tab?.id || sent.nth <= lastSent || !isPlace(sent.place)) return;
    lastSent = sent.nth;
    await on.sent(sent);
  }

  const again = () => void look();
  browser.storage.session.onChanged.addListener((changes) => {
    if (Object.keys(changes).some((key) => !isUndoKey(key))) again();
  });
  browser.tabs.onActivated.addListener(again);
  browser.tabs.onUpdated.addListener((id, what) => {
    if (id === state.tab?.id && (what.status || what.url)) again();
  });
  browser.windows.onFocusChanged?.addListener(again);
  browser.permissions.onAdded.addListener(again);
  browser.permissions.onRemoved.addListener(again);
  again();
}
