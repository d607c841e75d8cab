import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Reading } from '../../src/core/reading/reading.ts';
import { readingCache } from '../../src/use/reading/reading-cache.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());
const reading = { mentions: [] } as unknown as Reading;

it('asks once for all that a drawing lacks', async () => {
  const read = vi.fn(async (asked: unknown[]) => asked.map(() => reading));
  const { reading: get } = readingCache(
    read,
    () => undefined,
    () => undefined,
  );
  expect([get('a'), get('b'), get('a')]).toEqual([undefined, undefined, undefined]);
  await vi.advanceTimersByTimeAsync(0);
  expect(read.mock.calls).toEqual([[[{ text: 'a' }, { text: 'b' }]]]);
  expect(get('a')).toBe(reading);
});

it('says a failure once and does not ask again at once, however often it is drawn', async () => {
  const read = vi.fn(async () => Promise.reject(new Error('nobody there')));
  const failed = vi.fn();
  const { reading: get } = readingCache(read, () => undefined, failed);
  for (let i = 0; i < 240; i++) {
    get('a');
    await vi.advanceTimersByTimeAsync(4);
  }
  expect(read).toHaveBeenCalledTimes(1);
  expect(failed).toHaveBeenCalledTimes(1);
  await vi.advanceTimersByTimeAsync(5000);
  get('a');
  await vi.advanceTimersByTimeAsync(0);
  expect(read).toHaveBeenCalledTimes(2);
});

it('what failed is asked for at once when the user asks, and is known to fail until then', async () => {
  const read = vi.fn(async (asked: unknown[]) => asked.map(() => reading));
  read.mockRejectedValueOnce(new Error('nobody there'));
  const arrived = vi.fn();
  const get = readingCache(read, arrived, () => undefined);
  get.reading('a');
  await vi.advanceTimersByTimeAsync(0);
  expect(get.failing()).toBe(true);
  expect(arrived).not.toHaveBeenCalled();
  get.again();
  await vi.advanceTimersByTimeAsync(0);
  expect(get.failing()).toBe(false);
  expect(arrived).toHaveBeenCalled();
  get.reading('a');
  await vi.advanceTimersByTimeAsync(0);
  expect(read).toHaveBeenCalledTimes(2);
  expect(get.reading('a')).toBe(reading);
});
