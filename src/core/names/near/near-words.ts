import { once, onceEach } from '../once-each.ts';

/** Words of the dictionary, and which of them lie a letter or two from a word that is none of them. */
export type Words = {
  has(word: string): boolean;
  /** Whether a word stands in an INCI name or an example of the grammar, not only in what labels print for one. */
  isOwn(word: string): boolean;
  /** Whether two words stand side by side in some name. */
  beside(before: string, after: string): boolean;
  /** Words at most `most` letters off, with how far; the word itself is not asked for. */
  near(word: string, most: number): { word: string; off: number }[];
};

/** From names as lists of words; words of one list stand side by side. The `own` ones are gathered on first use. */
export function createWords(
  names: Iterable<readonly string[]>,
  own: () => Iterable<readonly string[]> = () => [],
): Words {
  const known = new Set<string>();
  const inNames = once(() => new Set([...own()].flat()));
  const pairs = new Set<string>();
  for (const name of names)
    for (const [i, word] of name.entries()) {
      known.add(word);
      if (i > 0) pairs.add(`${name[i - 1]} ${word}`);
    }
  const words = [...known];
  const masks = Int32Array.from(words, maskOf);
  const lengths = Uint8Array.from(words, ({ length }) => Math.min(length, 255));
  const met = onceEach<{ word: string; off: number }[]>(mostRemembered);
  function look(word: string, most: number) {
    const found: { word: string; off: number }[] = [];
    const mask = maskOf(word);
    for (let i = 0; i < words.length; i++) {
      const longer = lengths[i]! - word.length;
      // Each edit changes at most two letters of the set.
      if (longer > most || longer < -most || bits(masks[i]! ^ mask) > 2 * most) continue;
      const off = distance(word, words[i]!, most);
      if (off <= most) found.push({ word: words[i]!, off });
    }
    return found;
  }
  return {
    has: (word) => known.has(word),
    isOwn: (word) => inNames().has(word),
    beside: (before, after) => pairs.has(`${before} ${after}`),
    near: (word, most) => met(`${most} ${word}`, () => look(word, most)),
  };
}

const mostRemembered = 1000;

/** One bit a letter; digits share the bits that are left. */
function maskOf(word: string): number {
  let mask = 0;
  for (let i = 0; i < word.length; i++) {
    const code = word.charCodeAt(i);
    mask |= 1 << (code >= 97 && code <= 122 ? code - 97 : 26 + (code % 6));
  }
  return mask;
}

function bits(mask: number): number {
  let n = mask - ((mask >>> 1) & 0x55555555);
  n = (n & 0x33333333) + ((n >>> 2) & 0x33333333);
  return (((n + (n >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}

// Three rows, used again for each comparison.
const rows = [new Uint8Array(256), new Uint8Array(256), new Uint8Array(256)];

/** Edit distance with swapped neighbours counted once (optimal string alignment); stops above `most`. */
export function distance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most || a.length > 250 || b.length > 250) return most + 1;
  let [before, last, row] = rows as [Uint8Array, Uint8Array, Uint8Array];
  for (let j = 0; j <= b.length; j++) last[j] = j;
  for (let i = 1; i <= a.length; i++) {
    row[0] = i;
    let least = i;
    const letter = a.charCodeAt(i - 1);
    for (let j = 1; j <= b.length; j++) {
      const same = letter === b.charCodeAt(j - 1);
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && letter === b.charCodeAt(j - 2) && a.charCodeAt(i - 2) === b.charCodeAt(j - 1))
        cost = Math.min(cost, before[j - 2]! + 1);
      row[j] = cost;
      if (cost < least) least = cost;
    }
    if (least > most) return most + 1;
    [before, last, row] = [last, row, before];
  }
  return last[b.length]!;
}

/** The words of a name in its normal form. */
export const wordsOf = (normal: string): string[] => normal.split(/[^a-z0-9]+/).filter(Boolean);
