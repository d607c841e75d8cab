import { browser } from 'wxt/browser';
import type { Remembered } from '../../src/store/remembered.ts';
import { wordsIn } from '../../src/ui/words/languages.ts';

/** Words in the user's language. */
export const wordsForReader = ({ settings }: Pick<Remembered, 'settings'>) =>
  wordsIn(browser as unknown as typeof chrome, settings);
