import { expect, it } from 'vitest';
import { entries, findingFacts, limits, patterns } from '../../dictionary/index.ts';
import { writeAhead } from '../../entrypoints/background/knowing/write-ahead.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { createFinder } from '../../src/find/finder.ts';

const { keys, vocabulary } = writeAhead();
const own = createLookup(entries, patterns, limits);
const ahead = createLookup(entries, patterns, limits, keys.split('\n'));

it('a lookup with what the build wrote ahead finds every printed name as one without', () => {
  const printed = entries.flatMap(({ name, aliases = [] }) => [name, ...aliases]);
  expect(printed.length).toBeGreaterThan(11_000);
  const told = (lookup: typeof own) => printed.map((name) => lookup.find(name));
  expect(told(ahead)).toEqual(told(own));
});

it('a finder with the words the build wrote ahead counts them as one without', () => {
  const finders = [
    createFinder(entries, own, findingFacts),
    createFinder(entries, own, findingFacts, vocabulary.split('\n')),
  ];
  const lines = entries.map(({ name }) => `with ${name.toLowerCase()} and water for you`);
  const [one, other] = finders.map((finder) => lines.map((line) => finder.hits(line, 5)));
  expect(other).toEqual(one);
});
