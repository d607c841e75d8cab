// The shop's labels through the real dictionary: proteins exactly as set down, and no name left unread.
import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { expected, expectedElsewhere } from './expected.ts';
import { goods } from './goods.ts';

const lookup = createLookup(entries, patterns, limits);
const labels = goods.flatMap(({ id, list, variant, alsoInBox }) => {
  const other = variant?.list ?? alsoInBox?.list;
  return [
    { id, list, proteins: expected[id]! },
    ...(other ? [{ id: `${id}, the other list`, list: other, proteins: expectedElsewhere[id]! }] : []),
  ];
});

describe('labels of the shop', () => {
  it.each(labels)('$id', ({ list, proteins }) => {
    const { mentions } = readLabel(list, lookup);
    const found = mentions.flatMap(({ raw, protein }) =>
      protein ? [[raw, protein.kind, protein.size]] : [],
    );
    expect(found).toEqual(proteins);
    expect(mentions.filter(({ found }) => found.how === 'none').map(({ raw }) => raw)).toEqual([]);
  });
});
