import type { Pattern } from '../entry.ts';
import type { Found, WithFact } from '../lookup.ts';
import { wholeForms } from '../name-forms.ts';
import { normalName } from '../normal-form.ts';
import { once, onceEach } from '../once-each.ts';
import type { SpelledName } from './close-spellings.ts';
import { respelled } from './mend-spelling.ts';
import { createWords, type Words, wordsOf } from './near-words.ts';

const mostRemembered = 2000; // answers kept by one lookup
const longestMended = 200; // letters
const mostOff = 3; // letters of a whole name

/** Mends unknown names, with the words of the dictionary gathered on first use. */
export function createMend(
  names: () => readonly SpelledName[],
  patterns: readonly Pattern[],
  named: (normal: string) => WithFact | undefined,
) {
  const words = once(() => createWords(wordsIn(names(), patterns), () => ownWords(names(), patterns)));
  const met = onceEach<Found>(mostRemembered);
  return {
    words,
    name: (raw: string): Found =>
      raw.length > longestMended ? none : met(raw, () => mended(raw, words(), named)),
  };
}

const none: Found = { how: 'none', close: [] };

/** How names are written by ear. */
const byEar: [RegExp, string][] = [
  [/ks/gi, 'x'],
  [/f/gi, 'ph'],
  [/(?<=[tnlrdm])il\b/gi, 'yl'],
  [/(?<=[a-z])k(?=[aourl])/gi, 'c'],
  [/kst/gi, 'xt'],
  [/ekstra(?:k?t|ct)/gi, 'extract'],
  [/s(?=[eiy])/i, 'c'],
  [/t(?=[aeiouy])/i, 'th'],
  [/een\b/gi, 'ine'],
];

/** Capitals among small letters and digits among letters, as readers of pictures mistake them. */
const reread = (raw: string) =>
  raw
    .replace(/^cl(?=[ -]?\d{5}\b)/i, 'CI')
    .replace(/(?<=\p{L})\|(?=\p{L}|$)/gu, 'l')
    .replace(/(?<=\b[A-Z]C)I\b/g, 'l') // chlorine in a formula
    .replace(/(?<=\p{Ll})[I1](?=\p{Ll}|\b)/gu, 'l')
    .replace(/(?<=\p{L})0(?=\p{L})|\b0(?=\p{L}{2})/gu, 'o');

/** A word broken by a line, words without the space between them, a word with a space after each letter. */
const respaced = (raw: string) =>
  raw
    .replace(/(?<=\p{Ll})-\s*\n\s*(?=\p{Ll})/gu, '')
    .replace(/(?<=\p{Ll}{3})(?=\p{Lu}\p{Ll}{2})/gu, ' ')
    .replace(/(?<![\p{L}\d])\p{L}(?: \p{L}){3,}(?![\p{L}\d])/gu, (spaced) => spaced.replaceAll(' ', ''));

function mended(raw: string, words: Words, named: (normal: string) => WithFact | undefined): Found {
  const spaced = respaced(raw);
  const read = reread(raw);
  for (const clear of [read, reread(spaced)]) {
    const is = clear === raw ? undefined : named(normalName(clear));
    if (is && (is.found.how !== 'pattern' || clear !== read))
      return { how: 'mended', name: nameOf(is), printed: raw, damage: 'spelling' };
  }
  const heard = [...new Set(byEar.flatMap(([sound, letters]) => raw.replace(sound, letters)))].filter(
    (form) => form !== raw,
  );
  const said = heard
    .flatMap((form) => named(normalName(form)) ?? [])
    .filter(({ found }) => found.how !== 'pattern');
  if (said.length > 0 && said.every(({ fact }) => fact === said[0]!.fact))
    return { how: 'mended', name: nameOf(said[0]!), printed: raw, damage: 'spelling' };
  const forms = [...new Set([spaced, read].flatMap(wholeForms).map(normalName))];
  for (const form of forms) {
    const readings = respelled(form, words, named).map((reading) => ({
      ...reading,
      usual: reading.is.found.how !== 'pattern' || isUsual(reading.name, form, words),
    }));
    const nearest = readings.find(({ rival, usual }) => usual && !rival);
    if (!nearest) continue;
    const sure =
      nearest.off <= mostOff &&
      readings.every(
        ({ is, usual, off }) =>
          (is.fact === nearest.is.fact && nameOf(is) === nameOf(nearest.is)) ||
          // What only a rule takes, of words never met together, is no other reading of an INCI name.
          (!usual && (off > nearest.off || nearest.is.found.how === 'exact')) ||
          (is.found.how === 'pattern' && off > nearest.off && nearest.is.found.how === 'exact'),
      );
    if (!sure) return none;
    return { how: 'mended', name: nameOf(nearest.is), printed: raw, damage: 'spelling' };
  }
  return none;
}

function nameOf({ found }: WithFact): string {
  if (found.how === 'none') return '';
  return found.how === 'pattern'
    ? found.name.replace(/(?<![\p{L}\d'])\p{L}/gu, (letter) => letter.toUpperCase())
    : found.name;
}

/**
 * A rule of the grammar takes any species after a genus: each word put right must be known beside the word
 * before or after it, and no word of the name may be unknown.
 */
function isUsual(mended: string, printed: string, words: Words): boolean {
  const was = new Set(wordsOf(printed));
  const is = wordsOf(mended);
  return is.every((word, i) => {
    if (was.has(word)) return words.has(word) || /^\d+$/.test(word);
    return (i > 0 && words.beside(is[i - 1]!, word)) || (i + 1 < is.length && words.beside(word, is[i + 1]!));
  });
}

/** The words of INCI names and of the examples of the grammar. */
function* ownWords(names: readonly SpelledName[], patterns: readonly Pattern[]): Generator<string[]> {
  for (const { normal, isInci } of names) if (isInci) yield wordsOf(normal);
  for (const { examples } of patterns) for (const example of examples) yield wordsOf(normalName(example));
}

/** The words of every name, alias, and example; and each word of a rule of the grammar, alone. */
function* wordsIn(names: readonly SpelledName[], patterns: readonly Pattern[]): Generator<string[]> {
  for (const { normal } of names) yield wordsOf(normal);
  for (const { match, examples } of patterns) {
    for (const example of examples) yield wordsOf(normalName(example));
    for (const word of match.replace(/\\./g, ' ').match(/[a-z]{4,}/g) ?? []) yield [word];
  }
}
