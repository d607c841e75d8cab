import { isChemicalWord } from './chemical-words.ts';
import { endsOtherwise } from './close-spellings.ts';
import { distance, type Words } from './near-words.ts';

/** One way to read a word that is none: what it would be, and how many letters were off; a rival is too far off. */
type WordChoice = { text: string; off: number; rival?: boolean };
export type Respelled<T> = { name: string; off: number; rival: boolean; is: T };

const longest = 120; // letters of a name that is mended
const shortestAlone = 8; // letters of a name of one word: shorter ones lie near everyday words
const longAlone = 12; // letters of a name of one word that may be two letters off
const mostTried = 48; // names tried for one printed name
const mostDoubtful = 3; // words of one name that are none

/**
 * The names a misprinted one may stand for, nearest first: each word the dictionary does not use is replaced
 * by one a letter off (two in long words), joined again, or parted. Words it does use, numbers and short words
 * stay as printed. More than one answer means that nobody can tell.
 */
export function respelled<T>(
  normal: string,
  words: Words,
  named: (normal: string) => T | undefined,
): Respelled<T>[] {
  if (normal.length > longest) return [];
  const tokens = joined(normal.match(/[a-z0-9]+|[^a-z0-9]+/g) ?? [], words);
  const count = tokens.filter((token) => /[a-z]{2}/.test(token)).length;
  let doubtful = 0;
  const choices = tokens.map((token): WordChoice[] => {
    if (isCutShort(token, words)) {
      doubtful++;
      return [{ text: `${token}e`, off: 1 }];
    }
    if (!/[a-z]/.test(token) || words.has(token)) return [{ text: token, off: 0 }];
    if (token.length < 4 && !/\d/.test(token)) return [{ text: token, off: 0 }];
    if (/^c?\d+$/.test(token)) return [{ text: token, off: 0 }];
    doubtful++;
    return count === 1 ? choicesAlone(token, words) : choicesFor(token, words);
  });
  const mended = normal !== tokens.join('');
  if ((doubtful === 0 && !mended) || doubtful > mostDoubtful) return [];
  if (choices.some((choice) => choice.length === 0)) return [];
  const found: Respelled<T>[] = [];
  let tried = 0;
  for (const { text, off, rival = false } of combined(choices)) {
    if (text === normal) continue;
    if (++tried > mostTried) return [];
    const is = named(text);
    if (is) found.push({ name: text, off: off + (mended ? 1 : 0), rival, is });
  }
  return found.toSorted((a, b) => Number(a.rival) - Number(b.rival) || a.off - b.off);
}

/** "Chlorid", "Sorbat": as German and its neighbours end them. */
const isCutShort = (token: string, words: Words) =>
  /..(?:id|at)$/.test(token) && !words.isOwn(token) && words.isOwn(`${token}e`);

/** Letters a word may be off: one, two in long words. */
const allowedOff = (word: string) => (word.length >= 9 ? 2 : 1);

/** A name of one word has nothing beside it that bears it out, and everyday words lie near: more is asked of it. */
function choicesAlone(token: string, words: Words): WordChoice[] {
  if (token.length < shortestAlone) return [];
  return choicesFor(token, words).map((choice) => ({
    ...choice,
    rival:
      choice.rival ||
      (choice.text[0] !== token[0] && !/^(?:8|fen)/.test(token)) ||
      (choice.off > 1 && token.length < longAlone),
  }));
}

function choicesFor(token: string, words: Words): WordChoice[] {
  // A chemical word the dictionary lacks is another substance, not a misprint.
  if (isChemicalWord(token)) return [];
  const once = undoubled(token).filter((word) => words.has(word));
  if (once.length === 1) return [{ text: once[0]!, off: 1 }];
  const found = new Map<string, WordChoice>([[token, { text: token, off: 0, rival: true }]]);
  const add = (text: string, off: number, rival = false) => {
    const kept = found.get(text);
    if (!kept || (kept.rival && !rival)) found.set(text, { text, off, rival });
  };
  const read = [...new Set(asRead(token))].filter((text) => words.has(text) || /^c?\d+$/.test(text));
  for (const text of read) add(text, 1);
  if (!/\d/.test(token))
    // What was misread for certain leaves no room for words two letters off.
    for (const { word, off } of words.near(token, 2))
      if (word.length >= 4 && !/\d/.test(word) && (read.length !== 1 || off < 2))
        add(word, off, off > allowedOff(token) || isAnother(token, word, off));
  for (let at = 3; at <= token.length - 3; at++) {
    const [left, right] = [token.slice(0, at), token.slice(at)];
    if (words.has(left) && words.has(right)) add(`${left} ${right}`, 1);
  }
  return withoutVariants([...found.values()], token, words).sort((a, b) => a.off - b.off);
}

