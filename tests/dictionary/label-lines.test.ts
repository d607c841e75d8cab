import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { unreadIn } from '../run/unread.ts';

const lookup = createLookup(entries, patterns, limits);
const lines = readFileSync(join(import.meta.dirname, 'label-lines.txt'), 'utf8')
  .split('\n')
  .filter((line) => line && !line.startsWith('#'));

it.each(lines)('%s', (line) => {
  const { unread, mentions } = unreadIn(line, lookup);
  expect(mentions).toBeGreaterThan(7);
  expect(unread).toEqual([]);
});
