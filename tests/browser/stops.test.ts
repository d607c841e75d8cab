// The background's worker stopped at any moment, and an extension that goes while a page shows its strip.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { serveBarePages } from './bare-pages.ts';
import { type Harness, openShop, painted, until } from './harness.ts';
import { act } from './moments.ts';

let shop: Harness;
let bare: Awaited<ReturnType<typeof serveBarePages>>;
beforeAll(async () => {
  [shop, bare] = [await openShop(), await serveBarePages()];
});
afterAll(async () => {
  await shop.close();
  await bare.close();
});

/** Stops the worker wherever it is, and waits for nothing: what a page asks starts it again at once. */
async function stop() {
  const session = await shop.context.browser()!.newBrowserCDPSession();
  const { targetInfos } = await session.send('Target.getTargets');
  for (const { targetId, type, url } of targetInfos)
    if (type === 'service_worker' && url.includes(shop.id))
      await session.send('Target.closeTarget', { targetId }).catch(() => undefined);
  await session.detach();
}

const stripIn = (page: Page, good: (strip: string) => boolean, ms = 20_000) =>
  until(async () => (await painted(page)).strip, good, ms);

it('30 loads of a page that never stirs, the worker stopped three times in each round: all are painted', {
  timeout: 400_000,
}, async () => {
  const rounds = 10;
  const abreast = 3;
  const tabs = await Promise.all(Array.from({ length: abreast }, () => shop.context.newPage()));
  let unpainted = 0;
  for (let round = 0; round < rounds; round++) {
    await stop();
    const loads = tabs.map((tab) => tab.goto(bare.url('plain')));
    // Stopped as it starts, as it reads, and as it answers: wherever that falls on this machine.
    for (const wait of [round * 12, 40 + round * 25, 150]) {
      await new Promise((later) => setTimeout(later, wait));
      await stop();
    }
    await Promise.all(loads);
    for (const tab of tabs)
      await stripIn(tab, (strip) => strip !== '').catch(() => {
        unpainted++;
      });
  }
  for (const tab of tabs) await tab.close();
  expect(unpainted).toBe(0);
});

it('an extension that was taken away leaves a strip that says so, goes, and throws nothing', {
  timeout: 120_000,
}, async () => {
  const own = await openShop();
  const [pressed, stirred] = [await own.context.newPage(), await own.context.newPage()];
  const thrown: string[] = [];
  for (const page of [pressed, stirred]) {
    page.on('pageerror', (problem) => thrown.push(String(problem)));
    await page.goto(bare.url('plain'));
    expect(await stripIn(page, (strip) => strip !== '')).not.toBe('');
  }
  const worker = await own.worker();
  const gone = new Promise((closed) => worker.once('close', closed));
  await worker
    .evaluate(() => chrome.management.uninstallSelf({ showConfirmDialog: false }))
    .catch(() => undefined);
  await gone;

  // A press on the strip is answered by what became of it.
  await act(pressed, '^Keep product$');
  const said = await until(
    () =>
      pressed.evaluate(() =>
        [...document.querySelectorAll('[data-strandline-notice]')].flatMap((host) =>
          [...(host.shadowRoot?.querySelectorAll<HTMLElement>('[data-t]') ?? [])].map(
            ({ dataset }) => dataset.t,
          ),
        ),
      ),
    (words) => words.length > 0,
  );
  expect(said.join(' ')).toMatch(/Strandline was updated/);
  await stripIn(pressed, (strip) => strip === '');

  // A page that stirs is rid of it without a press.
  await stirred.evaluate(() => {
    const more = document.createElement('p');
    more.textContent = 'Aqua, Glycerin, Panthenol, Hydrolyzed Silk, Parfum';
    document.body.append(more);
  });
  await stripIn(stirred, (strip) => strip === '');
  expect(thrown).toEqual([]);
  await own.close();
});
