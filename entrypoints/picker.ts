import { browser } from 'wxt/browser';
import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { ask } from '../src/contract/messages.ts';
import '../src/page/begin-ours.ts';
import { ours } from '../src/page/ours.ts';
import { pickElement } from '../src/page/read/picker.ts';
import { selectorOf } from '../src/page/read/selector.ts';

// Returns at once: whoever brought the file does not wait for the user's choice.
export default defineUnlistedScript(() => {
  void pickElement(window, ours.pick ?? '').then((chosen) => {
    if (chosen) void ask(browser.runtime, 'list-is-here', { selector: selectorOf(chosen) });
  });
});
