import type { StripAction } from '../../contract/paint-order.ts';
import { native } from '../read/dom.ts';
import { isBlank, isInView } from './blank.ts';
import { doc } from './doc.ts';
import { whenDragged } from './drag.ts';
import { fill, put } from './draw.ts';
import type { PaintedList } from './painted-list.ts';
import { bottomEnd, bottomStart, inTurn, isCorner, placesFor, type Size } from './places.ts';
import { mayBeOverdrawn } from './top-layer.ts';
import { isFixedAt } from './visibility.ts';

/** How the reader left the strip: kept while the page stays, whatever is painted anew. */
export type Docking = {
  /** The corner of the view that is tried first, as `placesFor` counts. */
  corner: number;
  /** Folded (true) or opened (false) by hand. */
  folded?: boolean;
  dragged?: { left: number; top: number };
};

/** Which of the places for a list's strip, open or folded to a tag. */
type Spot = { where: number; folded: boolean };

/** A list and what is known of places for its strip. */
type Docked = PaintedList & {
  spot?: Spot | undefined;
  /** Looked for in the present shape of the page. */
  looked?: boolean;
  /** An open strip had to leave its corner: it is tried in none any more. */
  crowded?: boolean;
};

const settleAfter = 180;
const writing = new Set(['keep', 'pause', 'not-a-list']);
const restsFor = 150; // ms a strip has stood still before a press on it counts

/**
 * Where the strip stands. By itself it covers no letter of the page: open under or beside its list or in a
 * blank corner of the view, else folded to a tag in such a place. The reader may open, fold, drag or send it
 * to the other side, and then it stays so. It speaks of the list most in view.
 */
