import { expect, it } from 'vitest';
import { createAskedOnce } from '../../src/use/asked-once.ts';

it('a question is asked once while all it goes by stays, and anew when any of it is another', async () => {
  const once = createAskedOnce<string>();
  const [store, day] = [{}, '2026-03-01'];
  let asked = 0;
  const ask = async () => `answer ${++asked}`;
  const both = [once.answer([store, day], ask), once.answer([store, day], ask)];
  expect(once.known([store, day])).toBeUndefined();
  expect(await Promise.all(both)).toEqual(['answer 1', 'answer 1']);
  expect(once.known([store, day])).toEqual({ value: 'answer 1' });
  expect([once.known([{}, day]), once.known([store]), once.known([])]).toEqual(Array(3).fill(undefined));
  expect(await once.answer([{}, day], ask)).toBe('answer 2');
  expect(once.known([store, day])).toBeUndefined();
});

it('an answer that comes after a newer question was asked is not taken for the newer one’s', async () => {
  const once = createAskedOnce<string>();
  let late: (answer: string) => void = () => {};
  const first = once.answer(['old'], () => new Promise((answer) => (late = answer)));
  await once.answer(['new'], async () => 'of the new');
  late('of the old');
  await first;
  expect([once.known(['new']), once.known(['old'])]).toEqual([{ value: 'of the new' }, undefined]);
});

it('that nothing was found is an answer too', async () => {
  const once = createAskedOnce<undefined>();
  await once.answer([1], async () => undefined);
  expect(once.known([1])).toEqual({ value: undefined });
});

it('a question that failed is told to all who asked it, and asked anew by the next', async () => {
  const once = createAskedOnce<string>();
  let asked = 0;
  const fail = async (): Promise<string> => {
    throw new Error(`no answer ${++asked}`);
  };
  const both = [once.answer([1], fail), once.answer([1], fail)];
  await expect(both[0]).rejects.toThrow('no answer 1');
  await expect(both[1]).rejects.toThrow('no answer 1');
  expect(once.known([1])).toBeUndefined();
  expect(await once.answer([1], async () => 'at last')).toBe('at last');
});
