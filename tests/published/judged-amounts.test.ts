import { expect, it } from 'vitest';
import { scoreTable } from '../judged/score.ts';

// Judged by hand before there were answers, from common practice and memory of formulating: one author in three
// roles. Laid beside the project; where it is absent the test says it was skipped.
const estimates = scoreTable('estimates');
const order = scoreTable('moisture-order');

const right = (score: NonNullable<typeof estimates>, of: string) => {
  const marks = score.marks.filter((mark) => mark.of === of);
  return marks.filter((mark) => mark.right).length / marks.length;
};

it.skipIf(!estimates)('three quarters of the upper ends lie within three times the judged one', () => {
  expect(right(estimates!, 'upper end within three times')).toBeGreaterThanOrEqual(0.75);
});

it.skipIf(!order)('of two products, the one that brings more moisture, and more protein', () => {
  expect(right(order!, 'moisture')).toBeGreaterThanOrEqual(0.88);
  expect(right(order!, 'protein')).toBeGreaterThanOrEqual(0.9);
});
