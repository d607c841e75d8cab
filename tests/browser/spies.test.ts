// Hostile pages against the shipped build: what a page can learn, and what it can do in the reader's name.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findFirefox } from '../run/browsers.ts';
import { openFirefox } from './firefox.ts';
import { atRest, type Harness, openShop, painted, until } from './harness.ts';
import { type AnyPage, act, unfold } from './moments.ts';
import { serveSpies, spy } from './spies.ts';

/** Words of the strip that stand nowhere else on these pages. */
const words = ['cannot tell', 'Your hair', 'hair', 'Keep', 'Compare', 'routine', 'moisture', 'tell', 'Fold'];

let site: Awaited<ReturnType<typeof serveSpies>>;
beforeAll(async () => {
  site = await serveSpies();
});
afterAll(() => site.close());

const learnsNothing = (learnt: ReturnType<typeof spy>) => {
  expect(learnt.hosts).toBe(1);
  expect(learnt.tag).toBe('div');
  expect(learnt.attributes).toEqual([]);
  expect(learnt.root).toBeNull();
  expect(learnt.internals).toBe('refused');
  expect(learnt.caught).toBe('nothing');
  expect(learnt.found).toEqual([]);
  expect(learnt.text).toBe('');
  for (const word of words) expect(`${learnt.selected}${learnt.drawn}`).not.toContain(word);
  expect(learnt.globals).toEqual([]);
  expect(learnt.highlights.length).toBeGreaterThan(2);
  for (const name of learnt.highlights) expect(name).toMatch(/^[a-z]{9}\d+$/);
};

describe('Chromium, as shipped', () => {
  let shop: Harness;
  beforeAll(async () => {
    shop = await openShop({ build: 'shipped' });
    await shop.remembered(); // the background has begun
  });
  afterAll(() => shop.close());

  const read = async (name: string): Promise<Page> => {
    const page = await shop.context.newPage();
    await page.goto(site.url(name));
    await shop.press(page);
    return page;
  };
  const hosts = (page: Page) => page.locator('html > div').count();
  const shown = async (page: Page) => {
    await until(
      () => hosts(page),
      (n) => n > 0,
    );
    await until(
      () => page.evaluate(() => CSS.highlights.size),
      (lines) => lines > 2,
    );
  };

  it.each(['plain', 'names'])('%s: a page learns no word of the strip, and no name of ours', async (name) => {
    const page = await read(name);
    await shown(page);
    const learnt = await page.evaluate(spy, words);
    learnsNothing(learnt);
    expect(learnt.rules).toEqual(['solid', 'solid', 'solid']); // no rule by a name that can be known
    await page.reload();
    await shop.press(page);
    await shown(page);
    const again = await page.evaluate(spy, words);
    expect(again.highlights.filter((each) => learnt.highlights.includes(each))).toEqual([]);
    await page.close();
  });

  it('the words are there for a screen reader', async () => {
    const page = await read('plain');
    await shown(page);
    const session = await shop.context.newCDPSession(page);
    const listen = async () => {
      const { nodes } = (await session.send('Accessibility.getFullAXTree')) as {
        nodes: { role?: { value: string }; name?: { value: string } }[];
      };
      return nodes.map(({ role, name }) => `${role?.value}: ${name?.value}`);
    };
    const button = /^button: (Open in panel|Add to routine)/;
    const said = await until(listen, (all) => all.some((each) => button.test(each)));
    expect(said.some((each) => button.test(each))).toBe(true);
    expect(said.some((each) => /^StaticText: cannot tell/i.test(each))).toBe(true);
    await page.close();
  });

  it('a page that shuts our door is left alone', async () => {
    const page = await read('no-door');
    await page.waitForTimeout(700);
    expect(await hosts(page)).toBe(0);
    expect(await page.evaluate(() => CSS.highlights.size)).toBe(0);
    await page.close();
  });

  it('nothing of ours where no list is', async () => {
    const page = await read('nothing');
    await page.waitForTimeout(700);
    expect(await hosts(page)).toBe(0);
    expect(await page.evaluate(() => CSS.highlights.size)).toBe(0);
    await page.close();
  });

  const picture = (page: Page) =>
    atRest(
      () => page.screenshot(),
      (a, b) => a.equals(b),
    );

  it('styles, registered properties and fonts of the page change no pixel of the strip', async () => {
    const shots: Buffer[] = [];
    for (const name of ['plain', 'styles']) {
      const page = await read(name);
      await shown(page);
      await picture(page);
      await page.evaluate(() => document.querySelector('h3')!.remove()); // a strip at rest stands by its list
      await picture(page);
      await page.evaluate(() => {
        for (const each of document.querySelectorAll<HTMLElement>('h1,p'))
          each.style.setProperty('visibility', 'hidden', 'important');
      });
      shots.push(await picture(page));
      await page.close();
    }
    expect(site.leaks).toEqual([]);
    expect(shots[1]!.equals(shots[0]!)).toBe(true);
  });

  it('the start of our reader is no event that a page could hear or send', async () => {
    const page = await read('plain');
    await shown(page);
    await page.evaluate((id) => {
      for (const name of ['reader', 'content', 'painter'])
        for (const target of [document, window]) target.dispatchEvent(new Event(`${id}:${name}:started`));
    }, shop.id);
    await page.waitForTimeout(200);
    expect(await hosts(page)).toBe(1);
    await page.close();
  });

  it.each(['globals', 'form', 'form-alone'])(
    '%s: names that shadow the document’s own change nothing',
    async (name) => {
      const page = await read(name);
      expect(await shop.badgeBecomes(page, '4')).toBe('4');
      // The page is not held up, whatever a form makes of our questions.
      await page.waitForTimeout(500);
      expect(await page.evaluate(() => 1 + 1)).toBe(2);
      await expect.poll(() => hosts(page)).toBe(1);
      await page.close();
    },
  );
});

