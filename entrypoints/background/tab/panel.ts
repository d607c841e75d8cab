import { browser } from 'wxt/browser';
import { type PanelGo, panelGoKey } from '../../../src/contract/messages.ts';

/** Firefox's own name for the panel. */
type WithSidebar = { sidebarAction?: { open(): Promise<void> } };

type What = Omit<PanelGo, 'tab' | 'place' | 'nth'>;

/** Called within the press that asks for it: the browser opens the panel only then. */
export function openPanel(tab: number, place: string, what: What | Promise<What> = {}) {
  const opened = browser.sidePanel?.open({ tabId: tab }) ?? (browser as WithSidebar).sidebarAction?.open();
  const nth = Date.now();
  const send = (what: What) =>
    browser.storage.session.set({ [panelGoKey]: { tab, place, nth, ...what } satisfies PanelGo });
  return Promise.all([opened, what instanceof Promise ? what.then(send) : send(what)]);
}

/** A tab was closed: what stood on its page and was to go to the panel is forgotten with it. */
export async function forgetSent(tab: number) {
  const { session } = browser.storage;
  const { [panelGoKey]: go } = await session.get<{ [panelGoKey]?: PanelGo }>(panelGoKey);
  if (go?.tab === tab) await session.remove(panelGoKey);
}
