/** Where a list's text stands in the document: text offsets → points between letters of its text nodes. */
export type Letters = {
  /** Start and end of `from…to`, or undefined where the letters have left the page or do not match. */
  points(from: number, to: number): StaticRangeInit | undefined;
  /** First element that holds all letters; undefined for a list that is printed nowhere. */
  element: Element | undefined;
};

const unseen = 'script,style,noscript,template,textarea';
const blank = /[\s\u200b-\u200f\u2060\ufeff\u00ad]/;

type Piece = { node: Text; from: number; to: number };

function piecesOf(range: Range): Piece[] {
  const { startContainer, endContainer, commonAncestorContainer: top } = range;
  const walker = top.ownerDocument?.createTreeWalker(top, NodeFilter.SHOW_TEXT);
  const pieces: Piece[] = [];
  const first = top.nodeType === Node.TEXT_NODE ? top : walker?.nextNode();
  for (let node = first as Text | null | undefined; node; node = walker?.nextNode() as Text | null) {
    if (!range.intersectsNode(node) || node.parentElement?.closest(unseen)) continue;
    const from = node === startContainer ? range.startOffset : 0;
    const to = node === endContainer ? range.endOffset : node.length;
    if (to > from) pieces.push({ node, from, to });
  }
  return pieces;
}

/**
 * Aligns a list's text with the letters its ranges cover. Blanks and zero-width signs may differ (finders
 * fold them, and put them where a line breaks); every other letter must be the same, in order.
 */
export function lettersOf(text: string, ranges: readonly Range[]): Letters {
  const pieces = ranges.flatMap(piecesOf);
  const piece = new Int32Array(text.length).fill(-1);
  const offset = new Int32Array(text.length);
  let p = 0;
  let at = pieces[0]?.from ?? 0;
  const letter = () => {
    while (p < pieces.length && at >= pieces[p]!.to) at = pieces[++p]?.from ?? 0;
    return pieces[p]?.node.data[at];
  };
  for (let i = 0; i < text.length; i++) {
    const wanted = text[i]!;
    if (blank.test(wanted)) continue;
    // The text may leave out letters of the page (a footnote, a button within the list): look on.
    const [fromPiece, fromAt] = [p, at];
    let here = letter();
    while (here !== undefined && here !== wanted) {
      at++;
      here = letter();
    }
    if (here === undefined) {
      [p, at] = [fromPiece, fromAt];
      continue;
    }
    piece[i] = p;
    offset[i] = at++;
  }
  return {
    element: holderOf(pieces),
    points(from, to) {
      let last = to - 1;
      while (last > from && piece[last] === -1) last--;
      const start = pieces[piece[from] ?? -1]?.node;
      const end = pieces[piece[last] ?? -1]?.node;
      if (!start?.isConnected || !end?.isConnected || offset[last]! >= end.length) return undefined;
      return {
        startContainer: start,
        startOffset: offset[from]!,
        endContainer: end,
        endOffset: offset[last]! + 1,
      };
    },
  };
}

function holderOf(pieces: Piece[]): Element | undefined {
  const first = pieces[0]?.node;
  const last = pieces.at(-1)?.node;
  if (!first || !last) return undefined;
  const range = first.ownerDocument.createRange();
  range.setStart(first, 0);
  range.setEnd(last, last.length);
  const top = range.commonAncestorContainer;
  return top instanceof Element ? top : (top.parentElement ?? undefined);
}
