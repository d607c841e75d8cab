import { browser } from 'wxt/browser';
import { makeMenus } from './menus.ts';
import type { Parts } from './parts.ts';
import { listenToPresses } from './presses.ts';
import { forgetSent } from './tab/panel.ts';

/** What the browser tells: presses, starts, grants, tabs that move on. */
export function listenToBrowser(parts: Parts) {
  listenToPresses(parts);
  listenToStart(parts);
  const { reach, tabPages } = parts;
  browser.permissions.onAdded.addListener(() => void reach.sync());
  browser.permissions.onRemoved.addListener(() => void reach.sync());
  browser.tabs.onRemoved.addListener((tab) => {
    void tabPages.drop(tab);
    void forgetSent(tab);
  });
  browser.tabs.onUpdated.addListener((tab, { status }) => {
    if (status === 'loading') void tabPages.drop(tab);
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
