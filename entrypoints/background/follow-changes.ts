import { browser } from 'wxt/browser';
import { keyParts } from '../../src/store/keys.ts';
import { mayRead } from '../../src/use/read-page.ts';
import { makeMenus } from './menus.ts';
import type { Parts } from './parts.ts';

/** Whatever is remembered may change what a strip says, where pages are read, and in which language. */
export function followChanges({ keeper, tabPages, pages, reach, tell }: Parts) {
  browser.storage.local.onChanged.addListener(async (changes) => {
    const remembered = await keeper.remembered();
    for (const tab of await tabPages.tabs()) {
      const page = await tabPages.get(tab);
      const paused = page && !mayRead({ remembered }, page.url);
      if (paused) void pages.drop(tab);
      void tell(tab, paused ? 'stop' : 'again').catch(() => undefined);
    }
    const kinds = Object.keys(changes).map((key) => keyParts(key)[0]);
    if (kinds.includes('sites')) void reach.sync();
    if (kinds.includes('settings')) void makeMenus(keeper);
  });
}