export function dock(
  strip: HTMLElement,
  painted: Docked[],
  docking: Docking,
  act: (list: number, action: StripAction) => void,
) {
  let current = painted[0]!;
  let filled: { list: Docked; folded: boolean } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let searches = 0;
  let movedAt = 0; // by the page or on our own; not where the reader is arranging it
  let arranging = 0;
  let stood = '';
  const sizes = new Map<string, Size>();

  const show = (list: Docked, folded: boolean) => {
    if (filled?.list.id !== list.id || filled.folded !== folded) {
      const { scheme, order } = list;
      strip.style.colorScheme = scheme;
      strip.ariaLabel = order.strip.label;
      strip.classList.toggle('folded', folded);
      fill(strip, order.strip[folded ? 'folded' : 'open'], order.shared);
      if (painted.every(({ id }) => id === list.id)) strip.querySelector('[data-does=next]')?.remove();
    }
    filled = { list, folded };
  };
  const sizeNow = (): Size => ({ width: strip.offsetWidth, height: strip.offsetHeight });
  const sizeOf = (list: Docked, folded: boolean): Size => {
    const key = `${list.id} ${folded}`;
    const before = filled;
    if (!sizes.has(key)) {
      show(list, folded);
      sizes.set(key, sizeNow());
      if (before) show(before.list, before.folded);
    }
    return sizes.get(key)!;
  };
  const placeFor = (list: Docked, { where, folded }: Spot) =>
    placesFor(sizeOf(list, folded), list.box())[where]!;
  const standIn = (): Spot => ({ where: docking.corner, folded: docking.folded ?? true });

  /** Places to try, best first: open before folded, by the list before a corner, the reader's corner first. */
  function* candidates(list: Docked, again: boolean): Generator<Spot> {
    if (again && list.spot) yield list.spot;
    const besides = !list.cropped && seenOf(list) > 0;
    for (const folded of docking.folded === undefined ? [false, true] : [docking.folded])
      for (const where of inTurn(docking.corner))
        if (isCorner(where) ? folded || (!list.crowded && where <= bottomStart) : besides)
          yield { where, folded };
  }

  /** Looks for a place that is blank, `again` first where it stands; called off by whatever moves the page meanwhile. */
  const search = async (list: Docked, again = false) => {
    list.looked = true;
    const turn = ++searches;
    const off = () => !strip.isConnected || turn !== searches;
    let found: Spot | undefined;
    for (const spot of candidates(list, again)) {
      if (await isBlank(placeFor(list, spot), strip, off)) found = spot;
      if (found || off()) break;
      list.crowded ||= spot === list.spot && !spot.folded;
    }
    strip.classList.remove('seeking');
    if (off()) list.looked = again;
    else {
      list.spot = found;
      update();
    }
  };

  /** After a scroll: a corner that is blank no more is left. */
  const settle = () => {
    const { spot } = current;
    if (!docking.dragged && spot && isCorner(spot.where)) void search(current, true);
    else update();
  };

  const update = () => {
    if (!strip.isConnected) return;
    const held = strip.matches(':focus-within');
    if (!held) for (const list of painted) if (seenOf(list) > seenOf(current)) current = list;
    const modal = doc.querySelector('dialog:modal');
    if (!strip.togglePopover(!modal || modal.contains(current.element ?? null))) return;
    const { dragged } = docking;
    if (!dragged && !current.looked) void search(current);
    const { spot } = current;
    const stand = !dragged && spot && stands(spot) ? spot : standIn();
    show(current, docking.folded ?? (dragged || held ? filled?.folded : undefined) ?? stand.folded);
    place(stand.where);
  };

  /** A spot by the list counts while it is in view and nothing fixed passes over it. */
  const stands = (spot: Spot): boolean => {
    const at = placeFor(current, spot);
    return (
      isCorner(spot.where) ||
      (isInView(at) && !isFixedAt(at.left + 2, at.top + 2) && !isFixedAt(at.right - 2, at.top + 2))
    );
  };

  const place = (where: number) => {
    const size = sizeNow();
    const attached = !docking.dragged && !isCorner(where);
    const { left, top } = docking.dragged ?? placesFor(size, current.box())[where]!;
    const within = (px: number, most: number) => Math.max(0, Math.min(px, most));
    const at = [left, top, size.width, size.height].map(Math.round).join();
    if (at !== stood && performance.now() > arranging) movedAt = performance.now();
    stood = at;
    strip.classList.toggle('attached', attached);
    put(strip, {
      left: attached ? left + scrollX : within(left, innerWidth - size.width),
      top: attached ? top + scrollY : within(top, innerHeight - size.height),
    });
  };

  /** Folded or opened by hand: a place for that is looked for. */
  const turn = (folded: boolean) => {
    docking.folded = folded;
    for (const list of painted) Object.assign(list, { spot: undefined, looked: false });
    update();
  };

  const does: Record<string, (button: HTMLElement) => void> = {
    fold() {
      turn(!filled?.folded);
      strip.querySelector<HTMLElement>('[aria-expanded]')?.focus();
    },
    move() {
      delete docking.dragged;
      docking.corner = docking.corner === bottomEnd ? bottomStart : bottomEnd;
      docking.folded = false;
      for (const list of painted) list.spot = standIn();
      update();
    },
    next() {
      const others = [...painted.slice(painted.indexOf(current)), ...painted];
      current = others.find(({ id }) => id !== current.id) ?? current;
      current.element?.scrollIntoView({ block: 'center', behavior: 'instant' });
      update();
      strip.focus({ preventScroll: true });
    },
    more(button) {
      const rest = [...button.nextElementSibling!.children] as HTMLElement[];
      button.replaceWith(...rest);
      update();
      rest[0]?.focus();
    },
  };
  strip.addEventListener('click', (event) => {
    event.stopPropagation();
    const button = (event.target as Element).closest<HTMLElement>('[data-does]');
    const what = button?.dataset.does;
    if (!what || !event.isTrusted) return;
    if (does[what]) {
      arranging = performance.now() + 1000;
      movedAt = 0;
      return does[what](button);
    }
    // A strip that has just come under the pointer was not what the reader meant to press.
    if (event.detail && performance.now() - movedAt < restsFor) return;
    act(current.id, event.detail && writing.has(what) && mayBeOverdrawn() ? 'panel' : (what as StripAction));
  });
  whenDragged(strip, (left, top) => {
    docking.dragged = { left, top };
    docking.folded ??= !!filled?.folded;
    place(docking.corner);
  });

  return {
    update(reshaped: boolean) {
      if (reshaped) {
        sizes.clear();
        for (const list of painted) list.looked = false;
      }
      searches++;
      update();
      clearTimeout(timer);
      timer = setTimeout(settle, settleAfter);
    },
    focus() {
      turn(false);
      strip.focus();
    },
  };
}

/** Height of a list that is in view, 0 where it is out of view, hidden or printed nowhere. */
function seenOf(list: PaintedList): number {
  if (!list.element || !native(list.element, 'checkVisibility')({ visibilityProperty: true })) return 0;
  const { top, bottom } = list.box();
  return Math.max(0, Math.min(bottom, innerHeight) - Math.max(top, 0));
}
