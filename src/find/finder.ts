import type { Entry } from '../core/names/entry.ts';
import type { Lookup } from '../core/names/lookup.ts';
import type { FindingFacts } from './facts.ts';
import { createKinds, type NameKind } from './names/kinds.ts';
import { type WordTest, wordTest } from './names/words.ts';
import { fold } from './text/letters.ts';

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

const folded = (words: readonly string[]): WordTest => wordTest(words.map(fold));

const wordTests = ({ headings, denials, prose, around, own, goods, shared }: FindingFacts) => ({
  full: folded(headings.full.words),
  teaser: folded([...headings.teasers.words, ...headings.teasers.actives, ...headings.teasers.spoken]),
  teasesAlone: folded(headings.teasers.alone),
  asides: folded([...headings.asides.words, ...headings.full.words]),
  denial: folded([...denials.before.words, ...denials.before.loose]),
  deniesAlone: folded(denials.alone.words),
  glued: new RegExp(`[\\s-](?:${denials.glued.words.join('|')})[!.]?$`, 'u'),
  prose: folded(prose.words.words),
  goesOn: folded(prose.goesOn.words),
  endsOn: folded(prose.endsOn.words),
  ends: folded(prose.ends.words),
  cosmetic: folded(around.cosmetic.words),
  elsewise: folded(around.elsewise.words),
  home: folded(around.home.words),
  detergent: folded(goods.goods.find(({ good }) => good === 'detergent')?.words ?? []),
  otherGoods: folded(goods.goods.flatMap(({ words }) => words)),
  pressed: folded([...shared.pressed.words, 'water', 'distillate']),
  single: folded(own.single.words),
});

/** Builds the finder: once, wherever pages are read. Its words may have been gathered before (`vocabularyOf`). */
export function createFinder(
  entries: readonly Pick<Entry, 'name' | 'aliases' | 'roles'>[],
  lookup: Pick<Lookup, 'find'>,
  facts: FindingFacts,
  words: Iterable<string> = vocabularyOf(entries, facts),
): Finder {
  const strong = folded(facts.headings.words.flatMap(({ words }) => words));
  const weak = folded(facts.headings.words.flatMap((each) => each.weak ?? []));
  const vocabulary = new Set(words);
  const waters = entries.filter(({ roles }) => roles?.includes('water')).map(({ name }) => name);
  const frequent = folded(facts.own.frequent.words);
  const slips = facts.headings.slips.words;

  const headings: Finder['headings'] = (line) => {
    const found = strong.every(line).map((hit) => ({ ...hit, weak: false }));
    for (const hit of weak.every(line))
      if (!found.some((one) => one.index < hit.index + hit.length && hit.index < one.index + one.length))
        found.push({ ...hit, weak: true });
    for (const { index, 0: word } of line.slice(0, 400).matchAll(mayBeSlip))
      if (!found.some((one) => one.index === index) && slips.some((right) => isSlip(word, right)))
        found.push({ index, length: word.length, weak: false });
    return found.sort((a, b) => a.index - b.index);
  };

  return {
    kindOf: createKinds(lookup, facts, new Set(waters)),
    heads: (line) => strong.test(line) || headings(line).length > 0,
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
export function vocabularyOf(
  entries: readonly Pick<Entry, 'name' | 'aliases'>[],
  facts: FindingFacts,
): Set<string> {
  const names = entries.flatMap(({ name, aliases = [] }) => [name, ...aliases]);
  const words = new Set(
    [...names, ...facts.own.plain.words, ...facts.genera]
      .join(' ')
      .toLowerCase()
      .split(/[\s()[\]/,.'’+*&-]+/)
      .filter(({ length }) => length >= shortestWord && length <= longestWord),
  );
  const ordinary = [...facts.prose.words.words, ...facts.prose.ends.words, ...facts.around.cosmetic.words];
  for (const word of ordinary) words.delete(word);
  return words;
}

const mayBeSlip = /(?<![\p{L}])i[a-z]{7,13}(?![\p{L}])/gu;
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
