/** Lists of words as expressions. No quantifier without a bound: each takes time in proportion to the letters. */

const longestEnding = 20; // letters a star stands for at the end of a word

const literal = (word: string) => word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
const isLetter = (letter: string | undefined) => letter !== undefined && /[\p{L}\p{N}]/u.test(letter);
// Scripts that put no space between words have no edges to look for.
const edgeless = /[\u0e00-\u0e7f\u3040-\u30ff\u3400-\u9fff\uac00-\ud7af]/;

/** One word with its edges; a star at either end stands for any letters there. */
function sourceOf(word: string, whole: boolean): string {
  const [open, close] = [word.startsWith('*'), word.endsWith('*')];
  const core = word.slice(open ? 1 : 0, close ? -1 : undefined);
  const bare = edgeless.test(core);
  const before = open || bare || !isLetter(core[0]) ? '' : '(?<![\\p{L}\\p{N}])';
  const rest = close ? (whole ? `\\p{L}{0,${longestEnding}}` : '') : '';
  const after = (close && !whole) || bare || !isLetter(core.at(-1)) ? '' : '(?![\\p{L}\\p{N}])';
  return before + literal(core).replace(/ /g, ' ') + rest + after;
}

// Longer words first: "full list" before "full".
const sourcesOf = (words: readonly string[], whole = false) =>
  [...new Set(words)]
    .sort((a, b) => b.length - a.length)
    .map((word) => sourceOf(word, whole))
    .join('|');

/** Tells whether lower-case text holds one of the words. */
export const anyOf = (words: readonly string[]): RegExp => new RegExp(sourcesOf(words), 'u');
/** Every place of one of the words in lower-case text, with what a star stands for. */
export const everyOf = (words: readonly string[]): RegExp => new RegExp(sourcesOf(words, true), 'gu');
/** Whether lower-case text begins with one of the words, after quotes and brackets. */
export const startOf = (words: readonly string[]): RegExp =>
  new RegExp(`^[\\s"'“(\\[*]{0,4}(?:${sourcesOf(words, true)})`, 'u');
/** Whether lower-case text ends with one of the words. */
export const endOf = (words: readonly string[]): RegExp =>
  new RegExp(`(?:${sourcesOf(words, true)})[^\\p{L}\\p{N}]{0,4}$`, 'u');
