import { expect, it } from 'vitest';
import { createKeeper } from '../../src/store/keeper.ts';
import type { Change } from '../../src/store/remembered.ts';
import { createUndoStack, removedOf, undosIn } from '../../src/store/undo-stack.ts';
import { nothing } from '../use/knowing.ts';
import { slowArea } from './area.ts';
import { madeHead, madeLog, madeProduct } from './made.ts';
import { slowSession } from './session.ts';

const step = (notes: string): Change[] => [{ do: 'put', thing: 'products', value: madeProduct({ notes }) }];

const top = async (kept: ReturnType<typeof slowSession>) => undosIn(await kept.get(null)).at(-1);

it('a worker that slept and a panel opened later know what can be undone', async () => {
  const kept = slowSession();
  await createUndoStack(kept).push(step('a'), 'one');
  await createUndoStack(kept).push(step('b'), 'two');
  const stack = createUndoStack(kept);
  const last = (await top(kept))!;
  expect(last.changes).toEqual(step('b'));
  expect(await stack.find(last.key)).toEqual(last);
  await stack.drop(last.key);
  expect((await top(kept))!.changes).toEqual(step('a'));
});

it('an act asked twice has the undo of the first', async () => {
  const kept = slowSession();
  const stack = createUndoStack(kept);
  const key = await stack.push(step('before'), 'one');
  expect(await stack.push(step('after'), 'one')).toBe(key);
  expect((await stack.find(key!))!.changes).toEqual(step('before'));
});

it('a clock that was set back brings no older undo to the top', async () => {
  const kept = slowSession();
  let now = 5_000_000;
  const stack = createUndoStack(kept, () => now);
  await stack.push(step('a'), 'one');
  now = 1000;
  await stack.push(step('b'), 'two');
  expect((await top(kept))!.changes).toEqual(step('b'));
});

it('where there is no room the oldest go first', async () => {
  const kept = slowSession(3000);
  const stack = createUndoStack(kept);
  for (let i = 0; i < 20; i++) await stack.push(step(`note ${i} ${'x'.repeat(200)}`), String(i));
  expect((await top(kept))!.changes[0]).toMatchObject({
    value: { notes: expect.stringContaining('note 19') },
  });
});

it('what does not fit at all is done without an undo', async () => {
  const kept = slowSession(100);
  expect(await createUndoStack(kept).push(step('x'.repeat(500)), 'one')).toBeUndefined();
});

it('what was removed is listed once, newest first, until it is back', async () => {
  const keeper = createKeeper(slowArea().area);
  const undos: Change[][] = [];
  const change = async (...changes: Change[]) => {
    const outcome = await keeper.change(changes);
    if (outcome.ok) undos.push(outcome.undo!);
  };
  await change(
    { do: 'put', thing: 'heads', value: madeHead() },
    { do: 'put', thing: 'products', value: madeProduct() },
    { do: 'put', thing: 'log', value: madeLog() },
  );
  await change({ do: 'put', thing: 'products', value: madeProduct({ notes: 'later' }) });
  await change({ do: 'remove', thing: 'products', id: 'p1' });
  await change({ do: 'remove', thing: 'heads', id: 'wren' }, { do: 'remove', thing: 'log', id: 'l1' });
  const removed = async () =>
    removedOf(
      undos.map((changes, i) => ({ key: `undo:${i}`, changes })),
      await keeper.remembered(),
    );
  expect((await removed()).map(({ thing, value }) => [thing, value.id])).toEqual([
    ['log', 'l1'],
    ['heads', 'wren'],
    ['products', 'p1'],
  ]);
  expect((await removed())[2]!.value).toMatchObject({ notes: 'later' });
  const { pictures, ...put } = (await removed())[2]!;
  expect(pictures).toEqual([]);
  await change({ do: 'put', ...put });
  expect((await removed()).map(({ value }) => value.id)).toEqual(['l1', 'wren']);
});

it('what was removed comes back with its own picture, and no other', () => {
  const changes: Change[] = [
    { do: 'photo', key: 'other', data: 'data:image/png;base64,BBBB' },
    { do: 'photo', key: 'own', data: 'data:image/png;base64,AAAA' },
    { do: 'put', thing: 'products', value: madeProduct({ picture: 'own' }) },
    { do: 'put', thing: 'log', value: madeLog({ photo: 'other' }) },
  ];
  const removed = removedOf([{ key: 'undo:1', changes }], nothing);
  expect(removed.map(({ thing, pictures }) => [thing, pictures])).toEqual([
    ['products', [changes[1]]],
    ['log', [changes[0]]],
  ]);
});
