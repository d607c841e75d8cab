// However long a text is that is called a label, it is read, or refused, in the time one piece of work may take.
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

const many = (n: number, made: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => made(i)).join(', ');
const texts: Record<string, string> = {
  '1,000 names nobody knows': many(1000, (i) => `Sodium Laurate ${i}`),
  '1,000 names that differ': many(1000, (i) => entries[i % entries.length]!.name),
  'damaged names': many(900, (i) => (i % 2 ? `Cetaeryl Alcohl${i}` : `Glycerln${i % 7}`)),
  '2 MB': many(100_000, (i) => `Sodium Laurate ${i}`),
};

/** Time of the processor that a lookup which met none of these names takes, in ms. */
function spent(text: string): number {
  const lookup = createLookup(entries, patterns, limits);
  readLabel('Aqua, Glycerin, Mystery', lookup, {});
  const before = process.cpuUsage();
  readLabel(text, lookup, {});
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

it.each(Object.entries(texts))('%s', (_, text) => {
  expect(Math.min(...[1, 2, 3, 4, 5].map(() => spent(text)))).toBeLessThan(100);
});
