import type { Found, Lookup } from '../names/lookup.ts';
import { normalName } from '../names/normal-form.ts';
import { nameAs, namedWhole, tokensOf } from './tokens.ts';

const mostTokens = 14;

// What is made of plants to stand for a protein is not that protein.
const other = /\b(?:plant|vegetable|vegan)/i;

/** A name with remarks, marks or measures before or after it, read without them. */
export function withoutLeftovers(printed: string, lookup: Lookup): Found | undefined {
  return withoutAside(printed, lookup) ?? withoutRemarks(printed, lookup);
}

/** "Citric Acid. pH 5.5", "Citric Acid *organic ingredients": a sentence or a legend after the name. */
function withoutAside(printed: string, lookup: Lookup): Found | undefined {
  const [, name, rest] = /^([^.*†‡°©◊]{3,80})(?:\.\s|\s?[*†‡°©◊])([\s\S]{1,200})$/u.exec(printed) ?? [];
  if (!name || !rest || !lookup.remarks.isAside(rest, (word) => lookup.words().has(normalName(word))))
    return undefined;
  const found = namedWhole(name, lookup);
  return found.how === 'none'
    ? undefined
    : { how: 'mended', name: nameAs(name, found, lookup), printed, damage: 'leftovers' };
}

/** The same, but for sentences and legends after it. */
export function withoutRemarks(
  printed: string,
  lookup: Lookup,
  isLeftover = lookup.remarks.isLeftover,
): Found | undefined {
  const tokens = tokensOf(printed);
  if (tokens.length < 2 || tokens.length > mostTokens) return undefined;
  const left = tokens.map(([from, to]) => isLeftover(printed.slice(from, to)));
  const start = left.indexOf(false);
  const end = left.lastIndexOf(false);
  if (start < 0) return undefined;
  // "500 mg": the number belongs to its unit, unless it belongs to the name.
  const number =
    /^[~<>≈]?\d+(?:[.,]\d+)?$/.test(printed.slice(...tokens[end]!)) &&
    /^[^\d]*[\p{L}%][^\d]*$/u.test(printed.slice(...(tokens[end + 1] ?? [0, 0])));
  for (const last of number && end > start ? [end - 1, end] : [end]) {
    if (last - start + 1 === tokens.length) return undefined;
    const name = printed.slice(tokens[start]![0], tokens[last]![1]);
    const found = namedWhole(name, lookup);
    if (found.how !== 'none' && !(other.test(printed) && lookup.known(found).protein))
      return { how: 'mended', name: nameAs(name, found, lookup), printed, damage: 'leftovers' };
  }
  return undefined;
}
