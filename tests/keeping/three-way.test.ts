// Two windows that change one thing: what each changed stands, whatever the other did meanwhile.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createKeeper } from '../../src/store/keeper.ts';
import type { Change } from '../../src/store/remembered.ts';
import { threeWay } from '../../src/store/three-way.ts';
import { carrying } from '../../src/use/acts/carry.ts';
import { slowArea } from './area.ts';
import { madeHead, madeRoutine } from './made.ts';

const step = (id: string, over = {}) => ({ ...madeRoutine().steps[0]!, id, ...over });

describe('of one value', () => {
  it.each<[string, unknown, unknown, unknown, unknown]>([
    ['fields of each', { a: 1, b: 1 }, { a: 2, b: 1 }, { a: 1, b: 3 }, { a: 2, b: 3 }],
    ['a field I took away', { a: 1, b: 1 }, { a: 1 }, { a: 1, b: 1, c: 1 }, { a: 1, c: 1 }],
    ['a field both changed: mine', { a: 1 }, { a: 2 }, { a: 3 }, { a: 2 }],
    ['words of a list', ['x', 'y'], ['x', 'y', 'z'], ['w', 'y'], ['w', 'y', 'z']],
    ['the same word added by both', ['x'], ['x', 'y'], ['x', 'y'], ['x', 'y']],
    [
      'steps: one changed, one added in between, one taken away',
      [step('1'), step('2'), step('3')],
      [step('1'), step('2', { optional: true }), step('3')],
      [step('1'), step('4'), step('2')],
      [step('1'), step('4'), step('2', { optional: true })],
    ],
    [
      'my order',
      [step('1'), step('2')],
      [step('2'), step('1')],
      [step('1'), step('2'), step('3')],
      [step('2'), step('3'), step('1')],
    ],
    [
      'what I changed and the other took away stays',
      [step('1')],
      [step('1', { grams: 3 })],
      [],
      [step('1', { grams: 3 })],
    ],
  ])('%s', (_, was, mine, now, both) => expect(threeWay(was, mine, now)).toEqual(both));

  it('by any two: what nobody else touched is mine, what I did not touch is the other’s', () => {
    const value = fc.dictionary(fc.constantFrom('a', 'b', 'c'), fc.oneof(fc.nat(3), fc.array(fc.nat(5))));
    fc.assert(
      fc.property(value, value, (was, other) => {
        expect(threeWay(was, other, was)).toEqual(other);
        expect(threeWay(was, was, other)).toEqual(other);
        expect(threeWay(was, other, other)).toEqual(other);
      }),
    );
  });
});

it('500 changes of two windows, each from what it saw, are 500 changes', { timeout: 60_000 }, async () => {
  const { area } = slowArea();
  const keeper = createKeeper(area);
  await keeper.change([
    { do: 'put', thing: 'heads', value: madeHead({ avoid: [] }) },
    { do: 'put', thing: 'routines', value: madeRoutine({ steps: [] }) },
  ]);
  const window = async (name: string) => {
    for (let i = 0; i < 250; i++) {
      const seen = await keeper.remembered();
      // As a form does: what is shown, with one thing more.
      await new Promise((later) => setTimeout(later));
      const id = `${name}-${i}`;
      const [head, routine] = [seen.heads[0]!, seen.routines[0]!];
      const change: Change =
        i % 2
          ? {
              do: 'put',
              thing: 'heads',
              value: { ...head, avoid: [...head.avoid, { id, name: id, reacted: false }] },
            }
          : { do: 'put', thing: 'routines', value: { ...routine, steps: [...routine.steps, step(id)] } };
      expect(await keeper.change(carrying(seen, [change]))).toMatchObject({ ok: true });
    }
  };
  await Promise.all([window('one'), window('two')]);
  const { heads, routines } = await keeper.remembered();
  expect(heads[0]!.avoid.length + routines[0]!.steps.length).toBe(500);
});

it('an undo takes back what it did, and nothing that came after', async () => {
  const keeper = createKeeper(slowArea().area);
  const put = (over: Parameters<typeof madeHead>[0]): Change => ({
    do: 'put',
    thing: 'heads',
    value: madeHead(over),
  });
  await keeper.change([put({ name: 'Wren' })]);
  const first = await keeper.change([put({ name: 'Wren at sea' })]);
  await keeper.change([put({ name: 'Wren at sea', shape: 'wavy' })]);
  if (first.ok) await keeper.change(first.undo!);
  expect((await keeper.remembered()).heads[0]).toMatchObject({ name: 'Wren', shape: 'wavy' });
});
