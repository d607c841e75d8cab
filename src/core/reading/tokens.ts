import type { Found, Lookup } from '../names/lookup.ts';
import { wholeForms } from '../names/name-forms.ts';
import { normalName } from '../names/normal-form.ts';

/** Stretches between spaces outside brackets, as offsets; what stands in brackets belongs to the word before. */
export function tokensOf(text: string): [from: number, to: number][] {
  const tokens: [number, number][] = [];
  let depth = 0;
  let from = 0;
  for (let i = 0; i <= text.length; i++) {
    const letter = text[i] ?? ' ';
    if ('([{'.includes(letter)) depth++;
    else if (')]}'.includes(letter)) depth = Math.max(0, depth - 1);
    if (i < text.length && !(/\s/.test(letter) && depth === 0)) continue;
    if (i > from) {
      const last = tokens.at(-1);
      if (last && '([{'.includes(text[from]!)) last[1] = i;
      else tokens.push([from, i]);
    }
    from = i + 1;
  }
  return tokens;
}

const none: Found = { how: 'none', close: [] };

/** A text that is a name as it stands, or without its brackets; nothing else is tried. */
export function namedWhole(text: string, lookup: Lookup): Found {
  const forms = wholeForms(text);
  // As `find` does: without its brackets it is still the name, before any rule is tried on the whole.
  for (const ask of [lookup.filed, lookup.named])
    for (const form of forms) {
      const found = ask(form);
      if (found.how !== 'none') return found;
    }
  return none;
}

/** The name of a found text as that text alone would be read. */
export function nameAs(text: string, found: Extract<Found, { name: string }>, lookup: Lookup): string {
  const read = lookup.find(text);
  return read.how === 'exact' || read.how === 'alias' ? read.name : found.name;
}

/** The words of a printed text in their normal form, brackets apart. */
export const plainWords = (text: string): string[] =>
  normalName(text.replace(/\([^()]*\)|\[[^[\]]*\]|\{[^{}]*\}/g, ' ')).match(/[\p{L}\d]+/gu) ?? [];

/** Whether the dictionary uses every word of a text in some name, brackets apart. */
export function allWordsKnown(text: string, lookup: Lookup): boolean {
  const words = plainWords(text);
  return words.length > 0 && words.every((word) => !/\p{L}/u.test(word) || lookup.words().has(word));
}

/** Whether each word of a text stands beside the next in some name. */
export function stands(text: string, lookup: Lookup): boolean {
  const words = plainWords(text);
  return words.every((word, i) => i === 0 || lookup.words().beside(words[i - 1]!, word));
}

// A part of a plant or what is made of it: no name without the plant.
export const onlyPart =
  /^(?:(?:leaf|leaves|flower|seed|fruit|root|bark|peel|stem|berry|sprout|kernel|nut|wood|bran|germ|bud|needle|herb|rhizome|callus)[ /]?)+(?:extract|oil|butter|powder|water|juice|wax|cera|ferment|filtrate|starch|protein)?s?$/i;

/** A name that the dictionary has, or that a rule takes with every word of it known; undefined where it is neither. */
export function surelyNamed(name: string, lookup: Lookup) {
  const found = namedWhole(name, lookup);
  if (found.how === 'none' || (found.how === 'pattern' && !allWordsKnown(name, lookup))) return undefined;
  return found;
}
