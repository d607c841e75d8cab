// The first moment, browsing: every way in which the shop marks up a list, in a real Chromium.

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expected, expectedElsewhere } from '../store/expected.ts';
import { type Good, goods } from '../store/goods.ts';
import { badgeFor, counted, underlined } from './counted.ts';
import { type Harness, openShop, painted, proteinLetters, screens, until } from './harness.ts';
import { reveal } from './reveal.ts';

let shop: Harness;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

// Nothing to underline where no letter of the list stands in the page.
const dataOnly = ['json-ld', 'microdata'];
// Their own tests below.
const apart = ['client-router', 'stream', 'frame', 'variants', 'kit', ...dataOnly];

describe('a list is found, read, counted and underlined', () => {
  it.each(goods.filter((good) => !apart.includes(good.structure)))('$structure: $id', async (good: Good) => {
    const page = await shop.open(`/goods/${good.id}`);
    await reveal((control) => page.click(control), good.structure);
    const proteins = expected[good.id]!;
    expect(await shop.badgeBecomes(page, badgeFor(good.id))).toBe(badgeFor(good.id));
    const letters = await until(
      async () => proteinLetters(await painted(page)).sort(),
      (now) => now.length === underlined(proteins).length,
    );
    expect(letters.map((name) => name.replaceAll('\u00a0', ' '))).toEqual(underlined(proteins));
    const now = await until(
      () => painted(page),
      ({ strip }) => strip !== '',
    );
    expect(now.strip).toMatch(
      counted(proteins) ? /\d+ protein|(a little|some|a lot of|no) protein/ : /no (sure )?protein/,
    );
    expect(now.lines.moisture?.length).toBeGreaterThan(0);
    await screens(page, `structure-${good.structure}-${good.id}`);
    await page.close();
  });

  it.each(goods.filter((good) => dataOnly.includes(good.structure)))('$structure: $id', async (good) => {
    const page = await shop.open(`/goods/${good.id}`);
    const wanted = badgeFor(good.id);
    expect(await shop.badgeBecomes(page, wanted)).toBe(wanted);
    const { strip } = await until(
      () => painted(page),
      (now) => now.strip !== '',
    );
    expect(strip).toMatch(/\d+ protein|(a little|some|a lot of) protein/);
    await page.close();
  });
});

