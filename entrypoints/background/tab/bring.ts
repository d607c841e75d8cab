import { browser } from 'wxt/browser';
import { leave } from '../../../src/page/alone/leave.ts';
import { sheet } from '../../../src/page/paint/host/sheet.ts';

type Target = { tabId: number; frameIds?: number[] };

/** Brings one of our files that draw into a page, with the rules of what it draws and the words it needs. */
export const bring = (
  target: Target,
  file: 'painter.js' | 'picker.js' | 'shelf.js',
  words: { pick?: string } = {},
) =>
  Promise.all([
    browser.scripting.executeScript({ target, func: leave, args: [{ sheet, ...words }] }),
    browser.scripting.executeScript({ target, files: [file] }),
  ]);
