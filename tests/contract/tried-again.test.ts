import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { triedAgain } from '../../src/contract/tried-again.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it.each([
  [0, 1, 'done'],
  [2, 3, 'done'],
  [3, 4, 'done'],
  [4, 4, 'refused'],
])('what is refused %i times is tried %i times and is %s', async (refusals, tries, end) => {
  let tried = 0;
  const work = async () => {
    if (tried++ < refusals) throw new Error('refused');
    return 'done';
  };
  const ended = triedAgain(work).catch(({ message }: Error) => message);
  await vi.advanceTimersByTimeAsync(5000);
  expect([await ended, tried]).toEqual([end, tries]);
});

it('what is refused for good is tried once', async () => {
  let tried = 0;
  const work = async () => {
    tried++;
    throw new Error('gone');
  };
  await expect(triedAgain(work, (problem) => String(problem).includes('gone'))).rejects.toThrow('gone');
  expect(tried).toBe(1);
});
