import { type Piece, rangeOf } from './ranges.ts';

/** Where a list's text stands in the document: text offsets → points between letters of its text nodes. */
export type Letters = {
  /** Start and end of `from…to`, or undefined where the letters have left the page. */
  points(from: number, to: number): StaticRangeInit | undefined;
  /** First element that holds all letters; undefined for a list that is printed nowhere. */
  element: Element | undefined;
};

/** The letters of one place that prints a list. */
export function lettersOf(pieces: Piece[]): Letters {
  const [first, last] = [pieces[0]?.node, pieces.at(-1)?.node];
  return {
    element: first && last && holderOf(first, last),
    points(from, to) {
      const ranges = rangeOf({ pieces }, from, to);
      const [start, end] = [ranges[0], ranges.at(-1)];
      if (!start?.startContainer.isConnected || !end?.endContainer.isConnected || end.endOffset === 0)
        return undefined;
      return {
        startContainer: start.startContainer,
        startOffset: start.startOffset,
        endContainer: end.endContainer,
        endOffset: end.endOffset,
      };
    },
  };
}

function holderOf(first: Text, last: Text): Element | undefined {
  const range = first.ownerDocument.createRange();
  range.setStart(first, 0);
  range.setEnd(last, last.length);
  const top = range.commonAncestorContainer;
  return top.nodeType === Node.ELEMENT_NODE ? (top as Element) : (top.parentElement ?? undefined);
}