describe('Chromium, acts', () => {
  let shop: Harness;
  beforeAll(async () => {
    shop = await openShop();
  });
  afterAll(() => shop.close());

  const open = async (name: string): Promise<Page> => {
    const page = await shop.context.newPage();
    await page.goto(site.url(name));
    await until(
      () => painted(page),
      ({ strip }) => strip !== '',
    );
    await page.waitForTimeout(600);
    return page;
  };
  const kept = async () => {
    const { products, sites } = await shop.remembered();
    return { products: products.length, sites: sites.length };
  };
  const any = (page: Page) => page as unknown as AnyPage;

  it('presses, moves and keys that a page makes up do nothing, even in an open root', async () => {
    const page = await open('plain');
    await page.evaluate(() => {
      const root = document.querySelector('[data-strandline]')!.shadowRoot!;
      const where = document.querySelector('.list')!.firstChild as Text;
      const range = document.createRange();
      range.setStart(where, where.data.indexOf('Glycerin'));
      range.setEnd(where, where.data.indexOf('Glycerin') + 4);
      const { left, top, width, height } = range.getBoundingClientRect();
      const at = { bubbles: true, composed: true, clientX: left + width / 2, clientY: top + height / 2 };
      for (const type of ['pointermove', 'click'])
        where.parentElement!.dispatchEvent(new PointerEvent(type, { ...at, pointerType: 'mouse' }));
      for (const button of root.querySelectorAll<HTMLElement>('button')) {
        button.click();
        button.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, composed: true }));
        button.dispatchEvent(new MouseEvent('click', { bubbles: true, composed: true, detail: 1 }));
      }
    });
    await page.waitForTimeout(500);
    expect(
      await page.evaluate(() =>
        document.querySelector('[data-strandline]')!.shadowRoot!.querySelector('.card:popover-open'),
      ),
    ).toBeNull();
    expect(await kept()).toEqual({ products: 0, sites: 0 });
    await page.close();
  });

  it.each([
    ['overlay', () => document.querySelector<HTMLElement>('#over')!.showPopover()],
    ['overlay-in-shadow', () => (window as unknown as { cover(): void }).cover()],
  ])('%s: a press that falls through something the page drew over us writes nothing', async (name, cover) => {
    const page = await open(name);
    await unfold(any(page));
    await page.waitForTimeout(400);
    await page.evaluate(cover);
    await page.waitForTimeout(300);
    await act(any(page), '^Keep product$');
    await page.waitForTimeout(400);
    expect(await kept()).toEqual({ products: 0, sites: 0 });
    await page.close();
  });

  it('the picker hears the reader alone', async () => {
    const page = await open('plain');
    const tab = await shop.tabOf(page);
    await shop.ask('pick-list', { tab });
    await page.bringToFront();
    await until(
      () => page.locator('html > div').count(),
      (n) => n === 2,
    );
    await page.evaluate(() => {
      for (const key of ['ArrowDown', 'Enter', 'Escape'])
        document.body.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
      document.querySelector('h1')!.dispatchEvent(new PointerEvent('pointermove', { bubbles: true }));
      document.querySelector('h1')!.click();
    });
    await page.waitForTimeout(300);
    expect(await page.locator('html > div').count()).toBe(2);
    expect(await kept()).toEqual({ products: 0, sites: 0 });
    await page.keyboard.press('Escape');
    expect(
      await until(
        () => page.locator('html > div').count(),
        (n) => n === 1,
      ),
    ).toBe(1);
    await page.close();
  });

  it('and the reader’s own press keeps the product', async () => {
    const page = await open('plain');
    await act(any(page), '^Keep product$');
    const now = await until(kept, ({ products }) => products === 1);
    expect(now.products).toBe(1);
    await page.close();
  });
});

describe.skipIf(!findFirefox())('Firefox, as shipped', () => {
  let firefox: Awaited<ReturnType<typeof openFirefox>>;
  beforeAll(async () => {
    firefox = await openFirefox('shipped');
  });
  afterAll(() => firefox.close());

  it.each(['plain', 'names', 'globals'])(
    '%s: a page learns no word of the strip, and no name of ours',
    async (name) => {
      const page = await firefox.open(site.url(name));
      await firefox.press(page);
      await until(
        () => page.$('html > div'),
        (host) => host !== null,
      );
      await new Promise((later) => setTimeout(later, 900));
      if (name !== 'globals')
        await until(
          () => page.evaluate(() => CSS.highlights.size),
          (lines) => lines > 2,
        );
      // These say nothing where the page shadowed what we ask with.
      if (name !== 'globals') learnsNothing(await page.evaluate(spy, words));
      expect(
        await page.evaluate(() => document.querySelectorAll === undefined || CSS.highlights.size),
      ).toBeTruthy();
      await expect.poll(() => firefox.badge(page)).toBe('4');
      if (name === 'plain') {
        const said = await firefox.accessible();
        expect(said).toContain('Add to routine');
        expect(said).toMatch(/cannot tell/i);
      }
      await page.close();
    },
  );

  it('fonts of the page are never asked for by the strip', async () => {
    site.leaks.length = 0;
    const page = await firefox.open(site.url('styles'));
    await firefox.press(page);
    await until(
      () => firefox.badge(page),
      (badge) => badge === '4',
    );
    await new Promise((later) => setTimeout(later, 900));
    expect(site.leaks).toEqual([]);
    await page.close();
  });
});
