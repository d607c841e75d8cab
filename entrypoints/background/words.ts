import { browser } from 'wxt/browser';
import type { Remembered } from '../../src/store/remembered.ts';
import { bestLanguage, wordsFor } from '../../src/ui/words/languages.ts';

/** Words in the reader's language; files of the extension itself, no network. */
export const wordsOf = ({ settings }: Pick<Remembered, 'settings'>) =>
  wordsFor(bestLanguage([settings.language, browser.i18n.getUILanguage()]), async (language) =>
    (await fetch((browser.runtime as typeof chrome.runtime).getURL(`words/${language}.json`))).json(),
  );
