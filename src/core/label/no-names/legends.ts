import type { LabelWords } from '../label-words.ts';
import { footnoteMarks, inBrackets } from '../marks.ts';
import { wordSet } from './word-set.ts';

/** Signs beside a name that point to a legend: one or several, or a number in brackets. */
const mark = new RegExp(`[${footnoteMarks}]|\\+(?!\\s*\\/)|${inBrackets}`, 'u');
const lead = new RegExp(`^(?:[\\s=:•–${footnoteMarks}+-]|${inBrackets}|[()])*`, 'u');
const measure = /^\d{1,3}(?:[.,]\d+)?%?$|^%$/;
const longest = 200; // letters of a legend

/** "*Organic", "** from natural essential oils": what a mark refers to. It says only where things come from. */
export function legends(words: Pick<LabelWords, 'origin' | 'beside' | 'substance'>) {
  const [isOrigin, isBeside] = [wordSet(words.origin.words), wordSet(words.beside.words)];
  const isSubstance = wordSet(words.substance.words);
  return (text: string): boolean => {
    const stars = lead.exec(text.slice(0, longest))![0];
    const spoken = text
      .slice(stars.length, longest)
      .split(/[\s,./()’'*†‡=:;–-]+/)
      .filter(Boolean);
    if (spoken.length === 0) return true;
    const plain = (word: string) => isBeside(word) || isSubstance(word) || measure.test(word);
    if (!spoken.some(isOrigin) || !spoken.every((word) => isOrigin(word) || plain(word))) return false;
    return mark.test(stars) || !spoken.some(isSubstance);
  };
}
