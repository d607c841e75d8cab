import { type IDBPDatabase, openDB } from 'idb';
import type { Area } from './area.ts';
import { keyParts } from './schema/keys.ts';

const isPhoto = (key: string) => keyParts(key)[0] === 'photo';
const shelf = 'photos';

/** Photos by their key in the browser's database. */
const open = async (name: string): Promise<IDBPDatabase> =>
  openDB(name, 1, { upgrade: (database) => void database.createObjectStore(shelf) });

/**
 * A storage area whose photos lie in IndexedDB, where there is room for them, and all else where it was. Photos
 * an older Strandline left in the area are found there, and moved when they are written or all are read. Where
 * the browser gives no database they stay in the area. Keys and bytes are those of the area alone.
 */
export function photosApart(area: Area, name = 'strandline'): Area {
  let opened: Promise<IDBPDatabase | undefined> | undefined;
  const photos = () => {
    opened ??= open(name).catch(() => undefined);
    return opened;
  };

  /** Photos under these keys, or all. */
  async function photosOf(keys: string[] | null): Promise<Record<string, unknown>> {
    const database = await photos();
    if (!database) return {};
    const wanted = keys ?? ((await database.getAllKeys(shelf)) as string[]);
    const values = await Promise.all(wanted.map(async (key) => [key, await database.get(shelf, key)]));
    return Object.fromEntries(values.filter(([, value]) => value !== undefined));
  }

  /** One transaction: all or none. Undefined takes a photo away. */
  async function put(database: IDBPDatabase, values: Record<string, unknown>) {
    const { store, done } = database.transaction(shelf, 'readwrite');
    const asked = Object.entries(values).map(([key, value]) =>
      value === undefined ? store.delete(key) : store.put(value, key),
    );
    await Promise.all([...asked, done]);
  }

  async function moveIn(left: Record<string, unknown>) {
    const database = await photos();
    if (!database || Object.keys(left).length === 0) return;
    await put(database, left);
    await area.remove(Object.keys(left));
  }

  return {
    async get(keys) {
      const apart = keys?.filter(isPhoto) ?? null;
      const values = await area.get(keys);
      if (apart?.length === 0) return values;
      if (keys === null)
        await moveIn(Object.fromEntries(Object.entries(values).filter(([key]) => isPhoto(key))));
      return { ...values, ...(await photosOf(apart)) };
    },
    async set(values) {
      const [apart, rest] = parted(values);
      const database = Object.keys(apart).length > 0 ? await photos() : undefined;
      if (!database) return area.set(values);
      const before = await photosOf(Object.keys(apart));
      await put(database, apart);
      try {
        await area.set(rest);
      } catch (problem) {
        await put(database, Object.fromEntries(Object.keys(apart).map((key) => [key, before[key]])));
        throw problem;
      }
      await area.remove(Object.keys(apart));
    },
    async remove(keys) {
      await area.remove(keys);
      const apart = keys.filter(isPhoto);
      const database = apart.length > 0 ? await photos() : undefined;
      if (database) await put(database, Object.fromEntries(apart.map((key) => [key, undefined])));
    },
    async clear() {
      await area.clear();
      await (await photos())?.clear(shelf);
    },
    ...(area.getKeys && { getKeys: () => area.getKeys!() }),
    ...(area.getBytesInUse && { getBytesInUse: (keys) => area.getBytesInUse!(keys) }),
    ...(area.QUOTA_BYTES !== undefined && { QUOTA_BYTES: area.QUOTA_BYTES }),
    ...(area.onChanged && { onChanged: area.onChanged }),
  };
}

function parted(values: Record<string, unknown>) {
  const entries = Object.entries(values);
  return [true, false].map((photo) =>
    Object.fromEntries(entries.filter(([key]) => isPhoto(key) === photo)),
  ) as [Record<string, unknown>, Record<string, unknown>];
}
