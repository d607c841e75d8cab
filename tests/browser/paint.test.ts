// Painting in a real Chromium: under the right letters, by the right names, and without a trace.
import { isDeepStrictEqual } from 'node:util';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bareLabel, label, serveBarePages, settings } from './bare-pages.ts';
import { glyphReport } from './glyph-boxes.ts';
import {
  atRest,
  type Harness,
  lineStyle,
  openShop,
  painted,
  proteinLetters,
  screens,
  until,
} from './harness.ts';
import { press } from './moments.ts';

let shop: Harness;
let bare: Awaited<ReturnType<typeof serveBarePages>>;
beforeAll(async () => {
  [shop, bare] = [await openShop({ width: 1000 }), await serveBarePages()];
});
afterAll(async () => {
  await bare.close();
  await shop.close();
});

const proteins = ['Hydrolyzed Keratin', 'Hydrolyzed Silk', 'Hydrolyzed Wheat Protein', 'Silk Amino Acids'];

/** A bare page, painted. */
async function open(name: string): Promise<Page> {
  const page = await shop.context.newPage();
  await page.goto(bare.url(name));
  await until(
    () => painted(page),
    ({ strip }) => strip !== '',
  );
  return page;
}

/** Glyphs by their names and on no letter, in two looks one after the other; at least so many. */
const glyphsStand = (page: Page, least: (glyphs: number) => number = () => 0) => {
  let good = 0;
  return until(
    () => glyphReport(page),
    ({ overlaps, far, glyphs, shown }) => {
      good = overlaps.length + far.length === 0 && shown >= least(glyphs) ? good + 1 : 0;
      return good > 1;
    },
  );
};

const inStrip = <T>(page: Page, ask: (root: ShadowRoot) => T): Promise<T> =>
  page.evaluate(`(${ask})(document.querySelector('[data-strandline]').shadowRoot)`) as Promise<T>;

const cardText = (page: Page) =>
  inStrip(page, (root) =>
    [...root.querySelectorAll<HTMLElement>('.card:popover-open [data-t]')]
      .map(({ dataset }) => dataset.t)
      .join(''),
  );

const focused = (page: Page) =>
  inStrip(
    page,
    (root) =>
      ['aria-label', 'title', 'data-t'].map((name) => root.activeElement?.getAttribute(name)).find(Boolean) ??
      '',
  );

/** As the browser tells the background when the shortcut is pressed; keys of the browser itself cannot be sent. */
const jump = async (page: Page) => {
  await page.bringToFront();
  await (await shop.worker()).evaluate(async (url) => {
    const tab = (await chrome.tabs.query({})).find((each) => each.url === url);
    await chrome.tabs.sendMessage(tab!.id!, { strandline: 'jump', request: null });
  }, page.url());
};

describe('letters', () => {
  it('each kind of name under its own line, and nothing else', async () => {
    const page = await open('plain');
    const { lines } = await painted(page);
    expect(lines.large).toEqual(['Hydrolyzed Wheat Protein']);
    expect(lines.small).toEqual(['Hydrolyzed Silk', 'Hydrolyzed Keratin']);
    expect(lines.free).toEqual(['Silk Amino Acids']);
    expect(lines.moisture).toEqual(
      expect.arrayContaining(['Glycerin', 'Cetearyl Alcohol', 'Petrolatum', 'Panthenol']),
    );
    expect(lines.moisture).not.toContain('Parfum');
    const names = ['Hydrolyzed Wheat Protein', 'Hydrolyzed Silk', 'Silk Amino Acids', 'Glycerin'];
    expect(await Promise.all(names.map((name) => lineStyle(page, name)))).toEqual([
      'double',
      'dashed',
      'dotted',
      'solid',
    ]);
    await screens(page, 'paint-plain');
    await page.close();
  });

  it('the badge is 0 on a list without protein', async () => {
    const page = await open('bare');
    expect(await shop.badgeBecomes(page, '0')).toBe('0');
    expect((await painted(page)).strip).toMatch(/no protein/);
    await page.close();
  });

  it('500 names', async () => {
    const page = await open('many');
    const names = async () => Object.values((await painted(page)).lines).flat().length;
    await expect.poll(names).toBe(500);
    const shown = async () => {
      const report = await glyphReport(page);
      return [report.shown, ...report.overlaps.slice(0, 3)];
    };
    await expect.poll(shown).toEqual([500]);
    await page.close();
  });

  it('several lists: each is painted, one strip speaks of the one in view', async () => {
    const page = await open('several');
    await expect.poll(async () => proteinLetters(await painted(page)).length).toBe(5);
    expect(await inStrip(page, (root) => root.querySelectorAll('.strip').length)).toBe(1);
    await page.close();
  });
});

