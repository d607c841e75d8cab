/** What something of ours would cover where it stands. */
import { native } from '../read/dom.ts';
import { doc } from './doc.ts';
import { boxesOf, boxOf, isIn } from './letter-boxes.ts';
import { viewSize } from './places.ts';
import { fixedAround } from './visibility.ts';

const filled = 'a,img,video,canvas,svg,svg *,object,embed,meter,progress';
const pressed = 'button,input,select,textarea,summary,iframe,[role=button],[role=button] *,button *';
const line = 16; // px: no line of text is lower
const word = 24; // few words are narrower, and no control should be
const slice = 3; // ms of looking before the page gets its turn

/** How bad it is to cover: nothing, letters or a picture, and the list, a control or what the page keeps in view. */
export const blank = 0;
export const letters = 1;
export const needed = 2;

/** Whether a place is all in view. */
export const isInView = ({ left, top, right, bottom }: DOMRect) => {
  const { width, height } = viewSize();
  return left >= 0 && top >= 0 && right <= width && bottom <= height;
};

/** Points of a grid that leaves no letter or control between them, scattered: what is covered mostly shows at once. */
function* pointsIn({ left, top, right, bottom, width, height }: DOMRect) {
  const columns = Math.ceil(width / word) + 1;
  const points = columns * (Math.ceil(height / line) + 1);
  const round = points + (points % 7 ? 0 : 1); // every seventh point: a round of sevens must meet all of them
  for (let i = 0; i < round; i++) {
    const point = (i * 7) % round;
    const x = left + 1 + (point % columns) * word;
    const y = top + 1 + Math.floor(point / columns) * line;
    yield [Math.min(x, right - 1), Math.min(y, bottom - 1)] as const;
  }
}

/**
 * The worst that a place covers, as far as a grid of points can tell; looks no further once it is as bad as
 * `enough`. What is `ours` is taken out of the way meanwhile. Looks a few milliseconds at a time, as asking what
 * stands at a point is slow; `off` calls the look off.
 */
export async function coverOf(
  place: DOMRect,
  {
    ours,
    list,
    off,
    enough,
  }: { ours: HTMLElement; list: Element | undefined; off(): boolean; enough: number },
): Promise<number> {
  if (!isInView(place)) return needed;
  const at = list && boxOf(list);
  let worst = blank;
  let until = 0;
  for (const [x, y] of pointsIn(place)) {
    if (performance.now() > until) {
      ours.style.pointerEvents = '';
      await afterFrame();
      if (off()) return needed;
      ours.style.pointerEvents = 'none';
      until = performance.now() + slice;
    }
    const what = coverAt(x, y, list);
    worst = Math.max(worst, what && at && isIn(at, x, y, 0) ? needed : what);
    if (worst >= enough) break;
  }
  ours.style.pointerEvents = '';
  return worst;
}

/** A task right after the page has drawn itself: its layout is clean, so that asking for it costs little. */
const afterFrame = () => new Promise<void>((next) => requestAnimationFrame(() => setTimeout(next)));

function coverAt(x: number, y: number, list: Element | undefined): number {
  const hit = doc.elementFromPoint(x, y);
  if (!hit) return blank;
  if (native(hit, 'matches')(pressed) || fixedAround(hit, list)) return needed;
  if (native(hit, 'matches')(filled) || native(hit, 'shadowRoot')) return letters;
  const caret = doc.caretPositionFromPoint(x, y);
  const text = caret?.offsetNode;
  if (!(text instanceof Text)) return blank;
  const near = {
    startContainer: text,
    startOffset: Math.max(0, caret!.offset - 1),
    endContainer: text,
    endOffset: Math.min(text.length, caret!.offset + 1),
  };
  return boxesOf(near).some((at) => isIn(at, x, y, 3)) ? letters : blank;
}
