import { anyOf, type LabelWords } from '../label-words.ts';
import { wordSet } from './word-set.ts';

const spacedLetters = /(?<![\p{L}\d])\p{L}(?: \p{L}){3,}(?![\p{L}\d])/gu; // "P R O T E I N"

/** Tells a sentence or a phrase of prose by its small words. Names have few of them. */
export function proseTest({ prose, parts, of }: LabelWords) {
  const isSmall = wordSet(prose.words);
  const formOf = new RegExp(`^${anyOf(parts)} ${anyOf(of)}(?:(?<=['’])|\\s)`, 'iu');
  return (text: string): boolean => {
    if (/[!?]/.test(text)) return true;
    const spoken = text
      .slice(0, 600)
      .replace(spacedLetters, 'x')
      .replace(/\band\/or\b/gi, 'and')
      .split(/[^\p{L}'’]+/u)
      .filter(Boolean);
    const small = spoken.filter(isSmall).length;
    // "Huile de germe de blé" is a name with as many small words as prose has.
    if (spoken.length <= 6 && formOf.test(text.trim())) return false;
    if (spoken.length >= 4 && small / spoken.length >= 0.4) return true;
    return spoken.length >= 6 && small >= 2 && small / spoken.length >= 0.2;
  };
}