describe('glyphs', () => {
  it.each(['settings', 'upper', 'dark', 'rtl', 'zoomed', 'scaled', 'bigbody'])(
    '%s: by their names, on no letter',
    async (name) => {
      const page = await open(name);
      // Lines set solid leave no room; every other setting shows nearly all.
      const lists = name === 'settings' ? settings.length : 1;
      const most = (glyphs: number) => Math.floor((glyphs / lists) * Math.max(1, lists - 1) * 0.9);
      const report = await glyphsStand(page, most);
      expect(report.shown).toBeGreaterThanOrEqual(most(report.glyphs));
      await screens(page, `paint-${name}`, true);
      await page.close();
    },
  );

  it('are light where the letters are light', async () => {
    const colours = async (name: string) => {
      const page = await open(name);
      const found = await inStrip(page, (root) =>
        [root.querySelector('.name .plum')!, root.querySelector('.strip')!].map(
          (each) => getComputedStyle(each).color,
        ),
      );
      await page.close();
      return found;
    };
    // Plum and ink of both schemes, as src/ui/tokens.css has them.
    expect(await colours('plain')).toEqual(['rgb(107, 42, 91)', 'rgb(42, 36, 46)']);
    expect(await colours('dark')).toEqual(['rgb(230, 170, 214)', 'rgb(242, 235, 227)']);
  });

  it('follow their letters through width, font, scroll and unfolding', async () => {
    const page = await open('plain');
    const still = async () => expect((await glyphsStand(page, () => 9)).shown).toBeGreaterThan(8);
    await page.setViewportSize({ width: 520, height: 800 });
    await still();
    await page.evaluate(() =>
      document.querySelector<HTMLElement>('.list')!.style.setProperty('font-size', '19px'),
    );
    await still();
    await page.evaluate(() => {
      const banner = document.createElement('div');
      banner.style.height = '137px';
      document.body.prepend(banner);
    });
    await still();
    await page.evaluate(() =>
      document.querySelector<HTMLElement>('section')!.style.setProperty('margin-left', '41px'),
    );
    await still();
    await page.close();
  });

  it('follow a list that moves before anybody scrolled, and the strip with them', async () => {
    const page = await open('roomy');
    await until(
      () => inStrip(page, (root) => root.querySelector('.strip')!.className),
      (name) => name.includes('attached'),
    );
    const gap = () =>
      inStrip(page, (root) => {
        const list = document.querySelector('.list')!.getBoundingClientRect();
        const strip = root.querySelector('.strip')!.getBoundingClientRect();
        const name = root.querySelector('.name:not([hidden])')!.getBoundingClientRect();
        const [x, y] = [name.left - list.left, name.top - list.top];
        return [strip.left - list.left, strip.top - list.bottom, x, y].map(Math.round);
      });
    const before = await atRest(gap, (a, b) => `${a}` === `${b}`);
    // Nothing changes its size, and no event tells of it.
    await page.evaluate(() => {
      const { style } = document.querySelector('section')!;
      style.position = 'relative';
      style.top = '83px';
      style.left = '31px';
    });
    expect(await until(gap, (now) => `${now}` === `${before}`)).toEqual(before);
    const { far, overlaps, shown } = await glyphsStand(page, () => 4);
    expect([far, overlaps, shown > 3]).toEqual([[], [], true]);
    await page.close();
  });

  it('are cropped with a box that scrolls, and move with it', async () => {
    const page = await open('scroller');
    // Some stand on letters of the lines that the box cuts off; all stand by their names.
    const stand = () =>
      until(
        () => glyphReport(page),
        ({ far, shown }) => shown > 0 && far.length === 0,
      );
    expect((await stand()).far).toEqual([]);
    await page.evaluate(() => document.querySelector('#box')!.scrollBy(0, 60));
    expect((await stand()).far).toEqual([]);
    const layer = () =>
      inStrip(page, (root) => {
        const at = root.querySelector('.layer')!.getBoundingClientRect();
        const box = document.querySelector('#box')!.getBoundingClientRect();
        return Math.abs(at.height - box.height) + Math.abs(at.top - box.top);
      });
    await expect.poll(layer).toBeLessThan(4);
    await screens(page, 'paint-scroller');
    await page.close();
  });

  it('hide where a sticky header covers their letters, and come back', async () => {
    const page = await open('sticky');
    const covered = () => inStrip(page, (root) => root.querySelectorAll('.name[data-covered]').length);
    expect(await covered()).toBe(0);
    const top = await page.evaluate(() => document.querySelector('.list')!.getBoundingClientRect().top);
    await page.mouse.wheel(0, top - 50);
    expect(await until(covered, (n) => n > 0)).toBeGreaterThan(0);
    await screens(page, 'paint-sticky');
    await page.mouse.wheel(0, -2000);
    expect(await until(covered, (n) => n === 0)).toBe(0);
    await page.close();
  });

  it('appear when an accordion opens', async () => {
    const page = await open('details');
    const shown = async () => (await glyphReport(page)).shown;
    expect(await shown()).toBe(0);
    await page.click('summary');
    expect(await until(shown, (n) => n > 8)).toBeGreaterThan(8);
    await page.close();
  });

  it('are not printed', async () => {
    const page = await open('plain');
    await page.emulateMedia({ media: 'print' });
    expect(await inStrip(page, (root) => getComputedStyle(root.host).display)).toBe('none');
    await page.close();
  });
});

