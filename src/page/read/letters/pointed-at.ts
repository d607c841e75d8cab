/** Letters the user pointed at: selected ones, or the element where a site prints its lists. */
import type { PageText } from '../../../contract/messages.ts';
import { looseText } from '../../../find/text/page-text.ts';
import { native } from '../dom.ts';
import { type Located, located } from './locate.ts';
import { readStream } from './stream.ts';

type Via = NonNullable<PageText['pointed']>['via'];

/** The letters a range covers. Undefined where it covers none. */
export function locateRange(range: Range, via: Via): Located | undefined {
  const top = range.commonAncestorContainer;
  const stream = readStream([top.nodeType === 3 ? (top.parentElement ?? top) : top]);
  const inside = stream.nodes.flatMap((node, i) => (range.intersectsNode(node) ? [i] : []));
  const [first, last] = [inside[0], inside.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const [startNode, endNode] = [stream.nodes[first]!, stream.nodes[last]!];
  const from = stream.starts[first]! + (startNode === range.startContainer ? range.startOffset : 0);
  const to = stream.starts[last]! + (endNode === range.endContainer ? range.endOffset : endNode.length);
  const { sent, nodes } = located(stream);
  return { sent: { ...sent, pointed: { from, to, via } }, nodes };
}

/** Letters that stand in no text node of the page (in a field, say): they are read, not painted. */
export const looseLetters = (text: string, via: Via): Located => ({
  sent: { ...looseText(text), pointed: { from: 0, to: text.length, via } },
  nodes: [],
});

/** What stands in the elements a site is remembered to print its lists in. A selector that is none finds nothing. */
export function locateChosen(doc: Document, selectors: readonly string[]): Located[] {
  return selectors.flatMap((selector) => {
    const range = native(doc, 'createRange')();
    try {
      return [...native(doc, 'querySelectorAll')(selector)].slice(0, 20).flatMap((element) => {
        range.selectNodeContents(element);
        return locateRange(range, 'chosen') ?? [];
      });
    } catch {
      return [];
    }
  });
}
