import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createKeeper } from '../../src/store/keeper.ts';
import { type Change, defaultSettings } from '../../src/store/remembered.ts';
import { slowArea } from './area.ts';
import { madeHead, madeLog, madeProduct, madeRoutine } from './made.ts';

const now = () => '2026-03-01T12:00:00.000Z';
const put = (id: string, over = {}): Change => ({
  do: 'put',
  thing: 'products',
  value: madeProduct({ id, ...over }),
});

describe('writing', () => {
  it('keeps one key for each thing, and reads them back in one order', async () => {
    const { area, held } = slowArea();
    const keeper = createKeeper(area, { now });
    const outcome = await keeper.change([
      { do: 'put', thing: 'heads', value: madeHead() },
      put('p2', { added: '2026-01-05T10:00:00.000Z' }),
      put('p1'),
      { do: 'put', thing: 'routines', value: madeRoutine() },
      { do: 'put', thing: 'log', value: madeLog() },
      {
        do: 'put',
        thing: 'sites',
        value: { origin: 'https://shop.example', paused: true, notLists: [], listsAt: [] },
      },
      { do: 'set', settings: { headInUse: 'wren' } },
      { do: 'read-as', printed: 'Panthenoll', name: 'Panthenol' },
    ]);
    expect(outcome).toMatchObject({ ok: true });
    expect(Object.keys(held()).toSorted()).toEqual([
      'heads:wren',
      'log:l1',
      'products:p1',
      'products:p2',
      'read-as:Panthenoll',
      'routines:r1',
      'settings',
      'sites:https://shop.example',
      'store',
      'written',
    ]);
    const all = await keeper.remembered();
    expect(all.products.map(({ id }) => id)).toEqual(['p1', 'p2']);
    expect(all.heads).toEqual([madeHead()]);
    expect(all.settings).toEqual({ ...defaultSettings, headInUse: 'wren' });
    expect(all.readAs).toEqual({ Panthenoll: 'Panthenol' });
  });

  it.each<[string, unknown]>([
    ['a value that does not fit', { do: 'put', thing: 'products', value: { id: 'x' } }],
    ['a number that is none', put('x', { size: Number.NaN })],
    ['an unknown thing', { do: 'put', thing: 'secrets', value: {} }],
    ['an unknown deed', { do: 'burn' }],
    ['nothing', null],
  ])('refuses %s whole: nothing of its batch is written', async (_what, bad) => {
    const { area, held } = slowArea();
    const keeper = createKeeper(area, { now });
    expect(await keeper.change([put('good'), bad as Change])).toEqual({ ok: false, reason: 'keeping.unfit' });
    expect(held()).toEqual({});
  });

  it('says when it is full and when it nearly is, and writes all or none', async () => {
    const { area, held } = slowArea({}, { quota: 2000 });
    const keeper = createKeeper(area, { now });
    expect(await keeper.change([put('p1')])).toMatchObject({ ok: true });
    const before = held();
    const full = await keeper.change([put('p2'), put('p3', { notes: 'x'.repeat(1500) })]);
    expect(full).toEqual({ ok: false, reason: 'keeping.full' });
    expect(held()).toEqual(before);
    expect(await keeper.change([put('p4', { notes: 'x'.repeat(1100) })])).toMatchObject({
      ok: true,
      nearlyFull: true,
    });
    expect(await keeper.state()).toMatchObject({ nearlyFull: true, quota: 2000 });
  });

  it('takes a write that was refused for none, though what it would put stands there already', async () => {
    const { area, held } = slowArea({}, { quota: 1500 });
    const keeper = createKeeper(area, { now });
    expect(await keeper.change([put('p1'), put('p2')])).toMatchObject({ ok: true });
    await area.set({ filler: 'x'.repeat(1500 - (await area.getBytesInUse!(null)) - 10) });
    const before = held();
    const again = await keeper.change([put('p1'), { do: 'remove', thing: 'products', id: 'p2' }]);
    expect(again).toEqual({ ok: false, reason: 'keeping.full' });
    expect(held()).toEqual(before);
    // A removal alone needs no room.
    expect(await keeper.change([{ do: 'remove', thing: 'products', id: 'p2' }])).toMatchObject({ ok: true });
  });

  it('is undone by what it returns, whatever was done', async () => {
    const anyChange: fc.Arbitrary<Change> = fc.oneof(
      fc.tuple(fc.constantFrom('a', 'b', 'c'), fc.string()).map(([id, notes]) => put(id, { notes })),
      fc.constantFrom('a', 'b', 'c').map((id): Change => ({ do: 'remove', thing: 'products', id })),
      fc
        .constantFrom('small', 'large' as const)
        .map((glyphSize): Change => ({ do: 'set', settings: { glyphSize: glyphSize as 'small' } })),
      fc.constantFrom('a', 'b').map((headInUse): Change => ({ do: 'set', settings: { headInUse } })),
      fc.constant<Change>({ do: 'set', settings: {}, unset: ['headInUse'] }),
      fc
        .constantFrom('Glycerin', null)
        .map((name): Change => ({ do: 'read-as', printed: 'Glycerine', name })),
      fc
        .constantFrom('data:image/png;base64,AA', null)
        .map((data): Change => ({ do: 'photo', key: 'ph', data })),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(anyChange, { maxLength: 6 }),
        fc.array(anyChange, { minLength: 1, maxLength: 6 }),
        async (first, then) => {
          const keeper = createKeeper(slowArea({}, { slow: false }).area, { locks: undefined, now });
          await keeper.change(first);
          const before = [await keeper.remembered(), await keeper.photo('ph')];
          const done = await keeper.change(then);
          expect(done.ok).toBe(true);
          if (done.ok) await keeper.change(done.undo!);
          expect([await keeper.remembered(), await keeper.photo('ph')]).toEqual(before);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('a worker killed in the middle', () => {
  it('before the values are written: nothing happened', async () => {
    const { area, failNext } = slowArea();
    await createKeeper(area, { now }).change([put('p1')]);
    failNext('set', true);
    await createKeeper(area, { now }).change([put('p2'), { do: 'remove', thing: 'products', id: 'p1' }]);
    const { products } = await createKeeper(area, { now }).remembered();
    expect(products.map(({ id }) => id)).toEqual(['p1']);
  });

  it('between writing and removing: the change is whole for every reader, and ended by the next writer', async () => {
    const { area, failNext, held } = slowArea();
    await createKeeper(area, { now }).change([put('p1')]);
    failNext('remove');
    await createKeeper(area, { now }).change([put('p2'), { do: 'remove', thing: 'products', id: 'p1' }]);
    expect(held()).toHaveProperty(['products:p1']);
    const after = createKeeper(area, { now });
    expect((await after.remembered()).products.map(({ id }) => id)).toEqual(['p2']);
    await after.change([put('p1', { notes: 'again' })]);
    expect((await after.remembered()).products.map(({ id }) => id)).toEqual(['p1', 'p2']);
    expect(held()).not.toHaveProperty('journal');
  });
});

describe('values that do not parse', () => {
  const broken = { id: 'p1', name: 7, precious: 'notes of years' };

  it('are left where they are and told', async () => {
    const { area, held } = slowArea({
      'products:p1': broken,
      'products:other': madeProduct(),
      settings: 'x',
    });
    const keeper = createKeeper(area, { now });
    expect(await keeper.remembered()).toMatchObject({ products: [], settings: defaultSettings });
    await keeper.change([put('p2')]);
    expect(held()['products:p1']).toEqual(broken);
    const { rejects } = await keeper.state();
    expect(rejects.map(({ key }) => key).toSorted()).toEqual([
      'products:other', // its id is not its key
      'products:p1',
      'settings',
    ]);
    expect(rejects.find(({ key }) => key === 'products:p1')!.why).toContain('name');
  });

  it.each<[string, Change]>([
    ['written over', put('p1')],
    ['removed', { do: 'remove', thing: 'products', id: 'p1' }],
  ])('are set aside before they are %s', async (_how, change) => {
    const { area } = slowArea({ 'products:p1': broken });
    const keeper = createKeeper(area, { now });
    expect(await keeper.change([change])).toMatchObject({ ok: true });
    const { rejects } = await keeper.state();
    expect(rejects).toMatchObject([{ key: 'products:p1', value: broken }]);
  });
});

describe('several writers at once', () => {
  // Two windows and the worker, 10,000 operations in all, on things of their own and on things they share.
  it.each([false, true])('lose nothing (told of changes: %s)', { timeout: 120_000 }, async (tells) => {
    const { area, told } = slowArea({}, { tells });
    const writers = ['worker', 'window-1', 'window-2'].map((name) => ({
      name,
      keeper: createKeeper(area, { now }),
    }));
    const expected = new Map<string, string>();
    const names = new Set<string>();
    const work = writers.map(async ({ name, keeper }) => {
      const jobs: Promise<unknown>[] = [];
      for (let i = 0; i < 3334; i++) {
        const own = `${name}-${i % 40}`;
        const changes: Change[] =
          i % 5 === 4
            ? [
                { do: 'remove', thing: 'products', id: own },
                { do: 'read-as', printed: `${name} ${i}`, name: 'Glycerin' },
              ]
            : i % 5 === 3
              ? [{ do: 'set', settings: i % 2 ? { pinned: [{ product: own }] } : { headInUse: own } }]
              : [put(own, { notes: String(i) })];
        if (i % 5 === 4) {
          expected.delete(own);
          names.add(`${name} ${i}`);
        } else if (i % 5 < 3) expected.set(own, String(i));
        jobs.push(keeper.change(changes).then((outcome) => expect(outcome.ok).toBe(true)));
        if (i % 97 === 0) await keeper.remembered();
      }
      await Promise.all(jobs);
    });
    await Promise.all(work);
    const all = await writers[0]!.keeper.remembered();
    expect(new Map(all.products.map(({ id, notes }) => [id, notes]))).toEqual(expected);
    expect(new Set(Object.keys(all.readAs))).toEqual(names);
    expect(all.settings.pinned).toBeDefined(); // two fields set by different writers: neither is lost
    expect(all.settings.headInUse).toBeDefined();
    // What each has known all along is what a newcomer reads.
    await told();
    const fresh = await createKeeper(area, { now }).remembered();
    for (const { keeper } of writers) expect(await keeper.remembered()).toEqual(fresh);
  });

  it('each knows its own writes at once and those of others when told, without reading again', async () => {
    const { area, told } = slowArea({}, { tells: true });
    const [one, two] = [createKeeper(area, { now }), createKeeper(area, { now })];
    await Promise.all([one.remembered(), one.remembered(), two.remembered()]);
    await one.change([put('p1')]);
    expect((await one.remembered()).products).toHaveLength(1);
    await told();
    expect((await two.remembered()).products).toHaveLength(1);
    expect(await two.remembered()).toBe(await two.remembered());
    await two.change([put('p2'), { do: 'remove', thing: 'products', id: 'p1' }]);
    await told();
    expect((await one.remembered()).products.map(({ id }) => id)).toEqual(['p2']);
    await area.set({ 'products:p2': 'spoilt' });
    await told();
    expect((await one.remembered()).products).toEqual([]);
    await one.forget();
    await told();
    expect(await two.remembered()).toEqual(await one.remembered());
  });

  // The check above can fail: the same operations without the turn do lose.
  it('would lose without taking turns', async () => {
    const { area } = slowArea({ n: 0 });
    const add = async () => {
      const { n } = await area.get(['n']);
      await area.set({ n: (n as number) + 1 });
    };
    await Promise.all(Array.from({ length: 50 }, add));
    expect((await area.get(['n'])).n).toBeLessThan(50);
  });
});

describe('forgetting', () => {
  it('leaves nothing', async () => {
    const { area, held } = slowArea({ 'products:p1': 'broken' });
    const keeper = createKeeper(area, { now });
    await keeper.change([put('p1'), { do: 'photo', key: 'ph', data: 'data:image/png;base64,AA' }]);
    await keeper.forget();
    expect(held()).toEqual({});
    expect(await keeper.remembered()).toMatchObject({ products: [], heads: [], settings: defaultSettings });
  });
});
