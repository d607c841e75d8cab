// What is kept, end to end in a real Chromium: a first profile, its matrix and reasons, what a shop page then says,
// a product kept, its label changed, everything exported, wiped, imported, and the identical state again.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Harness, openShop, painted, screens, until } from './harness.ts';
import { type AnyPage, act, unfold } from './moments.ts';
import { asks, rememberedIn, tabOf } from './views.ts';

let shop: Harness;
let panel: Page;
beforeAll(async () => {
  shop = await openShop({ width: 1000 });
  panel = await shop.panelPage('sidepanel.html#hair');
  await panel.setViewportSize({ width: 340, height: 800 });
});
afterAll(() => shop.close());

const gel = '/goods/isinglass-gel';
/** Words of the strip by the list, unfolded where it stands folded for want of room. */
async function stripOf(page: Page, good: (words: string) => boolean) {
  await until(
    async () => (await painted(page)).strip,
    (words) => words !== '',
  );
  await unfold(page as unknown as AnyPage);
  return until(async () => (await painted(page)).strip, good);
}
const pressInStrip = (page: Page, words: string) => act(page as unknown as AnyPage, `^${words}`);
/** All that is kept, but which write was the last. */
const stored = async () => {
  const { written: _, ...kept } = await panel.evaluate(() => chrome.storage.local.get(null));
  return kept;
};
const goTo = async (place: string) => {
  await panel.bringToFront();
  await panel.click(`#tab-${place}`);
};

/** Stops the worker where it stands; the next message wakes another. */
async function killNow() {
  const session = await shop.context.browser()!.newBrowserCDPSession();
  const { targetInfos } = await session.send('Target.getTargets');
  for (const { type, url, targetId } of targetInfos)
    if (type === 'service_worker' && url.includes(shop.id))
      await session.send('Target.closeTarget', { targetId });
  await session.detach();
}

