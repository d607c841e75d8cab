import { expect, it } from 'vitest';
import { entries, findingFacts, limits, patterns } from '../../dictionary/index.ts';
import { atOnce } from '../../src/core/at-once.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { createFinder } from '../../src/find/finder.ts';
import { findingLists } from '../../src/find/lists-in.ts';
import { namesAList } from '../../src/find/names/headings.ts';
import { fold } from '../../src/find/text/letters.ts';
import { looseText } from '../../src/find/text/page-text.ts';
import { spent } from '../spent.ts';

const finder = createFinder(entries, createLookup(entries, patterns, limits), findingFacts);

// What a name speaks for: common practice.
it.each([
  ['cetearyl alcohol', 'own'],
  ['parfum (fragrance)', 'own'],
  ['shea butter', 'own'],
  ['zinc oxide (120,000 ppm)', 'shared'],
  ['#10417 phenoxyethanol', 'own'],
  ['butyrospermum parkii (shea) butter', 'plant'],
  ['ricinus communis seed oil', 'own'],
  ['helianthus annuus seed oil', 'plant'],
  ['flaxseed extract', 'shared'],
  ['flaxseed', 'other'],
  ['glycerin', 'shared'],
  ['coconut oil', 'shared'],
  ['hypromellose', 'shared'],
  ['avocaddo oil', 'built'],
  ['wheat flour', 'foreign'],
  ['2 cups sugar', 'foreign'],
  ['60 g cetyl alcohol', 'foreign'],
  ['polypropylene', 'foreign'],
  ['our promise', 'other'],
  ['constructor', 'other'],
  ['__proto__', 'other'],
  ['tostring', 'other'],
])('%s is %s', (name, kind) => {
  expect(finder.kindOf(name)).toBe(kind);
});

// Headings of labels and shops, from memory of such pages.
it.each([
  'Ingredients',
  'Composición',
  'Componentes',
  'İçindekiler',
  'İçerik',
  'Inhalt',
  'Made with',
  'Composition / Состав / Inhalt',
  'Ingredents',
  'Indregdients',
  'What’s inside',
  '全成分',
])('%s may be a heading', (words) => {
  expect(finder.heads(fold(words))).toBe(true);
});

it.each(['Details', 'How to use', 'Integrants of life', 'Description'])('%s is none', (words) => {
  expect(finder.heads(fold(words))).toBe(false);
});

it.each([
  ['Full ingredients', true],
  ['Inhaltsstoffe', true],
  ['Delivery', false],
  ['What ingredients do we avoid?', false],
  ['Key ingredients', false],
])('a closed part called %s may hold the list: %s', (title, may) => {
  expect(namesAList(title, finder)).toBe(may);
});

it('each letter keeps its place, whatever its case', () => {
  for (const text of ['İçindekiler: Aqua', 'ΣΎΝΘΕΣΗ', 'Straße İ ẞ', 'СОСТАВ Аqua'])
    expect(fold(text)).toHaveLength(text.length);
});

// Letters that took minutes once: a tag or a bracket that never ends, many spaces.
it.each([
  ['open tags', '<p'.repeat(100_000)],
  ['open brackets', '('.repeat(200_000)],
  ['spaces', `Ingredients: Aqua,${' '.repeat(200_000)}Glycerin`],
  ['one word', `Ingredients: glycerin${'a'.repeat(200_000)}`],
  ['full stops', 'Aqua. '.repeat(40_000)],
  ['headings', 'Ingredients: '.repeat(20_000)],
])('data of %s is read in seconds', (_what, text) => {
  const page = { data: [text], properties: [['ingredients', text]] as [string, string][] };
  expect(spent(() => atOnce(findingLists([looseText(text)], page, finder)))).toBeLessThan(8000);
});
