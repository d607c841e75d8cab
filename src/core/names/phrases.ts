/**
 * Phrases of the dictionary as one expression. `*` stands for letters of a word, `…` for up to four words in
 * between, `^` and `$` for the ends. A phrase is found at the edges of words; the text has one space at each end.
 */
export function phraseFinder(phrases: readonly string[], fold: (text: string) => string, flags = ''): RegExp {
  // Of two phrases that begin alike the longer is tried first.
  const longestFirst = [...new Set(phrases)].toSorted((a, b) => b.length - a.length);
  return new RegExp(
    `(?:${longestFirst.map((phrase) => sourceOf(phrase, fold)).join('|')})(?= )`,
    `u${flags}`,
  );
}

/** The longest stretch of letters of a phrase: it stands in every text in which the phrase is found. */
export const stretchOf = (phrase: string, fold: (text: string) => string): string =>
  phrase
    .split(/[ *…^$]+/)
    .map((piece) => (piece ? fold(piece).trim() : ''))
    .reduce((longest, piece) => (piece.length > longest.length ? piece : longest));

const sourceOf = (phrase: string, fold: (text: string) => string) =>
  phrase
    .split(' ')
    .map((word, at, words) => {
      if (word === '^') return '^';
      if (word === '$') return '(?= $)';
      if (word === '…') return at === words.length - 1 ? '(?: [^ ]+){0,4}' : '(?: [^ ]+){0,4}?';
      return ` ${word
        .split('*')
        .map((piece) => (piece ? fold(piece).trim() : ''))
        .join('[^ ]*')}`;
    })
    .join('');
