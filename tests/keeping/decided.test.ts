import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Area } from '../../src/store/area.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import type { Change, Remembered } from '../../src/store/remembered.ts';
import { contentsOf } from '../../src/store/schema/contents.ts';
import { removedBy } from '../../src/store/schema/keys.ts';
import { slowArea } from './area.ts';
import { madeProduct } from './made.ts';

const now = () => '2026-03-01T12:00:00.000Z';
const put = (id: string, over = {}): Change => ({
  do: 'put',
  thing: 'products',
  value: madeProduct({ id, ...over }),
});
const remove = (id: string): Change => ({ do: 'remove', thing: 'products', id });
const large: Change = { do: 'set', settings: { glyphSize: 'large' } };

/** An area that counts the values read from it, and tells of changes late. */
function counted(area: Area) {
  const read = { values: 0 };
  const get: Area['get'] = async (keys) => {
    const values = await area.get(keys);
    read.values += Object.keys(values).length;
    return values;
  };
  const { onChanged, tell } = late(area);
  return { area: { ...area, get, onChanged }, read, tell };
}

/** What an area tells, when it is let: all of it or the first few. */
function late(area: Area) {
  const untold: (() => void)[] = [];
  const onChanged: Area['onChanged'] = {
    addListener: (listener) => area.onChanged!.addListener((changes) => untold.push(() => listener(changes))),
  };
  const tell = (most = untold.length) => {
    for (const one of untold.splice(0, most)) one();
  };
  return { onChanged, tell };
}

describe('a change decided by what is remembered', () => {
  it.each<[string, (remembered: Remembered) => Change[]]>([
    ['a setting', () => [large]],
    ['a product kept', ({ products }) => [put(`p${products.length}`)]],
    ['a product removed', ({ products }) => [remove(products[0]!.id)]],
    ['one for another', ({ products }) => [put('new'), remove(products[1]!.id)]],
  ])('reads nothing again but what it touches: %s', async (_what, decide) => {
    const { area, read, tell } = counted(slowArea({}, { tells: true }).area);
    const keeper = createKeeper(area, { now });
    await keeper.change(Array.from({ length: 400 }, (_, i) => put(`p${i}`)));
    await keeper.remembered();
    tell();
    for (let nth = 0; nth < 3; nth++) {
      read.values = 0;
      expect(await keeper.change(decide)).toMatchObject({ ok: true });
      expect(read.values).toBeLessThan(10);
    }
  });

  it('reads everything where another has written that we were not told of, and not a second time', async () => {
    const shared = slowArea({}, { tells: true });
    const { area, read, tell } = counted(shared.area);
    const [worker, panel] = [createKeeper(area, { now }), createKeeper(shared.area, { now })];
    await worker.change(Array.from({ length: 100 }, (_, i) => put(`p${i}`)));
    await worker.remembered();
    await shared.told();
    tell();
    await panel.change([put('other')]);
    const seen: number[] = [];
    const count = ({ products }: Remembered) => {
      seen.push(products.length);
      return [large];
    };
    read.values = 0;
    await worker.change(count);
    expect(read.values).toBeGreaterThan(100);
    await shared.told();
    tell();
    read.values = 0;
    await worker.change(count);
    expect(read.values).toBeLessThan(10);
    expect(seen).toEqual([101, 101]);
  });
});

/** What is remembered, by the stored values alone. */
function truly(stored: Record<string, unknown>): Remembered {
  const gone = removedBy(stored);
  return contentsOf(Object.fromEntries(Object.entries(stored).filter(([key]) => !gone.includes(key))), now())
    .remembered;
}

// Two contexts that hear of each other late, changes known beforehand and decided ones, workers killed and started
// anew, a store that is full: each decision is made by what stands there then, to the letter.
it('is never decided by what stood there before', { timeout: 120_000 }, async () => {
  const id = fc.constantFrom('a', 'b', 'c', 'd');
  const change: fc.Arbitrary<Change[]> = fc.oneof(
    fc.tuple(id, fc.string({ maxLength: 5 })).map(([key, notes]) => [put(key, { notes })]),
    id.map((key) => [remove(key)]),
    fc.tuple(id, id).map(([one, two]) => [put(one), ...(one === two ? [] : [remove(two)])]),
    id.map((key) => [put(key, { notes: 'x'.repeat(250) })]),
    fc.constantFrom<Change[]>([large], [{ do: 'photo', key: 'ph', data: 'data:image/png;base64,AA' }]),
  );
  const step = fc.record({
    who: fc.nat({ max: 1 }),
    what: fc.oneof(
      { weight: 8, arbitrary: fc.record({ change, decided: fc.boolean() }) },
      { weight: 2, arbitrary: fc.constant('read' as const) },
      { weight: 1, arbitrary: fc.constantFrom('killed', 'set dies', 'set dies after', 'forget') },
      { weight: 1, arbitrary: fc.constantFrom('remove dies', 'remove dies after') },
    ),
    /** Whether the next step waits for this one. */
    wait: fc.boolean(),
    /** How many changes are told before it. */
    told: fc.constantFrom(0, 0, 0, 1, 2, 9),
  });
  let decisions = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 4, maxLength: 30 }), async (steps) => {
      const { area, told, held, failNext } = slowArea({}, { tells: true, quota: 1800 });
      const context = () => {
        const { onChanged, tell } = late(area);
        return { keeper: createKeeper({ ...area, onChanged }, { now, locks }), tell };
      };
      let last: Promise<unknown> = Promise.resolve();
      const locks = {
        request: <T>(_name: string, job: () => Promise<T>): Promise<T> => {
          const turn = last.then(job);
          last = turn.catch(() => undefined);
          return turn;
        },
      };
      const contexts = [context(), context()];
      const wrong: unknown[] = [];
      const all: Promise<unknown>[] = [];
      for (const { who, what, wait, told: toTell } of steps) {
        const { keeper, tell } = contexts[who]!;
        tell(toTell);
        let doing: Promise<unknown> = Promise.resolve();
        if (what === 'read') doing = keeper.remembered();
        else if (what === 'killed') contexts[who] = context();
        else if (what === 'forget') doing = keeper.forget();
        else if (typeof what === 'string')
          failNext(what.startsWith('set') ? 'set' : 'remove', !what.endsWith('after'));
        else
          doing = keeper.change(
            what.decided
              ? (remembered) => {
                  decisions++;
                  const there = truly(held());
                  if (JSON.stringify(remembered) !== JSON.stringify(there)) wrong.push([remembered, there]);
                  return what.change;
                }
              : what.change,
          );
        const done = doing.catch(() => undefined);
        all.push(done);
        if (wait) await done;
      }
      await Promise.all(all);
      expect(wrong).toEqual([]);
      await told();
      contexts[0]!.tell();
      expect(await contexts[0]!.keeper.remembered()).toEqual(truly(held()));
    }),
    { numRuns: 500 },
  );
  expect(decisions).toBeGreaterThan(500);
});
