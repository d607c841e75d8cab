// The pictures of `npm run gallery` that are taken in the shop: strip open, folded and as a tab, the card of a name,
// a shelf with its bar, its marks and a card.
import type { Page } from 'playwright-core';
import type { Harness } from '../browser/harness.ts';
import { openCard } from '../browser/name-card.ts';
import { seed } from '../browser/views.ts';

type Setting = {
  name: string;
  language: string;
  scheme: 'light' | 'dark';
  width: number;
  /** How the shop shows its goods: `hostile=dark` is a dark shop. */
  as?: string;
};
const settings: readonly Setting[] = [
  { name: 'light', language: 'en', scheme: 'light', width: 1200 },
  { name: 'dark', language: 'en', scheme: 'dark', width: 1200, as: '?as=open&hostile=dark' },
  { name: 'german', language: 'de', scheme: 'light', width: 1200 },
  { name: 'rtl', language: 'ar-XB', scheme: 'light', width: 1200 },
  { name: 'narrow', language: 'en', scheme: 'light', width: 320 },
];

const folding = '.strip [data-does=fold]';
/** The strip stands, and is open or folded as asked. */
async function strip(page: Page, open: boolean) {
  await page.locator(folding).waitFor();
  await page.waitForTimeout(700);
  if ((await page.getAttribute(folding, 'aria-expanded')) !== String(open)) await page.click(folding);
  await page.locator(`${folding}[aria-expanded=${open}]`).waitFor();
  await page.waitForTimeout(700);
}

type Shoot = (page: Page, name: string, about: string, width: number) => Promise<void>;

/** Takes them, of all surfaces or of those named. `panel` is a page of the extension. */
export async function shootPages(shop: Harness, panel: Page, shoot: Shoot) {
  for (const { name, language, scheme, width, as = '' } of settings) {
    await seed(panel, 'many', [{ do: 'set', settings: { language } }]);
    const page = await shop.open(`/goods/heavy-weather-mask${as}`);
    await page.emulateMedia({ colorScheme: scheme });
    await page.setViewportSize({ width, height: 800 });
    await strip(page, true);
    await shoot(page, `shop-${name}-strip`, `the strip, ${name}`, width);
    await strip(page, false);
    await shoot(page, `shop-${name}-folded`, `the strip folded, ${name}`, width);
    await openCard(page);
    await shoot(page, `shop-${name}-card`, `the card of a name, ${name}`, width);
    await page.close();
    const shelf = await shop.open('/rack?n=6');
    await shelf.emulateMedia({ colorScheme: scheme });
    await shelf.setViewportSize({ width, height: 800 });
    await shelf.locator('.bar [data-does=fold][aria-expanded=false]').click();
    await shelf.locator('.bar [data-does=read]').click();
    // Done: nothing is left that could be stopped.
    await shelf.locator('.bar [data-does=filter]').first().waitFor();
    await shelf.locator('.bar progress').waitFor({ state: 'detached', timeout: 30_000 });
    await shoot(shelf, `shop-${name}-shelf`, `a shelf that was read, ${name}`, width);
    await shelf
      .locator('.mark.read')
      .first()
      .hover({ position: { x: 6, y: 6 } });
    await shelf.locator('.shelf-card:popover-open').waitFor();
    await shoot(shelf, `shop-${name}-shelf-card`, `the card of a product on a shelf, ${name}`, width);
    await shelf.close();
  }
}
