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

const within = <T>(what: string, asked: Promise<T>, ms = 15_000): Promise<T> => {
  let timer: NodeJS.Timeout;
  const late = new Promise<never>((_, fail) => {
    timer = setTimeout(() => fail(new Error(`${what}: no answer in ${ms} ms`)), ms);
  });
  return Promise.race([asked, late]).finally(() => clearTimeout(timer));
};

/** Stops the worker wherever it is, and waits for nothing: what a page asks starts it again at once. */
async function stop() {
  const session = await within('a session with the browser', shop.context.browser()!.newBrowserCDPSession());
  const { targetInfos } = await within('list of targets', session.send('Target.getTargets'));
  for (const { targetId, type, url } of targetInfos)
    if (type === 'service_worker' && url.includes(shop.id)) {
      const closed = session.send('Target.closeTarget', { targetId }).catch(() => undefined);
      await within('stop of the worker', closed);
    }
  await within('end of the session', session.detach());
  return targetInfos.map(({ type, url }) => `${type} ${url}`);
}

const stripIn = (page: Page, good: (strip: string) => boolean, ms = 20_000) =>
  until(async () => (await within('what is painted', painted(page))).strip, good, ms);

const inWorker = async <T>(ask: () => Promise<T>) =>
  within(
    'the worker',
    shop.worker().then((worker) => worker.evaluate(ask)),
  );
const registered = () =>
  inWorker(async () => (await chrome.scripting.getRegisteredContentScripts()).map(({ id }) => id));

// A worker stopped before it ever ran has told the browser of nothing it listens to, and nothing wakes it again: the
// extension is there once its reader is.
beforeAll(() => until(registered, (ids) => ids.length > 0));

it('a worker stopped before the reader was registered: the next one registers it, and the page is read', async () => {
  await inWorker(() => chrome.scripting.unregisterContentScripts());
  expect(await registered()).toEqual([]);
  await stop();
  const page = await shop.context.newPage();
  await page.goto(bare.url('plain'));
  expect(await stripIn(page, (strip) => strip !== '')).not.toBe('');
  expect(await registered()).toEqual(['reader']);
  await page.close();
});

it('30 loads of a page that never stirs, the worker stopped three times in each round: all are painted', {
  timeout: 400_000,
}, async () => {
  const rounds = 10;
  const abreast = 3;
  const tabs = await Promise.all(Array.from({ length: abreast }, () => shop.context.newPage()));
  for (let round = 0; round < rounds; round++) {
    await stop();
    const loads = tabs.map((tab) => within('load of a page', tab.goto(bare.url('plain')), 30_000));
    const seen: string[][] = [];
    // Stopped as it starts, as it reads, and as it answers: wherever that falls on this machine.
    for (const wait of [round * 12, 40 + round * 25, 150]) {
      await new Promise((later) => setTimeout(later, wait));
      seen.push(await stop());
    }
    await Promise.all(loads);
    for (const tab of tabs)
      await stripIn(tab, (strip) => strip !== '').catch(async (problem) => {
        const marks = await tab.evaluate(() => performance.getEntriesByType('mark').map(({ name }) => name));
        const state = { round, marks, stops: seen, now: await stop() };
        throw new Error(`unpainted: ${JSON.stringify(state)}`, { cause: problem });
      });
  }
  for (const tab of tabs) await tab.close();
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
