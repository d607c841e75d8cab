import './begin-ours.ts';
import { entries, findingFacts, limits, patterns } from '../../dictionary/index.ts';
import { atOnce } from '../core/at-once.ts';
import { createLookup } from '../core/names/lookup.ts';
import type { ProductFacts } from '../core/product/product.ts';
import type { JudgedRun } from '../find/evidence/judged.ts';
import { createFinder, type Finder } from '../find/finder.ts';
import { findingLists } from '../find/lists-in.ts';
import { type NodePiece, piecesOf } from './read/letters/letters.ts';
import { locate } from './read/letters/locate.ts';
import { rangeOf } from './read/letters/ranges.ts';
import { readClues } from './read/product.ts';

export { rangeOf } from './read/letters/ranges.ts';

/** One distinct list of a page. */
export type FoundList = {
  /** The list's letters only, without its heading. Block edges and `<br>` are "\n". */
  text: string;
  /** The whole list in the page; empty when it stands only in the page's data. */
  ranges: Range[];
  /** How it was found: the structure around it, or `names` when no heading announced it. */
  via: string;
  product?: Pick<ProductFacts, 'name'>;
  /** By the words of its page it is for rooms, dishes or cloth. */
  elsewhere?: true;
  pieces: NodePiece[];
};

let own: Finder | undefined;
/** The finder of the project's own dictionary, built on first use. */
const ownFinder = () =>
  (own ??= createFinder(entries, createLookup(entries, patterns, limits), findingFacts));

/**
 * Finds the ingredient lists under `root` in one go: what the page's script sends (`locate`) and what the
 * background finds in it (`findingLists`), for callers that have both. Forces no layout, changes nothing.
 */
export function findLists(root: Document | ShadowRoot | Element): FoundList[] {
  const located = locate(root);
  if (!located) return [];
  const { sent, nodes } = located;
  const clues = root.nodeType === 9 ? readClues(root as Document) : undefined;
  return atOnce(findingLists([sent], clues, ownFinder())).map(({ places, ...list }) => {
    const pieces = piecesOf(places[0], [nodes]);
    return { ...list, pieces, ranges: rangeOf({ pieces }, 0, list.text.length) };
  });
}

/** Every run of names under `root` with what speaks for and against its being a list: for `npm run coverage -- --why`. */
export function explain(root: Document) {
  const located = locate(root);
  const runs: { letters: string; kinds: string; judged: JudgedRun }[] = [];
  if (located)
    atOnce(
      findingLists([located.sent], readClues(root), ownFinder(), (judged, { text }) => {
        const letters = text.slice(judged.from, judged.to);
        const kinds = judged.names.map(({ name, kind }) => `${name.trim()} [${kind}]`).join(' · ');
        runs.push({ letters, kinds, judged });
      }),
    );
  return { open: located !== undefined, runs };
}
