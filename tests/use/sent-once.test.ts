import { expect, it } from 'vitest';
import { createSentOnce } from '../../src/use/tabs/sent-once.ts';

const opened = 100_000;
const go = (nth: number, tab = 7) => ({ tab, place: 'routine', nth });

it('a press that opened the panel is followed once, and each later one', () => {
  const fresh = createSentOnce(opened);
  const presses = [go(opened - 900), go(opened - 900), go(opened + 50), go(opened + 50)];
  expect(presses.map((each) => fresh(each, 7)?.nth)).toEqual([
    opened - 900,
    undefined,
    opened + 50,
    undefined,
  ]);
});

it.each([
  ['of another tab', go(opened), 8],
  ['while no tab is in view', go(opened), undefined],
  ['of long before', go(opened - 60_000), 7],
  ['that never was', undefined, 7],
])('a press %s is not followed', (_, sent, tab) => {
  expect(createSentOnce(opened)(sent, tab)).toBeUndefined();
});

it('a press of another tab waits until that is in view', () => {
  const fresh = createSentOnce(opened);
  expect([fresh(go(opened), 8), fresh(go(opened), 7)]).toEqual([undefined, go(opened)]);
});
