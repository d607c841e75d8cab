import { expect, it } from 'vitest';
import { budgets } from './bench/check/budgets.ts';
import { held } from './bench/check/check.ts';
import { byTurns, calibration, ratioOf } from './bench/check/pairs.ts';

const name = 'bounds of 9 shares beside HiGHS';
const { most, margin } = budgets[name]!;
const pair = (ratio: number) => ({ name, ours: [ratio * 10, ratio * 40], beside: [10, 10] });

it('a ratio is that of the least times: one slow round decides nothing', () => {
  expect(ratioOf({ name, ours: [2, 9, 3], beside: [4, 4, 40] })).toEqual({
    ratio: 0.5,
    from: 0.075,
    to: 2.25,
  });
});

it('fails past its aim by more than its margin, and only then', () => {
  expect(held(pair(most * 0.9))).toMatchObject({ failed: false, line: expect.stringMatching(/^ok /) });
  expect(held(pair(most * margin * 0.99))).toMatchObject({
    failed: false,
    line: expect.stringMatching(/^over/),
  });
  expect(held(pair(most * margin * 1.01))).toMatchObject({
    failed: true,
    line: expect.stringMatching(/^FAIL/),
  });
  expect(held({ ...pair(0.001), name: 'something without a budget' }).failed).toBe(true);
  expect(held({ ...pair(1), ours: [] }).failed).toBe(true);
});

it('plain work beside itself is as long as itself', async () => {
  const { ratio } = ratioOf(await byTurns(name, calibration, calibration, { rounds: 5, times: 3 }));
  expect(ratio).toBeGreaterThan(0.5);
  expect(ratio).toBeLessThan(2);
});
