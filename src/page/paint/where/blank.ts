/** What something of ours would cover where it stands. */

import { doc } from '../doc.ts';
import { native } from '../dom.ts';
import { pointsIn, viewWidth } from './dock-spots.ts';
import { boxOf, isIn } from './letter-boxes.ts';
import { fixedAround } from './visibility.ts';

const filled = 'a,button,input,select,textarea,summary,[role=button],iframe,img,video,canvas,svg';
const line = 16; // px: no line of text is lower
const word = 24; // few words are narrower, and no control should be
const slice = 8; // ms of looking before the page gets its turn: half a frame

/** How bad it is to cover: nothing, letters, and the list, a control, a picture or what the page keeps in view. */
export const coversNothing = 0;
export const letters = 1;
export const needed = 2;

/** Whether a place is all in view. */
export const isInView = ({ left, top, right, bottom }: DOMRect) =>
  left >= 0 && top >= 0 && right <= viewWidth() && bottom <= innerHeight;

let until = 0; // when the page gets its turn

/** Where the page's turn is due, one: we go on right after it has drawn itself, when its layout is clean. */
export const breathe = () =>
  performance.now() > until &&
  new Promise<void>((next) =>
    requestAnimationFrame(() =>
      setTimeout(() => {
        until = performance.now() + slice;
        next();
      }),
    ),
  );

/**
 * The worst that a place covers, as far as a grid of points can tell; looks no further once it is as bad as
 * `enough`. What is `ours` is taken out of the way meanwhile. Looks half a frame at a time, as asking what
 * stands at a point is slow; `off` calls the look off.
 */
export async function coverOf(
  place: DOMRect,
  ours: HTMLElement,
  list: Element | undefined,
  off: () => boolean,
  enough: number,
): Promise<number> {
  if (!isInView(place)) return needed;
  const at = list && boxOf(list);
  let worst = coversNothing;
  ours.style.pointerEvents = 'none';
  for (const [x, y] of pointsIn(place, word, line)) {
    const due = breathe();
    if (due) {
      ours.style.pointerEvents = '';
      await due;
      if (off()) return needed;
      ours.style.pointerEvents = 'none';
    }
    const what = coverAt(x, y, list);
    worst = Math.max(worst, what && at && isIn(at, x, y, 0) ? needed : what);
    if (worst >= enough) break;
  }
  ours.style.pointerEvents = '';
  return worst;
}

function coverAt(x: number, y: number, list: Element | undefined): number {
  const hit = doc.elementFromPoint(x, y);
  if (!hit) return coversNothing;
  if (native(hit, 'closest')(filled) || native(hit, 'shadowRoot') || fixedAround(hit, list)) return needed;
  const caret = doc.caretPositionFromPoint(x, y);
  const at = caret?.offsetNode instanceof Text && caret.getClientRect();
  // The caret stands at the nearer side of a letter, and letters are hardly wider than twice their line's height.
  return at && Math.abs(x - at.left) < at.height && isIn(at, at.left, y, 3) ? letters : coversNothing;
}
