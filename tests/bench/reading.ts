// Reading a label in Node: the lookup built once, forty names read, and what a fuzzy search over all names would cost.
import Fuse from 'fuse.js';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { fortyNames } from './bench-page.ts';
import { ms, timed } from './measure.ts';

export async function lines(): Promise<string[]> {
  const build = timed(() => createLookup(entries, patterns, limits), 9, 2);
  const lookup = createLookup(entries, patterns, limits);
  const read = timed(() => readLabel(fortyNames, lookup));
  const names = fortyNames.split(', ');
  const find = noisyFinds(names);
  const close = timed(() => lookup.close('Hydrolised Weat Protien', 3), 50, 5);
  const fuse = new Fuse(entries, { keys: ['name', 'aliases'] });
  const fuzzy = timed(() => fuse.search('Behentrimonium Methosulfate', { limit: 1 }), 3, 0) * names.length;
  return [
    `lookup of ${entries.length} entries and ${patterns.length} patterns built in ${ms(build)}`,
    `readLabel of ${names.length} names: ${ms(read)} (aim 1 ms), names it has met before`,
    `lookup of ${names.length} noisy names it has not met, close spellings of the unknown ones included: ${ms(find)} (aim 1 ms); Fuse over all names about ${ms(fuzzy)}, ${Math.round(fuzzy / find)} times ours (aim 500)`,
    `close spellings of one unknown name: ${ms(close)}`,
  ];
}

/** Median time of forty names written as no lookup has met them: a lookup remembers, so each run has other noise. */
function noisyFinds(names: readonly string[]): number {
  const lookup = createLookup(entries, patterns, limits);
  const noises = [
    (name: string, n: number) => `${name.toUpperCase()}${'*'.repeat(n + 1)}`,
    (name: string, n: number) => `${name}${' '.repeat(n + 1)}`.replace(' ', ' '.repeat(n + 2)),
    (name: string, n: number) => name.replace(/(.)(.)(?=.{3}$)/, '$2$1') + ' '.repeat(n),
  ];
  let round = 0;
  return timed(
    () => {
      round++;
      for (const [i, name] of names.entries()) {
        const printed = noises[i % noises.length]!(name, round);
        if (lookup.find(printed).how === 'none') lookup.close(printed);
      }
    },
    30,
    10,
  );
}
