import type { ProductFacts } from '../core/product/product.ts';
import { listsIn } from '../find/lists-in.ts';
import { type Piece, piecesOf } from './read/letters.ts';
import { locate } from './read/locate.ts';
import { readClues } from './read/product.ts';
import { rangeOf } from './read/ranges.ts';

export { rangeOf } from './read/ranges.ts';

/** One distinct list of a page. */
export type FoundList = {
  /** The list's letters only, without its heading. Block edges and `<br>` are "\n". */
  text: string;
  /** The whole list in the page; empty when it stands only in the page's data. */
  ranges: Range[];
  /** How it was found: the structure around it, or `names` when no heading announced it. */
  via: string;
  product?: Pick<ProductFacts, 'name'>;
  pieces: Piece[];
};

/**
 * Finds the ingredient lists under `root` in one go: what the page's script sends (`locate`) and what the
 * background finds in it (`listsIn`), for callers that have both. Forces no layout, changes nothing.
 */
export function findLists(root: Document | ShadowRoot | Element): FoundList[] {
  const located = locate(root);
  if (!located) return [];
  const { sent, nodes } = located;
  const clues = root.nodeType === 9 ? readClues(root as Document) : undefined;
  return listsIn([sent], clues).map(({ places, ...list }) => {
    const pieces = piecesOf(places[0], [nodes]);
    return { ...list, pieces, ranges: rangeOf({ pieces }, 0, list.text.length) };
  });
}
