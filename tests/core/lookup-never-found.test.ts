import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { neverFound } from './never-found.ts';

const lookup = createLookup(entries, patterns, limits);
const all = Object.values(neverFound).flat();

it('the set is large and says nothing twice', () => {
  expect(all.length).toBeGreaterThanOrEqual(500);
  expect(new Set(all).size).toBe(all.length);
});

it('at most one in a hundred is taken for a name', () => {
  const found = all.flatMap((text) => {
    const answer = lookup.find(text);
    return answer.how === 'none' ? [] : [`${text} → ${answer.name} (${answer.how})`];
  });
  expect(found.length, found.join('\n')).toBeLessThanOrEqual(all.length / 100);
});

it('nor does a label made of one of them hold a name, but for one in a hundred', () => {
  const found = all.flatMap((text) =>
    readLabel(text, lookup).mentions.flatMap((mention) =>
      mention.found.how === 'none' ? [] : [`${text} → ${mention.found.name}`],
    ),
  );
  expect(found.length, found.join('\n')).toBeLessThanOrEqual(all.length / 100);
});

it('none of them is taken for protein', () => {
  const found = all.filter((text) => lookup.known(lookup.find(text)).protein);
  expect(found).toEqual([]);
});
