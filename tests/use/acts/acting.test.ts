// Acts of several windows and of a worker that is stopped: decided in the writer's turn, each done once.
import { describe, expect, it } from 'vitest';
import { practice } from '../../../dictionary/practice.ts';
import { createKeeper } from '../../../src/store/keeper.ts';
import { undosIn } from '../../../src/store/undo-stack.ts';
import { createActing } from '../../../src/use/acts/acting.ts';
import type { Act } from '../../../src/use/acts/acts.ts';
import { slowArea } from '../../keeping/area.ts';
import { madeRoutine } from '../../keeping/made.ts';
import { slowSession } from '../../keeping/session.ts';

const now = () => '2026-03-01T12:00:00.000Z';
const met = (name = 'Foam') => ({
  text: 'Aqua, Glycerin',
  facts: { name, url: 'https://shop.example/foam' },
});

function stage({ quota = 10_000_000, sessionQuota = 10_000_000 } = {}) {
  const local = slowArea({}, { quota });
  const session = slowSession(sessionQuota);
  /** A worker that was just started over the same storage. */
  const worker = () => {
    const keeper = createKeeper(local.area, { now });
    return { keeper, ...createActing({ keeper, session, practice, reading: () => () => undefined, now }) };
  };
  return {
    ...local,
    worker,
    undos: async () => undosIn(await session.get(null)),
    failUndo: session.failNext,
  };
}

it('a double click keeps one product', async () => {
  const { worker } = stage();
  const { act, keeper } = worker();
  const both = await Promise.all(['one', 'two'].map((id) => act({ act: 'keep', met: met(), id }, id)));
  expect(both.map(({ ok }) => ok)).toEqual([true, true]);
  expect((await keeper.remembered()).products).toHaveLength(1);
});

it('two windows that change one routine 500 times lose none of it', { timeout: 600_000 }, async () => {
  const { worker } = stage();
  const windows = [worker(), worker()];
  await windows[0]!.keeper.change([{ do: 'put', thing: 'routines', value: madeRoutine({ steps: [] }) }]);
  await Promise.all(
    Array.from({ length: 500 }, (_, i) => {
      const ids = { product: `p${i}`, step: `s${i}` };
      const adding = {
        met: met(`Foam ${String.fromCodePoint(0x4e00 + i)}`),
        kind: 'foam',
        how: 'beside',
      } as const;
      const add: Act = { act: 'add', ...adding, routine: madeRoutine({ steps: [] }), ids };
      return windows[i % 2]!.act(add, String(i));
    }),
  );
  const { products, routines } = await worker().keeper.remembered();
  expect(products).toHaveLength(500);
  expect(new Set(routines[0]!.steps.map(({ id }) => id)).size).toBe(500);
});

it('an act asked again after the worker was stopped is done once and undone whole', async () => {
  for (const call of ['set', 'remove'] as const)
    for (const before of [true, false]) {
      const { worker, failNext, held, undos } = stage();
      const act: Act = { act: 'keep', met: met(), id: 'p1' };
      failNext(call, before);
      await worker()
        .act(act, 'one')
        .catch(() => undefined);
      const again = worker();
      expect(await again.act(act, 'one')).toMatchObject({ ok: true });
      expect(Object.keys(held()).filter((key) => key.startsWith('products:'))).toEqual(['products:p1']);
      const [undo, ...more] = await undos();
      expect(more).toEqual([]);
      // Where the removal itself is refused it is asked once more, as a reader would.
      const undone = await again.undo(undo!.key);
      if (!undone.ok) expect(await again.undo(undo!.key)).toMatchObject({ ok: true });
      expect((await again.keeper.remembered()).products).toEqual([]);
      // Asked twice, it is taken back once.
      expect(await again.undo(undo!.key)).toEqual({ ok: true });
    }
});

it.each([0, 1, 2, 3, 4])('200 workers stopped at any write leave nothing half applied, %i', async (first) => {
  const { worker, failNext, held } = stage();
  const routine = madeRoutine({ steps: [] });
  await worker().keeper.change([{ do: 'put', thing: 'routines', value: routine }]);
  for (let i = first; i < first + 200; i++) {
    failNext(i % 3 ? 'set' : 'remove', i % 2 === 0);
    const ids = { product: `p${i % 20}`, step: `s${i % 20}` };
    const act: Act =
      i % 4 === 3
        ? { act: 'remove', product: `p${(i * 7) % 20}` }
        : {
            act: 'add',
            met: met(`Foam ${String.fromCodePoint(0x4e00 + (i % 20))}`),
            kind: 'foam',
            how: 'beside',
            routine,
            ids,
          };
    await worker()
      .act(act, String(i))
      .catch(() => undefined);
    if (i % 7 > 0) continue; // after every kind of act and of stop
    // A product is planned as soon as it is kept, and no step speaks of one that is gone.
    const { products, routines } = await worker().keeper.remembered();
    const kept = new Set(products.map(({ id }) => id));
    const planned = routines[0]!.steps.flatMap(({ product }) => product ?? []);
    expect(planned.filter((id) => !kept.has(id))).toEqual([]);
    expect(planned.length).toBeGreaterThanOrEqual(kept.size);
  }
  expect(Object.keys(held()).filter((key) => key.startsWith('aside:'))).toEqual([]);
});

describe('where there is no room', () => {
  it('a full store is said by its name, and nothing is left to undo', async () => {
    const { worker, held, undos } = stage({ quota: 60 });
    expect(await worker().act({ act: 'keep', met: met(), id: 'p1' }, 'one')).toEqual({
      ok: false,
      reason: 'keeping.full',
    });
    expect(held()).toEqual({});
    expect(await undos()).toEqual([]);
  });
  it('a full session keeps the product, without an undo', async () => {
    const { worker } = stage({ sessionQuota: 20 });
    const { act, keeper } = worker();
    const acted = await act({ act: 'keep', met: met(), id: 'p1' }, 'one');
    expect(acted).toEqual({ ok: true, say: { key: 'products.kept', values: { name: 'Foam' } } });
    expect((await keeper.remembered()).products).toHaveLength(1);
  });
});

it('says what was done and gives the key that takes it back', async () => {
  const { worker, undos } = stage();
  const acted = await worker().act({ act: 'keep', met: met(), id: 'p1' }, 'one');
  expect(acted).toEqual({
    ok: true,
    say: { key: 'products.kept', values: { name: 'Foam' } },
    undo: (await undos())[0]!.key,
  });
});
