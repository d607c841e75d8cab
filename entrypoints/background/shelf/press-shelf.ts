import { ask } from '../../../src/contract/messages.ts';
import { inTab } from '../tab/in-tab.ts';

const looks = 12;
const between = 250; // ms: a shelf's file is brought once its page was looked at

/** The products of the shelf a tab shows; null where it shows none. */
export const shelfCardsIn = (tab: number) => ask(inTab(tab, 0), 'shelf-cards', null).catch(() => null);

/** A press from the keyboard: reads the shelf a tab shows, and looks for one first where nothing was read yet. */
export async function pressShelf(tab: number, read: (tab: number) => Promise<void>): Promise<void> {
  if (!(await shelfCardsIn(tab))) await read(tab);
  for (let n = 0; n < looks && !(await shelfCardsIn(tab)); n++)
    await new Promise((next) => setTimeout(next, between));
  await ask(inTab(tab, 0), 'read-shelf', { told: false });
}