describe('a head, a product, a file', () => {
  it('a first profile takes three taps to matrix and allowance with reasons', async () => {
    await panel.waitForSelector('.question');
    for (const words of ['Coarse', 'Low', 'None of these']) {
      await panel.locator('.question button', { hasText: words }).click();
    }
    await panel.waitForSelector('.allowance-level');
    await expect.poll(() => panel.textContent('.allowance-level strong')).toBe('rarely');
    await expect.poll(() => panel.textContent('.reasons')).toContain('the most careful case');
    await expect.poll(() => panel.locator('.matrix .cell').count()).toBe(9);
    expect(await panel.textContent('.matrix .mine')).toContain('rarely');
    expect(await panel.textContent('.matrix')).toContain('My hair is here');
    await screens(panel, 'keep-profile', true);
  });

  it('a shop page then says how its product sits with this head', async () => {
    const page = await shop.open(gel);
    const words = await stripOf(page, (now) => /Not for|Fits|Cannot tell/.test(now));
    expect(words).toContain('your hair');
    expect(words).toMatch(/Not for your hair|Fits your hair, with care/);
    const free = await shop.open('/goods/flaxen-leave-in-milk');
    expect(await stripOf(free, (now) => /Fits/.test(now))).toMatch(/Fits your hair/);
    await screens(page, 'keep-shop-clashes');
    await free.close();
    await page.close();
  });

  it('a product is kept from the page, and its changed label is told', async () => {
    const page = await shop.open(gel);
    await stripOf(page, (now) => now !== '');
    await pressInStrip(page, 'Keep');
    const products = await until(
      async () => Object.entries(await stored()).filter(([key]) => key.startsWith('products:')),
      (found) => found.length === 1,
    );
    expect(products[0]![1]).toMatchObject({ name: expect.stringContaining('Isinglass Setting Gel') });
    await page.close();

    // The shop has changed the formula meanwhile.
    await shop.context.route(`**${gel}`, async (route) => {
      const answer = await route.fetch();
      const body = (await answer.text()).replaceAll('Gelatin,', 'Hydrolyzed Soy Protein,');
      await route.fulfill({ response: answer, body });
    });
    const again = await shop.open(gel);
    await stripOf(again, (now) => now !== '');
    await panel.goto('about:blank');
    await panel.goto(`chrome-extension://${shop.id}/sidepanel.html?tab=${await tabOf(shop, again)}#page`);
    const told = panel.locator('.label-change');
    await told.waitFor();
    await expect.poll(() => told.textContent()).toContain('Now with Hydrolyzed Soy Protein.');
    await expect.poll(() => told.textContent()).toContain('No longer with Gelatin.');
    await screens(panel, 'keep-label-changed', true);
    await panel.locator('button', { hasText: 'Keep the new label' }).click();
    await until(
      async () =>
        Object.values(await stored()).some((value) => (value as { labels?: unknown[] }).labels?.length === 2),
      Boolean,
    );
    await goTo('products');
    await panel.locator('.product-name', { hasText: 'Isinglass' }).click();
    await expect.poll(() => panel.textContent('#place')).toContain('1 earlier label');
    await expect.poll(() => panel.textContent('.label-change')).toContain('Now with Hydrolyzed Soy Protein.');
    await screens(panel, 'keep-product', true);
    await shop.context.unroute(`**${gel}`);
    await again.close();
  });

  it('a removed product can be brought back by a panel opened later', async () => {
    const before = await stored();
    await panel.locator('button', { hasText: /^Remove$/ }).click();
    await until(
      async () => Object.keys(await stored()).filter((key) => key.startsWith('products:')).length,
      (left) => left === 0,
    );
    await panel.goto('about:blank');
    await panel.goto(`chrome-extension://${shop.id}/sidepanel.html#products`);
    await panel.locator('summary', { hasText: 'Removed in this session' }).click();
    await panel.locator('button', { hasText: 'Bring back' }).click();
    expect(await until(stored, (now) => Object.keys(now).length === Object.keys(before).length)).toEqual(
      before,
    );
  });

  it('exported, wiped and imported, everything is as it was', async () => {
    await goTo('settings');
    const [file] = await Promise.all([
      panel.waitForEvent('download'),
      panel.locator('button', { hasText: 'Save everything as a file' }).click(),
    ]);
    const text = readFileSync(await file.path(), 'utf8');
    expect(file.suggestedFilename()).toMatch(/^strandline-everything-\d{4}-\d\d-\d\d\.json$/);
    const before = await stored();
    expect(Object.keys(before).length).toBeGreaterThanOrEqual(4);

    await asks(panel, 'forget');
    expect(await panel.evaluate(() => chrome.storage.local.get(null))).toEqual({});
    expect(await panel.evaluate(() => chrome.storage.session.get(null))).toEqual({});
    await until(
      async () => panel.locator('text=My hair').count(),
      (count) => count === 0,
    );

    // A file cut short changes nothing and says where it stops.
    const input = panel.locator('input[type=file]');
    await input.setInputFiles({
      name: 'cut.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text.slice(0, 200)),
    });
    await expect
      .poll(() => panel.locator('.note.care[role=alert]').textContent())
      .toMatch(/Line \d+, column \d+/);
    expect(await stored()).toEqual({});

    await input.setInputFiles({ name: 'all.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await panel.locator('.option', { hasText: 'Replace what is here' }).click();
    await until(
      async () => (await panel.locator('.tallies').textContent()) ?? '',
      (words) => words.includes('People: 1 new'),
    );
    await screens(panel, 'keep-import', true);
    await panel.locator('button', { hasText: 'Import' }).click();
    const after = async () => {
      const { 'snapshot:import': _, ...rest } = await stored();
      return rest;
    };
    await expect.poll(after).toEqual(before);
    expect(await stored()).toHaveProperty('snapshot:import');
  });
});

describe('several writers in one browser', () => {
  it('two windows and the worker lose nothing', async () => {
    await asks(panel, 'forget');
    const other = await shop.panelPage('sidepanel.html#products');
    const write = (page: Page, who: string) =>
      page.evaluate(async (name) => {
        const put = (i: number) => ({
          do: 'put',
          thing: 'products',
          value: {
            id: `${name}-${i}`,
            name: `${name} ${i}`,
            labels: [],
            sources: [],
            owned: true,
            notes: '',
            added: '2026-01-01',
          },
        });
        const readAs = (i: number) => ({ do: 'read-as', printed: `${name} ${i}`, name: 'Glycerin' });
        await Promise.all(
          Array.from({ length: 100 }, (_, i) =>
            chrome.runtime.sendMessage({
              strandline: 'act',
              request: { act: { act: 'change', changes: [put(i), readAs(i)] }, id: crypto.randomUUID() },
            }),
          ),
        );
      }, who);
    await Promise.all([write(panel, 'window-1'), write(other, 'window-2')]);
    const keys = Object.keys(await stored());
    expect(keys.filter((key) => key.startsWith('products:')).length).toBe(200);
    expect(keys.filter((key) => key.startsWith('read-as:')).length).toBe(200);
    await other.close();
  });

  it('a worker killed among changes leaves each whole or undone, and the next start is sound', async () => {
    await asks(panel, 'forget');
    const changing = panel.evaluate(async () => {
      const outcomes: unknown[] = [];
      for (let i = 0; i < 60; i++) {
        const value = {
          id: `k${i}`,
          name: `k${i}`,
          labels: [],
          sources: [],
          owned: true,
          notes: '',
          added: '2026-01-01',
        };
        const changes = [
          { do: 'put', thing: 'products', value },
          { do: 'read-as', printed: `k${i}`, name: 'Glycerin' },
          ...(i > 0 ? [{ do: 'remove', thing: 'products', id: `k${i - 1}` }] : []),
        ];
        const request = { act: { act: 'change', changes }, id: crypto.randomUUID() };
        outcomes.push(await chrome.runtime.sendMessage({ strandline: 'act', request }).catch(String));
      }
      return outcomes.length;
    });
    await new Promise((next) => setTimeout(next, 40));
    await killNow();
    expect(await changing).toBe(60);
    const { products, readAs } = await rememberedIn(panel);
    // Put and read-as of one change come together; at most the one cut short is missing, with its removal.
    expect(products.at(-1)!.id).toBe('k59');
    for (const { id } of products) expect(readAs).toHaveProperty(id);
    expect(products.length).toBeLessThanOrEqual(2);
  });
});
