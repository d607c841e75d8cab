import type { PageText } from '../../../contract/messages.ts';
import { documentOf, native } from '../dom.ts';
import { lettersIn, namesInMeta, type Span, spanning, treesOf } from '../gate.ts';
import { finished, type Work } from '../in-slices.ts';
import { holdersOf } from './ancestors.ts';
import { isInline, isRejected, type NodeStream, readingStream, type Stream } from './stream.ts';

/** What the page's script holds of letters it sends to be read: the way back to the text nodes. */
export type Located = { sent: PageText; nodes: Text[] };

const small = 3000; // letters of an element that is looked at as a whole
const pauseAfter = 256; // children

/**
 * The letters of a document, or of a part of one, that stand where lists may be: what the background needs to
 * find them. Undefined where the gate is closed; no letters where names stand in its data only. Forces no layout.
 * Pauses now and then.
 * @param roots its open shadow roots, where they are known
 */
export function* locating(
  root: Document | ShadowRoot | Element,
  roots?: ShadowRoot[] | undefined,
): Work<Located | undefined> {
  const parts: NodeStream = [];
  for (const tree of treesOf(root, roots)) {
    const letters = lettersIn(tree);
    const spans = yield* spanning(letters);
    if (!spans[0]) continue;
    parts.push(null);
    yield* partsWorthWalking(parts, tree, letters.length, spans);
  }
  if (parts.length === 0 && !namesInMeta(root)) return undefined;
  return yield* locatingIn(yield* readingStream(parts));
}

/** The same in one go. */
export const locate = (...asked: Parameters<typeof locating>): Located | undefined =>
  finished(locating(...asked));

/** A stream with what of its build goes with it. */
function* locatingIn({ text, nodes, starts }: Stream): Work<Located> {
  const lengths = nodes.map(({ length }) => length);
  return { sent: { text, starts, lengths, ...(yield* holdersOf(nodes)) }, nodes };
}
export const located = (stream: Stream): Located => finished(locatingIn(stream));

/**
 * The parts of a tree that are worth walking: where names stand close together, with what is around them. The
 * browser hands out the letters of a subtree hundreds of times faster than a walk over it.
 */
function* partsWorthWalking(parts: NodeStream, top: Node, letters: number, spans: Span[]): Work<void> {
  let reached = 0;
  function* take(node: Node, from: number, to: number): Work<void> {
    const inside = spans.filter((span) => span[0] < to && span[1] > from);
    const [first, last] = [inside[0]![0], inside.at(-1)![1]];
    let next = 0;
    for (const [child, start, end] of yield* childrenWithin(node, [from, to], [first, last])) {
      if (isRejected(child) && start <= reached) reached = end; // a script between two parts is no gap
      while (inside[next] && inside[next]![1] <= start) next++;
      const span = inside[next];
      if (isRejected(child) || !span || span[0] >= end) continue;
      const whole = span[0] <= start && span[1] >= end;
      if (child.nodeType !== 3 && end - start >= small && !whole) {
        const edges = isInline(child) ? [] : [undefined];
        parts.push(...edges);
        yield* take(child, start, end);
        parts.push(...edges);
      } else {
        if (start > reached) parts.push(null);
        parts.push(child);
        reached = end;
      }
    }
  }
  yield* take(top, 0, letters);
}

/**
 * Children of a node that stands at letters `from … to`, with the letters each stands at: those from the nearer
 * end up to what is wanted and through it.
 */
function* childrenWithin(node: Node, [from, to]: Span, [first, last]: Span): Work<[Node, number, number][]> {
  const walker = native(documentOf(node), 'createTreeWalker')(node, 5); // elements and text
  const found: [Node, number, number][] = [];
  const back = first - from > to - last;
  let child = back ? walker.lastChild() : walker.firstChild();
  while (child && (back ? to > first : from < last)) {
    const next = back ? walker.previousSibling() : walker.nextSibling();
    const length = next ? lettersIn(child).length : to - from; // the last one has what is left
    if (found.push(back ? [child, to - length, to] : [child, from, from + length]) % pauseAfter === 0) yield;
    if (back) to -= length;
    else from += length;
    child = next;
  }
  return back ? found.reverse() : found;
}
