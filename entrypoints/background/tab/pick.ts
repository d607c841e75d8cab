import type { Keeper } from '../../../src/store/keeper.ts';
import { wordsForReader } from '../words.ts';
import { bring } from './bring.ts';

/** Lets the user point at an element of a tab's page. */
export async function pickList(tab: number, keeper: Keeper): Promise<void> {
  const t = await wordsForReader(await keeper.remembered());
  await bring({ tabId: tab }, 'picker.js', { pick: t('page.pick') });
}