/** Without the words that labels alone print, where a word of INCI names a letter or two from them is as near. */
const withoutVariants = (choices: WordChoice[], token: string, words: Words) =>
  choices.filter(
    ({ text, off }) =>
      text === token ||
      !choices.some(
        (other) =>
          other.text !== token &&
          other.text !== text &&
          !other.rival &&
          other.off <= off &&
          distance(other.text, text, 2) <= 2 &&
          words.isOwn(other.text) &&
          !words.isOwn(text),
      ),
  );

/** The token with one letter less where it stands twice: a slip of the hand that makes no other word. */
const undoubled = (token: string) => [
  ...new Set(
    [...token.matchAll(/(.)\1/g)].map(({ index }) => token.slice(0, index) + token.slice(index + 1)),
  ),
];

/** What two letters change is another word where they stand before it, or its first letter or its ending is another. */
const isAnother = (token: string, word: string, off: number) =>
  endsOtherwise(token, word) ||
  /^(?:de|di)hydro/.exec(token)?.[0] !== /^(?:de|di)hydro/.exec(word)?.[0] ||
  (radicals(token) !== '' && radicals(token) !== radicals(word)) ||
  (off > 1 &&
    (token[0] !== word[0] ||
      Math.abs(token.length - word.length) > 1 ||
      token.endsWith(word) ||
      word.endsWith(token)));

/** Methyl is never taken for ethyl. */
const radicals = (word: string) => word.match(/m?eth(?:yl|oxy)/g)?.join() ?? '';

// What readers of pictures take for one another.
const misread: [RegExp, string][] = [
  [/rn/g, 'm'],
  [/m/g, 'rn'],
  [/cl/g, 'd'],
  [/d/g, 'cl'],
  [/vv/g, 'w'],
  [/ii/g, 'u'],
  [/ii/g, 'n'],
  [/ii/g, 'i'],
  [/ri/g, 'n'],
  [/rm/g, 'nn'],
  [/c/g, 'e'],
  [/c/g, 'o'],
  [/f/g, 't'],
  [/v/g, 'y'],
  [/b/g, 'h'],
  [/h/g, 'b'],
  [/8/g, 'b'],
  // As languages that print no h after it spell it.
  [/metyl/g, 'methyl'],
  [/etyl/g, 'ethyl'],
  [/^fen/g, 'phen'],
];

/** The token with one misread pair of letters put right; digits among letters, letters among digits. */
function asRead(token: string): string[] {
  const forms: string[] = [];
  if (/^\d+[oli]+\d*$|^[li]+\d+$|^c\d+[oli]+$|^c[li]\d+$/.test(token))
    forms.push(token.replace(/o/g, '0').replace(/[li]/g, '1'));
  if (/[a-z].*[015]|[015].*[a-z]/.test(token) && !/[2346789]/.test(token) && /[a-z]{2}/.test(token))
    for (const one of ['l', 'i']) forms.push(token.replace(/0/g, 'o').replace(/5/g, 's').replace(/1/g, one));
  for (const [from, to] of misread)
    for (const { 0: pair, index } of token.matchAll(from))
      forms.push(token.slice(0, index) + to + token.slice(index + pair.length));
  return forms;
}

/** Words printed with spaces in them ("prot e i n") put together again, where only together they are one. */
function joined(tokens: string[], words: Words): string[] {
  const out: string[] = [];
  for (let i = 0; i < tokens.length; i++) {
    let best = 0;
    if (/^[a-z]+$/.test(tokens[i]!))
      for (let end = i + 2; end < Math.min(tokens.length, i + 10); end += 2) {
        if (!/^[ -]+$/.test(tokens[end - 1]!) || !/^[a-z]+$/.test(tokens[end]!)) break;
        const parts = tokens.slice(i, end + 1).filter((_, n) => n % 2 === 0);
        const word = parts.join('');
        if (word.length >= 5 && words.has(word) && parts.some((part) => !words.has(part))) best = end;
      }
    if (best > 0) {
      out.push(
        tokens
          .slice(i, best + 1)
          .filter((_, n) => n % 2 === 0)
          .join(''),
      );
      i = best;
    } else out.push(tokens[i]!);
  }
  return out;
}

/** Every text the choices make, fewest letters off first within each word. */
function* combined(choices: WordChoice[][], at = 0): Generator<WordChoice> {
  if (at === choices.length) yield { text: '', off: 0 };
  else
    for (const rest of combined(choices, at + 1))
      for (const { text, off, rival } of choices[at]!)
        yield { text: text + rest.text, off: off + rest.off, rival: rival === true || rest.rival === true };
}
