import type { PageText, SentPiece } from '../../contract/messages.ts';
import { nodeAt, SOFT } from './page-text.ts';

/**
 * The text of a list and where its letters stand. Runs of white space are one space, block edges and `<br>`
 * one "\n"; edges of inline elements are "\n" where `softBreaks`, else nothing.
 */
export function textAndPieces(
  page: PageText,
  from: number,
  to: number,
  softBreaks: boolean,
): { text: string; pieces: SentPiece[] } {
  const pieces: SentPiece[] = [];
  let text = '';
  const runs = /[\s\v]+|[^\s\v]+/g;
  const source = page.text.slice(from, to);
  for (const match of source.matchAll(runs)) {
    const run = match[0];
    if (/\S/.test(run)) {
      addPieces(page, from + match.index, run.length, text.length, pieces);
      text += run;
    } else if (run.includes('\n')) text += '\n';
    else if (run.includes(SOFT) && softBreaks && !/[,;•·|/(-]$/.test(text)) text += '\n';
    else if (run !== SOFT) {
      const at = from + match.index;
      const node = nodeAt(page, at);
      const start = at - (page.starts[node] ?? 0);
      // the space takes part in its neighbours' piece where it is a real letter of the node
      if (node >= 0 && run.length === 1 && start < page.lengths[node]!)
        addPieces(page, at, 1, text.length, pieces);
      text += ' ';
    }
  }
  return { text, pieces };
}

function addPieces(page: PageText, at: number, length: number, from: number, pieces: SentPiece[]): void {
  let offset = at;
  const end = at + length;
  for (let node = nodeAt(page, at); node >= 0 && node < page.starts.length && offset < end; node++) {
    const start = offset - page.starts[node]!;
    const take = Math.min(end, page.starts[node]! + page.lengths[node]!) - offset;
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
