// Acts from the page and from the panel: each says what came of it and can be taken back, wherever it was asked.
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { goodOf } from '../store/goods.ts';
import { atRest, type Harness, openShop, painted, screens, until } from './harness.ts';
import { type AnyPage, act, unfold } from './moments.ts';
import { changeIn, look, rememberedIn, seed, tabOf } from './views.ts';

let shop: Harness;
let panel: Page;
let page: Page;
beforeAll(async () => {
  shop = await openShop({ width: 1000 });
});
afterAll(() => shop.close());
const good = goodOf('isinglass-gel')!;
const strip = (words: RegExp) =>
  until(
    async () => (await painted(page)).strip,
    (now) => words.test(now),
  );
beforeEach(async () => {
  panel = await shop.panelPage();
  await seed(panel, 'empty');
  page = await shop.open(`/goods/${good.id}`);
  await strip(/./);
});
afterEach(async () => {
  await page.close();
  await panel.close();
});

/** Words of ours stand in attributes: no page finds them. */
const noticeRoot = () =>
  page.evaluate(() => {
    const root = document.querySelector('[data-strandline-notice]')?.shadowRoot;
    const said = [...(root?.querySelectorAll<HTMLElement>('.notice [data-t]') ?? [])];
    return said.map(({ dataset }) => dataset.t).join(' ');
  });
const notice = (words: RegExp) => until(noticeRoot, (now) => words.test(now));
/** Presses a button of the notice with the mouse, once it stands still. */
async function pressNotice(words: string) {
  const spot = () =>
    page.evaluate((wanted) => {
      const root = document.querySelector('[data-strandline-notice]')?.shadowRoot;
      const button = [...(root?.querySelectorAll<HTMLElement>('button') ?? [])].find(
        ({ dataset }) => dataset.t === wanted,
      );
      const { left = 0, top = 0, width = 0, height = 0 } = button?.getBoundingClientRect() ?? {};
      return { x: left + width / 2, y: top + height / 2, width };
    }, words);
  await until(spot, ({ width }) => width > 0);
  const at = await atRest(spot, (a, b) => a.x === b.x && a.y === b.y);
  await page.mouse.click(at.x, at.y);
}
const inStrip = (words: string) => act(page as unknown as AnyPage, words);
const kept = async () => (await rememberedIn(panel)).products;
const stripNow = async () => (await painted(page)).strip;
const badge = async () => shop.badge(page);

describe('from the strip', () => {
  it('the picture in view goes to the panel, to be read', async () => {
    await inStrip('^Read the picture in view$');
    const worker = await shop.worker();
    const go = () => worker.evaluate(async () => (await chrome.storage.session.get('panel-go'))['panel-go']);
    expect(await until(go, (told) => JSON.stringify(told ?? '').includes('picture'))).toMatchObject({
      place: 'page',
      picture: { frame: 0 },
    });
  });

  it('keeping says so beside the page, and is taken back there', async () => {
    await inStrip('^Keep product$');
    expect(await notice(/Undo/)).toContain(`${good.name} is kept under Products.`);
    await screens(page, 'acts-kept');
    expect(await kept()).toHaveLength(1);
    await pressNotice('Undo');
    expect(await notice(/Undone/)).toContain('Undone.');
    expect(await kept()).toHaveLength(0);
  });

  it('what the panel opened later shows can be undone there too', async () => {
    await inStrip('^Keep product$');
    await notice(/Undo/);
    await changeIn(panel, [{ do: 'remove', thing: 'products', id: 'nobody' }]);
    await look(shop, panel, 'products');
    await expect.poll(() => panel.textContent('body')).toContain(good.name);
  });

  it('a full store is said, and nothing is changed', async () => {
    await panel.evaluate(async () => {
      const { QUOTA_BYTES } = chrome.storage.local;
      const used = await chrome.storage.local.getBytesInUse(null);
      await chrome.storage.local.set({ filler: 'x'.repeat(QUOTA_BYTES - used - 200) });
    });
    await inStrip('^Keep product$');
    expect(await notice(/Storage/)).toMatch(/Storage is full, so this could not be saved/);
    expect(await kept()).toHaveLength(0);
    await panel.evaluate(() => chrome.storage.local.remove('filler'));
  });

  it('pausing leaves nothing of ours but the way back; resumed, the page is painted at once', async () => {
    await inStrip('^Pause this site$');
    expect(await notice(/Undo/)).toContain('is paused');
    expect(await until(stripNow, (now) => now === '')).toBe('');
    expect(await until(badge, (now) => now === '')).toBe('');
    await look(shop, panel, 'page', await tabOf(shop, page));
    const words = async () => (await panel.textContent('#place')) ?? '';
    expect(await until(words, (now) => /is paused/.test(now))).toMatch(/its pages are left alone/);
    expect(await words()).not.toContain(good.name);
    await panel.click('button >> text=Read this shop again');
    expect(await strip(/./)).not.toBe('');
    expect(await until(badge, (now) => now !== '')).not.toBe('');
  });

  it('pausing is taken back in the page itself', async () => {
    await inStrip('^Pause this site$');
    await notice(/Undo/);
    await until(stripNow, (now) => now === '');
    await pressNotice('Undo');
    expect(await strip(/./)).not.toBe('');
  });
});

