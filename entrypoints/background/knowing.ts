import { entries, findingFacts, limits, patterns } from '../../dictionary/index.ts';
import { practice } from '../../dictionary/practice.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { once } from '../../src/core/names/once-each.ts';
import { createNameSearch } from '../../src/core/names/search-names.ts';
import { readAsOf } from '../../src/core/product/read-as.ts';
import { type ReadOptions, readLabel } from '../../src/core/reading/reading.ts';
import { createFinder } from '../../src/find/finder.ts';
import type { Remembered } from '../../src/store/remembered.ts';
import type { Knowing } from '../../src/use/knowing.ts';
import { marketBy, practiceOf } from '../../src/use/practice-of.ts';
import { dayOf } from '../../src/use/today.ts';
import { written } from './written.ts';

export { practice };

/**
 * Labels are read here and nowhere else: the dictionary is too large for pages and panels. Nothing of it is built
 * before it is asked for: a worker woken for a setting or a product kept needs none of it.
 */
export function createReadings() {
  const lookup = once(() => createLookup(entries, patterns, limits, written.keys?.split('\n')));
  const finder = once(() => createFinder(entries, lookup(), findingFacts, written.vocabulary?.split('\n')));
  const searchNames = once(() => createNameSearch(entries, lookup().close));
  /** Each text on its own: one that could not be read is no list, and takes no other with it. */
  const read = (text: string, as: ReadOptions) => {
    try {
      return readLabel(text, lookup(), as);
    } catch (problem) {
      console.error('a text could not be read', problem);
      return readLabel('', lookup());
    }
  };
  return {
    get lookup() {
      return lookup();
    },
    get finder() {
      return finder();
    },
    read,
    /** Names and aliases like what is typed, each with what is known of it. */
    lookUp: (typed: string) =>
      searchNames()(typed).map((hit) => ({ ...hit, known: lookup().known(lookup().find(hit.name)) })),
    /** What judgements look at, by what is remembered now. */
    knowing: (remembered: Remembered): Knowing => ({
      remembered,
      practice: practiceOf(practice, remembered),
      today: dayOf(new Date()),
      reading: (text, as) =>
        read(text, { ...readAsOf(as, marketBy(practice, remembered)), readAs: remembered.readAs }),
    }),
  };
}

export type Readings = ReturnType<typeof createReadings>;
