// The strip among the bars, the basket, the chat and the consent of a shop: it covers none of them and no letter of the list.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveBarePages } from './bare-pages.ts';
import { barred } from './barred-pages.ts';
import { type Harness, openShop, painted, screens, until } from './harness.ts';

let shop: Harness;
let bare: Awaited<ReturnType<typeof serveBarePages>>;
let page: Page;
beforeAll(async () => {
  [shop, bare] = [await openShop(), await serveBarePages()];
  page = await shop.context.newPage();
});
afterAll(async () => {
  await bare.close();
  await shop.close();
});

type Seen = { form: string; box: string; inView: boolean; over: string[] };

/** How the strip stands, and what of the page it stands on by more than a pixel; measured from boxes, not by asking the painter. */
const seen = (): Promise<Seen> =>
  page.evaluate(() => {
    const strip = document
      .querySelector('[data-strandline]')!
      .shadowRoot!.querySelector<HTMLElement>('.strip')!;
    const at = strip.getBoundingClientRect();
    const meets = (box: DOMRect) =>
      Math.min(at.right, box.right) - Math.max(at.left, box.left) > 1 &&
      Math.min(at.bottom, box.bottom) - Math.max(at.top, box.top) > 1;
    const letters = document.createRange();
    letters.selectNodeContents(document.querySelector('[data-list]')!);
    // Of what is round, the largest square in it counts: its corners are the page's own blank.
    const boxOf = (each: Element) => {
      const { x, y, width, height } = each.getBoundingClientRect();
      const cut = Number.parseFloat(getComputedStyle(each).borderRadius) >= 28 ? 0.15 : 0;
      return new DOMRect(x + width * cut, y + height * cut, width * (1 - 2 * cut), height * (1 - 2 * cut));
    };
    const free = [...document.querySelectorAll('[data-free]')].filter((each) => meets(boxOf(each)));
    return {
      form: strip.classList.contains('seeking')
        ? 'seeking'
        : strip.classList.contains('slim')
          ? 'slim'
          : strip.classList.contains('folded')
            ? 'folded'
            : 'open',
      box: [at.left, at.top, at.width, at.height].map(Math.round).join(),
      inView:
        at.width > 0 &&
        at.left >= -1 &&
        at.right <= innerWidth + 1 &&
        at.top >= -1 &&
        at.bottom <= innerHeight + 1,
      over: [
        ...free.map((each) => each.textContent || each.className),
        ...([...letters.getClientRects()].some(meets) ? ['a line of the list'] : []),
      ],
    };
  });

/** Once it has stood in one place for some looks in a row, having had time to settle after a scroll. */
async function settled(): Promise<Seen> {
  let before = '';
  let same = 0;
  return until(seen, ({ box, form }) => {
    same = box === before && form !== 'seeking' ? same + 1 : 0;
    before = box;
    return same >= 9;
  });
}

const widths = [320, 390, 768, 1024, 1440, 1920];
const fewer = [320, 768, 1440];

describe.each(Object.keys(barred))('%s', (name) => {
  it.each(name === 'barred' || name === 'barred-dense' ? widths : fewer)(
    'at %i px, wherever it is scrolled to',
    async (width) => {
      await page.setViewportSize({ width, height: width < 700 ? 640 : 900 });
      await page.goto(bare.url(name));
      await until(
        () => painted(page),
        ({ strip }) => strip !== '',
      );
      const found: (Seen & { scrolled: number })[] = [];
      for (const part of [0, 0.4, 1]) {
        const scrolled = await page.evaluate((share) => {
          scrollTo(0, share * (document.documentElement.scrollHeight - innerHeight));
          return Math.round(scrollY);
        }, part);
        found.push({ ...(await settled()), scrolled });
      }
      await screens(page, `${name}-${width}`);
      expect(found.filter(({ over, inView }) => over.length > 0 || !inView)).toEqual([]);
      // Letters to both edges leave room for the tab alone.
      if (name.startsWith('barred-dense') && width === 320) expect(found[1]!.form).toBe('slim');
    },
  );
});
