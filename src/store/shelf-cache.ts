import type { ShelfFacts } from '../contract/shelf.ts';
import type { Area } from './area.ts';
import type { LabelMet } from './remembered.ts';
import { keyParts, shelfKey } from './schema/keys.ts';
import { labelMet } from './schema/schemas.ts';

const isShelfKey = (key: string) => keyParts(key)[0] === 'shelf';

/**
 * Labels met on shelves and product pages, by address: kept so that a shelf is marked at once. Bounded in number and
 * letters; those met longest ago go first. What does not parse is taken as not there, and overwritten when met again.
 */
export function createShelfCache(area: Area, bounds: ShelfFacts['remembered']) {
  let writes = 0;

  const keys = async () =>
    (area.getKeys ? await area.getKeys() : Object.keys(await area.get(null))).filter(isShelfKey);

  async function read(wanted: string[]): Promise<Map<string, LabelMet>> {
    const values = wanted.length > 0 ? await area.get(wanted) : {};
    const found = new Map<string, LabelMet>();
    for (const key of wanted) {
      const entry = labelMet.safeParse(values[key]);
      if (entry.success) found.set(entry.data.address, entry.data as LabelMet);
    }
    return found;
  }

  /** Makes room: the oldest tenth goes, so that it is not asked for at every write. */
  async function prune(): Promise<void> {
    const all = await keys();
    // Fewer than this cannot be too long together.
    if (all.length <= Math.min(bounds.most, bounds.letters / bounds.longestLabel)) return;
    const entries = await read(all);
    const oldestLast = all
      .map((key) => {
        const { readOn = '', text = '' } = entries.get(key.slice('shelf:'.length)) ?? {};
        return { key, readOn, letters: text.length };
      })
      .sort((a, b) => b.readOn.localeCompare(a.readOn));
    const sum = oldestLast.reduce((letters, each) => letters + each.letters, 0);
    if (all.length <= bounds.most && sum <= bounds.letters) return;
    let letters = 0;
    const gone = oldestLast.filter((each, i) => {
      letters += each.letters;
      return i >= bounds.most * 0.9 || letters > bounds.letters * 0.9;
    });
    await area.remove(gone.map(({ key }) => key));
  }

  return {
    get: (addresses: readonly string[]) => read(addresses.map(shelfKey)),
    all: async () => [...(await read(await keys())).values()],
    count: async () => (await keys()).length,
    /** False where the browser has no room: the shelf is still marked, and read again another day. */
    async put(entry: LabelMet): Promise<boolean> {
      if (entry.text.length > bounds.longestLabel) return false;
      try {
        if (writes++ % 25 === 0) await prune();
        await area.set({ [shelfKey(entry.address)]: entry });
        return true;
      } catch {
        return false;
      }
    },
    clear: async () => area.remove(await keys()),
  };
}

export type ShelfCache = ReturnType<typeof createShelfCache>;
