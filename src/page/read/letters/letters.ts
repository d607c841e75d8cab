import type { SentPlace } from '../../../contract/messages.ts';
import { documentOf, native, parentOf } from '../dom.ts';

/** Letters `from … from + length` of a list's text are letters `start … start + length` of `node`. */
export type NodePiece = { node: Text; from: number; start: number; length: number };

/** The pieces of a place as the page's own nodes; none where it stands nowhere. */
export const piecesOf = (place: SentPlace | undefined, nodes: Text[][]): NodePiece[] =>
  place?.pieces.map((piece) => ({ ...piece, node: nodes[place.in]![piece.node]! })) ?? [];

/** Where a list's text stands in the document: text offsets → points between letters of its text nodes. */
export type Letters = {
  /** Start and end of `from…to`, or undefined where the letters have left the page. */
  points(from: number, to: number): StaticRangeInit | undefined;
  /** First element that holds all letters; undefined for a list that is printed nowhere. */
  element: Element | undefined;
};

/** The letters of one place that prints a list. */
export function lettersOf(pieces: NodePiece[]): Letters {
  const [first, last] = [pieces[0]?.node, pieces.at(-1)?.node];
  /** Offset in the piece's node; the page may have cut the text since. */
  const inNode = ({ node, from, start, length }: NodePiece, at: number) =>
    Math.min(node.length, start + Math.max(0, Math.min(length, at - from)));
  return {
    element: first && last && holderOf(first, last),
    points(from, to) {
      const start = pieces.find((piece) => piece.from + piece.length > from);
      const end = pieces.findLast((piece) => piece.from < to);
      if (!start?.node.isConnected || !end?.node.isConnected || start.from >= to) return undefined;
      const endOffset = inNode(end, to);
      return endOffset > 0
        ? { startContainer: start.node, startOffset: inNode(start, from), endContainer: end.node, endOffset }
        : undefined;
    },
  };
}

function holderOf(first: Text, last: Text): Element | undefined {
  const range = native(documentOf(first), 'createRange')();
  range.setStart(first, 0);
  range.setEnd(last, last.length);
  const top = range.commonAncestorContainer;
  return (top.nodeType === 1 ? (top as Element) : parentOf(top)) ?? undefined;
}
