import type { LabelPart } from '../label/split-label.ts';
import type { Found, Lookup } from '../names/lookup.ts';
import type { Spoken } from './find-parts.ts';
import { allKnown, nameAs, namedWhole, onlyPart, plainWords, stands, tokensOf } from './tokens.ts';

const mostTokens = 16;
// What goes on with the name before it: "Triolein PEG-6 Esters" are not two names.
const ending = /\b(?:esters?|ethers?|beta-glucan|essential oils?)$/i;
const longestName = 8; // words of one of the names
const fewestByRule = 3; // words of a name that only a rule of the grammar takes

/**
 * Names printed without the comma between them: the one way to part the text into the fewest names, or
 * nothing where there are two ways. `filed`: each must be in the dictionary, or of words that stand side by side there.
 */
export function partedNames(part: LabelPart, lookup: Lookup, filed = false): Spoken[] | undefined {
  const tokens = tokensOf(part.raw);
  const n = tokens.length;
  if (n < 2 || n > mostTokens || !allKnown(part.raw, lookup)) return undefined;
  type Way = { names: number; ways: number; from: number; found: Found };
  const best: (Way | undefined)[] = [{ names: 0, ways: 1, from: 0, found: { how: 'none', close: [] } }];
  for (let from = 0; from < n; from++) {
    const before = best[from];
    if (!before) continue;
    for (let to = from + 1; to <= Math.min(n, from + longestName); to++) {
      const there = best[to];
      if (there && there.names < before.names + 1) continue;
      const raw = part.raw.slice(tokens[from]![0], tokens[to - 1]![1]);
      if (from > 0 && (ending.test(bare(raw)) || onlyPart.test(bare(raw)))) continue;
      // Words that stand side by side in one name are no end of another.
      if (
        filed &&
        from > 0 &&
        lookup.words().beside(lastWord(part.raw.slice(0, tokens[from]![0])), firstWord(raw))
      )
        continue;
      const found = namedWhole(raw, lookup);
      if (found.how === 'none' || !standsAlone(found, to - from)) continue;
      if (filed && found.how === 'pattern' && (to - from < fewestByRule || !stands(raw, lookup))) continue;
      const ways = before.ways + (there?.names === before.names + 1 ? there.ways : 0);
      best[to] = { names: before.names + 1, ways, from, found };
    }
  }
  const last = best[n];
  if (!last || last.names < 2 || last.ways > 1) return undefined;
  const names: Spoken[] = [];
  for (let to = n; to > 0; ) {
    const { from, found } = best[to]!;
    if (found.how !== 'none') {
      const [start, end] = [tokens[from]![0], tokens[to - 1]![1]];
      const raw = part.raw.slice(start, end);
      names.unshift({
        part: { ...part, raw, from: part.from + start, to: part.from + end, names: [raw] },
        found: { how: 'mended', name: nameAs(raw, found, lookup), printed: part.raw, damage: 'run-together' },
      });
    }
    to = from;
  }
  return names;
}

/** One word of everyday speech is no proof of a name: it must be the INCI name itself, and no mere chain length. */
const standsAlone = (found: Found, words: number) =>
  words > 1 || (found.how === 'exact' && !/^[A-Z]{2,4}-\d+$/.test(found.name));

const lastWord = (text: string) => plainWords(text).at(-1) ?? '';
const firstWord = (text: string) => plainWords(text)[0] ?? '';

const bare = (raw: string) => raw.replace(/\s*\([^()]*\)\s*$/, '');