describe('in the panel', () => {
  it('a kind that is corrected there is what the strip judges by', async () => {
    await changeIn(panel, [
      {
        do: 'put',
        thing: 'heads',
        value: {
          id: 'h',
          name: 'Wren',
          thickness: 'coarse',
          porosity: 'low',
          damage: { kinds: [] },
          avoid: [],
          stretch: [],
          setAside: [],
          added: '2026-01-01',
        },
      },
      {
        do: 'put',
        thing: 'routines',
        value: { id: 'r', head: 'h', name: 'Sunday', steps: [], added: '2026-01-01', washEvery: 7 },
      },
    ]);
    await unfold(page as unknown as AnyPage);
    await strip(/Wren/);
    await look(shop, panel, 'page', await tabOf(shop, page));
    const answers = async () => [
      ...new Set(
        await panel.$$eval('.answer-head .answer', (all) => all.map((each) => each.textContent ?? '')),
      ),
    ];
    const select = panel.locator('select').first();
    await select.selectOption('cleanser');
    await until(
      () => rememberedIn(panel),
      ({ sites }) => sites[0]?.kinds?.length === 1,
    );
    // The strip is read again and says what the panel says.
    const both = await until(
      async () => ({
        strip: await stripNow(),
        panel: await answers(),
        place: await panel.textContent('#place'),
      }),
      (now) =>
        now.panel.length > 0 &&
        now.panel.every((answer) => now.strip.includes(answer)) &&
        [now.strip, now.place ?? ''].every((words) => words.includes('Sunday')),
    );
    for (const answer of both.panel) expect(both.strip).toContain(answer);
    expect(both.place).toContain('Sunday');
  });

  it('what concerns no painted page makes none read again', async () => {
    const begun = () => page.evaluate(() => performance.getEntriesByName('strandline asked').length);
    // What was asked before this page came may still be on its way.
    let before = -1;
    await until(async () => {
      const now = await begun();
      const quiet = now === before;
      before = now;
      await page.waitForTimeout(500);
      return quiet;
    }, Boolean);
    await changeIn(panel, [
      { do: 'set', settings: { units: 'imperial' } },
      { do: 'read-as', printed: 'Nothing Printed', name: 'Glycerin' },
    ]);
    // One that does concern it comes last, so that the first had its time.
    await changeIn(panel, [{ do: 'set', settings: { glyphSize: 'large' } }]);
    await until(begun, (now) => now > before);
    await page.waitForTimeout(300);
    expect(await begun()).toBe(before + 1);
  });
});

describe('a script in a page, were it turned', () => {
  const told = (strandline: string, request: unknown = null) => ({ strandline, request });

  it('does not read what is kept', async () => {
    const read = await shopScript('local');
    expect(read).toBe('closed');
  });

  it.each([
    told('remembered-parts', {}),
    told('forget'),
    told('act', { act: { act: 'pause', url: 'https://other.example' }, id: 'x' }),
    told('undo', { key: 'undo:1:x' }),
    told('shelf-rows', { tab: 1 }),
  ])('is refused $strandline', async (message) => {
    expect(await shopScript('send', message)).toMatchObject({
      ok: false,
      reason: expect.stringContaining('not for a page'),
    });
  });

  it('keeps only what its own page shows', async () => {
    expect(await shopScript('send', told('strip-act', { list: 99, action: 'keep', id: 'x' }))).toMatchObject({
      ok: true,
      value: { drawn: [['p', {}, expect.stringContaining('no longer on the page')], expect.anything()] },
    });
    expect(await kept()).toHaveLength(0);
  });

  /** Asks in our isolated world of the page, as a content script would. */
  async function shopScript(what: 'local' | 'send', message: unknown = null): Promise<unknown> {
    const tab = await tabOf(shop, page);
    return (await shop.worker()).evaluate(
      async ([tabId, asked, sent]) => {
        const [injected] = await chrome.scripting.executeScript({
          target: { tabId: tabId as number },
          func: (which, given) =>
            which === 'send'
              ? chrome.runtime.sendMessage(given)
              : chrome.storage.local.get(null).then(
                  () => 'open',
                  () => 'closed',
                ),
          args: [asked, sent],
        });
        return injected?.result;
      },
      [tab, what, message] as const,
    );
  }
});

it('a worker stopped three times while a page loads: strip and badge come all the same, on every load', async () => {
  const browser = await shop.context.browser()!.newBrowserCDPSession();
  const stop = async () => {
    const { targetInfos } = await browser.send('Target.getTargets');
    for (const { type, url, targetId } of targetInfos)
      if (type === 'service_worker' && url.includes(shop.id))
        await browser.send('Target.closeTarget', { targetId }).catch(() => undefined);
  };
  const came: [boolean, boolean][] = [];
  for (let load = 0; load < 6; load++) {
    await page.goto(`${shop.store.url}/goods/${load % 2 ? 'linen-gel' : 'heavy-weather-mask'}`);
    for (let nth = 0; nth < 3; nth++) {
      await stop();
      await page.waitForTimeout(40 + 30 * load);
    }
    const strip = await until(stripNow, (now) => now !== '');
    const said = () => badge().catch(() => ''); // asked of a worker that was just stopped
    came.push([strip !== '', (await until(said, (now) => now !== '')) !== '']);
  }
  await browser.detach();
  expect(came).toEqual(Array.from({ length: 6 }, () => [true, true]));
});
