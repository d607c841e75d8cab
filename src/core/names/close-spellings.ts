import Fuse from 'fuse.js';

/**
 * Close spellings of unknown names. Only a word the dictionary does not use anywhere may be a misspelling,
 * so *stearyl* is never taken for *isopropyl*: both are words of their own. Numbers and short words are exact.
 * Built on first use.
 */
export function createClose(names: () => readonly Name[]) {
  let built: ReturnType<typeof index> | undefined;
  return (normal: string, most: number): string[] => {
    built ??= index(names());
    return closeNames(normal, most, built);
  };
}

/** `normal` is what is compared, `name` what is offered: the INCI name. */
type Name = { normal: string; name: string };

const shortest = 4; // letters: shorter words are exact only (PEG, PPG, MEA, HCl …)
const longestQuery = 120; // letters
const shortList = 24; // names that Fuse may rank

const wordsOf = (normal: string) => normal.split(/[^a-z0-9]+/).filter(Boolean);

/** Every number of a name, in its order: PEG-12 is never PEG-19. */
const digitsOf = (words: string[]) => words.join(' ').match(/\d+/g)?.join(' ') ?? '';

function index(names: readonly Name[]) {
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
  const wordsWith = new Map<string, number[]>();
  for (const [id, word] of words.entries())
    if (word.length >= shortest && !/\d/.test(word))
      for (const pair of bigrams(word)) {
        const list = wordsWith.get(pair);
        if (list) list.push(id);
        else wordsWith.set(pair, [id]);
      }
  return { names, words, idOf, namesWith, wordCount, wordsWith, near: new Map<string, number[]>() };
}

type Index = ReturnType<typeof index>;

const bigrams = (word: string) => {
  const pairs = new Set<string>();
  for (let i = 0; i + 1 < word.length; i++) pairs.add(word.slice(i, i + 2));
  return pairs;
};

function closeNames(normal: string, most: number, at: Index): string[] {
  if (normal.length < shortest || normal.length > longestQuery) return [];
  const query = wordsOf(normal);
  // Each word's names: its own where the dictionary knows it, else those of words a letter or two away.
  const choices = query.map((word) => {
    const known = at.idOf.get(word);
    if (known !== undefined) return [known];
    return word.length < shortest || /\d/.test(word) ? [] : nearWords(word, at);
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

function nearWords(word: string, at: Index): number[] {
  const kept = at.near.get(word);
  if (kept) return kept;
  const pairs = bigrams(word);
  const shared = new Map<number, number>();
  for (const pair of pairs)
    for (const id of at.wordsWith.get(pair) ?? []) shared.set(id, (shared.get(id) ?? 0) + 1);
  const least = Math.max(1, pairs.size - 4); // two edits spoil at most four pairs of letters
  const near: number[] = [];
  for (const [id, count] of shared) if (count >= least && isNear(word, at.words[id]!)) near.push(id);
  if (at.near.size > 500) at.near.clear();
  at.near.set(word, near);
  return near;
}

// Endings that make another substance: stearyl is not stearoyl, dimethicone not dimethiconol.
const ending = /(?:oyl|yl|eth|one|ol|ate|ite|ide|ane|ene|ine|in|ic|al|um|amide|ose)$/;

/** Same first letter, same chemical ending, and one edit in five letters, two at most. */
function isNear(a: string, b: string): boolean {
  const allowed = Math.min(2, Math.floor(Math.min(a.length, b.length) / 5) || 1);
  if (a[0] !== b[0] || Math.abs(a.length - b.length) > allowed) return false;
  const [endA, endB] = [ending.exec(a)?.[0], ending.exec(b)?.[0]];
  if (endA && endB && endA !== endB) return false;
  return distance(a, b, allowed) <= allowed;
}

/** Edit distance with swapped neighbours counted once (optimal string alignment); stops above `most`. */
function distance(a: string, b: string, most: number): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      row[j] = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        row[j] = Math.min(row[j]!, before[j - 2]! + 1);
    }
    if (Math.min(...row) > most) return most + 1;
    before = last;
    last = row;
  }
  return last[b.length]!;
}
