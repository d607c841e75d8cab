import { browser } from 'wxt/browser';
import { type PanelGo, panelGoKey } from '../../../src/contract/messages.ts';

/** Firefox's own name for the panel. */
type WithSidebar = { sidebarAction?: { open(): Promise<void> } };

/** Called within the press that asks for it: the browser opens the panel only then. */
export function openPanel(tab: number, place: string, what: Pick<PanelGo, 'list' | 'picture' | 'whom'> = {}) {
  const opened = browser.sidePanel?.open({ tabId: tab }) ?? (browser as WithSidebar).sidebarAction?.open();
  const go = { tab, place, nth: Date.now(), ...what };
  return Promise.all([opened, browser.storage.session.set({ [panelGoKey]: go })]);
}
