import { browser } from 'wxt/browser';
import type { Keeper } from '../../src/store/keeper.ts';
import { wordsOf } from './words.ts';

/** Lets the reader point at an element of a tab's page. */
export async function pickList(tab: number, keeper: Keeper): Promise<void> {
  const target = { tabId: tab };
  const leave = (words: string) => {
    // As src/page/ours.ts has it; this function is sent alone.
    const world = globalThis as { [key: symbol]: { pick?: string } | undefined };
    const key = Symbol.for('strandline');
    world[key] ??= {};
    world[key].pick = words;
  };
  const t = await wordsOf(await keeper.remembered());
  await browser.scripting.executeScript({ target, func: leave, args: [t('page.pick')] });
  await browser.scripting.executeScript({ target, files: ['picker.js'] });
}
