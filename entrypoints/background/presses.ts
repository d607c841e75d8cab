import { browser } from 'wxt/browser';
import { ask } from '../../src/contract/messages.ts';
import { triedAgain } from '../../src/contract/tried-again.ts';
import type { Parts } from './parts.ts';
import { pressShelf } from './shelf/press-shelf.ts';
import { inTab } from './tab/in-tab.ts';
import { openPanel } from './tab/panel.ts';
import { pickList } from './tab/pick.ts';

/** Presses on toolbar, menu and keys. */
export function listenToPresses({ keeper, reach, tell }: Pick<Parts, 'keeper' | 'reach' | 'tell'>) {
  // The right that a press gives may reach the page a moment after the press.
  const read = (tab: number) => triedAgain(() => reach.read(tab));
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
    if (command === 'read-shelf') return void pressShelf(id, read).catch(() => undefined);
    void tell(id, 'jump').catch(() => read(id));
  });
}
