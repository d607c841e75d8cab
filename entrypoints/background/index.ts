import { browser } from 'wxt/browser';
import { defineBackground } from 'wxt/utils/define-background';
import { answer } from '../../src/contract/messages.ts';
import { admit } from './answers/admit.ts';
import { createAnswers } from './answers/answers.ts';
import { followChanges } from './follow-changes.ts';
import { listenToBrowser } from './listen.ts';
import { createParts } from './parts.ts';

export default defineBackground(() => {
  const parts = createParts();
  answer(browser.runtime, createAnswers(parts), admit);
  listenToBrowser(parts);
  const { reach, tabPages, frames } = parts;
  // A worker that was stopped before it did so, or said so.
  void reach.settle().catch(() => undefined);
  void tabPages.tabs().then((tabs) => tabs.map((tab) => frames.show(tab).catch(() => undefined)));
  browser.storage.local.onChanged.addListener((changes) => void followChanges(changes, parts));
  // Where the browser lets us: what is kept is none of a page's business, nor of our own script in it.
  void browser.storage.local.setAccessLevel?.({ accessLevel: 'TRUSTED_CONTEXTS' });
});
