import { browser } from 'wxt/browser';
import { sheet } from '../../src/page/paint/sheet.ts';

type Target = { tabId: number; frameIds?: number[] };

/** Leaves something for our files in a page, where src/page/ours.ts finds it. Sent alone: it knows nothing else here. */
const leave = (what: { sheet: string; pick?: string }) => {
  const world = globalThis as { [key: symbol]: object | undefined };
  const key = Symbol.for('strandline');
  world[key] ??= {};
  Object.assign(world[key], what);
};

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
