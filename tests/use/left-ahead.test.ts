// What is left for a panel that opens while the worker wakes; storage.session answers in its own time.
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Reading } from '../../src/core/reading/reading.ts';
import type { Remembered } from '../../src/store/remembered.ts';
import { aheadIn, createAhead } from '../../src/use/left-ahead.ts';
import { madeProduct } from '../keeping/made.ts';
import { slowSession } from '../keeping/session.ts';
import { nothing } from './knowing.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const reading = (raw: string) => ({ mentions: [{ raw }] }) as unknown as Reading;
const settle = () => vi.advanceTimersByTimeAsync(2000);

function leaving(session = slowSession()) {
  let now: { written: unknown; remembered: Remembered } | undefined = { written: 'a', remembered: nothing };
  const ahead = createAhead(session, () => now);
  const left = async (written: unknown = now?.written) => aheadIn(await session.get(null), written);
  return {
    session,
    ahead,
    left: async (written?: unknown) => {
      const asked = left(written);
      await settle();
      return asked;
    },
    stands: (next: typeof now) => {
      now = next;
    },
  };
}

it('what is remembered and what was read is there for a panel that opens', async () => {
  const { ahead, left } = leaving();
  ahead.read('{"text":"Aqua"}', reading('Aqua'));
  ahead.soon();
  await settle();
  expect(await left()).toEqual({ remembered: nothing, readings: [['{"text":"Aqua"}', reading('Aqua')]] });
});

it('nothing is taken for remembered that is older than the store, or of which nobody knows how old it is', async () => {
  const { ahead, left, stands } = leaving();
  ahead.soon();
  await settle();
  expect((await left('b')).remembered).toBeUndefined();
  stands(undefined);
  ahead.soon();
  await settle();
  expect((await left('a')).remembered).toEqual(nothing);
  stands({ written: 'b', remembered: { ...nothing, readAs: { Oakum: 'Glycerin' } } });
  ahead.soon();
  await settle();
  expect((await left()).remembered?.readAs).toEqual({ Oakum: 'Glycerin' });
});

it('a full shelf is not handed over: the panel waits', async () => {
  const { ahead, left, stands } = leaving();
  const products = Array.from({ length: 501 }, (_, i) => madeProduct({ id: `p${i}` }));
  stands({ written: 'b', remembered: { ...nothing, products } });
  ahead.soon();
  await settle();
  expect(await left()).toEqual({ readings: [] });
});

it('the newest labels stay, those of a worker that was stopped with them', async () => {
  const { session, ahead, left } = leaving();
  for (let i = 0; i < 30; i++) ahead.read(`${i}`, reading(`${i}`));
  ahead.soon();
  await settle();
  const next = createAhead(session, () => undefined);
  next.read('new', reading('new'));
  next.read('29', reading('twenty-nine'));
  next.soon();
  await settle();
  const { readings } = await left();
  expect(readings).toHaveLength(24);
  expect(readings.slice(-2)).toEqual([
    ['new', reading('new')],
    ['29', reading('twenty-nine')],
  ]);
});

it('what is forgotten is not left again, even where it was on its way', async () => {
  const { session, ahead, left, stands } = leaving();
  ahead.read('Aqua', reading('Aqua'));
  ahead.soon();
  await vi.advanceTimersByTimeAsync(301);
  ahead.forget();
  void session.remove(['ahead:kept', 'ahead:read']);
  stands(undefined);
  await settle();
  expect(await left('a')).toEqual({ readings: [] });
});

it('a session without room is left as it is', async () => {
  const { ahead, left } = leaving(slowSession(100));
  ahead.read('Aqua', reading('Aqua'.repeat(50)));
  ahead.soon();
  await settle();
  expect(await left()).toEqual({ readings: [] });
});
