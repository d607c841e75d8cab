/**
 * Lists of words looked for in text by its words: each word of the text is asked of a map, so a long list costs no
 * more than a short one, and time grows with the letters. Large expressions did the same two hundred times slower.
 */

/** A place of one of the words. */
export type Hit = { index: number; length: number };

export type WordTest = {
  /** Every place, in order; none overlaps another. */
  every(text: string): Hit[];
  first(text: string): Hit | undefined;
  test(text: string): boolean;
  /** Whether the text begins with one, after quotes and brackets. */
  begins(text: string): boolean;
  /** Whether nothing but marks stands behind one. */
  ends(text: string): boolean;
};

type Token = { word: string; index: number };
type Phrase = { rest: string[]; open: boolean };

const tokenLetters = /[\p{L}\p{M}\p{N}]+/gu;
const letterOrDigit = /[\p{L}\p{N}]/u;
// Scripts that put no space between words have no edges to look for.
const edgeless = /[\u0e00-\u0e7f\u3040-\u30ff\u3400-\u9fff\uac00-\ud7af]/;
const widestGap = 2; // letters between two words of one phrase
const mostMarks = 4; // quotes, brackets and stars before a beginning or behind an end

let tokenized: { text: string; tokens: Token[] } = { text: '', tokens: [] };
/** The words of a text; the last text's are kept, since several lists are asked in turn. */
function tokensOf(text: string): Token[] {
  if (tokenized.text !== text)
    tokenized = {
      text,
      tokens: Array.from(text.matchAll(tokenLetters), ({ index, 0: word }) => ({ word, index })),
    };
  return tokenized.tokens;
}

/** A star at either end of a word stands for any letters there. */
export function wordTest(words: readonly string[]): WordTest {
  const phrases = new Map<string, Phrase[]>(); // by first word
  const beginnings = new Map<number, Set<string>>(); // by length
  const anywhere: string[] = []; // parts of words, other scripts, signs
  for (const word of new Set(words)) {
    const [open, close] = [word.startsWith('*'), word.endsWith('*')];
    const core = word.slice(open ? 1 : 0, close ? -1 : undefined);
    const signs = !letterOrDigit.test(core[0]!) || !letterOrDigit.test(core.at(-1)!) || core.includes('.');
    if (open || signs || edgeless.test(core)) anywhere.push(core);
    else {
      const [first, ...rest] = tokensOf(core).map((token) => token.word);
      if (close && rest.length === 0) addTo(beginnings, first!.length, first!);
      else {
        const list = phrases.get(first!) ?? [];
        list.push({ rest, open: close });
        phrases.set(first!, list);
      }
    }
  }
  // longer ones first: "full list" before "full"
  for (const list of phrases.values()) list.sort((a, b) => b.rest.length - a.rest.length);
  const lengths = [...beginnings.keys()].sort((a, b) => b - a);

  /** Where the word or phrase that begins with this token ends; 0 when none does. */
  const endAt = (text: string, tokens: Token[], at: number): number => {
    const { word, index } = tokens[at]!;
    for (const { rest, open } of phrases.get(word) ?? []) {
      let last = tokens[at]!;
      const whole = rest.every((wanted, i) => {
        const next = tokens[at + 1 + i];
        if (!next) return false;
        const gap = text.slice(last.index + last.word.length, next.index);
        last = next;
        const same = open && i === rest.length - 1 ? next.word.startsWith(wanted) : next.word === wanted;
        return same && gap.length <= widestGap && !/[.;:,\n]/.test(gap);
      });
      if (whole) return last.index + last.word.length;
    }
    for (const length of lengths)
      if (word.length >= length && beginnings.get(length)!.has(word.slice(0, length)))
        return index + word.length;
    return 0;
  };

  const every = (text: string, most = Number.POSITIVE_INFINITY): Hit[] => {
    const found: Hit[] = [];
    for (const core of anywhere) {
      for (let at = text.indexOf(core); at >= 0; at = text.indexOf(core, at + core.length)) {
        if (hasEdge(text, core, at)) found.push({ index: at, length: core.length });
        if (found.length >= most) return found;
      }
    }
    const tokens = tokensOf(text);
    for (let at = 0; at < tokens.length; at++) {
      const { index } = tokens[at]!;
      const end = endAt(text, tokens, at);
      if (end === 0) continue;
      found.push({ index, length: end - index });
      if (found.length >= most) return found;
      while (at + 1 < tokens.length && tokens[at + 1]!.index < end) at++;
    }
    if (anywhere.length === 0) return found;
    found.sort((a, b) => a.index - b.index || b.length - a.length);
    return found.filter((one, i) => i === 0 || one.index >= found[i - 1]!.index + found[i - 1]!.length);
  };

  return {
    every: (text) => every(text),
    first: (text) => (anywhere.length === 0 ? every(text, 1) : every(text))[0],
    test: (text) => every(text, 1).length > 0,
    begins: (text) => {
      const head = text.slice(0, 80);
      return every(head).some(
        ({ index }) => index <= mostMarks && /^[\s"'“([*]*$/.test(head.slice(0, index)),
      );
    },
    ends: (text) => {
      const from = Math.max(0, text.length - 80);
      const tail = text.slice(from);
      return every(tail).some(({ index, length }) => {
        const behind = tail.slice(index + length);
        return behind.length <= mostMarks && !letterOrDigit.test(behind);
      });
    },
  };
}

/** A sign that begins or ends with a letter stands at the edge of a word there; "0 %" is no part of "60 %". */
function hasEdge(text: string, core: string, at: number): boolean {
  if (/^\d/.test(core) && /[\d.,]/.test(text[at - 1] ?? '')) return false;
  if (edgeless.test(core) || !core.includes('.')) return true;
  const [before, after] = [text[at - 1], text[at + core.length]];
  return (
    !(before && letterOrDigit.test(before) && letterOrDigit.test(core[0]!)) &&
    !(after && letterOrDigit.test(after) && letterOrDigit.test(core.at(-1)!))
  );
}

function addTo(sets: Map<number, Set<string>>, key: number, value: string): void {
  const set = sets.get(key);
  if (set) set.add(value);
  else sets.set(key, new Set([value]));
}