describe('strip and card', () => {
  it('stands under its list where the page is blank there, and covers no letter', async () => {
    const page = await open('roomy');
    await until(() => inStrip(page, (root) => root.querySelector('.strip.attached') !== null), Boolean);
    const look = () =>
      inStrip(page, (root) => {
        const box = (at: DOMRect) => ({ left: at.left, top: at.top, bottom: at.bottom });
        const strip = root.querySelector('.strip')!;
        return {
          strip: box(strip.getBoundingClientRect()),
          list: box(document.querySelector('.list')!.getBoundingClientRect()),
          folded: strip.classList.contains('folded'),
        };
      });
    const { strip, list, folded } = await atRest(look, isDeepStrictEqual);
    expect(folded).toBe(false);
    expect(strip.top).toBeGreaterThanOrEqual(list.bottom);
    expect(strip.top - list.bottom).toBeLessThan(30);
    expect((await painted(page)).strip).toMatch(/protein.*large.*moisture/);
    await screens(page, 'paint-roomy');
    await page.close();
  });

  it('is dragged by its head, folded and opened, and stays as it was left when painted anew', async () => {
    const page = await open('roomy');
    const box = () =>
      inStrip(page, (root) => {
        const { left, top, width } = root.querySelector('.strip')!.getBoundingClientRect();
        return { left, top, width };
      });
    await until(() => inStrip(page, (root) => root.querySelector('.strip.attached') !== null), Boolean);
    const from = await atRest(box, isDeepStrictEqual);
    await page.mouse.move(from.left + 60, from.top + 22);
    await page.mouse.down();
    await page.mouse.move(from.left + 260, from.top + 322, { steps: 4 });
    await page.mouse.up();
    const dragged = async () => {
      const now = await box();
      return [now.left - from.left, now.top - from.top].map(Math.round);
    };
    await expect.poll(dragged).toEqual([200, 300]);
    const to = await box();
    await press(page, '^Fold$');
    await expect.poll(async () => (await box()).width).toBeLessThan(from.width);
    await page.evaluate((text) => {
      document.querySelector('.list')!.textContent = text;
    }, bareLabel);
    await until(
      () => painted(page),
      ({ strip }) => /no protein/.test(strip),
    );
    const isFolded = () =>
      inStrip(page, (root) => root.querySelector('.strip')!.classList.contains('folded'));
    await expect.poll(isFolded).toBe(true);
    await expect.poll(async () => Math.round((await box()).top)).toBe(Math.round(to.top));
    await page.close();
  });

  it('by keyboard: the shortcut, the names in order, their cards, Escape', async () => {
    const page = await open('plain');
    await jump(page);
    expect(
      await until(
        () => focused(page),
        (now) => now !== '',
      ),
    ).toMatch(/^Strandline: /);
    // Past the strip's own controls to the names: one stop for all of them.
    for (let i = 0; i < 12 && !/^Cetearyl/.test(await focused(page)); i++) await page.keyboard.press('Tab');
    expect(await focused(page)).toMatch(/^Cetearyl Alcohol: /);
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => focused(page)).toMatch(/^Glycerin: draws water/);
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => focused(page)).toMatch(/^Hydrolyzed Wheat Protein: hydrolyzed protein, large/);
    const card = await until(() => cardText(page), Boolean);
    expect(card).toMatch(/Hydrolyzed Wheat Protein/);
    expect(card).toMatch(/daltons/);
    expect(card).toMatch(/Place 5 of 16: 0 to 20 %/);
    expect(card).toMatch(/Source: /);
    await screens(page, 'paint-card');
    await page.keyboard.press('End');
    await expect.poll(() => focused(page)).toMatch(/^Hydrolyzed Keratin/);
    await page.keyboard.press('Escape');
    expect(
      await until(
        () => cardText(page),
        (text) => text === '',
      ),
    ).toBe('');
    await page.close();
  });

  it('by pointer: hovering a name opens its card, leaving closes it', async () => {
    const page = await open('plain');
    const at = await page.evaluate(() => {
      const text = document.querySelector('.list')!.firstChild as Text;
      const range = document.createRange();
      const from = text.data.indexOf('Hydrolyzed Silk');
      range.setStart(text, from);
      range.setEnd(text, from + 10);
      const { left, top } = range.getBoundingClientRect();
      return { x: left + 8, y: top + 8 };
    });
    await page.mouse.move(at.x, at.y);
    expect(await until(() => cardText(page), Boolean)).toMatch(/^\s*Hydrolyzed Silk/);
    await page.mouse.move(5, 5);
    expect(
      await until(
        () => cardText(page),
        (text) => text === '',
      ),
    ).toBe('');
    await page.close();
  });

  it('over a modal dialog of the page: moves in with its list, hides from another', async () => {
    const page = await open('dialog');
    await page.click('#open');
    await until(
      () => inStrip(page, (root) => root.host.parentElement?.localName ?? ''),
      (name) => name === 'dialog',
    );
    const seen = await inStrip(page, (root) => {
      const strip = root.querySelector<HTMLElement>('.strip')!;
      strip.querySelector<HTMLElement>('button')!.focus();
      return {
        parent: root.host.parentElement?.localName,
        open: strip.matches(':popover-open'),
        focus: root.activeElement?.localName,
      };
    });
    expect(seen).toEqual({ parent: 'dialog', open: true, focus: 'button' });
    await screens(page, 'paint-dialog');
    await page.click('dialog button');
    expect(
      await until(
        () => inStrip(page, (root) => root.host.parentElement?.localName ?? ''),
        (name) => name === 'html',
      ),
    ).toBe('html');
    await page.close();
  });
});

