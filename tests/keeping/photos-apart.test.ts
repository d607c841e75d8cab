import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { createKeeper } from '../../src/store/keeper.ts';
import { photosApart } from '../../src/store/photos-apart.ts';
import type { Change } from '../../src/store/remembered.ts';
import { slowArea } from './area.ts';
import { madeLog } from './made.ts';

const picture = 'data:image/png;base64,iVBORw0KGgo=';
const other = 'data:image/png;base64,AAAA';
const photo = (data: string | null, key = 'ph1'): Change => ({ do: 'photo', key, data });

let nth = 0;
function store(values: Record<string, unknown> = {}, options: Parameters<typeof slowArea>[1] = {}) {
  const { area, held } = slowArea(values, options);
  const name = `store-${++nth}`;
  return { area, held, name, keeper: createKeeper(photosApart(area, name)) };
}
const inArea = (held: () => Record<string, unknown>) =>
  Object.keys(held()).filter((key) => key.startsWith('photo:'));

describe('photos in a database of their own', () => {
  it('are kept, read, replaced, removed and brought back, and take nothing of the small store', async () => {
    const { keeper, held } = store();
    await keeper.change([photo(picture)]);
    expect(await keeper.photo('ph1')).toBe(picture);
    await keeper.change([photo(other)]);
    expect(await keeper.photo('ph1')).toBe(other);
    const removed = await keeper.change([photo(null)]);
    expect(await keeper.photo('ph1')).toBeUndefined();
    expect(removed.ok && (await keeper.change(removed.undo!)).ok).toBe(true);
    expect(await keeper.photo('ph1')).toBe(other);
    expect(inArea(held)).toEqual([]);
  });

  it('larger than the small store are kept', async () => {
    const { keeper } = store({}, { quota: 20_000 });
    const large = `data:image/png;base64,${'A'.repeat(100_000)}`;
    expect(await keeper.change([photo(large)])).toMatchObject({ ok: true });
    expect((await keeper.photo('ph1'))?.length).toBe(large.length);
    expect((await keeper.state()).bytes).toBeLessThan(1000);
  });

  it('are in the export, come back by an import, and go with everything', async () => {
    const { keeper } = store();
    await keeper.change([{ do: 'put', thing: 'log', value: madeLog({ photo: 'ph1' }) }, photo(picture)]);
    expect((await keeper.everything()).photos).toEqual({ ph1: picture });
    await keeper.forget();
    expect(await keeper.photo('ph1')).toBeUndefined();
    expect((await keeper.everything()).photos).toEqual({});
  });

  it('stay as they were when the rest of a change finds no room', async () => {
    const { keeper } = store({}, { quota: 2000 });
    await keeper.change([photo(picture)]);
    const entry = madeLog({ photo: 'ph1', notes: 'x'.repeat(5000) });
    expect(await keeper.change([photo(other), { do: 'put', thing: 'log', value: entry }])).toEqual({
      ok: false,
      reason: 'keeping.full',
    });
    expect(await keeper.photo('ph1')).toBe(picture);
  });

  it('left in the small store by an older Strandline are found there, and moved by the sweep', async () => {
    const { keeper, held } = store({
      store: { version: 2 },
      'log:l1': madeLog({ photo: 'ph1' }),
      'photo:ph1': picture,
      'photo:gone': other,
    });
    expect(await keeper.photo('ph1')).toBe(picture);
    await keeper.sweep();
    expect(inArea(held)).toEqual([]);
    expect([await keeper.photo('ph1'), await keeper.photo('gone')]).toEqual([picture, undefined]);
  });

  it('are seen by another window', async () => {
    const { keeper, area, name } = store();
    await keeper.change([photo(picture)]);
    expect(await createKeeper(photosApart(area, name)).photo('ph1')).toBe(picture);
  });

  it('stay in the small store where the browser gives no database', async () => {
    const { open } = indexedDB;
    indexedDB.open = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    try {
      const { keeper, held } = store();
      expect(await keeper.change([photo(picture)])).toMatchObject({ ok: true });
      expect(await keeper.photo('ph1')).toBe(picture);
      expect(inArea(held)).toEqual(['photo:ph1']);
    } finally {
      indexedDB.open = open;
    }
  });
});
