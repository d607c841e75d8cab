// The store in a real Firefox: its own storage, locks and events.
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findFirefox } from '../run/browsers.ts';
import { openFirefox } from './firefox.ts';
import { until } from './harness.ts';

declare const browser: typeof chrome;

describe.skipIf(!findFirefox())('Firefox', () => {
  let firefox: Awaited<ReturnType<typeof openFirefox>>;
  let panel: Page;
  beforeAll(async () => {
    firefox = await openFirefox('localhost');
    panel = await firefox.panelPage('sidepanel.html#hair');
  });
  afterAll(() => firefox.close());
  const stored = () =>
    panel.evaluate(() => browser.storage.local.get(null) as Promise<Record<string, unknown>>);

  it('keeps a first profile of three taps', async () => {
    for (const words of ['Coarse', 'Low', 'None of these']) {
      await panel.waitForFunction(
        (wanted) => {
          const button = [...document.querySelectorAll<HTMLElement>('.question button')].find((each) =>
            each.textContent?.includes(wanted),
          );
          button?.click();
          return Boolean(button);
        },
        {},
        words,
      );
    }
    await panel.waitForSelector('.allowance-level');
    const level = () => panel.evaluate(() => document.querySelector('.allowance-level strong')?.textContent);
    await expect.poll(level).toBe('rarely');
    const keys = async () =>
      Object.keys(await stored())
        .map((key) => key.split(':')[0])
        .toSorted();
    await expect.poll(keys).toEqual(['heads', 'settings', 'store', 'written']);
  });

  it('loses nothing to two windows that write at once, and forgets everything', async () => {
    const other = await firefox.panelPage('sidepanel.html#products');
    const write = (page: Page, who: string) =>
      page.evaluate(
        (name) =>
          Promise.all(
            Array.from({ length: 60 }, (_, i) =>
              browser.runtime.sendMessage({
                strandline: 'act',
                request: {
                  act: {
                    act: 'change',
                    changes: [{ do: 'read-as', printed: `${name} ${i}`, name: 'Glycerin' }],
                  },
                  id: `${name} ${i}`,
                },
              }),
            ),
          ),
        who,
      );
    await Promise.all([write(panel, 'one'), write(other, 'two')]);
    const names = Object.keys(await stored()).filter((key) => key.startsWith('read-as:'));
    expect(names).toHaveLength(120);
    await panel.evaluate(() => browser.runtime.sendMessage({ strandline: 'forget', request: null }));
    expect(await until(stored, (now) => Object.keys(now).length === 0)).toEqual({});
  });
});