describe('without a trace', () => {
  it('the page’s own nodes stay byte for byte, and nothing else is asked of the network', async () => {
    const page = await shop.context.newPage();
    await page.addInitScript(() => {
      // The page's own record of itself, and of every change to it.
      const changes: string[] = [];
      Object.assign(window, { changes });
      addEventListener('DOMContentLoaded', () => {
        Object.assign(window, { before: document.documentElement.outerHTML });
        new MutationObserver((records) => {
          for (const { type, addedNodes, removedNodes, target } of records)
            for (const node of [...addedNodes, ...removedNodes, ...(type === 'childList' ? [] : [target])])
              if (!(node as Element).matches('[data-strandline]')) changes.push(`${type} ${node.nodeName}`);
        }).observe(document, { attributes: true, characterData: true, childList: true, subtree: true });
      });
    });
    const requests: string[] = [];
    shop.context.on('request', (request) => requests.push(request.url()));
    bare.asked.length = 0;
    await page.goto(bare.url('plain'));
    await until(
      () => painted(page),
      ({ strip }) => strip !== '',
    );
    await jump(page);
    await page.keyboard.press('Tab');
    await atRest(
      () => page.evaluate(() => (window as unknown as { changes: string[] }).changes.length),
      (some, others) => some === others,
    );
    const { before, after, changes } = await page.evaluate(() => {
      const copy = document.documentElement.cloneNode(true) as HTMLElement;
      for (const ours of copy.querySelectorAll('[data-strandline]')) ours.remove();
      const { before, changes } = window as unknown as { before: string; changes: string[] };
      return { before, after: copy.outerHTML, changes };
    });
    expect(after).toBe(before);
    expect(changes).toEqual([]);
    expect(requests.filter((url) => !url.startsWith('chrome-extension:'))).toEqual([bare.url('plain')]);
    expect(bare.asked.filter((path) => path !== '/favicon.ico')).toEqual(['/plain']);
    await page.close();
  });

  it('undone when the page moves on', async () => {
    const page = await open('routes');
    expect(await shop.badgeBecomes(page, '4')).toBe('4');
    await page.click('#leave');
    const gone = await until(
      () =>
        page.evaluate(() => ({
          lines: CSS.highlights.size,
          hosts: document.querySelectorAll('[data-strandline]').length,
        })),
      ({ lines, hosts }) => lines + hosts === 0,
    );
    expect(gone).toEqual({ lines: 0, hosts: 0 });
    expect(await shop.badgeBecomes(page, '')).toBe('');
    await page.close();
  });

  it('a page that removes our host is left alone', async () => {
    const page = await shop.context.newPage();
    const problems: string[] = [];
    page.on('pageerror', (error) => problems.push(error.message));
    await page.goto(bare.url('remover'));
    expect(await shop.badgeBecomes(page, '4')).toBe('4');
    await page.waitForTimeout(1200);
    expect(problems).toEqual([]);
    expect(await page.evaluate(() => document.querySelectorAll('[data-strandline]').length)).toBe(0);
    await page.close();
  });

  it('injected twice is injected once', async () => {
    const page = await open('plain');
    await (await shop.worker()).evaluate(async (url) => {
      const tab = (await chrome.tabs.query({})).find((each) => each.url === url);
      await chrome.scripting.executeScript({
        target: { tabId: tab!.id! },
        files: ['content-scripts/reader.js'],
      });
    }, page.url());
    await page.waitForTimeout(600);
    await expect.poll(async () => (await painted(page)).lines.large).toEqual(['Hydrolyzed Wheat Protein']);
    expect(await page.evaluate(() => document.querySelectorAll('[data-strandline]').length)).toBe(1);
    await page.close();
  });
});

