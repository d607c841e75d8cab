import type { Practice } from '../../core/judge/practice.ts';
import type { Entry, Limits, Pattern } from '../../core/names/entry.ts';
import { createLookup } from '../../core/names/lookup.ts';
import { once } from '../../core/names/once-each.ts';
import { createNameSearch } from '../../core/names/search-names.ts';
import { type Reading, type ReadOptions, readLabel } from '../../core/reading/reading.ts';
import type { FindingFacts } from '../../find/facts.ts';
import { createFinder } from '../../find/finder.ts';
import type { Remembered } from '../../store/remembered.ts';
import { inTurns } from '../in-turns.ts';
import type { Knowing } from '../knowing.ts';
import { practiceOf, readOptionsOf } from '../practice-of.ts';
import { isoDay } from '../today.ts';
import type { AskedReading } from './reading-cache.ts';

export type Dictionary = {
  entries: readonly Entry[];
  patterns: readonly Pattern[];
  limits: Limits;
  findingFacts: FindingFacts;
  practice: Practice;
};

/**
 * Labels are read here and nowhere else: the dictionary is too large for pages and panels. Nothing of it is built
 * before it is asked for: a worker woken for a setting or a product kept needs none of it.
 * @param ahead lines that the build worked out of the dictionary; without them they are worked out here
 */
export function createReadings(
  { entries, patterns, limits, findingFacts, practice }: Dictionary,
  ahead: { keys?: string; vocabulary?: string } = {},
) {
  const lookup = once(() => createLookup(entries, patterns, limits, ahead.keys?.split('\n')));
  const finder = once(() => createFinder(entries, lookup(), findingFacts, ahead.vocabulary?.split('\n')));
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
  function* reading(texts: AskedReading[]): Generator<void, Reading[]> {
    const all: Reading[] = [];
    for (const { text, ...as } of texts) {
      all.push(read(text, as));
      yield;
    }
    return all;
  }
  return {
    get lookup() {
      return lookup();
    },
    get finder() {
      return finder();
    },
    read,
    /** Many texts, with a pause now and then for others to have their turn. */
    readAll: async (texts: AskedReading[]): Promise<Reading[]> =>
      (await inTurns(reading(texts), () => false, { most: Number.POSITIVE_INFINITY })) ?? [],
    /** Names and aliases like what is typed, each with what is known of it. */
    lookUp: (typed: string) =>
      searchNames()(typed).map((hit) => ({ ...hit, known: lookup().known(lookup().find(hit.name)) })),
    /** What judgements look at, by what is remembered now. */
    knowing: (remembered: Remembered): Knowing => ({
      remembered,
      practice: practiceOf(practice, remembered),
      today: isoDay(new Date()),
      reading: (text, as) => read(text, readOptionsOf(practice, remembered, as)),
    }),
  };
}

export type Readings = ReturnType<typeof createReadings>;
