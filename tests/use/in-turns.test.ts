import { expect, it } from 'vitest';
import { inTurns } from '../../src/use/in-turns.ts';

/** Work of so many parts of so many ms on a clock of its own. */
function made(parts: number, ms: number) {
  let clock = 0;
  function* work(): Generator<void, string> {
    for (let i = 0; i < parts; i++) {
      clock += ms;
      yield;
    }
    return 'done';
  }
  return { work: work(), now: () => clock };
}

const on = () => false;

it('work of two pages takes turns: the short one does not wait for the long one', async () => {
  const ended: string[] = [];
  const [long, short] = [made(200, 10), made(5, 10)];
  await Promise.all([
    inTurns(long.work, on, { now: long.now }).then(() => ended.push('long')),
    inTurns(short.work, on, { now: short.now }).then(() => ended.push('short')),
  ]);
  expect(ended).toEqual(['short', 'long']);
});

it('what comes of it comes back; a page that asks for more than any may gets nothing', async () => {
  const [fair, greedy] = [made(100, 10), made(100_000, 10)];
  expect(await inTurns(fair.work, on, { now: fair.now })).toBe('done');
  expect(await inTurns(greedy.work, on, { now: greedy.now })).toBeUndefined();
  expect(greedy.now()).toBeLessThan(5000);
});

it('work that was called off is left', async () => {
  const { work, now } = made(1000, 10);
  let off = false;
  setTimeout(() => {
    off = true;
  });
  expect(await inTurns(work, () => off, { now })).toBeUndefined();
  expect(now()).toBeLessThan(9000);
});
