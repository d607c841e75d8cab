import Fuse from 'fuse.js';
import { once } from '../once-each.ts';
import { createWords, wordsOf } from './near-words.ts';

/**
 * Close spellings of unknown names. Only a word the dictionary does not use anywhere may be a misspelling,
 * so *stearyl* is never taken for *isopropyl*: both are words of their own. Numbers and short words are exact.
 * Built on first use.
 */
export function createClose(names: () => readonly SpelledName[]) {
  const built = once(() => index(names()));
  return (normal: string, most: number): string[] => closeNames(normal, most, built());
}

/** `normal` is what is compared, `name` what is offered: the INCI name. */
export type SpelledName = { normal: string; name: string; isInci: boolean };

const shortest = 4; // letters: shorter words are exact only (PEG, PPG, MEA, HCl …)
const longestQuery = 120; // letters
const shortList = 24; // names that Fuse may rank

/** Every number of a name, in its order: PEG-12 is never PEG-19. */
const digitsOf = (words: string[]) => words.join(' ').match(/\d+/g)?.join(' ') ?? '';

function index(names: readonly SpelledName[]) {
  const words: string[] = [];
  const idOf = new Map<string, number>();
  const namesWith: number[][] = [];
  const wordCount: number[] = [];
  for (const [at, { normal }] of names.entries()) {
    const own = wordsOf(normal);
    wordCount.push(own.length);
    for (const word of new Set(own)) {
      let id = idOf.get(word);
      if (id === undefined) {
        id = words.push(word) - 1;
        idOf.set(word, id);
        namesWith.push([]);
      }
      namesWith[id]!.push(at);
    }
  }
  const near = createWords([words.filter((word) => word.length >= shortest && !/\d/.test(word))]);
  return { names, words, idOf, namesWith, wordCount, near };
}

type Index = ReturnType<typeof index>;

function closeNames(normal: string, most: number, at: Index): string[] {
  if (normal.length < shortest || normal.length > longestQuery) return [];
  const query = wordsOf(normal);
  // Each word's names: its own where the dictionary knows it, else those of words a letter or two away.
  const choices = query.map((word) => {
    const known = at.idOf.get(word);
    if (known !== undefined) return [known];
    if (word.length < shortest || /\d/.test(word)) return [];
    return at.near
      .near(word, 2)
      .filter((near) => isNear(word, near.word, near.off))
      .map((near) => at.idOf.get(near.word)!);
  });
  if (choices.length === 0 || choices.some((choice) => choice.length === 0)) return [];
  const rarest = choices.reduce((a, b) => (reach(a, at) <= reach(b, at) ? a : b));
  const found: string[] = [];
  for (const id of rarest)
    for (const name of at.namesWith[id]!) {
      if (at.wordCount[name] !== query.length) continue;
      const own = wordsOf(at.names[name]!.normal);
      if (digitsOf(own) !== digitsOf(query)) continue;
      if (choices.every((choice) => choice.some((word) => own.includes(at.words[word]!))))
        found.push(at.names[name]!.name);
      if (found.length >= shortList) break;
    }
  const list = [...new Set(found)];
  if (list.length < 2) return list.slice(0, most);
  const ranked = new Fuse(list, { threshold: 1, ignoreLocation: true }).search(normal.slice(0, 32));
  return ranked.slice(0, most).map(({ item }) => item);
}

const reach = (choice: number[], at: Index) => choice.reduce((sum, id) => sum + at.namesWith[id]!.length, 0);

// Endings that make another substance: stearyl is not stearoyl, dimethicone not dimethiconol.
const ending = /(?:oyl|yl|eth|one|ol|ate|ite|ide|ane|ene|ine|in|ic|al|um|amide|ose)$/;

/** Whether two words end in different chemical endings. */
export function endsOtherwise(a: string, b: string): boolean {
  const [endA, endB] = [ending.exec(a)?.[0], ending.exec(b)?.[0]];
  return endA !== undefined && endB !== undefined && endA !== endB;
}

/** Same first letter, same chemical ending, and one edit in five letters, two at most. */
function isNear(a: string, b: string, off: number): boolean {
  const allowed = Math.min(2, Math.floor(Math.min(a.length, b.length) / 5) || 1);
  return a[0] === b[0] && off <= allowed && !endsOtherwise(a, b);
}
