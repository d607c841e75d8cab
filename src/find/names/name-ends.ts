// Where a name ends and something else goes on without a mark between them.
import type { Finder } from '../finder.ts';
import { isKnownKind, isNameKind } from './kinds.ts';

const mostLabel = 4; // words of a label behind a name

/** Where a label begins behind a name, "Castor Oil How to use": at an inline edge, or where a known name ends; 0 nowhere. */
export function beforeLabel(words: string, raw: string, finder: Finder): number {
  const lost = gluedAt(words, raw, finder);
  if (lost >= 0) return lost;
  const edge = edgeAfterName(words, finder);
  if (edge >= 0) return edge;
  const spaces = [...words.matchAll(/\s+/g)].slice(-mostLabel).reverse();
  return (
    (spaces.find(({ index }) => isKnownKind(finder.kindOf(words.slice(0, index)))) ?? spaces[0])?.index ?? 0
  );
}

/** "GlycerinHow to use", "Parfumวิธีใช้": where a break was lost behind a known name and no name follows; −1 nowhere. */
function gluedAt(name: string, raw: string, { kindOf }: Finder): number {
  let tries = 0;
  for (const { index } of raw.slice(0, name.length).matchAll(lost)) {
    if (++tries > mostTries) return -1;
    if (isKnownKind(kindOf(name.slice(0, index))) && !isNameKind(kindOf(name.slice(index)))) return index;
  }
  return -1;
}
const lost = /(?<=[\p{Ll})])(?:(?=\p{Lu}\p{Ll})|(?=\p{Lo}))/gu;

/** The inline edge behind which no name stands any more: a button, a bold label; −1 without one. */
function edgeAfterName(name: string, { kindOf }: Finder): number {
  for (let at = name.indexOf('\v', 3); at >= 0; at = name.indexOf('\v', at + 1)) {
    const next =
      name
        .slice(at + 1)
        .split('\v')
        .find((part) => part.trim() !== '') ?? '';
    if (/\p{L}/u.test(next) && isNameKind(kindOf(name.slice(0, at))) && !isNameKind(kindOf(next))) return at;
  }
  return -1;
}

/** Where running text begins within a name: a word no name holds, a new sentence, a footnote, a button; −1 nowhere. */
export function proseAt(name: string, raw: string, finder: Finder): number {
  const { words, kindOf } = finder;
  const outside = name.replace(/\([^()]{0,120}\)/g, (held) => '·'.repeat(held.length));
  const sentence = raw.search(/[\s.…](?=\s?\p{Lu}\p{Ll}+(?: \p{Ll}{2,}){2})/u);
  const footnote = name.search(/[^\s,]\s+(?:\(\*|\*+ ?[a-zà-ž]+ [a-zà-ž])/);
  const cuts = [
    words.prose.first(outside)?.index ?? -1,
    sentence > 0 && kindOf(name.slice(sentence + 1)) === 'other' ? sentence : -1,
    footnote >= 0 ? footnote + 1 : -1,
    // "Panthenol… read more": a list that breaks off
    outside.search(/(?<=\p{L}[)\]]?)\s?(?:…|\.{3})\s?[\p{L}\v]/u),
    edgeAfterName(name, finder),
    isKnownKind(kindOf(name)) ? -1 : gluedAt(name, raw, finder),
    // "Tocopherol May contain traces", "Parfum Vegan": a known name, then what a list ends before
    endAfterName(name, outside, words, kindOf),
  ].filter((at) => at >= 0);
  return cuts.length > 0 ? Math.min(...cuts) : -1;
}

const mostTries = 8; // words of a name behind which a list may end

function endAfterName(
  name: string,
  outside: string,
  words: Finder['words'],
  kindOf: Finder['kindOf'],
): number {
  let tries = 0;
  for (const { index } of outside.matchAll(/[\s\v]+/g)) {
    if (++tries > mostTries) return -1;
    const rest = name.slice(index).trim();
    if ((words.ends.begins(rest) || words.goesOn.begins(rest)) && isKnownKind(kindOf(name.slice(0, index))))
      return index;
  }
  return -1;
}
