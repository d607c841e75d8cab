import { type PanelGo, panelGoKey } from '../../src/contract/messages.ts';
import { isUndoKey } from '../../src/store/undo-stack.ts';
import type { State } from '../../src/ui/panel/state.ts';
import { createSentOnce } from '../../src/use/tabs/sent-once.ts';
import { createTabPages } from '../../src/use/tabs/tab-pages.ts';
import { reachOf } from './reach.ts';
import { hearTabInView, tabInView } from './tab-in-view.ts';

type ToTab = 'read-tab' | 'pick-list' | 'closed-parts';
type On = {
  toTab(name: ToTab, tab: number): Promise<unknown>;
  sent(go: PanelGo): Promise<void>;
  drawSoon(): void;
};

/** Follows the tab in view: what was read there, what the browser lets us read, and what a press there wants. */
export function followTab(browser: typeof chrome, state: State, held: number | undefined, on: On) {
  const sentOnce = createSentOnce();
  const { session } = browser.storage;
  const tabPages = createTabPages(session);
  let newest = 0;

  async function look() {
    const turn = ++newest;
    const active = await tabInView(browser, held);
    const id = active?.id ?? -1;
    // Straight from where the background keeps it: a sleeping worker need not wake for this.
    const page = await tabPages.get(id);
    const toTab = (name: ToTab) => on.toTab(name, id);
    const reach = await reachOf(browser.permissions, page?.url ?? active?.url, toTab).catch(() => undefined);
    // The user may have turned to another tab meanwhile; the newest look counts.
    if (turn !== newest) return;
    const tab = id < 0 ? undefined : { id, ...(active?.url && { url: active.url }) };
    Object.assign(state, { tab, page, reach });
    const go = sentOnce((await session.get<{ [panelGoKey]?: PanelGo }>(panelGoKey))[panelGoKey], tab?.id);
    if (go) await on.sent(go);
    on.drawSoon();
  }

  const again = () => void look();
  session.onChanged.addListener((changes) => {
    if (Object.keys(changes).some((key) => !isUndoKey(key))) again();
  });
  hearTabInView(browser, (id) => id === state.tab?.id, again);
  again();
}
