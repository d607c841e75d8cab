import { browser } from 'wxt/browser';
import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { ask } from '../src/contract/messages.ts';
import { writtenKey } from '../src/store/keys.ts';
import { aheadIn, aheadKeys } from '../src/use/left-ahead.ts';
import { early } from './sidepanel/early-answer.ts';

// Before the panel's own files are read: the background wakes, and reads what is kept, meanwhile.
export default defineUnlistedScript(() => {
  const { session, local } = browser.storage;
  early.left = Promise.all([session.get(aheadKeys), local.get(writtenKey)]).then(
    ([left, { [writtenKey]: written }]) => aheadIn(left, written),
    () => undefined,
  );
  early.remembered = ask(browser.runtime, 'remembered-parts', {});
  early.remembered.catch(() => undefined); // whoever takes it hears of it
});
