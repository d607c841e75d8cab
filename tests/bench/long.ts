// The longest task of the page and of the background on pages that would hold them up; least of several loads, in
// processor time, so that a busy machine changes little.

import { openShop } from '../browser/harness.ts';
import { heavyPages, serveHeavy } from '../browser/heavy-pages.ts';
import { type Longest, longestTasks } from '../browser/tasks.ts';
import { ms } from './measure.ts';

const aim = { ours: 50, background: 100 }; // ms

/** Longest tasks of each heavy page. */
async function longTasks(loads = 3): Promise<[name: string, took: Longest][]> {
  const shop = await openShop();
  const heavy = await serveHeavy();
  const all: [string, Longest][] = [];
  for (const name of Object.keys(heavyPages)) {
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
    const least = (of: keyof Longest) => Math.min(...took.map((each) => each[of]));
    all.push([
      name,
      { page: least('page'), ours: least('ours'), background: least('background'), tasks: least('tasks') },
    ]);
  }
  await heavy.close();
  await shop.close();
  return all;
}

export async function lines(): Promise<string[]> {
  return (await longTasks()).map(
    ([name, { ours, background, page }]) =>
      `${name}: longest task with our script in it ${ms(ours)} (aim ${aim.ours}), of the background ${ms(background)} (aim ${aim.background}); of the page by itself or with us ${ms(page)}`,
  );
}
