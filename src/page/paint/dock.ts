import { isBlank, isFixedAt, type Place } from './blank.ts';
import type { PaintedList } from './painted-list.ts';
import type { StripAsk } from './strip.ts';

type Asks = Omit<StripAsk, 'act'>;
type Size = { width: number; height: number };

/** By the list: where the strip stands relative to it. In a corner of the view otherwise. */
type Spot = { by: 'list'; dx: number; dy: number } | { by: 'corner'; corner: Corner } | { by: 'none' };
type Corner = 'end' | 'start';

const edge = 12;
const settleAfter = 180;

/**
 * Where the strip stands. Open, it covers no letter of the page: right under its list, beside it, or in a
 * blank corner of the view; where none is blank it is folded to a tag in a corner. The reader may open, fold,
 * drag or send it to the other side, and then it stays so. It speaks of the list most in view.
 */
export function dock(
  win: Window & typeof globalThis,
  strip: HTMLElement,
  painted: PaintedList[],
  fill: (list: PaintedList, folded: boolean, asks: Asks) => void,
  signal: AbortSignal,
) {
  const doc = win.document;
  let current = painted[0];
  let corner: Corner = 'end';
  let byHand: boolean | undefined; // folded (true) or opened (false) by the reader
  let dragged: { left: number; top: number } | undefined;
  let filled = '';
  let timer = 0;
  const sizes = new Map<number, Size>();
  const spots = new Map<PaintedList, Spot>();

  const asks: Asks = {
    fold() {
      byHand = !strip.classList.contains('folded');
      update();
      strip.querySelector<HTMLElement>('[aria-expanded]')?.focus();
    },
    move() {
      dragged = undefined;
      corner = corner === 'end' ? 'start' : 'end';
      byHand = false;
      update();
    },
    next() {
      const from = painted.indexOf(current!);
      const others = [...painted.slice(from + 1), ...painted.slice(0, from)];
      current = others.find(({ id }) => id !== current?.id) ?? current;
      current?.element?.scrollIntoView({ block: 'center', behavior: 'instant' });
      update();
      strip.focus({ preventScroll: true });
    },
  };

  /** Looks at the page as if the strip were not there. */
  const unseen = <T>(look: () => T): T => {
    strip.style.visibility = 'hidden';
    const seen = look();
    strip.style.visibility = '';
    return seen;
  };

  const show = (folded: boolean) => {
    const key = `${current?.id} ${folded}`;
    if (!current || key === filled) return;
    filled = key;
    fill(current, folded, asks);
  };

  const sizeOf = (list: PaintedList): Size => {
    const known = sizes.get(list.id);
    if (known) return known;
    show(false);
    const size = { width: strip.offsetWidth, height: strip.offsetHeight };
    sizes.set(list.id, size);
    return size;
  };

  /** Looks for a blank place, once for each shape of the page while the list is in view. */
  const findSpot = (list: PaintedList): Spot => {
    const known = spots.get(list);
    if (known) return known;
    const at = list.element?.getBoundingClientRect();
    if (!at || inView(win, list.element) === 0) return { by: 'none' };
    const size = sizeOf(list);
    const found = unseen(
      (): Spot =>
        (list.cropped ? undefined : byList(win, at, size)) ?? inCorner(win, size, corner) ?? { by: 'none' },
    );
    spots.set(list, found);
    return found;
  };

  /** A corner that was blank may be so no more after scrolling: the strip folds, and stays folded. */
  const settle = () => {
    if (signal.aborted || !current) return;
    const spot = spots.get(current);
    const size = sizeOf(current);
    if (spot?.by === 'corner' && !unseen(() => inCorner(win, size, spot.corner)))
      spots.set(current, { by: 'none' });
    update();
  };

  function update() {
    if (!strip.isConnected) return;
    const held = strip.matches(':focus-within');
    const views = painted.map((list) => inView(win, list.element));
    const best = views.indexOf(Math.max(...views));
    if (!held && (views[best] ?? 0) > (views[painted.indexOf(current!)] ?? 0)) current = painted[best];
    if (!current) return;
    const modal = doc.querySelector('dialog:modal');
    if (modal && !modal.contains(current.element ?? null)) {
      if (strip.matches(':popover-open')) strip.hidePopover();
      return;
    }
    if (!strip.matches(':popover-open')) strip.showPopover();
    let spot: Spot = dragged || byHand === true ? { by: 'none' } : findSpot(current);
    if (spot.by === 'list' && !stands(spot)) spot = { by: 'none' };
    const folded = byHand ?? (spot.by === 'none' && !dragged && !held);
    show(folded);
    place(folded ? { by: 'none' } : spot);
  }

  /** A place by the list counts while it is in view and nothing fixed passes over it. */
  const stands = ({ dx, dy }: { dx: number; dy: number }): boolean => {
    const at = current?.element?.getBoundingClientRect();
    if (!at || !current) return false;
    const { width, height } = sizeOf(current);
    const [left, top] = [at.left + dx, at.top + dy];
    if (top + height < 0 || top > win.innerHeight || left < 0 || left + width > win.innerWidth) return false;
    return top >= 0 && !isFixedAt(doc, left + 2, top + 2) && !isFixedAt(doc, left + width - 2, top + 2);
  };

  function place(spot: Spot) {
    const at = current?.element?.getBoundingClientRect();
    const { style } = strip;
    style.inset = 'auto';
    strip.classList.toggle('attached', spot.by === 'list');
    if (spot.by === 'list' && at) {
      style.left = `${at.left + spot.dx + win.scrollX}px`;
      style.top = `${at.top + spot.dy + win.scrollY}px`;
    } else if (dragged) {
      style.left = `${Math.max(0, Math.min(dragged.left, win.innerWidth - strip.offsetWidth))}px`;
      style.top = `${Math.max(0, Math.min(dragged.top, win.innerHeight - strip.offsetHeight))}px`;
    } else {
      const where = spot.by === 'corner' ? spot.corner : corner;
      style.bottom = `${edge}px`;
      style[where === 'end' ? 'right' : 'left'] = `${edge}px`;
    }
  }

  strip.addEventListener('pointerdown', (event) => {
    const target = event.target as Element;
    if (!target.closest('.head') || target.closest('button')) return;
    const at = strip.getBoundingClientRect();
    const [dx, dy] = [event.clientX - at.left, event.clientY - at.top];
    const moving = new AbortController();
    const on = (type: 'pointermove' | 'pointerup' | 'pointercancel', hear: (event: PointerEvent) => void) =>
      strip.addEventListener(type, hear, { signal: moving.signal });
    strip.setPointerCapture(event.pointerId);
    on('pointermove', (move) => {
      if (Math.abs(move.clientX - event.clientX) + Math.abs(move.clientY - event.clientY) < 4 && !dragged)
        return;
      dragged = { left: move.clientX - dx, top: move.clientY - dy };
      byHand ??= strip.classList.contains('folded');
      place({ by: 'none' });
    });
    on('pointerup', () => moving.abort());
    on('pointercancel', () => moving.abort());
  });

  signal.addEventListener('abort', () => win.clearTimeout(timer));
  return {
    update(moved: 'moved' | 'reshaped') {
      if (moved === 'reshaped') {
        sizes.clear();
        spots.clear();
      }
      update();
      win.clearTimeout(timer);
      timer = win.setTimeout(settle, settleAfter);
    },
    focus() {
      byHand = false;
      update();
      strip.focus();
    },
  };
}

