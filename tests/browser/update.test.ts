// A real update while pages show strips: another version on disk, and the browser told to load it.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { serveBarePages } from './bare-pages.ts';
import { type Build, builtAt } from './chromium.ts';
import { atRest, openShop, painted, until } from './harness.ts';
import { act } from './moments.ts';

let bare: Awaited<ReturnType<typeof serveBarePages>>;
beforeAll(async () => {
  bare = await serveBarePages();
});
afterAll(() => bare.close());

/** A browser with a copy of a build, and what puts the next version in its place. */
async function openToUpdate(build: Build) {
  const at = mkdtempSync(join(tmpdir(), 'strandline-update-'));
  cpSync(builtAt(build), at, { recursive: true });
  const shop = await openShop({ at });
  // The browser takes off what was loaded from a folder, once it is loaded anew, unless its developer mode is on.
  const settings = await shop.context.newPage();
  await settings.goto('chrome://extensions');
  await settings.evaluate('chrome.developerPrivate.updateProfileConfiguration({ inDeveloperMode: true })');
  await settings.close();
  const version = async () =>
    (await shop.worker()).evaluate(() => chrome.runtime.getManifest().version).catch(() => '');
  return {
    shop,
    async update() {
      const file = join(at, 'manifest.json');
      const manifest = JSON.parse(readFileSync(file, 'utf8'));
      writeFileSync(file, JSON.stringify({ ...manifest, version: '99.0' }));
      await (await shop.worker()).evaluate(() => chrome.runtime.reload()).catch(() => undefined);
      expect(await until(version, (now) => now === '99.0', 20_000)).toBe('99.0');
    },
    async close() {
      await shop.close();
      rmSync(at, { recursive: true, force: true });
    },
  };
}

it('where pages may be read, the new version takes over from the strip of the old, and its acts are done', async () => {
  const { shop, update, close } = await openToUpdate('localhost');
  const page = await shop.context.newPage();
  const thrown: string[] = [];
  page.on('pageerror', (problem) => thrown.push(String(problem)));
  await page.goto(bare.url('plain'));
  await until(
    () => painted(page),
    ({ strip }) => strip !== '',
  );
  const before = await atRest(
    () => painted(page),
    (a, b) => JSON.stringify(a) === JSON.stringify(b),
  );
  await page.evaluate(() => document.querySelector('[data-strandline]')!.setAttribute('data-old', ''));
  await update();
  const hosts = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('[data-strandline]')].map((host) => host.hasAttribute('data-old')),
    );
  expect(await until(hosts, (now) => `${now}` === 'false', 20_000)).toEqual([false]);
  expect(
    await until(
      () => painted(page),
      (now) => `${now.strip}` === before.strip,
    ),
  ).toEqual(before);
  await act(page, '^Keep product$');
  expect(
    await until(
      async () => (await shop.remembered()).products.length,
      (kept) => kept > 0,
    ),
  ).toBe(1);
  expect(thrown).toEqual([]);
  await close();
});

it('where a page was read on a press, the strip of the old version goes when the page stirs, and a press brings the new one', async () => {
  const { shop, update, close } = await openToUpdate('shipped');
  const page = await shop.open('/goods/oakum-protein-treatment');
  const thrown: string[] = [];
  page.on('pageerror', (problem) => thrown.push(String(problem)));
  const ours = () =>
    page.evaluate(() => [document.querySelectorAll('html > div').length, CSS.highlights.size > 0]);
  const is = (wanted: [number, boolean]) => until(ours, (now) => `${now}` === `${wanted}`);
  // What the painter asked is still unanswered when the update comes.
  await (await shop.worker()).evaluate(() => {
    chrome.scripting.insertCSS = () => new Promise<void>(() => {});
  });
  await shop.press(page);
  await is([1, true]);
  await update();
  await page.evaluate(() => {
    const more = document.createElement('p');
    more.textContent = 'Aqua, Glycerin, Panthenol, Hydrolyzed Silk, Parfum';
    document.body.append(more);
  });
  await is([0, false]);
  await shop.press(page);
  await is([1, true]);
  await page.waitForTimeout(1500); // nothing is to come: as long as a request is asked again
  expect(thrown).toEqual([]);
  await close();
});
