import { browser } from 'wxt/browser';
import type { Keeper } from '../../src/store/keeper.ts';
import { wordsForReader } from './words.ts';

/** The context menu, in the user's language. */
export async function makeMenus(keeper: Keeper): Promise<void> {
  const t = await wordsForReader(await keeper.remembered());
  browser.contextMenus.removeAll(() => {
    browser.contextMenus.create({
      id: 'selection',
      contexts: ['selection'],
      title: t('page.menu.selection'),
    });
    browser.contextMenus.create({ id: 'picture', contexts: ['image'], title: t('page.menu.picture') });
    browser.contextMenus.create({ id: 'pick', contexts: ['page'], title: t('page.menu.pick') });
  });
}