/** Height of an element that is in view, 0 where it is out of view, hidden or printed nowhere. */
function inView(win: Window, element: Element | undefined): number {
  const at = element?.checkVisibility({ visibilityProperty: true }) && element.getBoundingClientRect();
  if (!at) return 0;
  return Math.max(0, Math.min(at.bottom, win.innerHeight) - Math.max(at.top, 0));
}

/** The first blank place under a list, after it or before it. */
function byList(win: Window, at: DOMRect, { width, height }: Size): Spot | undefined {
  const gap = 10;
  const places: Place[] = [
    {
      left: Math.max(edge, Math.min(at.left, win.innerWidth - width - edge)),
      top: at.bottom + gap,
      width,
      height,
    },
    { left: at.right + gap, top: at.top, width, height },
    { left: at.left - gap - width, top: at.top, width, height },
  ];
  const blank = places.find((place) => isBlank(win.document, place));
  return blank && { by: 'list', dx: blank.left - at.left, dy: blank.top - at.top };
}

function inCorner(win: Window, { width, height }: Size, first: Corner): Spot | undefined {
  const top = win.innerHeight - edge - height;
  const lefts = { end: win.innerWidth - edge - width, start: edge };
  const blank = ([first, first === 'end' ? 'start' : 'end'] as const).find((corner) =>
    isBlank(win.document, { left: lefts[corner], top, width, height }),
  );
  return blank && { by: 'corner', corner: blank };
}
