import { expect, it } from 'vitest';
import { formatEntries, formatLimits, formatWords } from '../../dictionary/format.ts';

it('sorts entries by name, puts fields in the order of the schema, one entry a line', () => {
  const text = formatEntries([
    { name: 'b Oil', sources: ['cosing'], aliases: ['B'] } as { name: string },
    { name: 'A Oil' },
  ]);
  expect(text).toBe(
    '[\n  { "name": "A Oil" },\n  { "name": "b Oil", "aliases": ["B"], "sources": ["cosing"] }\n]\n',
  );
  expect(formatEntries(JSON.parse(text))).toBe(text);
});

it('an empty family is an empty list', () => {
  expect(formatEntries([])).toBe('[]\n');
});

it('keeps a field the schema does not know, so that the schema can refuse it', () => {
  expect(formatEntries([{ colour: 'red', name: 'A' } as { name: string }])).toBe(
    '[\n  { "name": "A", "colour": "red" }\n]\n',
  );
});

it('sorts limits and words', () => {
  const thresholds = { freeBelow: 1 } as Parameters<typeof formatLimits>[0]['thresholds'];
  const row = (name: string) => ({ name, rinseOff: 1, sources: ['a'] });
  const text = formatLimits({ limits: [row('B'), row('A')], thresholds });
  expect(JSON.parse(text)).toEqual({ thresholds, limits: [row('A'), row('B')] });
  expect(formatWords({ part: ['seed', 'leaf', 'seed'] })).toBe('{\n  "part": ["leaf","seed"]\n}\n');
});
