import type { StripAction } from '../../ui/paint-order.ts';
import { isBlank, isFixedAt } from './blank.ts';
import { whenDragged } from './drag.ts';
import type { PaintedList } from './painted-list.ts';
import { besideList, type Corner, corners, placeOf, type Size, type Spot } from './places.ts';

/** How the reader left the strip: kept while the page stays, whatever is painted anew. */
export type Docking = {
  corner: Corner;
  /** Folded (true) or opened (false) by hand. */
  byHand?: boolean;
  dragged?: { left: number; top: number };
};

const settleAfter = 180;

/**
 * Where the strip stands. By itself it covers no letter of the page: open under or beside its list or in a
 * blank corner of the view, else folded to a tag in such a place. The reader may open, fold, drag or send it
 * to the other side, and then it stays so. It speaks of the list most in view.
 */
export function dock(
  win: Window & typeof globalThis,
  strip: HTMLElement,
  painted: PaintedList[],
  docking: Docking,
  fill: (list: PaintedList, folded: boolean) => void,
  act: (list: number, action: StripAction) => void,
  signal: AbortSignal,
) {
  const doc = win.document;
  let current = painted[0];
  let filled = '';
  let timer = 0;
  let searches = 0;
  strip.classList.add('seeking'); // unseen until it has its first place
  const sizes = new Map<string, Size>();
  const spots = new Map<PaintedList, Spot>();
  const looked = new Set<PaintedList>();
  const noOpenCorner = new Set<PaintedList>();

  const does: Record<string, ((button: HTMLElement) => void) | undefined> = {
    fold() {
      docking.byHand = !strip.classList.contains('folded');
      spots.clear();
      looked.clear();
      update();
      strip.querySelector<HTMLElement>('[aria-expanded]')?.focus();
    },
    move() {
      delete docking.dragged;
      docking.corner = docking.corner === 'bottom-end' ? 'bottom-start' : 'bottom-end';
      docking.byHand = false;
      for (const list of painted) spots.set(list, { by: 'corner', corner: docking.corner, folded: false });
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
    more(button) {
      const rest = [...button.nextElementSibling!.children] as HTMLElement[];
      button.replaceWith(...rest);
      rest[0]?.focus();
    },
  };
  strip.addEventListener('click', (event) => {
    event.stopPropagation();
    const button = (event.target as Element).closest<HTMLElement>('[data-does]');
    const what = button?.dataset.does;
    if (!button || !what || !current) return;
    if (does[what]) does[what](button);
    else act(current.id, what as StripAction);
  });

  const show = (list: PaintedList, folded: boolean) => {
    const key = `${list.id} ${folded}`;
    if (key !== filled) fill(list, folded);
    filled = key;
  };

  const sizeOf = (list: PaintedList, folded: boolean): Size => {
    const key = `${list.id} ${folded}`;
    const known = sizes.get(key);
    if (known) return known;
    const before = filled;
    show(list, folded);
    const size = { width: strip.offsetWidth, height: strip.offsetHeight };
    sizes.set(key, size);
    if (before && before !== key) show(list, before.endsWith('true'));
    return size;
  };

  /** The page is looked at as if the strip were not there. */
  const aside = (away: boolean) => {
    strip.style.pointerEvents = away ? 'none' : '';
  };

  const boxOf = (list: PaintedList) => list.element?.getBoundingClientRect();
  const standIn = (): Spot => ({ by: 'corner', corner: docking.corner, folded: docking.byHand ?? true });

  /** Places to try, best first: open before folded, by the list before a corner. */
  function* candidates(list: PaintedList): Generator<Spot> {
    for (const folded of docking.byHand === undefined ? [false, true] : [docking.byHand]) {
      const at = inView(win, list.element) > 0 ? boxOf(list) : undefined;
      if (at && !list.cropped) yield* besideList(at, sizeOf(list, folded), folded, win);
      if (folded || !noOpenCorner.has(list)) yield* corners(docking.corner, folded).slice(0, folded ? 4 : 2);
    }
  }

  const search = async (list: PaintedList) => {
    const turn = ++searches;
    const off = () => signal.aborted || turn !== searches;
    await look(list, off);
    strip.classList.remove('seeking');
  };

  const look = async (list: PaintedList, off: () => boolean) => {
    for (const spot of candidates(list)) {
      const place = placeOf(spot, sizeOf(list, spot.folded), boxOf(list), win);
      const blank = await isBlank(win, place, aside, off);
      if (off()) {
        // Called off by a scroll: looked for again once that has settled.
        looked.delete(list);
        return;
      }
      if (!blank) continue;
      spots.set(list, spot);
      return update();
    }
    spots.delete(list);
    update();
  };

  /** The spot of a list's strip; looked for once for each shape of the page, the one before it stands till then. */
  const spotOf = (list: PaintedList): Spot => {
    if (!looked.has(list)) {
      looked.add(list);
      void search(list);
    }
    return spots.get(list) ?? standIn();
  };

  /** After a scroll: a corner that is blank no more is left; an open strip that had to leave one stays folded. */
  const settle = async () => {
    const list = current;
    const spot = list && spots.get(list);
    if (signal.aborted || !list || !spot || docking.dragged) return;
    if (spot.by === 'corner') {
      const turn = searches;
      const place = placeOf(spot, sizeOf(list, spot.folded), undefined, win);
      const blank = await isBlank(win, place, aside, () => signal.aborted || turn !== searches);
      if (blank === false) {
        if (!spot.folded) noOpenCorner.add(list);
        spots.delete(list);
        looked.delete(list);
      }
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
    let spot = docking.dragged ? standIn() : spotOf(current);
    if (spot.by === 'list' && !stands(current, spot)) spot = standIn();
    const folded = docking.byHand ?? (docking.dragged || held ? filled.endsWith('true') : spot.folded);
    show(current, folded);
    place(current, { ...spot, folded });
  }

  /** A spot by the list counts while it is in view and nothing fixed passes over it. */
  const stands = (list: PaintedList, spot: Spot): boolean => {
    const { left, top, width, height } = placeOf(spot, sizeOf(list, spot.folded), boxOf(list), win);
    if (top < 0 || top + height > win.innerHeight || left < 0 || left + width > win.innerWidth) return false;
    return !isFixedAt(doc, left + 2, top + 2) && !isFixedAt(doc, left + width - 2, top + 2);
  };

  function place(list: PaintedList, spot: Spot) {
    const size = { width: strip.offsetWidth, height: strip.offsetHeight };
    const at = placeOf(spot, size, boxOf(list), win);
    const held = spot.by === 'list' && !docking.dragged;
    const left = docking.dragged?.left ?? at.left;
    const top = docking.dragged?.top ?? at.top;
    const within = (px: number, most: number) => (held ? px : Math.max(0, Math.min(px, most)));
    strip.classList.toggle('attached', held);
    strip.style.left = `${within(left, win.innerWidth - size.width) + (held ? win.scrollX : 0)}px`;
    strip.style.top = `${within(top, win.innerHeight - size.height) + (held ? win.scrollY : 0)}px`;
  }

  whenDragged(strip, '.head', (left, top) => {
    docking.dragged = { left, top };
    docking.byHand ??= strip.classList.contains('folded');
    if (current) place(current, standIn());
  });

  signal.addEventListener('abort', () => win.clearTimeout(timer));
  return {
    update(moved: 'moved' | 'reshaped') {
      if (moved === 'reshaped') {
        sizes.clear();
        looked.clear();
      }
      searches++;
      update();
      win.clearTimeout(timer);
      timer = win.setTimeout(() => void settle(), settleAfter);
    },
    focus() {
      docking.byHand = false;
      spots.clear();
      looked.clear();
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
