import { browser } from 'wxt/browser';
import type { Parts } from '../parts.ts';

/** Deletes everything that is kept. */
export async function forgetAll({ tabPages, shelves, keeper, reach }: Parts): Promise<null> {
  const open = await Promise.all((await tabPages.tabs()).map((tab) => tabPages.get(tab)));
  // Before the store tells of its going: open pages are read again at once.
  await browser.storage.session.clear();
  await shelves.met.deletedWith(open.flatMap((page) => page?.url ?? []));
  await keeper.forget();
  await reach.forget();
  return null;
}
