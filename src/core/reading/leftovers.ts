import type { Found, Lookup } from '../names/lookup.ts';
import { normalName } from '../names/normal-form.ts';
import { nameAs, namedWhole, surelyNamed, tokensOf } from './tokens.ts';

const mostTokens = 14;

// What is made of plants to stand for a protein is not that protein.
const other = /\b(?:plant|vegetable|vegan)/i;

/** A name with remarks, marks or measures before or after it, read without them. */
export function withoutLeftovers(printed: string, lookup: Lookup): Found | undefined {
  return (
    withoutAside(printed, lookup) ??
    withoutRemarks(printed, lookup) ??
    withoutRaised(printed, lookup) ??
    withoutOtherScript(printed, lookup) ??
    withoutLegend(printed, lookup) ??
    withoutLead(printed, lookup)
  );
}

const leftovers = (found: Found, printed: string, name: string, lookup: Lookup): Found | undefined =>
  found.how === 'none'
    ? undefined
    : { how: 'mended', name: nameAs(name, found, lookup), printed, damage: 'leftovers' };

/** "甘油 Glycerin": the name in another script beside its Latin one. */
function withoutOtherScript(printed: string, lookup: Lookup): Found | undefined {
  if (!otherScript.test(printed) || !/[A-Za-z]{3}/.test(printed)) return undefined;
  const latin = printed
    .split(/\s+/)
    .filter((word) => !otherScript.test(word) || /[A-Za-z]/.test(word))
    .join(' ');
  return latin.length < printed.length && !otherScript.test(latin)
    ? (leftovers(namedWhole(latin, lookup), printed, latin, lookup) ?? withoutRemarks(latin, lookup))
    : undefined;
}

const otherScript =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Cyrillic}\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Thai}]/u;

/** "Xanthan Gum d'origine végétale": where it comes from, said behind the name without a mark or a bracket. */
function withoutLegend(printed: string, lookup: Lookup): Found | undefined {
  const tokens = tokensOf(printed);
  if (tokens.length > mostTokens) return undefined;
  for (let n = tokens.length - 1; n > 0; n--) {
    const [name, rest] = [printed.slice(tokens[0]![0], tokens[n - 1]![1]), printed.slice(tokens[n]![0])];
    if (!lookup.remarks.isLegend(rest)) continue;
    const found = leftovers(namedWhole(name, lookup), printed, name, lookup);
    if (found && !(other.test(printed) && lookup.known(found).protein)) return found;
  }
  return undefined;
}

/** "Show more Retinol", "Made with Urea": the page's words run into the first name behind them. */
function withoutLead(printed: string, lookup: Lookup): Found | undefined {
  const tokens = tokensOf(printed);
  if (tokens.length > mostTokens) return undefined;
  for (let n = 2; n < Math.min(tokens.length, mostLead + 1); n++) {
    const [lead, name] = [printed.slice(0, tokens[n]![0]).trim(), printed.slice(tokens[n]![0])];
    if (!lookup.remarks.isTitle(lead)) continue;
    const found = surelyNamed(name, lookup);
    if (found) return leftovers(found, printed, name, lookup);
  }
  return undefined;
}

const mostLead = 6; // words before a name

/** "Linalool1": a raised number that became a plain one, where the name without it is filed. */
function withoutRaised(printed: string, lookup: Lookup): Found | undefined {
  const [, name] = /^(.*\p{Ll})[1-4](?:,[1-4])?$/u.exec(printed) ?? [];
  const found = name ? lookup.filed(name) : undefined;
  return found && found.how !== 'none'
    ? { how: 'mended', name: found.name, printed, damage: 'leftovers' }
    : undefined;
}

const isOfNames = (lookup: Lookup) => (word: string) => lookup.words().has(normalName(word));

/** "Citral Silikonfrei und vegan": the page's words run on from the last name of a list, which must be one of the dictionary. */
export function withoutTail(printed: string, lookup: Lookup): Found | undefined {
  const tokens = tokensOf(printed);
  for (let n = Math.min(tokens.length - 1, mostTokens); n > 0; n--) {
    const name = printed.slice(tokens[0]![0], tokens[n - 1]![1]);
    const found = lookup.filed(name);
    if (found.how === 'none') continue;
    const rest = printed.slice(tokens[n]![0]);
    const holdsName = rest.split(/\s+/).some((word) => lookup.filed(word).how === 'exact');
    return !holdsName && lookup.remarks.isAside(rest, isOfNames(lookup))
      ? { how: 'mended', name: found.name, printed, damage: 'leftovers' }
      : undefined;
  }
  return undefined;
}

/** "Citric Acid. pH 5.5", "Citric Acid *organic ingredients": a sentence or a legend after the name. */
function withoutAside(printed: string, lookup: Lookup): Found | undefined {
  const [, name, rest] = /^([^.*†‡°©◊]{3,80})(?:\.\s|\s?[*†‡°©◊])([\s\S]{1,200})$/u.exec(printed) ?? [];
  if (!name || !rest || !lookup.remarks.isAside(rest, isOfNames(lookup))) return undefined;
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
