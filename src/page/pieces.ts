import { documentOf, native } from './dom.ts';
import { nodeAt, SOFT, type Stream } from './stream.ts';

/** Letters `from … from + length` of a list's text are letters `start … start + length` of `node`. */
export type Piece = { node: Text; from: number; start: number; length: number };

/**
 * The text of a list and where its letters stand. Runs of white space are one space, block edges and `<br>`
 * one "\n"; edges of inline elements are "\n" where `softBreaks`, else nothing.
 */
export function textAndPieces(
  stream: Stream,
  from: number,
  to: number,
  softBreaks: boolean,
): { text: string; pieces: Piece[] } {
  const pieces: Piece[] = [];
  let text = '';
  const runs = /[\s\v]+|[^\s\v]+/g;
  const source = stream.text.slice(from, to);
  for (const match of source.matchAll(runs)) {
    const run = match[0];
    if (/\S/.test(run)) {
      addPieces(stream, from + match.index, run.length, text.length, pieces);
      text += run;
    } else if (run.includes('\n')) text += '\n';
    else if (run.includes(SOFT) && softBreaks && !/[,;•·|/(-]$/.test(text)) text += '\n';
    else if (run !== SOFT) {
      const at = from + match.index;
      const node = nodeAt(stream, at);
      const start = at - (stream.starts[node] ?? 0);
      // the space takes part in its neighbours' piece where it is a real letter of the node
      if (node >= 0 && run.length === 1 && start < stream.nodes[node]!.data.length)
        addPieces(stream, at, 1, text.length, pieces);
      text += ' ';
    }
  }
  return { text, pieces };
}

function addPieces(stream: Stream, at: number, length: number, from: number, pieces: Piece[]): void {
  let index = nodeAt(stream, at);
  let offset = at;
  const end = at + length;
  for (let node = stream.nodes[index]; node && offset < end; node = stream.nodes[++index]) {
    const start = offset - stream.starts[index]!;
    const take = Math.min(end, stream.starts[index]! + node.data.length) - offset;
    const last = pieces.at(-1);
    const place = from + (offset - at);
    if (take > 0) {
      if (
        last &&
        last.node === node &&
        last.start + last.length === start &&
        last.from + last.length === place
      )
        last.length += take;
      else pieces.push({ node, from: place, start, length: take });
      offset += take;
    }
  }
}

/** Ranges over letters `from … to` of a list's text (UTF-16 units, `to` exclusive), one for each run of nodes in one parent. */
export function rangeOf(list: { pieces: readonly Piece[] }, from: number, to: number): Range[] {
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
