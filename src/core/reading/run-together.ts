import type { LabelPart } from '../label/split-label.ts';
import type { Found, Lookup } from '../names/lookup.ts';
import type { Spoken } from './find-parts.ts';
import { allWordsKnown, nameAs, namedWhole, onlyPart, plainWords, stands, tokensOf } from './tokens.ts';

const mostTokens = 16;
// What goes on with the name before it: "Triolein PEG-6 Esters" are not two names.
const ending = /\b(?:esters?|ethers?|beta-glucan|essential oils?)$/i;
const longestName = 8; // words of one of the names
const fewestByRule = 3; // words of a name that only a rule of the grammar takes

/**
 * Names printed without the comma between them: the one way to part the text into the fewest names, of two the one
 * with more names that stand for themselves, or nothing where there are two ways. `filed`: each must be a name of the
 * dictionary, or of words that stand side by side there.
 */
export function partedNames(part: LabelPart, lookup: Lookup, filed = false): Spoken[] | undefined {
  const tokens = tokensOf(part.raw);
  const n = tokens.length;
  if (n < 2 || n > mostTokens) return undefined;
  const best: (Way | undefined)[] = [{ names: 0, sure: 0, ways: 1, from: 0, found: none }];
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
      const standing = standingOf(found, raw, to - from, lookup);
      if (!standing || (standing === 'plain' && from > 0)) continue;
      if (filed && standing !== 'sure' && (to - from < fewestByRule || !stands(raw, lookup))) continue;
      const way = {
        names: before.names + 1,
        sure: before.sure + { plain: -1, ruled: 0, sure: 1 }[standing],
        ways: before.ways,
        from,
        found,
      };
      const tied = there && there.names === way.names && there.sure === way.sure;
      if (tied) there.ways += way.ways;
      else if (!there || there.names > way.names || there.sure < way.sure) best[to] = way;
    }
  }
  const last = best[n];
  if (!last || last.names < 2 || last.ways > 1 || last.sure < 0) return undefined;
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

/** A way to part the first words: names in it, how many more stand for themselves than are plain, how many such ways. */
type Way = { names: number; sure: number; ways: number; from: number; found: Found };
const none: Found = { how: 'none', close: [] };

const numbered = /^[a-z-]+eth-\d+$/i; // "Trideceth-3"
const shortestJoined = 8; // letters
const chain = /^[A-Z]{2,4}-\d+$/; // "PEG-8": may as well begin a name

/**
 * How far a name is borne out where no comma sets it apart. One word of everyday speech is `plain`: it begins a
 * text, and needs a sure name after it; what only a rule of the grammar takes is `ruled`, of words of the dictionary.
 */
function standingOf(found: Found, raw: string, words: number, lookup: Lookup) {
  if (found.how === 'none' || chain.test(raw)) return undefined;
  if (lookup.often(raw)) return 'sure';
  if (found.how === 'pattern') {
    if (!allWordsKnown(raw, lookup)) return undefined;
    return words > 1 ? 'ruled' : numbered.test(raw) ? 'sure' : undefined;
  }
  // "SodiumMethyl" is two words without the space; "butt e r" is one with spaces.
  if (
    plainWords(raw).some(
      (word) => word.length < shortestJoined && !lookup.words().has(word) && /\p{L}/u.test(word),
    )
  )
    return undefined;
  return found.how === 'exact' || words > 1 ? 'sure' : 'plain';
}

const lastWord = (text: string) => plainWords(text).at(-1) ?? '';
const firstWord = (text: string) => plainWords(text)[0] ?? '';

const bare = (raw: string) => raw.replace(/\s*\([^()]*\)\s*$/, '');
