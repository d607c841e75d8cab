import { isBlank, isFixedAt, type Place } from './blank.ts';
import type { PaintedList } from './painted-list.ts';
import type { StripAsk } from './strip.ts';

type Asks = Omit<StripAsk, 'act'>;
type Size = { width: number; height: number };

/** By the list: where the strip stands relative to it. In a corner of the view otherwise. */
type Spot = { by: 'list'; dx: number; dy: number } | { by: 'corner'; corner: Corner } | { by: 'none' };
type Corner = 'end' | 'start';

/** How the reader left the strip: kept while the page stays, whatever is painted anew. */
export type Docking = {
  corner: Corner;
  /** Folded (true) or opened (false) by hand. */
  byHand?: boolean;
  dragged?: { left: number; top: number };
};

const nowhere: Spot = { by: 'none' };
type Candidate = { spot: Spot; place: Place };

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
  docking: Docking,
  fill: (list: PaintedList, folded: boolean, asks: Asks) => void,
  signal: AbortSignal,
) {
  const doc = win.document;
  let current = painted[0];
  let filled = '';
  let timer = 0;
  let searches = 0;
  const sizes = new Map<number, Size>();
  const spots = new Map<PaintedList, Spot>();

  const asks: Asks = {
    fold() {
      docking.byHand = !strip.classList.contains('folded');
      update();
      strip.querySelector<HTMLElement>('[aria-expanded]')?.focus();
    },
    move() {
      delete docking.dragged;
      docking.corner = docking.corner === 'end' ? 'start' : 'end';
      docking.byHand = false;
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

  /** The page is looked at as if the strip were not there. */
  const aside = (away: boolean) => {
    strip.style.pointerEvents = away ? 'none' : '';
  };

  /** The place for a list's strip; looked for once for each shape of the page while the list is in view. */
  const spotOf = (list: PaintedList): Spot => {
    const known = spots.get(list);
    if (known) return known;
    const at = list.element?.getBoundingClientRect();
    if (at && inView(win, list.element) > 0) {
      const pending: Spot = { by: 'none' };
      spots.set(list, pending);
      void search(list, places(win, at, sizeOf(list), list.cropped, docking.corner), pending);
    }
    return nowhere;
  };

  const search = async (list: PaintedList, among: Candidate[], pending: Spot) => {
    const turn = ++searches;
    const off = () => signal.aborted || turn !== searches;
    for (const { spot, place } of among)
      if (await isBlank(win, place, aside, off)) {
        spots.set(list, spot);
        return update();
      } else if (off()) {
        // Called off by a scroll: the list will be looked at again.
        if (spots.get(list) === pending) spots.delete(list);
        return;
      }
  };

  /** A corner that was blank may be so no more after scrolling: the strip folds, and stays folded. */
  const settle = async () => {
    const list = current;
    const spot = list && spots.get(list);
    if (signal.aborted || !list) return;
    if (spot?.by === 'corner') {
      const turn = searches;
      const off = () => signal.aborted || turn !== searches;
      const stays = await isBlank(win, cornerPlace(win, sizeOf(list), spot.corner), aside, off);
      if (stays === false) spots.set(list, nowhere);
    }
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
    let spot: Spot = docking.dragged || docking.byHand === true ? nowhere : spotOf(current);
    if (spot.by === 'list' && !stands(spot)) spot = nowhere;
    const folded = docking.byHand ?? (spot.by === 'none' && !docking.dragged && !held);
    show(folded);
    place(folded ? nowhere : spot);
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
    } else if (docking.dragged) {
      style.left = `${Math.max(0, Math.min(docking.dragged.left, win.innerWidth - strip.offsetWidth))}px`;
      style.top = `${Math.max(0, Math.min(docking.dragged.top, win.innerHeight - strip.offsetHeight))}px`;
    } else {
      const where = spot.by === 'corner' ? spot.corner : docking.corner;
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
      if (
        Math.abs(move.clientX - event.clientX) + Math.abs(move.clientY - event.clientY) < 4 &&
        !docking.dragged
      )
        return;
      docking.dragged = { left: move.clientX - dx, top: move.clientY - dy };
      docking.byHand ??= strip.classList.contains('folded');
      place(nowhere);
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
      searches++;
      update();
      win.clearTimeout(timer);
      timer = win.setTimeout(() => void settle(), settleAfter);
    },
    focus() {
      docking.byHand = false;
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

/** Where a strip may stand, best first: under its list, after it, before it, in a corner of the view. */
function places(win: Window, at: DOMRect, size: Size, cropped: boolean, first: Corner): Candidate[] {
  const gap = 10;
  const inside = Math.max(edge, Math.min(at.left, win.innerWidth - size.width - edge));
  const beside = [
    { left: inside, top: at.bottom + gap },
    { left: at.right + gap, top: at.top },
    { left: at.left - gap - size.width, top: at.top },
  ].map(
    ({ left, top }): Candidate => ({
      spot: { by: 'list', dx: left - at.left, dy: top - at.top },
      place: { left, top, ...size },
    }),
  );
  const corners = ([first, first === 'end' ? 'start' : 'end'] as const).map(
    (corner): Candidate => ({
      spot: { by: 'corner', corner },
      place: cornerPlace(win, size, corner),
    }),
  );
  return [...(cropped ? [] : beside), ...corners];
}

const cornerPlace = (win: Window, size: Size, corner: Corner): Place => ({
  left: corner === 'end' ? win.innerWidth - edge - size.width : edge,
  top: win.innerHeight - edge - size.height,
  ...size,
});
