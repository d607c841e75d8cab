import { browser } from 'wxt/browser';

/** The page a tab shows, without its frames. */
export const shelfIn = (tab: number) => ({
  sendMessage: (message: unknown) => browser.tabs.sendMessage(tab, message, { frameId: 0 }),
});
