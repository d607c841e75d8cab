import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { scoreTable } from './score.ts';

const folder = join(import.meta.dirname, 'rows');

// Invented labels, heads and days; what a stylist would answer: common practice.
describe('rows of our own', () => {
  it.each(['kinds', 'allergens', 'fits', 'days', 'adds', 'builds', 'moisture-order'])(
    '%s are all answered as a stylist would',
    (table) => {
      const { rows, marks } = scoreTable(table, folder)!;
      expect(rows).toBeGreaterThan(15);
      expect(marks.filter(({ right }) => !right).map(({ row, why }) => `${row}: ${why}`)).toEqual([]);
    },
  );
});
