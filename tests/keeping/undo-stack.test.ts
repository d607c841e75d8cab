import { expect, it } from 'vitest';
import { createUndoStack, removedOf } from '../../entrypoints/sidepanel/undo-stack.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import type { Change } from '../../src/store/remembered.ts';
import { slowArea } from './area.ts';
import { madeHead, madeLog, madeProduct } from './made.ts';

function session(quota = 10_000_000) {
  const { area } = slowArea({}, { quota });
  return {
    get: (key: string | null) => area.get(key === null ? null : [key]),
    set: area.set,
    remove: area.remove,
  };
}
const step = (notes: string): Change[] => [{ do: 'put', thing: 'products', value: madeProduct({ notes }) }];

it('a panel that was closed can still undo', async () => {
  const kept = session();
  const stack = createUndoStack(kept);
  await stack.push(step('a'));
  await stack.push(step('b'));
  const later = createUndoStack(kept);
  expect(await later.pop()).toEqual(step('b'));
  expect(await later.pop()).toEqual(step('a'));
  expect(await later.pop()).toBeUndefined();
});

it('what comes before it is loaded is not lost', async () => {
  const kept = session();
  await createUndoStack(kept).push(step('a'));
  const stack = createUndoStack(kept);
  await Promise.all([stack.push(step('b')), stack.push(step('c'))]);
  expect([await stack.pop(), await stack.pop(), await stack.pop()]).toEqual([
    step('c'),
    step('b'),
    step('a'),
  ]);
});

it('where there is no room the oldest go first', async () => {
  const kept = session(3000);
  const stack = createUndoStack(kept);
  for (let i = 0; i < 20; i++) await stack.push(step(`note ${i} ${'x'.repeat(200)}`));
  const later = createUndoStack(kept);
  expect((await later.pop())![0]).toMatchObject({ value: { notes: expect.stringContaining('note 19') } });
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
  const removed = async () => removedOf(undos, await keeper.remembered());
  expect((await removed()).map(({ thing, value }) => [thing, value.id])).toEqual([
    ['log', 'l1'],
    ['heads', 'wren'],
    ['products', 'p1'],
  ]);
  expect((await removed())[2]!.value).toMatchObject({ notes: 'later' });
  await change({ do: 'put', ...(await removed())[2]! });
  expect((await removed()).map(({ value }) => value.id)).toEqual(['l1', 'wren']);
});
