import { describe, expect, it } from 'vitest';
import type { Area } from '../../src/store/area.ts';
import { createShelfCache } from '../../src/store/shelf-cache.ts';

function area(): Area & { values: Record<string, unknown>; full: boolean } {
  const values: Record<string, unknown> = {};
  const self = {
    values,
    full: false,
    get: async (keys: string[] | null) =>
      structuredClone(
        Object.fromEntries(
          (keys ?? Object.keys(values)).flatMap((key) => (key in values ? [[key, values[key]]] : [])),
        ),
      ),
    set: async (items: Record<string, unknown>) => {
      if (self.full) throw new Error('QUOTA_BYTES quota exceeded');
      Object.assign(values, structuredClone(items));
    },
    remove: async (keys: string[]) => {
      for (const key of keys) delete values[key];
    },
    clear: async () => undefined,
  };
  return self;
}
const entry = (n: number) => ({
  address: `https://shop.example/p/${n}`,
  text: 'Aqua, Glycerin',
  product: { name: `Gel ${n}` },
  readOn: new Date(Date.UTC(2026, 0, 1, 0, n)).toISOString(),
});

describe('labels met on shelves', () => {
  it('are found by address, and never more than asked for', async () => {
    const cache = createShelfCache(area(), { most: 10, longestLabel: 100, letters: 1_000_000 });
    await cache.put(entry(1));
    await cache.put(entry(2));
    expect([...(await cache.get([entry(1).address, 'https://shop.example/none'])).values()]).toEqual([
      entry(1),
    ]);
  });

  it('stay bounded in letters too', async () => {
    const cache = createShelfCache(area(), { most: 1000, longestLabel: 100, letters: 3000 });
    for (let n = 0; n < 200; n++) await cache.put({ ...entry(n), text: 'x'.repeat(100) });
    const kept = await cache.all();
    expect(kept.length).toBeGreaterThanOrEqual(27);
    expect(kept.reduce((sum, { text }) => sum + text.length, 0)).toBeLessThanOrEqual(3000 + 25 * 100);
    expect(kept.map(({ readOn }) => readOn)).toContain(entry(199).readOn);
    expect(kept.map(({ readOn }) => readOn)).not.toContain(entry(100).readOn);
  });

  it('stay bounded: those met longest ago go', async () => {
    const store = area();
    const cache = createShelfCache(store, { most: 40, longestLabel: 100, letters: 1_000_000 });
    for (let n = 0; n < 130; n++) await cache.put(entry(n));
    expect(await cache.count()).toBeLessThanOrEqual(40 + 25);
    const kept = (await cache.all()).map(({ address }) => Number(address.split('/').at(-1)));
    expect(Math.min(...kept)).toBeGreaterThan(50);
    expect(Math.max(...kept)).toBe(129);
  });

  it('a value that does not parse is not there, and is replaced', async () => {
    const store = area();
    const cache = createShelfCache(store, { most: 40, longestLabel: 100, letters: 1_000_000 });
    store.values[`shelf:${entry(1).address}`] = { address: 7 };
    expect((await cache.get([entry(1).address])).size).toBe(0);
    await cache.put(entry(1));
    expect((await cache.get([entry(1).address])).size).toBe(1);
  });

  it('no room, or a label too long, says no and throws nothing', async () => {
    const store = area();
    const cache = createShelfCache(store, { most: 40, longestLabel: 20, letters: 1_000_000 });
    expect(await cache.put({ ...entry(1), text: 'x'.repeat(21) })).toBe(false);
    store.full = true;
    expect(await cache.put(entry(1))).toBe(false);
  });

  it('are cleared without touching anything else', async () => {
    const store = area();
    store.values['products:a'] = { id: 'a' };
    const cache = createShelfCache(store, { most: 40, longestLabel: 100, letters: 1_000_000 });
    await cache.put(entry(1));
    await cache.clear();
    expect(Object.keys(store.values)).toEqual(['products:a']);
  });
});
