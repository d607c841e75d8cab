// Whatever a page sends, the background looks at it in short pieces: no page holds up another. Texts are invented.
import { expect, it } from 'vitest';
import { entries, findingFacts, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { createFinder } from '../../src/find/finder.ts';
import { findingLists } from '../../src/find/lists-in.ts';
import { looseText } from '../../src/find/text/page-text.ts';
import { label } from '../browser/bare-pages.ts';

const finder = createFinder(entries, createLookup(entries, patterns, limits), findingFacts);
const many = (n: number, made: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => made(i)).join('');

const texts: Record<string, string> = {
  'one line of 2 MB of names nobody knows': `Ingredients\n${many(100_000, (i) => `Sodium Laurate ${i}, `)}`,
  'one line of 1.5 MB of known names': `Ingredients\n${many(6000, () => `${label}, `)}`,
  '10,000 lists': many(10_000, (i) => `Ingredients\n${label}, Sample${i}\n`),
  '1 MB of sentences about names': many(
    20_000,
    () => 'A word of plain text about glycerin and sodium here.\n',
  ),
  '1 MB of headings': many(80_000, () => 'Ingredients:\n'),
  '1 MB of names, a line each': many(100_000, () => 'Glycerin,\n'),
};

/** The longest time between two pauses, in ms of the processor. */
function longestPiece(text: string): number {
  const work = findingLists([looseText(text)], undefined, finder);
  let longest = 0;
  for (let done = false; !done; ) {
    const before = process.cpuUsage();
    done = work.next().done === true;
    const { user, system } = process.cpuUsage(before);
    longest = Math.max(longest, (user + system) / 1000);
  }
  return longest;
}

it.each(Object.entries(texts))('%s', { timeout: 60_000 }, (_, text) => {
  expect(Math.min(...[1, 2, 3].map(() => longestPiece(text)))).toBeLessThan(100);
});
