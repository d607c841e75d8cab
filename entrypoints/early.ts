import { browser } from 'wxt/browser';
import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { ask } from '../src/contract/messages.ts';
import { early } from './sidepanel/early-answer.ts';

// Before the panel's own files are read: the background wakes, and reads what is kept, meanwhile.
export default defineUnlistedScript(() => {
  early.remembered = ask(browser.runtime, 'remembered-parts', {});
  early.remembered.catch(() => undefined); // whoever takes it hears of it
});
