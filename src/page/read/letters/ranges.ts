import { documentOf, native } from '../dom.ts';
import type { NodePiece } from './letters.ts';

/** Ranges over letters `from … to` of a list's text (UTF-16 units, `to` exclusive), one for each run of nodes in one parent. */
export function rangeOf(list: { pieces: readonly NodePiece[] }, from: number, to: number): Range[] {
  const ranges: Range[] = [];
  for (const piece of list.pieces) {
    const first = Math.max(from, piece.from);
    const last = Math.min(to, piece.from + piece.length);
    if (first >= last) continue;
    const range = native(documentOf(piece.node), 'createRange')();
    const most = piece.node.data.length; // the page may have cut the text since
    range.setStart(piece.node, Math.min(most, piece.start + first - piece.from));
    range.setEnd(piece.node, Math.min(most, piece.start + last - piece.from));
    const before = ranges.at(-1);
    if (before && before.endContainer === piece.node) before.setEnd(piece.node, range.endOffset);
    else ranges.push(range);
  }
  return ranges;
}
