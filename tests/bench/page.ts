// The content script in a real Chromium: time until lists are known, until they are painted, and beside three
// well-known libraries that look through the same pages.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from 'playwright-core';
import { openShop } from '../browser/harness.ts';
import { benchPage, fortyNames } from './bench-page.ts';
import { libraries } from './libraries.ts';
import { median, ms } from './measure.ts';

/** Serves bench pages at /<number of nodes>. */
export async function serveBench() {
  const server = createServer((request, response) => {
    const nodes = Number(new URL(request.url ?? '/', 'http://localhost').pathname.slice(1));
    response.writeHead(nodes ? 200 : 404, { 'content-type': 'text/html; charset=utf-8' });
    response.end(nodes ? benchPage(nodes) : '');
  });
  await new Promise<void>((ready) => server.listen(0, ready));
  return {
    url: (nodes: number) => `http://localhost:${(server.address() as AddressInfo).port}/${nodes}`,
    close: () => server.closeAllConnections() ?? server.close(),
  };
}

type Marks = Record<string, number>;

/** First time of each mark the content script left, in ms from navigation. */
const marks = (page: Page): Promise<Marks> =>
  page.evaluate(() =>
    Object.fromEntries(
      performance
        .getEntriesByType('mark')
        .reverse()
        .flatMap(({ name, startTime }) =>
          name.startsWith('strandline ') ? [[name.slice(11), startTime]] : [],
        ),
    ),
  );

/** Time of a task in a page that has just loaded, in ms. */
async function inPage(page: Page, url: string, script: string, task: string): Promise<number> {
  await page.goto(url);
  await page.waitForTimeout(150);
  await page.evaluate(script);
  return page.evaluate(
    `(async () => { const from = performance.now(); ${task}; return performance.now() - from; })()`,
  );
}

export async function lines(): Promise<string[]> {
  const said: string[] = [];
  const shop = await openShop();
  const bench = await serveBench();
  const page = await shop.context.newPage();
  const load = async (nodes: number) => {
    await page.goto(bench.url(nodes));
    await page.waitForFunction(() => performance.getEntriesByName('strandline painted').length > 0);
    return marks(page);
  };

  for (const [nodes, aim, runs] of [
    [3000, 5, 11],
    [30_000, 25, 5],
  ] as const) {
    await load(nodes);
    const taken: Marks[] = [];
    for (let i = 0; i < runs; i++) taken.push(await load(nodes));
    const located = median(taken.map((at) => at.known! - at.begin!));
    const resolved = median(taken.map((at) => at.ready! - at.answered!));
    const known = located + resolved;
    const paint = median(taken.map((at) => at.painted! - at.known!));
    said.push(
      `${nodes} nodes: list known after ${ms(known)} of main-thread time (aim ${aim}; where one may be ${ms(located)}, the answer back at its letters ${ms(resolved)}); known → painted ${ms(paint)} with the worker awake (aim 50)`,
    );
    const plain = await shop.context.browser()!.newContext();
    const other = await plain.newPage();
    for (const [name, script, task] of libraries) {
      const times: number[] = [];
      for (let i = 0; i < (nodes > 10_000 ? (name === 'axe-core' ? 1 : 3) : 5); i++)
        times.push(await inPage(other, bench.url(nodes), script, task));
      const time = median(times);
      said.push(`  ${name} on the same page: ${ms(time)}, ${(time / known).toFixed(1)} times ours`);
    }
    await plain.close();
  }

  const killed: number[] = [];
  for (let i = 0; i < 3; i++) {
    await load(3000);
    await shop.killWorker();
    const took = await page.evaluate(
      (text) =>
        new Promise<number>((done) => {
          performance.clearMarks();
          document.querySelector('.list')!.textContent = text;
          const wait = () => {
            const [known, painted] = ['known', 'painted'].map(
              (name) => performance.getEntriesByName(`strandline ${name}`)[0],
            );
            if (known && painted) done(painted.startTime - known.startTime);
            else setTimeout(wait, 20);
          };
          wait();
        }),
      `${fortyNames}, Mica`,
    );
    killed.push(took);
  }
  said.push(`known → painted after the worker was killed: ${ms(median(killed))} (aim 150)`);
  await bench.close();
  await shop.close();
  return said;
}
