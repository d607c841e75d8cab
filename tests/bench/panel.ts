// The panel: its weight, how soon it is of use when everything was asleep, and how long a view change takes.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import type { LogEntry } from '../../src/core/wash-day/routine.ts';
import type { Change } from '../../src/store/remembered.ts';
import { type Harness, openShop, until } from '../browser/harness.ts';
import { seeds } from '../browser/seeds.ts';
import { changeIn, look, places, seed, tabOf } from '../browser/views.ts';
import { root } from '../run/steps.ts';
import { median, ms } from './measure.ts';

const built = join(root, '.output/chrome-mv3');
const size = (file: string) => gzipSync(readFileSync(join(built, file)), { level: 9 }).length;
const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;

/** Files a page of the extension loads at once: what its HTML names, and what those import. */
function loaded(html: string): string[] {
  const seen = new Set<string>();
  const follow = (file: string) => {
    if (seen.has(file) || !existsSync(join(built, file))) return;
    seen.add(file);
    const text = readFileSync(join(built, file), 'utf8');
    const named = file.endsWith('.html')
      ? text.matchAll(/(?:src|href)="\/?([^"]+)"/g)
      : text.matchAll(/(?:^|[;}\s])import(?:[^"'()]*?from)?\s*["']\.\/([^"']+)["']/g);
    for (const [, name] of named) follow(file.endsWith('.html') ? name! : `chunks/${name}`);
  };
  follow(html);
  return [...seen].filter((file) => /\.(js|css)$/.test(file));
}

/** Opens the panel on a tab with the worker killed; ms from the start of its document to the reading on screen. */
async function coldOpen(shop: Harness, tab: number): Promise<number> {
  await shop.killWorker();
  const panel = await shop.context.newPage();
  await panel.addInitScript(() => {
    const look = () => {
      if (document.querySelector('.sums'))
        requestAnimationFrame(() => {
          (globalThis as { useful?: number }).useful = performance.now();
        });
      else requestAnimationFrame(look);
    };
    look();
  });
  await panel.goto(`chrome-extension://${shop.id}/sidepanel.html?tab=${tab}#page`);
  await panel.waitForFunction(() => (globalThis as { useful?: number }).useful !== undefined);
  const useful = await panel.evaluate(() => (globalThis as { useful?: number }).useful!);
  await panel.close();
  return useful;
}

/** From the press on a tab to the next frame drawn, for each place. */
const changes = (panel: Page): Promise<[string, number][]> =>
  panel.evaluate(async (names) => {
    const took: [string, number][] = [];
    for (const name of [...names, ...names]) {
      const from = performance.now();
      document.getElementById(`tab-${name}`)!.click();
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      took.push([name, performance.now() - from]);
      await new Promise((done) => setTimeout(done, 60));
    }
    return took.slice(names.length);
  }, places);

/** 500 products and 1,000 wash days: all of the invented shop, again and again. */
function full(): Change[] {
  const of = (thing: 'products' | 'log') =>
    seeds.many.flatMap((change) => (change.do === 'put' && change.thing === thing ? [change.value] : []));
  const products = of('products') as { id: string; name: string }[];
  const log = of('log') as LogEntry[];
  return [
    ...Array.from({ length: 500 }, (_, i) => {
      const one = products[i % products.length]!;
      return {
        do: 'put',
        thing: 'products',
        value: { ...one, id: `p${i}`, name: `${one.name} ${i}` },
      } as Change;
    }),
    ...Array.from({ length: 1000 }, (_, i) => {
      const date = new Date(Date.UTC(2026, 10, 24 - i)).toISOString().slice(0, 10);
      return { do: 'put', thing: 'log', value: { ...log[i % log.length]!, id: `l${i}`, date } } as Change;
    }),
  ];
}

/** Scrolls a place to its end and types into its search; the long tasks of it, in ms. */
async function longTasks(panel: Page, place: 'products' | 'log'): Promise<number[]> {
  await panel.evaluate(() => {
    const all: number[] = [];
    (globalThis as { long?: number[] }).long = all;
    new PerformanceObserver((list) => all.push(...list.getEntries().map((each) => each.duration))).observe({
      type: 'longtask',
    });
  });
  for (let i = 0; i < 40; i++) {
    await panel.mouse.wheel(0, 1500);
    await panel.waitForTimeout(30);
  }
  await panel.evaluate(() => scrollTo(0, 0));
  if (place === 'products' && (await panel.locator('input[type=search]').count()) > 0) {
    await panel.locator('input[type=search]').focus();
    await panel.keyboard.type('mask weather', { delay: 60 });
  }
  await panel.waitForTimeout(300);
  return panel.evaluate(() => (globalThis as { long?: number[] }).long ?? []);
}

export async function lines(): Promise<string[]> {
  const files = loaded('sidepanel.html');
  const weight = files.reduce((sum, file) => sum + size(file), 0);
  const later = readdirSync(join(built, 'chunks'))
    .map((file) => `chunks/${file}`)
    .filter((file) => !files.includes(file) && !file.includes('welcome'))
    .reduce((sum, file) => sum + size(file), 0);
  const shop = await openShop();
  try {
    const shown = await shop.open('/goods/heavy-weather-mask');
    await until(
      () => shop.badge(shown),
      (text) => text !== '',
    );
    const tab = await tabOf(shop, shown);
    let panel = await shop.panelPage();
    await seed(panel, 'many');
    await panel.close();
    const cold: number[] = [];
    for (let i = 0; i < 7; i++) cold.push(await coldOpen(shop, tab));
    panel = await shop.panelPage();
    await panel.setViewportSize({ width: 360, height: 800 });
    await look(shop, panel, 'page', tab);
    const quick = await changes(panel);
    await seed(panel, 'many');
    await changeIn(panel, full());
    await look(shop, panel, 'products', tab);
    const crowded = await changes(panel);
    await look(shop, panel, 'products', tab);
    const products = await longTasks(panel, 'products');
    await look(shop, panel, 'log', tab);
    const log = await longTasks(panel, 'log');
    const worst = (took: [string, number][]) => took.toSorted((a, b) => b[1] - a[1])[0]!;
    const said = (took: [string, number][]) =>
      `median ${ms(median(took.map(([, each]) => each)))}, slowest ${worst(took)[0]} ${ms(worst(took)[1])}`;
    const tasks = (all: number[]) =>
      all.length === 0 ? 'no task above 50 ms' : `${all.length} above 50 ms, longest ${ms(Math.max(...all))}`;
    return [
      `loaded at once, gzipped: ${kB(weight)} (aim 120); when asked for: ${kB(later)} more`,
      `cold, worker killed, from the document's start to the reading on screen: median ${ms(median(cold))} (aim 300)`,
      `view change, 30 products: ${said(quick)} (aim 50)`,
      `view change, 500 products and 1,000 wash days: ${said(crowded)}`,
      `scroll and search, 500 products: ${tasks(products)}; 1,000 wash days: ${tasks(log)}`,
    ];
  } finally {
    await shop.close();
  }
}
