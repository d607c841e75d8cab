// The longest task of the page and of the background on pages that would hold them up; least of several loads, in
// processor time, so that a busy machine changes little.

import { openShop } from '../browser/harness.ts';
import { heavyPages, serveHeavy } from '../browser/heavy-pages.ts';
import { type Longest, longestTasks } from '../browser/tasks.ts';
import { ms } from './measure.ts';

const aim = { ours: 50, background: 100 }; // ms

/** A line for each heavy page, or for those named: `npm run bench long NAME`. */
export async function* lines(parts: string[] = [], loads = 3): AsyncGenerator<string> {
  const shop = await openShop();
  const heavy = await serveHeavy();
  try {
    for (const name of Object.keys(heavyPages)) {
      if (parts.length > 0 && !parts.includes(name)) continue;
      const took: Longest[] = [];
      for (let i = 0; i < loads; i++) {
        const tab = await shop.context.newPage();
        took.push(
          await longestTasks(shop.context, async () => {
            await tab.goto(heavy.url(name));
            await tab.waitForTimeout(2500);
          }),
        );
        await tab.close();
      }
      const least = (of: keyof Longest) => ms(Math.min(...took.map((each) => each[of])));
      yield `${name}: longest task with our script in it ${least('ours')} (aim ${aim.ours}), of the background ${least('background')} (aim ${aim.background}); of the page by itself or with us ${least('page')}`;
    }
  } finally {
    await heavy.close();
    await shop.close();
  }
}
