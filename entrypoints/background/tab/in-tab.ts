import { browser } from 'wxt/browser';

/** Our script in a tab, to be asked: in one frame of its page, or in whichever answers first. */
export const inTab = (tab: number, frame?: number) => ({
  sendMessage: (message: unknown) =>
    browser.tabs.sendMessage(tab, message, frame === undefined ? {} : { frameId: frame }),
});
