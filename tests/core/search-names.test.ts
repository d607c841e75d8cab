import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { createNameSearch } from '../../src/core/names/search-names.ts';
import { toldKinds } from '../../src/core/names/told-as.ts';
import { isProtein, readLabel } from '../../src/core/reading/reading.ts';

const lookup = createLookup(entries, patterns, limits);
const search = createNameSearch(entries, lookup.close);
const names = (typed: string) => search(typed).map(({ name }) => name);

it.each([
  // what is typed so far, and a name that must be offered first
  ['glyceri', 'Glycerin'],
  ['glycerin', 'Glycerin'],
  ['hydrolyzed wheat pro', 'Hydrolyzed Wheat Protein'],
  ['dimethicone', 'Dimethicone'],
  ['glycerni', 'Glycerin'],
])('%s offers %s first', (typed, name) => expect(names(typed)[0]).toBe(name));

it.each([
  // other names and slips of the pen
  ['water', 'Aqua'],
  ['shea but', 'Butyrospermum Parkii Butter'],
  ['panthenoll', 'Panthenol'],
])('%s offers %s', (typed, name) => expect(names(typed)).toContain(name));

it('never offers another number than the one typed', () => {
  for (const { name, printed } of search('PEG-12 Dimethicone')) expect(`${name} ${printed}`).toMatch(/12/);
  expect(names('PEG-12 Dimethicone')).toContain('PEG-12 Dimethicone');
});

it('offers nothing for one letter, for nonsense, and not without end for text of any length', () => {
  expect(search('g')).toEqual([]);
  expect(search('zzqqxxkkvv')).toEqual([]);
  expect(search('e'.repeat(50_000))).toEqual([]);
});

it('offers only names that a label with them is read by', () => {
  for (const typed of ['protein', 'oil', 'acid', 'quat', 'silk'])
    for (const { name, printed } of search(typed, 40)) {
      expect(lookup.find(name).how, name).not.toBe('none');
      expect(lookup.find(printed).how, printed).not.toBe('none');
    }
});

it.each(toldKinds)('a name told to be %s counts as that and nothing else', (as) => {
  const { mentions } = readLabel('Aqua, Glowberry Complex Nine', lookup, {
    readAs: { 'Glowberry Complex Nine': { as } },
  });
  const told = mentions[1]!;
  expect(told.found).toEqual({ how: 'told', name: 'Glowberry Complex Nine', as });
  expect(isProtein(told)).toBe(as === 'protein');
  expect(told.moisture).toEqual(as === 'protein' || as === 'neither' ? [] : [as]);
});

it('what was told is set aside where the dictionary knows the name', () => {
  const { mentions } = readLabel('Aqua, Glycerin', lookup, { readAs: { Glycerin: { as: 'protein' } } });
  expect(mentions[1]!.found).toEqual({ how: 'exact', name: 'Glycerin' });
});
