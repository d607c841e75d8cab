// The moments that matter most, step by step, for any browser whose pages can be asked and clicked.
import { expect } from 'vitest';
import { painted, until } from './harness.ts';

/** What Playwright's and Puppeteer's pages share. */
export type AnyPage = {
  evaluate<T, A>(does: (given: A) => T, given: A): Promise<Awaited<T>>;
  bringToFront(): Promise<unknown>;
  goto(url: string): Promise<unknown>;
  mouse: { click(x: number, y: number): Promise<unknown> };
};

export type Stage = {
  storeUrl: string;
  /** A page of the shop, in view. */
  page: AnyPage;
  /** The panel as a whole page, held to that tab. */
  panel: AnyPage;
  /** Keeps a picture for a person to look at. */
  screens(of: 'page' | 'panel', name: string): Promise<unknown>;
};

/** Where the first button (or link) of this name stands, our own shadow included; brought into view. */
const spot = (page: AnyPage, name: string) =>
  page.evaluate((wanted) => {
    const roots = [document, document.querySelector('[data-strandline]')?.shadowRoot];
    for (const root of roots)
      for (const node of root?.querySelectorAll<HTMLElement>('button, a, [role=tab]') ?? []) {
        const said = [node, ...node.querySelectorAll<HTMLElement>('[data-t]')].map(
          ({ dataset }) => dataset.t,
        );
        const named =
          node.getAttribute('aria-label') ??
          node.getAttribute('title') ??
          (node.textContent || said.join(''));
        if (node.hidden || !new RegExp(wanted).test(named.trim())) continue;
        if (!root?.querySelector('.strip')) node.scrollIntoView({ block: 'center' });
        const { left, top, width, height } = node.getBoundingClientRect();
        if (width > 0) return { x: left + width / 2, y: top + height / 2 };
      }
    return undefined;
  }, name);

/**
 * Presses a button by its name with the mouse, once it is there and, as a person does, once it has stood still for
 * six looks: a strip that has just moved hears no press.
 */
export async function press(page: AnyPage, name: string): Promise<void> {
  await page.bringToFront();
  const at = await until(() => spot(page, name), stillFor(6));
  await page.mouse.click(at!.x, at!.y);
}

/** True of what was there and the same in so many looks in a row, and for so many milliseconds. */
function stillFor(looks: number, ms = 0) {
  let [before, same, since] = ['', 0, 0];
  return (found: unknown) => {
    const now = JSON.stringify(found) ?? '';
    if (now !== before) [same, since] = [0, Date.now()];
    same++;
    before = now;
    return found !== undefined && same >= looks && Date.now() - since >= ms;
  };
}

const wordsOf = (page: AnyPage) => page.evaluate(() => document.body.textContent ?? '', null);

async function says(page: AnyPage, wanted: RegExp): Promise<void> {
  expect(
    await until(
      () => wordsOf(page),
      (words) => wanted.test(words),
    ),
  ).toMatch(wanted);
}

const stripSays = async (page: AnyPage, wanted: RegExp) =>
  expect(
    await until(
      async () => (await painted(page)).strip,
      (strip) => wanted.test(strip),
    ),
  ).toMatch(wanted);

/** Opens the strip where it stands folded; in a blank corner it opens by itself. */
export async function unfold(page: AnyPage): Promise<void> {
  await page.bringToFront();
  const open = await until(
    async () => {
      if (await spot(page, '^Fold$')) return true;
      const at = await spot(page, '^Unfold$');
      if (at) await page.mouse.click(at.x, at.y);
      return false;
    },
    (is) => is,
  );
  expect(open).toBe(true);
}

/**
 * Presses an action of the strip, which may stand folded, with the action behind "More". While the page still comes
 * the strip may fold by itself or be painted anew: the way to the action is gone again then. Opened further it looks for
 * a place once more, which takes a while on a busy machine; a press on a strip that has just moved is none.
 */
export async function act(page: AnyPage, name: string): Promise<void> {
  await page.bringToFront();
  const [isStill, mayPress] = [stillFor(6, 1000), stillFor(2)];
  const at = await until(async () => {
    const found = await spot(page, name);
    const way = found ? undefined : ((await spot(page, '^More$')) ?? (await spot(page, '^Unfold$')));
    if (mayPress(way)) await page.mouse.click(way!.x, way!.y);
    return found;
  }, isStill);
  await page.mouse.click(at!.x, at!.y);
}

/** Browsing: a head of hair is described once, and the strip says how each product sits with it. */
export async function browse({ page, panel, storeUrl, screens }: Stage) {
  await stripSays(page, /3 proteins|(a little|some|a lot of) protein/);
  await press(panel, '^Hair$');
  await press(panel, '^Coarse');
  await press(panel, '^Low');
  await press(panel, '^None of these$');
  await says(panel, /rarely|sparing/i);
  await screens('panel', 'hair');
  await stripSays(page, /Not for/);
  await page.goto(`${storeUrl}/goods/low-tide-deep-conditioner`);
  await stripSays(page, /Fits/);
  await page.goto(`${storeUrl}/goods/gossamer-leave-in`);
  await stripSays(page, /Not for/);
  await unfold(page);
  await screens('page', 'browse');
}

/** Keeping: from the strip to the products. */
export async function keep({ page, panel }: Stage) {
  await act(page, '^Keep product$');
  await press(panel, '^Products$');
  await says(panel, /Gossamer Leave-In/);
}

/** Adding to the routine: what stacks is said before the product is added. */
export async function add({ page, panel, screens }: Stage) {
  await act(page, '^Add to routine');
  await says(panel, /What it adds/);
  await screens('panel', 'add');
  await press(panel, '^Add to routine$');
  await says(panel, /Gossamer Leave-In is in Wash day/);
  await says(panel, /One more step/);
  await screens('panel', 'routine');
}

/** Comparing: the first product stays while the reader browses to the second. */
export async function compare({ page, panel, storeUrl, screens }: Stage) {
  await act(page, '^Compare with');
  await says(panel, /Gossamer Leave-In is ready to compare/);
  await page.goto(`${storeUrl}/goods/flaxen-leave-in-milk`);
  await stripSays(page, /no protein/);
  await panel.bringToFront();
  await says(panel, /Gossamer Leave-In[\s\S]*Flaxen Leave-In Milk/);
  await screens('panel', 'compare');
}
