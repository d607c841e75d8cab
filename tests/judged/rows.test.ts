import { expect, it } from 'vitest';
import { eitherOf, rowOf, stepsOf, wordsOf } from './rows.ts';
import { tables } from './score.ts';

it('steps are read from a line or from a list', () => {
  const steps = [
    { kind: 'cleanser', label: 'A1', every: 1 },
    { kind: 'gel', label: 'A2', every: 4 },
  ];
  expect(stepsOf('cleanser:A1;gel:A2/4')).toEqual(steps);
  expect(stepsOf(['cleanser:A1', { kind: 'gel', label: 'A2', every: 4 }])).toEqual(steps);
});

it('a row is found in a map, an object and a list', () => {
  const row = { id: 'A1', label: 'Aqua' };
  for (const rows of [new Map([['A1', row]]), { A1: row }, [row]]) {
    expect(rowOf(rows, 'A1')).toBe(row);
    expect(rowOf(rows, 'A2')).toBeUndefined();
  }
});

it('none is no word, and a bar parts words of which one is enough', () => {
  expect(wordsOf('none')).toEqual([]);
  expect(wordsOf('a; b')).toEqual(['a', 'b']);
  expect(eitherOf('better|same')).toEqual(['better', 'same']);
});

it('every table has a scorer', () => {
  expect(tables).toEqual([
    'kinds',
    'allergens',
    'fits',
    'moisture-order',
    'days',
    'adds',
    'builds',
    'estimates',
  ]);
});
