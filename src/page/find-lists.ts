import type { ProductFacts } from '../core/product.ts';
import { type Piece, piecesOf } from './letters.ts';
import { locate } from './locate.ts';
import { readClues } from './product.ts';
import { rangeOf } from './ranges.ts';
import { listsIn } from './text/lists-in.ts';

export { rangeOf } from './ranges.ts';

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