describe('pages that change', () => {
  it('a client-side router: read on each route, undone on leaving', async () => {
    const page = await shop.open('/shelf');
    await page.click('text=Oakum Protein Treatment');
    const oakum = badgeFor('oakum-protein-treatment');
    expect(await shop.badgeBecomes(page, oakum)).toBe(oakum);
    await page.click('text=Back to the shelf');
    expect(await shop.badgeBecomes(page, '')).toBe('');
    const left = await until(
      () => painted(page),
      ({ lines, strip }) => !Object.keys(lines).length && !strip,
    );
    expect(left).toEqual({ lines: {}, strip: '' });
    await page.click('text=Breakwater Clarifying Cleanser');
    expect(await shop.badgeBecomes(page, '0')).toBe('0');
    await page.goBack();
    await page.goBack();
    expect(await shop.badgeBecomes(page, oakum)).toBe(oakum);
    await page.close();
  });

  it('a variant switch swaps the list', async () => {
    const page = await shop.open('/goods/heavy-weather-mask');
    expect(await shop.badgeBecomes(page, '3')).toBe('3');
    await page.check('input[value=variant]');
    expect(await shop.badgeBecomes(page, '0')).toBe('0');
    const none = await until(
      async () => proteinLetters(await painted(page)),
      (now) => !now.length,
    );
    expect(none).toEqual([]);
    await page.check('input[value=label]');
    expect(await shop.badgeBecomes(page, '3')).toBe('3');
    await page.close();
  });

  it('an endless stream: lists that arrive later are read too', async () => {
    const page = await shop.open('/goods/linen-gel');
    const count = async () => {
      const cards = await page.locator('#stream article').count();
      const sum = goods
        .slice(0, cards)
        .reduce((total, good) => total + counted(expected[good.id]!), counted(expected['linen-gel']!));
      return String(sum);
    };
    await page.locator('#stream-end').scrollIntoViewIfNeeded();
    for (let turn = 0; turn < 7; turn++) {
      await page.mouse.wheel(0, 3000);
      await page.waitForTimeout(150);
    }
    await page.mouse.wheel(0, -20000);
    await page.waitForTimeout(300);
    expect(Number(await count())).toBeGreaterThan(0);
    // Cards that were on their way may still come.
    await until(
      async () => [await shop.badge(page), await count()],
      ([badge, cards]) => badge === cards,
    );
    await page.close();
  });

  it('a frame of the same origin', async () => {
    const page = await shop.open('/goods/capstan-strong-gel');
    const wanted = badgeFor('capstan-strong-gel');
    expect(await shop.badgeBecomes(page, wanted)).toBe(wanted);
    const frame = page.frames()[1]!;
    const letters = await until(
      async () => proteinLetters(await painted(frame)).sort(),
      (now) => now.length > 0,
    );
    expect(letters).toEqual(underlined(expected['capstan-strong-gel']!));
    // The frame's own title is "Label".
    const kept = await shop.keptOf(await shop.tabOf(page));
    expect(kept!.lists.map(({ product }) => product?.name)).toEqual(['Capstan Strong Hold Gel']);
    await page.close();
  });

  it('a kit: both lists, each read by itself', async () => {
    const page = await shop.open('/goods/two-berth-travel-kit');
    const both = [...expected['two-berth-travel-kit']!, ...expectedElsewhere['two-berth-travel-kit']!];
    expect(await shop.badgeBecomes(page, String(counted(both)))).toBe(String(counted(both)));
    await expect.poll(async () => proteinLetters(await painted(page)).sort()).toEqual(underlined(both));
    await page.close();
  });

  it('a worker that was stopped is asked again and answers', async () => {
    const page = await shop.open('/shelf');
    await shop.killWorker();
    await page.click('text=Gossamer Leave-In');
    const { strip } = await until(
      () => painted(page),
      (now) => now.strip !== '',
    );
    expect(strip).toMatch(/3 proteins|(a little|some|a lot of) protein/);
    await page.close();
  });
});

describe('the page stays as it was', () => {
  it.each(['gossamer-leave-in', 'oakum-protein-treatment', 'creamery-prewash'])(
    '%s: no node of the page is touched, our host aside',
    async (id) => {
      const page = await shop.context.newPage();
      await page.addInitScript(() => {
        const seen: string[] = [];
        Object.assign(window, { seen });
        const ours = (node: Node) => node instanceof Element && node.matches('[data-strandline]');
        addEventListener('load', () => {
          new MutationObserver((records) => {
            for (const { type, target, addedNodes, removedNodes } of records)
              if (!ours(target) && (type !== 'childList' || ![...addedNodes, ...removedNodes].every(ours)))
                seen.push(`${type} ${target.nodeName}`);
          }).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
        });
      });
      await page.goto(`${shop.store.url}/goods/${id}`);
      const now = await until(
        () => painted(page),
        ({ strip }) => strip !== '',
      );
      expect(now.strip).not.toBe('');
      expect(await page.evaluate(() => (window as unknown as { seen: string[] }).seen)).toEqual([]);
      const [served, shown] = await page.evaluate(async () => {
        const parsed = new DOMParser().parseFromString(
          await (await fetch(location.href)).text(),
          'text/html',
        );
        const copy = document.documentElement.cloneNode(true) as HTMLElement;
        copy.querySelector('[data-strandline]')?.remove();
        return [parsed.documentElement.outerHTML, copy.outerHTML];
      });
      expect(shown).toBe(served);
      await page.close();
    },
  );
});
