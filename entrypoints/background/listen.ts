import { browser } from 'wxt/browser';
import { ask } from '../../src/contract/messages.ts';
import { makeMenus } from './menus.ts';
import type { Parts } from './parts.ts';
import { inTab } from './tab/in-tab.ts';
import { openPanel } from './tab/panel.ts';
import { pickList } from './tab/pick.ts';

/** What the browser tells: presses on toolbar, menu and keys, grants, tabs that move on. */
export function listenToBrowser(parts: Parts) {
  listenToPresses(parts);
  listenToStart(parts);
  const { reach, tabPages } = parts;
  browser.permissions.onAdded.addListener(() => void reach.sync());
  browser.permissions.onRemoved.addListener(() => void reach.sync());
  browser.tabs.onRemoved.addListener((tab) => void tabPages.drop(tab));
  browser.tabs.onUpdated.addListener((tab, { status }) => {
    if (status === 'loading') void tabPages.drop(tab);
  });
}

function listenToPresses({ keeper, reach, tell, shelves }: Parts) {
  // The right that a press gives may reach the page a moment after the press.
  const read = (tab: number) =>
    reach.read(tab).catch(async () => {
      await new Promise((later) => setTimeout(later, 100));
      await reach.read(tab);
    });
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

function listenToStart({ keeper, reach }: Parts) {
  browser.runtime.onInstalled.addListener(({ reason }) => {
    void reach.sync();
    // Once, and not in the build that tests and the demo drive: there a tab of its own would come in between.
    if (reason === 'install' && import.meta.env.MODE !== 'localhost')
      void browser.tabs.create({ url: 'welcome.html' });
    void browser.action.setBadgeBackgroundColor({ color: '#6b2a5b' });
    void browser.action.setBadgeTextColor({ color: '#ffffff' });
    void makeMenus(keeper);
  });
  browser.runtime.onStartup.addListener(() => {
    void reach.sync();
    void keeper.sweep();
  });
}
