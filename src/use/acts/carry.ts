import type { Change, Remembered } from '../../store/remembered.ts';

/** Changes that say what they change: with each value goes what it was when it was shown. */
export const carrying = (remembered: Remembered, changes: readonly Change[]): Change[] =>
  changes.map((change) => {
    if (change.do !== 'put' || change.was) return change;
    const idOf = (item: object) => ('origin' in item ? item.origin : 'id' in item && item.id);
    const was = remembered[change.thing].find((item) => idOf(item) === idOf(change.value));
    return was ? ({ ...change, was } as Change) : change;
  });
