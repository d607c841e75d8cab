import type { Keeper } from '../../src/store/keeper.ts';
import type { Acting } from '../../src/use/acts/acting.ts';
import type { createReach } from '../../src/use/reach/reach.ts';
import type { Readings } from '../../src/use/reading/readings.ts';
import type { TabPages } from '../../src/use/tab-pages.ts';
import type { Pages } from './pages.ts';
import type { Shelves } from './shelf/shelves.ts';

/** What the background is made of: each answers one question, the wiring hands them round. */
export type Parts = {
  keeper: Keeper;
  readings: Readings;
  tabPages: TabPages;
  pages: Pages;
  acting: Acting;
  shelves: Shelves;
  reach: ReturnType<typeof createReach>;
  tell(tab: number, name: 'again' | 'stop' | 'jump'): Promise<unknown>;
};
