import type { Found, Lookup } from '../names/lookup.ts';
import type { Spoken } from './find-parts.ts';
import { nameAs, namedWhole, onlyPart, surelyNamed, tokensOf } from './tokens.ts';

const long = 100; // letters: no single name is longer, but for a few
const mostTokens = 200;
const longestName = 8; // words of one of the names
const fewestNames = 4; // of the dictionary, that make the text a list

/** The best way to part the first words: its worth, how many ways are worth as much, and its last step. */
type Way = { worth: number; ways: number; from: number; found?: Exclude<Found, { how: 'none' }> };

// A longer name explains more than two short ones, one of the dictionary more than one that a rule takes.
const worthOf = (found: Found, words: number) => (found.how === 'pattern' ? 0.9 : 2) * words - 1;

/**
 * A list all of whose commas or lines were lost, parted into names of the dictionary and of the grammar; undefined
 * where a word is left over, or where two ways to part it are worth the same. (Where up to three in ten words might be
 * left over, one in twelve names was another's.)
 */
export function listedNames({ part }: Spoken, lookup: Lookup): Spoken[] | undefined {
  const { raw } = part;
  if (raw.length < long || /exact|alias/.test(namedWhole(raw, lookup).how)) return undefined;
  const tokens = tokensOf(raw).flatMap((token) => grownTogether(raw, token));
  if (tokens.length < fewestNames || tokens.length > mostTokens) return undefined;
  const best = bestWays(raw, tokens, lookup);
  if (best.at(-1)?.ways !== 1) return undefined;
  const spoken: Spoken[] = [];
  for (let to = tokens.length; to > 0; to = best[to]!.from) {
    const { from, found } = best[to]!;
    if (!found) continue;
    const [start, end] = [tokens[from]![0], tokens[to - 1]![1]];
    const name = raw.slice(start, end);
    spoken.unshift({
      part: { ...part, raw: name, from: part.from + start, to: part.from + end, names: [name] },
      found: { how: 'mended', name: nameAs(name, found, lookup), printed: name, damage: 'run-together' },
    });
  }
  const names = spoken.filter(({ part: { raw: name } }) => lookup.filed(name).how !== 'none').length;
  return names < fewestNames ? undefined : spoken;
}

/** By the number of words taken; none where they cannot be parted. */
function bestWays(raw: string, tokens: [number, number][], lookup: Lookup): (Way | undefined)[] {
  const best: (Way | undefined)[] = Array(tokens.length + 1).fill(undefined);
  best[0] = { worth: 0, ways: 1, from: 0 };
  const take = (to: number, way: Way) => {
    const there = best[to];
    if (!there || way.worth > there.worth) best[to] = way;
    else if (way.worth === there.worth) there.ways += way.ways;
  };
  for (let from = 0; from < tokens.length; from++) {
    const so = best[from];
    if (!so) continue;
    const { worth, ways } = so;
    if (lookup.remarks.isLeftover(raw.slice(...tokens[from]!))) take(from + 1, { worth, ways, from });
    for (let to = from + 1; to <= Math.min(tokens.length, from + longestName); to++) {
      const name = raw.slice(tokens[from]![0], tokens[to - 1]![1]);
      if (onlyPart.test(name)) continue;
      const found = surelyNamed(name, lookup);
      if (found) take(to, { worth: worth + worthOf(found, to - from), ways, from, found });
    }
  }
  return best;
}

/** "GlycerinCetearyl", "Alcohol)Urea": a capital among small letters begins another name. */
function grownTogether(text: string, [from, to]: [number, number]): [number, number][] {
  const starts = [...text.slice(from, to).matchAll(/(?<=\p{Ll}{2}|\d|\))(?=\p{Lu}\p{Ll})/gu)].map(
    ({ index }) => from + index,
  );
  return [from, ...starts].map((start, i) => [start, starts[i] ?? to]);
}
