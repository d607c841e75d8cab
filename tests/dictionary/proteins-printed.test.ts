// Proteins as labels of other languages print them: the entry only lends the name its aliases, its facts are
// those of the pattern that reads the INCI name.
import { expect, it } from 'vitest';
import printed from '../../dictionary/entries/proteins-printed.json' with { type: 'json' };
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';

const lookup = createLookup(entries, patterns, limits);
const rules = createLookup([], patterns, limits);

it.each(printed.map(({ name }) => name))('%s carries the facts of its pattern', (name) => {
  const ours = lookup.known(lookup.find(name));
  const theirs = rules.known(rules.find(name));
  expect(ours.protein).toEqual(theirs.protein);
  expect([ours.moisture, ours.roles, ours.allergens]).toEqual([
    theirs.moisture,
    theirs.roles,
    theirs.allergens,
  ]);
});

it.each([
  ['Weizenprotein hydrolysiert', 'Hydrolyzed Wheat Protein'],
  ['Protéines de blé hydrolysées', 'Hydrolyzed Wheat Protein'],
  ['Proteína de trigo hidrolizada', 'Hydrolyzed Wheat Protein'],
  ['Proteine del grano idrolizzate', 'Hydrolyzed Wheat Protein'],
  ['Proteína de trigo hidrolisada', 'Hydrolyzed Wheat Protein'],
  ['Hydrolizowane proteiny pszenicy', 'Hydrolyzed Wheat Protein'],
  ['Gehydrolyseerd tarweproteïne', 'Hydrolyzed Wheat Protein'],
  ['Queratina hidrolisada', 'Hydrolyzed Keratin'],
  ['Kératine', 'Keratin'],
  ['Soie hydrolysée', 'Hydrolyzed Silk'],
  ['Kollagen', 'Collagen'],
  ['Haferextrakt', 'Avena Sativa Kernel Extract'],
])('%s → %s', (label, name) => {
  const found = lookup.find(label);
  expect(found).toEqual({ how: 'alias', name });
  expect(lookup.known(found).protein).toBeDefined();
});

it('wheat in any language is wheat to who avoids it', () => {
  for (const label of ['Weizenprotein hydrolysiert', 'Proteiny pszenicy', 'Aminoácidos de trigo'])
    expect(lookup.sourcesOf(label, lookup.find(label)).says).toContain('wheat');
});
