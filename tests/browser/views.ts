// The panel's views in the built extension, in any state: for the gallery, the accessibility checks and the bench.
import type { Page } from 'playwright-core';
import type { Change, Remembered } from '../../src/store/remembered.ts';
import type { PlaceName } from '../../src/ui/world.ts';
import { type Harness, until } from './harness.ts';
import { type SeedName, seeds } from './seeds.ts';

export const places: PlaceName[] = ['page', 'compare', 'routine', 'products', 'log', 'hair', 'settings'];

/** Asks the background as the panel does, from a page of the extension. */
export const asks = (page: Page, name: string, request: unknown = null) =>
  page.evaluate(
    (message) => chrome.runtime.sendMessage(message) as Promise<{ ok: boolean; value?: unknown }>,
    { strandline: name, request },
  );

/** What is remembered, asked for as the panel asks. */
export const rememberedIn = async (page: Page): Promise<Remembered> =>
  ((await asks(page, 'remembered-parts', {})).value as { parts: Remembered }).parts;

/** Changes what is kept, as a form of the panel does. */
export const changeIn = (page: Page, changes: readonly Change[]) =>
  asks(page, 'act', { act: { act: 'change', changes }, id: crypto.randomUUID() });

/** Forgets everything and brings the store to a state, through the one writer. Throws where that is refused. */
export async function seed(page: Page, state: SeedName, more: Change[] = []) {
  await asks(page, 'forget');
  const changes = [...seeds[state], ...more];
  if (changes.length === 0) return;
  const answered = await changeIn(page, changes);
  const outcome = answered.value as { ok: boolean; reason?: string } | undefined;
  if (!outcome?.ok) throw new Error(`seed ${state}: ${JSON.stringify(answered)}`);
}

/** The id of the tab that shows a page. */
export const tabOf = async (shop: Harness, page: Page): Promise<number> =>
  (await shop.worker()).evaluate(
    async (url) => (await chrome.tabs.query({})).find((tab) => tab.url === url)?.id ?? -1,
    page.url(),
  );

/** Goes to a place of the panel, looking at a tab, and waits until nothing is being read. */
export async function look(shop: Harness, page: Page, place: PlaceName, tab = -1) {
  // A tab behind another draws once a second, and each press waits for two drawings.
  await page.bringToFront();
  // A new document each time, whatever stood there.
  await page.goto('about:blank');
  await page.goto(`chrome-extension://${shop.id}/sidepanel.html?tab=${tab}#${place}`);
  await page.waitForSelector(`#tab-${place}[aria-selected=true]`, { state: 'attached' });
  await page.waitForFunction(() => !document.querySelector('.pending'));
  await page.waitForTimeout(80);
}

/** A panel in a tab of its own, and the number of a tab that shows a product of the shop, read. */
export async function panelBesideProduct(shop: Harness): Promise<{ panel: Page; tab: number }> {
  const shown = await shop.open('/goods/heavy-weather-mask');
  await until(
    () => shop.badge(shown),
    (text) => text !== '',
  );
  const tab = await tabOf(shop, shown);
  return { panel: await shop.panelPage(), tab };
}

/** What lies in the browser's database of pictures. */
export const keptPictures = (panel: Page): Promise<[string, string][]> =>
  panel.evaluate(
    () =>
      new Promise<[string, string][]>((done) => {
        const opening = indexedDB.open('strandline');
        // Not there yet: looking makes none.
        opening.onupgradeneeded = () => opening.transaction!.abort();
        opening.onerror = () => done([]);
        opening.onsuccess = () => {
          const { result: database } = opening;
          if (!database.objectStoreNames.contains('photos')) return done([]);
          const store = database.transaction('photos').objectStore('photos');
          const [keys, values] = [store.getAllKeys(), store.getAll()];
          values.onsuccess = () => {
            database.close();
            done(keys.result.map((key, i) => [String(key), values.result[i] as string]));
          };
        };
      }),
  );
