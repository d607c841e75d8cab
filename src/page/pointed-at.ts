/** Lists the reader pointed at: selected letters, or the element where a site prints them. */
import { documentOf } from './dom.ts';
import type { FoundList } from './find-lists.ts';
import { rangeOf, textAndPieces } from './pieces.ts';
import { readStream } from './stream.ts';

/** The letters a range covers, as a list. Undefined where it covers none. */
export function listOfRange(range: Range, via: 'selection' | 'chosen'): FoundList | undefined {
  const top = range.commonAncestorContainer;
  const stream = readStream([top.nodeType === 3 ? (top.parentElement ?? top) : top]);
  const inside = stream.nodes.flatMap((node, i) => (range.intersectsNode(node) ? [i] : []));
  const [first, last] = [inside[0], inside.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const [startNode, endNode] = [stream.nodes[first]!, stream.nodes[last]!];
  const from = stream.starts[first]! + (startNode === range.startContainer ? range.startOffset : 0);
  const to = stream.starts[last]! + (endNode === range.endContainer ? range.endOffset : endNode.length);
  const { text, pieces } = textAndPieces(stream, from, to, true);
  if (!text.trim()) return undefined;
  const place = { text, pieces, via };
  return { ...place, ranges: rangeOf(place, 0, text.length), places: [place] };
}

/** Lists in the elements a site is remembered to print them in. A selector that is none finds nothing. */
export function listsAt(doc: Document, selectors: readonly string[]): FoundList[] {
  return selectors.flatMap((selector) => {
    const range = documentOf(doc).createRange();
    try {
      return [...doc.querySelectorAll(selector)].slice(0, 20).flatMap((element) => {
        range.selectNodeContents(element);
        return listOfRange(range, 'chosen') ?? [];
      });
    } catch {
      return [];
    }
  });
}
