/** Blank places of a page: where something of ours can stand without covering a letter or a picture. */
import { native } from '../read/dom.ts';
import { doc } from './doc.ts';
import { boxesOf, isIn } from './letter-boxes.ts';

const filled = 'img,video,canvas,svg,svg *,iframe,object,embed,input,button,select,textarea,meter,progress';
const line = 16; // px: no line of text is lower
const word = 34; // few words are narrower
const slice = 3; // ms of looking before the page gets its turn

/** Whether a place is all in view. */
export const isInView = ({ left, top, right, bottom }: DOMRect) =>
  left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight;

/**
 * Whether no letter, picture or control stands in a place, as far as a grid of points can tell; what is `ours`
 * is taken out of the way meanwhile. Looks a few milliseconds at a time, as asking what stands at a point is
 * slow; `off` calls the look off.
 */
export async function isBlank(place: DOMRect, ours: HTMLElement, off: () => boolean): Promise<boolean> {
  const { left, top, right, bottom, width, height } = place;
  const columns = Math.ceil(width / word) + 1;
  const points = columns * (Math.ceil(height / line) + 1);
  // Every seventh point first: what is not blank mostly shows at once. A round of sevens must meet all of them.
  const round = points + (points % 7 ? 0 : 1);
  let blank = isInView(place);
  let until = 0;
  for (let i = 0; blank && i < round; i++) {
    if (performance.now() > until) {
      ours.style.pointerEvents = '';
      await afterFrame();
      if (off()) return false;
      ours.style.pointerEvents = 'none';
      until = performance.now() + slice;
    }
    const point = (i * 7) % round;
    const x = left + 1 + (point % columns) * word;
    const y = top + 1 + Math.floor(point / columns) * line;
    blank = isBlankAt(Math.min(x, right - 1), Math.min(y, bottom - 1));
  }
  ours.style.pointerEvents = '';
  return blank;
}

/** A task right after the page has drawn itself: its layout is clean, so that asking for it costs little. */
const afterFrame = () => new Promise<void>((next) => requestAnimationFrame(() => setTimeout(next)));

function isBlankAt(x: number, y: number): boolean {
  const hit = doc.elementFromPoint(x, y);
  if (!hit || native(hit, 'matches')(filled) || native(hit, 'shadowRoot')) return !hit;
  const caret = doc.caretPositionFromPoint(x, y);
  const text = caret?.offsetNode;
  if (!(text instanceof Text)) return true;
  const letters = {
    startContainer: text,
    startOffset: Math.max(0, caret!.offset - 1),
    endContainer: text,
    endOffset: Math.min(text.length, caret!.offset + 1),
  };
  return !boxesOf(letters).some((at) => isIn(at, x, y, 3));
}
