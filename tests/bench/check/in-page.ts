// Reading a page beside three well-known libraries that look through the same page, by turns in one Chromium.
import type { Page } from 'playwright-core';
import { openShop } from '../../browser/harness.ts';
import { libraries } from '../libraries.ts';
import { serveBench } from '../page.ts';
import { calibration, type Pair } from './pairs.ts';

const nodes = 3000;
const rounds = 7;

const timed = [...libraries, ['calibration', '', `(${calibration})()`]] as const;

/** Main-thread time until lists are known: where they may be, and the answer back at its letters; ms. */
const known = (page: Page) =>
  page.evaluate(() => {
    const at = (name: string) => performance.getEntriesByName(`strandline ${name}`)[0]!.startTime;
    return at('known') - at('begin') + at('ready') - at('answered');
  });

export async function pairsInPage(): Promise<Pair[]> {
  const shop = await openShop();
  const bench = await serveBench();
  const plain = await shop.context.browser()!.newContext();
  try {
    const [ours, theirs] = [await shop.context.newPage(), await plain.newPage()];
    const pairs = timed.map(
      ([name]): Pair => ({ name: `page of 3,000 nodes beside ${name}`, ours: [], beside: [] }),
    );
    for (let round = -1; round < rounds; round++) {
      await ours.goto(bench.url(nodes));
      await ours.waitForFunction(() => performance.getEntriesByName('strandline painted').length > 0);
      const took = await known(ours);
      for (const [i, [, script, task]] of timed.entries()) {
        await theirs.goto(bench.url(nodes));
        await theirs.evaluate(script);
        const time = await theirs.evaluate<number>(
          `(async () => { const from = performance.now(); ${task}; return performance.now() - from; })()`,
        );
        if (round < 0) continue;
        pairs[i]!.ours.push(took);
        pairs[i]!.beside.push(time);
      }
    }
    return pairs;
  } finally {
    await plain.close();
    await bench.close();
    await shop.close();
  }
}
