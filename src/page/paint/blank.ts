/** Blank places of a page: where something of ours can stand without covering a letter or a picture. */

export type Place = { left: number; top: number; width: number; height: number };

const filled =
  'img,picture,video,canvas,svg,svg *,iframe,object,embed,input,button,select,textarea,meter,progress';

/** Whether no letter, picture or control stands in a place, as far as a grid of points can tell. In view only. */
export function isBlank(doc: Document, { left, top, width, height }: Place): boolean {
  const { innerWidth, innerHeight } = doc.defaultView ?? { innerWidth: 0, innerHeight: 0 };
  if (left < 0 || top < 0 || left + width > innerWidth || top + height > innerHeight) return false;
  for (let y = top + 1; y < top + height + 8; y += 15)
    for (let x = left + 1; x < left + width + 10; x += 21)
      if (!isBlankAt(doc, Math.min(x, left + width - 1), Math.min(y, top + height - 1))) return false;
  return true;
}

function isBlankAt(doc: Document, x: number, y: number): boolean {
  const hit = doc.elementFromPoint(x, y);
  if (!hit || hit.matches(filled) || hit.shadowRoot) return !hit;
  const caret = doc.caretPositionFromPoint(x, y);
  return caret?.offsetNode.nodeType !== Node.TEXT_NODE || !hasLetterAt(doc, caret, x, y);
}

/** The page's own element on top at a point, ours set aside. */
const topmost = (doc: Document, x: number, y: number): Element | undefined =>
  doc.elementsFromPoint(x, y).find((each) => each.localName !== 'strandline-label');

/** Whether the page keeps something fixed (a sticky header) at a point. */
export function isFixedAt(doc: Document, x: number, y: number): boolean {
  for (let at: Element | null | undefined = topmost(doc, x, y); at; at = at.parentElement) {
    const { position } = getComputedStyle(at);
    if (position === 'fixed' || position === 'sticky') return true;
  }
  return false;
}

function hasLetterAt(doc: Document, { offsetNode, offset }: CaretPosition, x: number, y: number): boolean {
  const range = doc.createRange();
  range.setStart(offsetNode, Math.max(0, offset - 1));
  range.setEnd(offsetNode, Math.min((offsetNode as Text).length, offset + 1));
  return [...range.getClientRects()].some(
    (at) => x >= at.left - 3 && x <= at.right + 3 && y >= at.top - 3 && y <= at.bottom + 3,
  );
}
