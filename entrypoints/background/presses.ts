import { browser } from 'wxt/browser';
import { ask } from '../../src/contract/messages.ts';
import type { Parts } from './parts.ts';
import { inTab } from './tab/in-tab.ts';
import { openPanel } from './tab/panel.ts';
import { pickList } from './tab/pick.ts';

const again = [100, 300, 1000]; // ms before it is tried once more

/** Presses on toolbar, menu and keys. */
export function listenToPresses({ keeper, reach, tell, shelves }: Parts) {
  // The right that a press gives may reach the page a moment after the press.
  const read = async (tab: number) => {
    for (const ms of again)
      try {
        return await reach.read(tab);
      } catch {
        await new Promise((later) => setTimeout(later, ms));
      }
    return reach.read(tab);
  };
  browser.action.onClicked.addListener((tab) => {
    if (tab.id === undefined) return;
    void openPanel(tab.id, 'page');
    void read(tab.id).catch(() => undefined);
  });
  browser.contextMenus.onClicked.addListener(({ menuItemId, selectionText = '', srcUrl, frameId }, tab) => {
    const id = tab?.id;
    if (id === undefined) return;
    if (menuItemId === 'picture') {
      void openPanel(id, 'page', { picture: { frame: frameId ?? 0, ...(srcUrl && { src: srcUrl }) } });
      return;
    }
    if (menuItemId !== 'selection') return void pickList(id, keeper);
    void openPanel(id, 'page');
    void read(id).then(() => ask(inTab(id), 'read-selection', { text: selectionText }));
  });
  browser.commands.onCommand.addListener((command, tab) => {
    const id = tab?.id;
    if (id === undefined) return;
    if (command === 'read-shelf') return void shelves.press(id, read).catch(() => undefined);
    void tell(id, 'jump').catch(() => read(id));
  });
}
