import type { Entry } from '../core/names/entry.ts';
import type { Lookup } from '../core/names/lookup.ts';
import type { FindingFacts } from './facts.ts';
import { createKinds, type NameKind } from './kinds.ts';
import { fold } from './letters.ts';
import { anyOf, endOf, everyOf, startOf } from './words.ts';

/** All the finder asks of the dictionary and of the facts beside it. */
export type Finder = {
  kindOf(lowerCaseName: string): NameKind;
  /** How many words of a line the dictionary's names are made of; no more than `most` are counted. */
  hits(line: string, most: number): number;
  /** Whether a line holds a word that may be a heading. */
  heads(line: string): boolean;
  /** Every word of a line that may be a heading: where it stands, and whether it heads other things too. */
  headings(line: string): { index: number; length: number; weak: boolean }[];
  words: WordTests;
};

type WordTests = ReturnType<typeof wordTests>;

const shortestWord = 4; // letters: shorter words stand in any text
const longestWord = 32;

const wordTests = (facts: FindingFacts) => ({
  full: anyOf(facts.headings.full.words),
  teaser: anyOf(facts.headings.teasers.words),
  teasesAlone: startOf(facts.headings.teasers.alone),
  asides: everyOf(facts.headings.asides.words),
  denial: anyOf(facts.denials.before.words),
  deniesAtStart: startOf(facts.denials.before.words),
  deniesAtEnd: endOf(facts.denials.before.words),
  glued: new RegExp(`[\\s-](?:${facts.denials.glued.words.join('|')})[!.]?$`, 'u'),
  headsDenied: startOf(facts.denials.alone.words),
  prose: anyOf(facts.prose.words.words),
  goesOn: startOf(facts.prose.goesOn.words),
  goesOnAnywhere: everyOf(facts.prose.goesOn.words),
  ends: startOf(facts.prose.ends.words),
  cosmetic: anyOf(facts.around.cosmetic.words),
  elsewise: anyOf(facts.around.elsewise.words),
  single: endOf(facts.own.single.words),
  plain: anyOf(facts.own.plain.words),
});

/** Builds the finder: once, wherever pages are read. */
export function createFinder(
  entries: readonly Pick<Entry, 'name' | 'aliases'>[],
  lookup: Pick<Lookup, 'find'>,
  facts: FindingFacts,
): Finder {
  const strong = everyOf(facts.headings.words.flatMap(({ words }) => words.map(fold)));
  const weak = everyOf(facts.headings.words.flatMap((each) => each.weak?.map(fold) ?? []));
  const vocabulary = vocabularyOf(entries, facts);
  const frequent = anyOf(facts.own.frequent.words);
  const slips = facts.headings.slips.words;

  const headings: Finder['headings'] = (line) => {
    const found = [...line.matchAll(strong)].map(({ index, 0: word }) => ({
      index,
      length: word.length,
      weak: false,
    }));
    for (const { index, 0: word } of line.matchAll(weak))
      if (!found.some((one) => one.index < index + word.length && index < one.index + one.length))
        found.push({ index, length: word.length, weak: true });
    for (const { index, 0: word } of line.slice(0, 400).matchAll(mayBeSlip))
      if (!found.some((one) => one.index === index) && slips.some((right) => isSlip(word, right)))
        found.push({ index, length: word.length, weak: false });
    return found.sort((a, b) => a.index - b.index);
  };

  return {
    kindOf: createKinds(lookup, facts),
    heads: (line) => headings(line).length > 0,
    headings,
    hits(line, most) {
      let hits = 0;
      for (const [word] of line.matchAll(/[\p{L}\d]+/gu)) {
        if (word.length < shortestWord || word.length > longestWord || !vocabulary.has(word)) continue;
        if (++hits >= most) return hits;
      }
      return hits === 0 && frequent.test(line) ? most : hits;
    },
    words: wordTests(facts),
  };
}

/** Words the dictionary's names are made of, and those of plain-English names. */
function vocabularyOf(entries: readonly Pick<Entry, 'name' | 'aliases'>[], facts: FindingFacts): Set<string> {
  const words = new Set<string>(facts.genera);
  const add = (name: string) => {
    for (const [word] of name.toLowerCase().matchAll(/[\p{L}\d]+/gu))
      if (word.length >= shortestWord) words.add(word);
  };
  for (const { name, aliases = [] } of entries) {
    add(name);
    for (const alias of aliases) add(alias);
  }
  for (const name of facts.own.plain.words) add(name);
  const ordinary = [...facts.prose.words.words, ...facts.prose.ends.words, ...facts.around.cosmetic.words];
  for (const word of ordinary) words.delete(word);
  return words;
}

const mayBeSlip = /(?<![\p{L}])in[a-z]{6,12}(?![\p{L}])/gu;
const mostSlips = 2;

/** Whether a word is another with a slip or two: letters lost, put in, changed or swapped. */
function isSlip(word: string, right: string): boolean {
  if (Math.abs(word.length - right.length) > mostSlips) return false;
  let before: number[] = [];
  let last = Array.from({ length: right.length + 1 }, (_, i) => i);
  for (let i = 1; i <= word.length; i++) {
    const row = [i];
    for (let j = 1; j <= right.length; j++) {
      const same = word[i - 1] === right[j - 1];
      row[j] = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && word[i - 1] === right[j - 2] && word[i - 2] === right[j - 1])
        row[j] = Math.min(row[j]!, before[j - 2]! + 1);
    }
    [before, last] = [last, row];
  }
  return last[right.length]! <= mostSlips;
}
