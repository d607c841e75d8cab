// Reading a label in Node: the lookup built once, forty names read, and what a fuzzy search over all names would cost.
import Fuse from 'fuse.js';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/lookup.ts';
import { readLabel } from '../../src/core/reading.ts';
import { fortyNames } from './bench-page.ts';
import { ms, timed } from './measure.ts';

export async function lines(): Promise<string[]> {
  const build = timed(() => createLookup(entries, patterns, limits), 9, 2);
  const lookup = createLookup(entries, patterns, limits);
  const read = timed(() => readLabel(fortyNames, lookup));
  const names = fortyNames.split(', ');
  const find = timed(() => names.map((name) => lookup.find(name)));
  const close = timed(() => lookup.close('Hydrolised Weat Protien', 3), 50, 5);
  const fuse = new Fuse(entries, { keys: ['name', 'aliases'] });
  const fuzzy = timed(() => fuse.search('Behentrimonium Methosulfate', { limit: 1 }), 3, 0) * names.length;
  return [
    `lookup of ${entries.length} entries and ${patterns.length} patterns built in ${ms(build)}`,
    `readLabel of ${names.length} names: ${ms(read)} (aim 1 ms); finding alone ${ms(find)}; Fuse over all names about ${ms(fuzzy)}`,
    `close spellings of one unknown name: ${ms(close)}`,
  ];
}
