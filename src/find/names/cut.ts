import { trimmedEnd, trimmedStart } from '../text/letters.ts';
import type { Page } from '../text/lines.ts';

/** What stands before a name: the edge of a line, a full stop or colon, a dash, or a mark between names. */
export type After = 'line' | 'stop' | 'dash' | 'mark';
/** Letters between two marks of one line. */
export type Cut = { from: number; to: number; after: After };

const longestBracket = 240; // letters between a bracket and its end within a name
const shortened = /(?:^|[\s(/])(?:denat|var|ssp|spp|no|nr|alc|st|ext|vit|c|c\.?i|f|l|d)$/;
const separators = ';،、，；•·●∙▪◦‧・｜|¦✦★✔✓►➤■※';
const circled = /[①-⑳㉑-㉟]/; // numbers
const dashes = '-–—*/+~>';
const parting = '*/+~>'; // those that part names, and say nothing of the one before

/** Whether the edges of inline elements part the names of these letters. */
export const isSoft = (letters: string) => {
  const edges = letters.split('\v').length - 1;
  return edges >= 3 && letters.split(/[,;•·|、，]/).length - 1 < edges / 2;
};

/** "GlycerinCetyl AlcoholPanthenol": a small letter or a bracket, and a capital right behind it. */
const isSeam = (text: string, at: number) => seam.test(text.slice(at, at + 3));
const seam = /^[\p{Ll})]\p{Lu}\p{Ll}/u;
const fewestSeams = 3;

/** Whether breaks that were lost part the names of these letters: an export that left out the tags. */
export const isGlued = (letters: string) => {
  const seams = letters.match(/[\p{Ll})](?=\p{Lu}\p{Ll})/gu)?.length ?? 0;
  return seams >= fewestSeams && letters.split(/[,;•·|、，]/).length - 1 < seams / 2;
};

/** Where a capital stands right behind a small letter, as where a break was lost; 0 nowhere. */
export const seamIn = (letters: string): number => Math.max(0, letters.search(/(?<=\p{Ll}{3})\p{Lu}\p{Ll}/u));

const shownBlank = /^&(?:nbsp|#160|ensp|emsp);/;

/** Letters of one line cut at the marks between names, outside brackets. Takes time in proportion to the letters. */
export function cutsOf({ text, low }: Page, from: number, to: number): Cut[] {
  const cuts: Cut[] = [];
  const soft = isSoft(text.slice(from, to));
  const closing = closingBrackets(text, from, to);
  const glued = isGlued(text.slice(from, to));
  const counted = numbersIn(text, from, to);
  let begin = from + (numberOfLine.exec(text.slice(from, Math.min(to, from + 40)))?.[0].length ?? 0);
  let after: After = 'line';
  const cut = (end: number, next: number, then: After) => {
    const start = trimmedStart(text, begin, end);
    const stop = trimmedEnd(text, start, end);
    if (stop > start && /[^\s\d.,*%]/.test(text.slice(start, Math.min(stop, start + 400)))) {
      cuts.push({ from: start, to: stop, after });
      after = then;
    } else if (then !== 'mark' || after === 'line') after = then === 'mark' ? after : then;
    begin = next;
  };
  for (let i = from; i < to; i++) {
    const letter = text[i]!;
    const number = counted.get(i);
    if (number !== undefined) {
      cut(i, number, i === from ? 'line' : 'mark');
      i = number - 1;
      continue;
    }
    const end = closing.get(i);
    // a bracket within a name stays whole; one that opens a stretch may hold the list
    if (end !== undefined && low.slice(begin, i).trim() !== '') {
      i = end;
      if (glued && isSeam(text, i)) cut(i + 1, i + 1, 'mark');
      continue;
    }
    // "Aqua,&nbsp;Glycerin": a blank that is printed as letters parts nothing, and begins no name
    const blank = letter === '&' ? shownBlank.exec(low.slice(i, i + 8))?.[0].length : undefined;
    if (blank) {
      if (trimmedStart(text, begin, i) === i) begin = i + blank;
      i += blank - 1;
      continue;
    }
    if (letter === ',') {
      if (!(isDigit(text[i - 1]) && isDigit(text[i + 1]))) cut(i, i + 1, 'mark');
    } else if (separators.includes(letter) || (circled.test(letter) && isBlank(text[i - 1] ?? ' ')))
      cut(i, i + 1, 'mark');
    else if (letter === '\v' && soft) cut(i, i + 1, 'mark');
    else if (glued && isSeam(text, i)) cut(i + 1, i + 1, 'mark');
    else if (letter === '.' && endsName(text, low, begin, i, to)) cut(i, i + 1, 'stop');
    else if (dashes.includes(letter) && isBlank(text[i - 1]) && isBlank(text[i + 1]))
      cut(i, i + 1, parting.includes(letter) ? 'mark' : 'dash');
    else if (letter === '/' && text[i + 1] === '/' && isBlank(text[i - 1]) && isBlank(text[i + 2]))
      cut(i, i + 2, 'mark');
  }
  cut(to, to, 'mark');
  return cuts;
}

/** "2) Glycerin": a number that begins a line. */
const numberOfLine = /^[\s\v]*\d{1,3}[.)][\s\v]+(?=\p{L})/u;

const fewestCounted = 3; // names numbered in one line

/** "1. Aqua 2. Glycerin 3. …": where each number begins and where its name does, if they count up from one. */
function numbersIn(text: string, from: number, to: number): Map<number, number> {
  const found = new Map<number, number>();
  let next = 1;
  for (const { index, 0: sign, 1: number } of text.slice(from, to).matchAll(numberSign))
    if (Number(number) === next) {
      found.set(from + index, from + index + sign.length);
      next++;
    }
  return next > fewestCounted ? found : new Map();
}
const numberSign = /(?<![^\s\v:])(\d{1,3})[.)]\s+(?=\S)/gu;

const isDigit = (letter: string | undefined) => letter !== undefined && letter >= '0' && letter <= '9';
const isBlank = (letter: string | undefined) => letter !== undefined && letter.trim() === '';

/** A full stop with the beginning of a name or nothing behind it, that ends no short form. */
function endsName(text: string, low: string, begin: number, at: number, to: number): boolean {
  const next = text.slice(at + 1, Math.min(to, at + 12));
  if (!/^\s+[\p{Lu}\p{Lo}*\d([【]|^\s*$/u.test(next)) return false;
  return !shortened.test(low.slice(Math.max(begin, at - 12), at)) || /^\s*$/.test(next);
}

/** Where each bracket that closes within reach closes. */
function closingBrackets(text: string, from: number, to: number): Map<number, number> {
  const ends = new Map<number, number>();
  const open: number[] = [];
  for (let i = from; i < to; i++) {
    const letter = text[i]!;
    if (letter === '(' || letter === '[' || letter === '（') open.push(i);
    else if (letter === ')' || letter === ']' || letter === '）') {
      const start = open.pop();
      if (start !== undefined && i - start <= longestBracket) ends.set(start, i);
    }
  }
  return ends;
}
