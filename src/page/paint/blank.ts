/** Blank places of a page: where something of ours can stand without covering a letter or a picture. */

export type Place = { left: number; top: number; width: number; height: number };

const filled =
  'img,picture,video,canvas,svg,svg *,iframe,object,embed,input,button,select,textarea,meter,progress';
const step = { x: 34, y: 16 }; // no line of text is lower, few words are narrower
const slice = 3; // ms of looking before the page gets its turn

/**
 * Whether no letter, picture or control stands in a place, as far as a grid of points can tell; undefined when
 * the look was called off. `aside` takes what is ours out of the way. Looks a few milliseconds at a time: asking what stands at a point is slow.
 */
export async function isBlank(
  win: Window & typeof globalThis,
  place: Place,
  aside: (away: boolean) => void,
  off: () => boolean,
): Promise<boolean | undefined> {
  const { left, top, width, height } = place;
  if (left < 0 || top < 0 || left + width > win.innerWidth || top + height > win.innerHeight) return false;
  const points: [number, number][] = [];
  for (let y = top + 1; y < top + height + step.y; y += step.y)
    for (let x = left + 1; x < left + width + step.x; x += step.x)
      points.push([Math.min(x, left + width - 1), Math.min(y, top + height - 1)]);
  await afterFrame(win);
  if (off()) return undefined;
  let from = performance.now();
  aside(true);
  try {
    // Every seventh point first: what is not blank mostly shows at once.
    for (let start = 0; start < 7; start++)
      for (let i = start; i < points.length; i += 7) {
        if (performance.now() - from > slice) {
          aside(false);
          await afterFrame(win);
          if (off()) return undefined;
          aside(true);
          from = performance.now();
        }
        if (!isBlankAt(win.document, ...points[i]!)) return false;
      }
    return true;
  } finally {
    aside(false);
  }
}

/** A task right after the page has drawn itself: its layout is clean, so that asking for it costs little. */
const afterFrame = (win: Window) =>
  new Promise<void>((next) => win.requestAnimationFrame(() => win.setTimeout(next)));

function isBlankAt(doc: Document, x: number, y: number): boolean {
  const hit = doc.elementFromPoint(x, y);
  if (!hit || hit.matches(filled) || hit.shadowRoot) return !hit;
  const caret = doc.caretPositionFromPoint(x, y);
  return caret?.offsetNode.nodeType !== Node.TEXT_NODE || !hasLetterAt(doc, caret, x, y);
}

/** The page's own element on top at a point, ours set aside. */
function topmost(doc: Document, x: number, y: number): Element | null | undefined {
  const hit = doc.elementFromPoint(x, y);
  if (hit?.localName !== 'strandline-label') return hit;
  return doc.elementsFromPoint(x, y).find((each) => each.localName !== 'strandline-label');
}

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
