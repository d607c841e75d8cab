// The extension sends nothing before a press on "Read this shelf", and then only to that shop: held against Chromium's own log of every request it makes.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { badgeFor } from './counted.ts';
import { openShop, until } from './harness.ts';
import { pressOurs, shelfBar } from './shelf-bar.ts';

/** Who began each request of the whole browser, and where to. */
function requestsIn(netLog: string) {
  return readFileSync(netLog, 'utf8')
    .split('\n')
    .filter((line) => line.includes('"initiator"'))
    .map((line) => JSON.parse(line.replace(/,$/, '')) as { params: { initiator: string; url: string } })
    .map(({ params }) => ({ by: params.initiator, to: params.url }));
}

it('no request while pages are read, the panel is used and the worker is stopped', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'strandline-net-'));
  const netLog = join(folder, 'net.json');
  const shop = await openShop({ netLog });
  for (const path of ['/', '/goods/oakum-protein-treatment', '/goods/heavy-weather-mask', '/shelf'])
    await shop.open(path);
  const page = await shop.open('/goods/gossamer-leave-in');
  await shop.badgeBecomes(page, badgeFor('gossamer-leave-in'));
  for (const place of ['page', 'compare', 'routine', 'products', 'log', 'hair', 'settings'])
    await (await shop.panelFor(page, place)).waitForTimeout(150);
  await shop.killWorker();
  await page.reload();
  await shop.badgeBecomes(page, badgeFor('gossamer-leave-in'));
  const before = shop.store.asked.length;
  const help = `${shop.store.url}/help`;
  // The policy of our own pages lets nobody ask for anything; a page of ours that leaves shows that the log would tell.
  const asks = async () => (await shop.worker()).evaluate((to) => fetch(to, { mode: 'no-cors' }), help);
  await expect(asks()).rejects.toThrow('Failed to fetch');
  const leaving = await shop.panelPage();
  await Promise.all([
    leaving.waitForURL(help),
    leaving.evaluate((to) => {
      location.href = to;
    }, help),
  ]);
  const { url, asked } = shop.store;
  await shop.close();
  const requests = requestsIn(netLog);
  rmSync(folder, { recursive: true });

  const ours = requests.filter(({ by }) => by.startsWith('chrome-extension:'));
  expect(ours.map(({ to }) => to)).toEqual([help]);
  // A content script's request would bear the page's own name: pages of the shop ask for these and no more.
  expect(requests.filter(({ by, to }) => by.startsWith(url) && !to.startsWith(url))).toEqual([]);
  const known = /^\/($|shop\.(css|js)$|pictures\/|goods\/|shelf$|parts\/)/;
  expect(asked.slice(0, before).filter((path) => !known.test(path))).toEqual([]);
});

it('shelves are browsed, and one is read: nothing before the press, nothing to anybody else after it', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'strandline-net-'));
  const netLog = join(folder, 'net.json');
  const shop = await openShop({ netLog });
  const pages = () => shop.store.asked.filter((path) => /^\/(?:rack\/|robots)/.test(path));
  const page = await shop.open('/rack?n=12');
  const says = (wanted: RegExp, ms?: number) =>
    until(
      () => shelfBar(page),
      (now) => wanted.test(now),
      ms,
    );
  expect(await says(/0 of 12/)).toMatch(/0 of 12/);
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await shop.panelFor(page);
  await page.bringToFront();
  await page.reload();
  await says(/0 of 12/);
  expect(pages()).toEqual([]);
  await pressOurs(page, '^Unfold$');
  expect(await says(/asks this shop, and nobody else/)).toMatch(/and nobody else/);
  expect(pages()).toEqual([]);
  await pressOurs(page, '^Read this shelf');
  expect(await says(/Every label that can be read here is read/, 40_000)).toMatch(/Every label/);
  const asked = pages();
  const { url } = shop.store;
  await shop.close();
  const requests = requestsIn(netLog);
  rmSync(folder, { recursive: true });

  expect(requests.filter(({ by }) => by.startsWith('chrome-extension:'))).toEqual([]);
  const hosts = new Set(
    requests.filter(({ by }) => by !== 'not an origin').map(({ to }) => new URL(to).origin),
  );
  expect([...hosts].filter((host) => host !== url && !host.startsWith('chrome'))).toEqual([]);
  expect(asked[0]).toBe('/robots.txt');
  expect(asked.toSorted()).toEqual(
    ['/robots.txt', ...Array.from({ length: 12 }, (_, n) => `/rack/p/${n}`)].toSorted(),
  );
});
