import type { Keeper } from '../../../src/store/keeper.ts';
import { wordsOf } from '../words.ts';
import { bring } from './bring.ts';

/** Lets the reader point at an element of a tab's page. */
export async function pickList(tab: number, keeper: Keeper): Promise<void> {
  const t = await wordsOf(await keeper.remembered());
  await bring({ tabId: tab }, 'picker.js', { pick: t('page.pick') });
}
