// By the keyboard alone, and as it is heard: the three moments, where the focus goes after adding, opening, removing
// and closing, errors at their fields, messages announced once, nothing that has the focus behind the head.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { atRest, type Harness, openShop, painted, until } from './harness.ts';
import { look, places, seed, tabOf } from './views.ts';

let shop: Harness;
let panel: Page;
beforeAll(async () => {
  shop = await openShop();
  panel = await shop.panelPage();
  await panel.setViewportSize({ width: 360, height: 700 });
});
afterAll(() => shop.close());

/** What has the focus, in shadow roots too: its name, or its words; `body` where nothing has. */
const focused = (page: Page) =>
  page.evaluate(() => {
    let at: Element = document.activeElement ?? document.body;
    while (at.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    if (at === document.body) return 'body';
    const { labels } = at as HTMLInputElement;
    const own = at.getAttribute('aria-label') ?? at.getAttribute('title') ?? (at as HTMLElement).dataset.t;
    const inner = [...at.querySelectorAll<HTMLElement>('[data-t]')].map(({ dataset }) => dataset.t).join(' ');
    return (own || labels?.[0]?.textContent || at.textContent || inner || at.id || at.localName)
      .replace(/\s+/g, ' ')
      .trim();
  });

/** Presses a key until something of this name has the focus, a bounded number of times. */
async function keyTo(page: Page, wanted: RegExp, key = 'Tab') {
  await page.bringToFront();
  for (let n = 0; n < 90; n++) {
    if (wanted.test(await focused(page))) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${key} never leads to ${wanted}; it ends at ${await focused(page)}`);
}
/** Goes to something by the keyboard and presses it. */
async function press(page: Page, wanted: RegExp, by = 'Enter', key = 'Tab') {
  await keyTo(page, wanted, key);
  await page.keyboard.press(by);
}
const comes = (wanted: RegExp) =>
  until(
    () => focused(panel),
    (now) => wanted.test(now),
  );
const words = (wanted: RegExp) =>
  until(
    () => panel.evaluate(() => document.body.textContent ?? ''),
    (now) => wanted.test(now),
  );

describe('the three moments by the keyboard alone', () => {
  let page: Page;
  const strip = (wanted: RegExp) =>
    until(
      async () => (await painted(page)).strip,
      (now) => wanted.test(now),
    );
  /** Presses something in the strip: last in the page, so the way there is backwards. */
  const inStrip = async (wanted: RegExp) => {
    await page.bringToFront();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await keyTo(page, /^(Fold|Unfold)$/, 'Shift+Tab');
    if ((await focused(page)) === 'Unfold') await page.keyboard.press('Enter');
    await until(
      () => focused(page),
      (now) => now === 'Fold',
    );
    await keyTo(page, new RegExp(`${wanted.source}|^More$`));
    if ((await focused(page)) === 'More') await page.keyboard.press('Enter');
    await press(page, wanted);
  };

  it('hair in three answers; add to the routine; compare', async () => {
    await seed(panel, 'empty');
    page = await shop.open('/goods/gossamer-leave-in');
    await strip(/./);
    await look(shop, panel, 'page', await tabOf(shop, page));
    await keyTo(panel, /^This page$/);
    for (let n = 0; n < places.indexOf('hair'); n++) await panel.keyboard.press('ArrowRight');
    await words(/Describe the hair/);
    await press(panel, /^Coarse/);
    await press(panel, /^Low/);
    await press(panel, /^None of these/, 'Enter');
    await words(/Protein suits/);
    await expect.poll(() => focused(panel)).not.toBe('body');
    await strip(/Not for/);

    await inStrip(/^Add to routine/);
    await words(/What it adds|changes nothing/);
    await panel.bringToFront();
    expect(
      await until(
        () => focused(panel),
        (now) => now !== 'body',
      ),
    ).not.toBe('body');
    await press(panel, /^Add to routine$/);
    await words(/Gossamer Leave-In is in Wash day/);
    expect(
      await until(
        () => focused(panel),
        (now) => now !== 'body',
      ),
    ).not.toBe('body');

    await inStrip(/^Compare with/);
    await words(/ready to compare/);
    await page.goto(`${shop.store.url}/goods/flaxen-leave-in-milk`);
    await strip(/no protein/);
    await keyTo(panel, /^(Routine|Compare|This page)$/, 'Shift+Tab');
    await panel.keyboard.press('Home');
    await panel.keyboard.press('ArrowRight');
    await words(/Gossamer Leave-In[\s\S]*Flaxen Leave-In Milk/);
    await page.close();
  }, 90_000);
});

describe('the focus goes', () => {
  beforeEach(() => seed(panel, 'many'));

  it('to the heading of a product that is opened, and back to its row', async () => {
    await look(shop, panel, 'products');
    const name = (await panel.locator('.product-name').nth(1).textContent())!;
    await panel.locator('.product-name').nth(1).press('Enter');
    await comes(new RegExp(`^${name}$`));
    await expect
      .poll(() => panel.evaluate(() => [document.activeElement!.localName, scrollY]))
      .toEqual(['h3', 0]);
    await press(panel, /All products/, 'Enter', 'Shift+Tab');
    await comes(new RegExp(`^${name}$`));
    await expect.poll(() => panel.evaluate(() => document.activeElement!.className)).toBe('product-name');
  });
  it('to the next row where a product is removed', async () => {
    await look(shop, panel, 'products');
    const next = (await panel.locator('.product-name').nth(2).textContent())!;
    await panel.locator('.product-name').nth(1).press('Enter');
    await panel
      .getByRole('button', { name: /^Remove / })
      .last()
      .press('Enter');
    await words(/was removed/);
    await comes(new RegExp(`^${next}$`));
  });
  it('to the heading of a form that is opened, and of a product that is added', async () => {
    await look(shop, panel, 'products');
    await panel.getByRole('button', { name: 'Add a product' }).press('Enter');
    await comes(/^A product you have/);
    await panel.getByLabel('Name', { exact: true }).fill('Spindrift Foam');
    await panel.getByRole('button', { name: 'Keep it' }).press('Enter');
    await comes(/^Spindrift Foam$/);
  });
  it('to the next step where one is removed', async () => {
    await look(shop, panel, 'routine');
    await panel.getByRole('button', { name: /^Change the cleanser/ }).press('Enter');
    await panel.getByRole('button', { name: 'Remove', exact: true }).press('Enter');
    await words(/cleanser removed/i);
    await comes(/deep conditioner, place 2 of 5/);
  });
  it('to a wash day that is begun, and to the place when it is left', async () => {
    await look(shop, panel, 'log');
    await panel.getByRole('button', { name: 'Log a wash day' }).press('Enter');
    await comes(/^A wash day$/);
    await panel.getByRole('button', { name: 'Not now' }).press('Enter');
    await comes(/^Log of Wren$/);
  });
  it('to the next of what is avoided or compared, never to the page as a whole', async () => {
    await look(shop, panel, 'hair');
    await panel.getByRole('button', { name: 'Remove Tree nuts' }).press('Enter');
    await words(/Tree nuts/);
    expect(
      await until(
        () => focused(panel),
        (now) => now !== 'body',
      ),
    ).not.toBe('body');
    await look(shop, panel, 'compare');
    await panel
      .getByRole('button', { name: /from the comparison$/ })
      .first()
      .press('Enter');
    await words(/was removed from the comparison/);
    expect(
      await until(
        () => focused(panel),
        (now) => now !== 'body',
      ),
    ).not.toBe('body');
  });
});

describe('what is heard', () => {
  it('an error is tied to its field, which has the focus', async () => {
    await seed(panel, 'many');
    await look(shop, panel, 'products');
    await panel.getByRole('button', { name: 'Add a product' }).press('Enter');
    await until(
      () => focused(panel),
      (name) => name === 'A product you have or are thinking about', // the form is open
    );
    await panel.getByRole('button', { name: 'Keep it' }).press('Enter');
    const field = panel.getByLabel('Name', { exact: true });
    await panel.locator('[aria-invalid=true]').waitFor();
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    const told = () =>
      field.evaluate((each) =>
        (each.getAttribute('aria-describedby') ?? '')
          .split(' ')
          .map((id) => document.getElementById(id)?.textContent),
      );
    expect(await until(told, ([sentence]) => sentence !== undefined)).toEqual(['A name is needed.']);
    expect(
      await until(
        () => focused(panel),
        (name) => name === 'Name',
      ),
    ).toBe('Name');
  });
  it.each([
    ['log', '#log-entry input[type=date]', '2099-01-01', 'That day is still to come.'],
    ['log', 'input[inputmode=decimal] >> nth=0', 'warm', 'From −40 to 60 °C.'],
  ] as const)('in %s %s says what is wrong with %s', async (place, selector, value, sentence) => {
    await seed(panel, 'many');
    await look(shop, panel, place);
    await panel.click('#place > .actions .button.strong');
    const field = panel.locator(selector);
    await field.fill(value);
    const told = () =>
      field.evaluate((each) => [
        each.getAttribute('aria-invalid'),
        ...(each.getAttribute('aria-describedby') ?? '')
          .split(' ')
          .map((id) => document.getElementById(id)?.textContent),
      ]);
    expect(await until(told, ([invalid]) => invalid === 'true')).toEqual(['true', sentence]);
  });
  it('what was done is announced once, in a region that was there before', async () => {
    await seed(panel, 'many');
    await look(shop, panel, 'products');
    await panel.evaluate(() => {
      const heard: string[] = [];
      Object.assign(globalThis, { heard });
      const live = '[role=status], [role=alert], [aria-live=polite], [aria-live=assertive]';
      new MutationObserver((changes) => {
        const regions = new Set(
          changes.flatMap(
            ({ target }) =>
              (target.nodeType === 3 ? target.parentElement : (target as Element))?.closest(live) ?? [],
          ),
        );
        for (const region of regions) if (region.textContent) heard.push(region.textContent);
      }).observe(document.body, { subtree: true, childList: true, characterData: true });
    });
    await panel.locator('.product-name').nth(0).press('Enter');
    await panel
      .getByRole('button', { name: /^Remove / })
      .last()
      .press('Enter');
    await words(/was removed/);
    const heard = await atRest(
      () => panel.evaluate(() => (globalThis as unknown as { heard: string[] }).heard),
      (some, others) => some.length === others.length,
    );
    expect(heard.filter((each) => /was removed/.test(each))).toHaveLength(1);
  });
});

describe('what has the focus is seen', () => {
  it.each(['routine', 'hair', 'settings'] as const)('%s, forwards and back, at 320 px', async (place) => {
    await panel.setViewportSize({ width: 320, height: 560 });
    await seed(panel, 'many');
    await look(shop, panel, place);
    await panel.focus(`#tab-${place}`);
    const hidden: string[] = [];
    const seen = async () =>
      panel.evaluate(() => {
        const at = document.activeElement as HTMLElement;
        if (at === document.body || at.id === 'place') return undefined;
        const box = (at.closest('.option, .feel-place, .check') ?? at).getBoundingClientRect();
        const [head, foot] = ['.masthead', '.toast-place'].map((each) =>
          document.querySelector(each)!.getBoundingClientRect(),
        );
        const within = at.closest('.masthead') !== null || box.bottom > head!.bottom;
        return within &&
          box.top < Math.min(innerHeight, foot!.height > 8 ? foot!.top : innerHeight) &&
          box.bottom > 0
          ? undefined
          : `${at.getAttribute('aria-label') ?? at.textContent}`;
      });
    for (const key of ['Tab', 'Shift+Tab'])
      for (let n = 0; n < 45; n++) {
        await panel.keyboard.press(key);
        // Brought into view in the next frame, where it has to be.
        const behind = await until(seen, (at) => at === undefined, 1500).catch(seen);
        if (behind) hidden.push(`${key}: ${behind}`);
      }
    expect(hidden).toEqual([]);
  });
});
