import { type Stored, sitesIn, toldOf } from '../../src/use/judge/concerns.ts';
import { makeMenus } from './menus.ts';
import type { Parts } from './parts.ts';

/** What is remembered may change what a strip says, where pages are read, and in which language. */
export async function followChanges(changes: Stored, { keeper, tabPages, frames, reach, tell }: Parts) {
  const remembered = await keeper.remembered();
  for (const tab of await tabPages.tabs()) {
    const page = await tabPages.get(tab);
    const told = page && toldOf(changes, remembered, page);
    if (told) void tell(tab, told).catch(() => undefined);
    if (told === 'stop') void frames.drop(tab);
  }
  const sites = sitesIn(changes);
  if (sites.length > 0) await reach.sync(sites);
  if ('settings' in changes) void makeMenus(keeper);
}
