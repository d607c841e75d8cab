import { keyParts } from '../../src/store/keys.ts';
import { concerns, type Stored } from '../../src/use/judge/concerns.ts';
import { mayRead } from '../../src/use/judge/read-page.ts';
import { makeMenus } from './menus.ts';
import type { Parts } from './parts.ts';

/** What is remembered may change what a strip says, where pages are read, and in which language. */
export async function followChanges(changes: Stored, { keeper, tabPages, pages, reach, tell }: Parts) {
  const remembered = await keeper.remembered();
  for (const tab of await tabPages.tabs()) {
    const page = await tabPages.get(tab);
    if (!page) continue;
    if (!mayRead({ remembered }, page.url)) {
      void tell(tab, 'stop').catch(() => undefined);
      void pages.drop(tab);
    } else if (concerns(changes, remembered, page)) void tell(tab, 'again').catch(() => undefined);
  }
  const sites = Object.keys(changes).filter((key) => keyParts(key)[0] === 'sites');
  if (sites.length > 0) await reach.sync(sites.map((key) => keyParts(key)[1]));
  if ('settings' in changes) void makeMenus(keeper);
}
