import type { PaintedList } from './painted-list.ts';
import type { StripAsk } from './strip.ts';

type Fill = { fill(list: PaintedList, folded: boolean, asks: Omit<StripAsk, 'act'>): void };

const edge = 12;
const corners = ['end', 'start'] as const;

/**
 * Where the strip stands: right under the list where that place is blank, else at the bottom edge of the
 * view. It speaks of the list most in view, folds to a tag while no list is in view, and stays folded,
 * unfolded or moved as the reader left it.
 */
export function dock(
  win: Window,
  strip: HTMLElement,
  painted: PaintedList[],
  { fill }: Fill,
  signal: AbortSignal,
) {
  let current = painted[0];
  let corner = 0;
  let chosen: boolean | undefined; // folded by the reader's hand
  let shown = '';
  let dragged: { left: number; top: number } | undefined;

  const asks: Omit<StripAsk, 'act'> = {
    fold() {
      chosen = !strip.classList.contains('folded');
      update();
      strip.querySelector<HTMLElement>('button[aria-expanded]')?.focus();
    },
    move() {
      dragged = undefined;
      corner = (corner + 1) % corners.length;
      update();
    },
    next() {
      const at = painted.indexOf(current!);
      current = painted[(at + 1) % painted.length];
      current?.element?.scrollIntoView({ block: 'center', behavior: 'instant' });
      update(true);
      strip.focus({ preventScroll: true });
    },
  };

  function update(keep = false) {
    const hasFocus = strip.matches(':focus-within');
    const views = painted.map((list) => shareInView(win, list.element));
    const best = views.indexOf(Math.max(...views));
    if (!keep && !hasFocus && (views[best] ?? 0) > (views[painted.indexOf(current!)] ?? 0))
      current = painted[best];
    if (!current) return;
    const folded = chosen ?? (!hasFocus && Math.max(...views) === 0);
    const key = `${current.id} ${folded}`;
    if (key !== shown) {
      shown = key;
      fill(current, folded, asks);
    }
    if (!strip.matches(':popover-open')) strip.showPopover();
    place();
  }

  function place() {
    const free =
      dragged || !current?.element || strip.classList.contains('folded')
        ? undefined
        : roomUnder(win, strip, current);
    strip.classList.toggle('attached', free !== undefined);
    if (free) {
      strip.style.inset = 'auto';
      strip.style.left = `${free.left + win.scrollX}px`;
      strip.style.top = `${free.top + win.scrollY}px`;
    } else if (dragged) {
      strip.style.inset = 'auto';
      strip.style.left = `${Math.max(0, Math.min(dragged.left, win.innerWidth - strip.offsetWidth))}px`;
      strip.style.top = `${Math.max(0, Math.min(dragged.top, win.innerHeight - strip.offsetHeight))}px`;
    } else {
      strip.style.inset = 'auto';
      strip.style.bottom = `${edge}px`;
      strip.style[corners[corner] === 'end' ? 'right' : 'left'] = `${edge}px`;
    }
  }

  strip.addEventListener(
    'pointerdown',
    (event) => {
      const head = (event.target as Element).closest('.head');
      if (!head || (event.target as Element).closest('button')) return;
      const at = strip.getBoundingClientRect();
      const [dx, dy] = [event.clientX - at.left, event.clientY - at.top];
      const moving = new AbortController();
      strip.setPointerCapture(event.pointerId);
      strip.addEventListener(
        'pointermove',
        (move) => {
          dragged = { left: move.clientX - dx, top: move.clientY - dy };
          place();
        },
        { signal: moving.signal },
      );
      for (const type of ['pointerup', 'pointercancel'] as const)
        strip.addEventListener(type, () => moving.abort(), { signal: moving.signal });
    },
    { signal },
  );

  return {
    update,
    focus() {
      chosen = false;
      update();
      strip.focus();
    },
  };
}

/** Height of an element that is in view, 0 where it is out of view, hidden or printed nowhere. */
function shareInView(win: Window, element: Element | undefined): number {
  const at = element?.getBoundingClientRect();
  if (!at || at.width === 0) return 0;
  return Math.max(0, Math.min(at.bottom, win.innerHeight) - Math.max(at.top, 0));
}

/** The blank place right under a list, large enough for the strip and in view, or undefined. */
function roomUnder(
  win: Window,
  strip: HTMLElement,
  list: PaintedList,
): { left: number; top: number } | undefined {
  const { element } = list;
  const doc = win.document;
  const at = element?.getBoundingClientRect();
  if (!element || !at) return undefined;
  const { offsetWidth: width, offsetHeight: height } = strip;
  const left = Math.max(edge, Math.min(at.left, win.innerWidth - width - edge));
  const top = at.bottom + 8;
  if (top < 0 || top + height > win.innerHeight - 4) return undefined;
  for (let y = top + 2; y <= top + height; y += 14)
    for (let x = left + 2; x <= left + width; x += 28) {
      const hit = doc.elementsFromPoint(x, y).find((each) => each.localName !== 'strandline-label');
      if (!hit || (hit !== element && !hit.contains(element))) return undefined;
      const caret = doc.caretPositionFromPoint(x, y);
      if (caret?.offsetNode.nodeType === Node.TEXT_NODE && hasLetterAt(doc, caret, x, y)) return undefined;
    }
  return { left, top };
}

function hasLetterAt(doc: Document, { offsetNode, offset }: CaretPosition, x: number, y: number): boolean {
  const range = doc.createRange();
  range.setStart(offsetNode, Math.max(0, offset - 1));
  range.setEnd(offsetNode, Math.min((offsetNode as Text).length, offset + 1));
  return [...range.getClientRects()].some(
    (at) => x >= at.left - 2 && x <= at.right + 2 && y >= at.top - 2 && y <= at.bottom + 2,
  );
}