describe('a hostile world', () => {
  it.each(['strict', 'hostile', 'above'])('%s: painted all the same', async (name) => {
    const page = await open(name);
    expect(proteinLetters(await painted(page)).sort()).toEqual(
      name === 'above' ? ['Hydrolyzed Wheat Protein'] : proteins,
    );
    const style = await inStrip(page, (root) => {
      const { fontSize, color, display } = getComputedStyle(root.querySelector('.strip')!);
      return { fontSize, color, display };
    });
    expect(style).toEqual({ fontSize: '14px', color: 'rgb(42, 36, 46)', display: 'block' });
    await screens(page, `paint-${name}`);
    await page.close();
  });

  it('a worker killed between two lists answers the second', async () => {
    const page = await open('plain');
    await shop.killWorker();
    await page.evaluate((text) => {
      document.querySelector('.list')!.textContent = text;
    }, bareLabel);
    expect(await shop.badgeBecomes(page, '0')).toBe('0');
    const { strip } = await until(
      () => painted(page),
      (now) => /no protein/.test(now.strip),
    );
    expect(strip).toMatch(/no protein/);
    await page.evaluate((text) => {
      document.querySelector('.list')!.textContent = text;
    }, label);
    expect(await shop.badgeBecomes(page, '4')).toBe('4');
    await page.close();
  });

  it('in forced colours and in the dark', async () => {
    const page = await open('plain');
    await page.emulateMedia({ forcedColors: 'active' });
    await page.waitForFunction(() => matchMedia('(forced-colors: active)').matches);
    await screens(page, 'paint-forced');
    await page.emulateMedia({ forcedColors: 'none', colorScheme: 'dark' });
    // A light page stays light whatever the system prefers.
    expect(await inStrip(page, (root) => getComputedStyle(root.querySelector('.strip')!).color)).toBe(
      'rgb(42, 36, 46)',
    );
    await page.close();
  });
});
