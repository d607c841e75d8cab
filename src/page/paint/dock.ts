import type { StripAction } from '../../contract/paint-order.ts';
import { native } from '../read/dom.ts';
import { blank, coverOf, isInView, letters, needed } from './blank.ts';
import { doc } from './doc.ts';
import { whenDragged } from './drag.ts';
import { fill, put } from './draw.ts';
import type { PaintedList } from './painted-list.ts';
import {
  bottomEnd,
  bottomStart,
  type Form,
  inTurn,
  isCorner,
  liftOver,
  placeAt,
  type Size,
  type Spot,
  viewSize,
} from './places.ts';
import { mayBeOverdrawn } from './top-layer.ts';
import { fixedIn } from './visibility.ts';

/** How the reader left the strip: kept while the page stays, whatever is painted anew. */
export type Docking = {
  /** The corner of the view that is tried first, as `placeAt` counts. */
  corner: number;
  /** Folded (true) or opened (false) by hand. */
  folded?: boolean;
  dragged?: { left: number; top: number };
};

/** A list and what is known of places for its strip. */
type Docked = PaintedList & {
  spot?: Spot | undefined;
  /** Where it stands while its spot by the list is out of view. */
  meanwhile?: Spot | undefined;
  /** Looked for in the present shape of the page. */
  looked?: boolean;
  /** An open strip had to leave its corner: it is tried in none any more. */
  crowded?: boolean;
};

const settleAfter = 180;
const climb = 36; // px from one height that is tried for a tab to the next
const writing = new Set(['keep', 'pause', 'not-a-list']);
const restsFor = 150; // ms a strip has stood still before a press on it counts

/**
 * Where the strip stands. By itself it covers no letter of the page: open under or beside its list or in a
 * blank corner of the view, else folded to a tag in such a place, else as a slim tab where an edge of the view is
 * blank. What the page keeps in view (bars, a basket, a chat) is given way to. The reader may open, fold, drag or
 * send it to the other side, and then it stays so, where it covers neither list nor control if there is such a
 * place. It speaks of the list most in view.
 */
export function dock(
  strip: HTMLElement,
  painted: Docked[],
  docking: Docking,
  act: (list: number, action: StripAction) => void,
) {
  let current = painted[0]!;
  let filled: { list: Docked; form: Form } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let searches = 0;
  let movedAt = 0; // by the page or on our own; not where the reader is arranging it
  let arranging = 0;
  let stood = '';
  const sizes = new Map<string, Size>();

  const show = (list: Docked, form: Form) => {
    if (filled?.list.id !== list.id || filled.form !== form) {
      const { scheme, order } = list;
      strip.style.colorScheme = scheme;
      strip.ariaLabel = order.strip.label;
      strip.classList.toggle('folded', form !== 'open');
      strip.classList.toggle('slim', form === 'slim');
      if (filled?.list.id !== list.id || (filled.form === 'open') !== (form === 'open'))
        fill(strip, order.strip[form === 'open' ? 'open' : 'folded'], order.shared);
      if (painted.every(({ id }) => id === list.id)) strip.querySelector('[data-does=next]')?.remove();
    }
    filled = { list, form };
  };
  const sizeNow = (): Size => ({ width: strip.offsetWidth, height: strip.offsetHeight });
  const sizeOf = (list: Docked, form: Form): Size => {
    const key = `${list.id} ${form}`;
    const before = filled;
    if (!sizes.has(key)) {
      show(list, form);
      sizes.set(key, sizeNow());
      if (before) show(before.list, before.form);
    }
    return sizes.get(key)!;
  };
  const placeFor = (list: Docked, spot: Spot) => placeAt(sizeOf(list, spot.form), list.box(), spot);
  const standIn = (): Spot => ({
    where: docking.corner,
    form: docking.folded === false ? 'open' : 'slim',
    lift: 0,
  });

  /** Places to try, best first: open before folded, by the list before a corner, the reader's corner first. */
  function* candidates(list: Docked, by: boolean): Generator<Spot> {
    const { folded, corner } = docking;
    const besides = by && !list.cropped && seenOf(list) > 0;
    const openIn = (where: number) => folded === false || (by && !list.crowded && where <= bottomStart);
    const forms: Form[] = folded === undefined ? ['open', 'folded'] : [folded ? 'folded' : 'open'];
    for (const form of forms)
      for (const where of inTurn(corner))
        if (isCorner(where) ? form === 'folded' || openIn(where) : besides)
          yield clearOfBars(list, { where, form, lift: 0 });
    if (folded !== false)
      for (let lift = 0; lift < viewSize().height; lift += climb)
        for (const where of new Set([corner, bottomEnd, bottomStart])) yield { where, form: 'slim', lift };
  }
  /** A corner, nearer to the middle where the page keeps something in it. */
  const clearOfBars = (list: Docked, spot: Spot): Spot => {
    for (let bars = 0; isCorner(spot.where) && bars < 4; bars++) {
      const place = placeFor(list, spot);
      const bar = isInView(place) && fixedIn(place, list.element);
      if (!bar) break;
      spot = { ...spot, lift: liftOver(spot, place, bar) };
    }
    return spot;
  };

  /**
   * Looks for a blank place, first where it stands (`again`); called off by whatever moves the page meanwhile.
   * `by` the list or, while that is out of view, `meanwhile`. What the reader opened, and a tab, take the least
   * bad place where none is blank.
   */
  const search = async (list: Docked, key: 'spot' | 'meanwhile', again?: Spot) => {
    list.looked = true;
    const turn = ++searches;
    const off = () => !strip.isConnected || turn !== searches;
    const askedOpen = docking.folded === false;
    let found: Spot | undefined;
    let least = needed + 1;
    const tries = function* () {
      if (again) yield again;
      yield* candidates(list, key === 'spot');
    };
    for (const spot of tries()) {
      const anyhow = askedOpen || spot.form === 'slim';
      const enough = anyhow ? least : letters;
      const cover = await coverOf(placeFor(list, spot), { ours: strip, list: list.element, off, enough });
      if (off()) break;
      if (cover < enough) {
        found = spot;
        least = cover;
      }
      // Where the reader opened it, it does not walk about for the sake of a few letters.
      if (least === blank || (least === letters && askedOpen && spot === again)) break;
      list.crowded ||= spot === again && spot.form === 'open' && isCorner(spot.where);
    }
    strip.classList.remove('seeking');
    if (off()) list.looked = !!again;
    else {
      list[key] = found;
      update();
    }
  };

  /** After a scroll: a place that is blank no more is left. */
  const settle = () => {
    const { spot, meanwhile } = current;
    if (docking.dragged) update();
    else if (!spot || stands(spot)) void search(current, 'spot', spot);
    else void search(current, 'meanwhile', meanwhile);
  };

  const update = () => {
    if (!strip.isConnected) return;
    const held = strip.matches(':focus-within');
    if (!held) for (const list of painted) if (seenOf(list) > seenOf(current)) current = list;
    const modal = doc.querySelector('dialog:modal');
    if (!strip.togglePopover(!modal || modal.contains(current.element ?? null))) return;
    const { dragged } = docking;
    if (!dragged && !current.looked) void search(current, 'spot');
    const { spot, meanwhile } = current;
    const stand = !dragged && spot && stands(spot) ? spot : (meanwhile ?? standIn());
    const open = docking.folded ?? (dragged || held ? filled && filled.form !== 'open' : undefined);
    const form =
      open === undefined || open === (stand.form !== 'open') ? stand.form : open ? 'folded' : 'open';
    show(current, form);
    place({ ...stand, form });
  };

  /** A spot by the list counts while it is in view and nothing fixed passes over it. */
  const stands = (spot: Spot): boolean => {
    if (isCorner(spot.where)) return true;
    const at = placeFor(current, spot);
    const thirds = { x: at.width / 3, y: at.height / 2 };
    return isInView(at) && !fixedIn(at, current.element, thirds);
  };

  const place = (spot: Spot) => {
    const size = sizeNow();
    const attached = !docking.dragged && !isCorner(spot.where);
    const { left, top } = docking.dragged ?? placeAt(size, current.box(), spot);
    const within = (px: number, most: number) => Math.max(0, Math.min(px, most));
    strip.classList.toggle('before', left === 0);
    const at = [left, top, size.width, size.height].map(Math.round).join();
    if (at !== stood && performance.now() > arranging) movedAt = performance.now();
    stood = at;
    strip.classList.toggle('attached', attached);
    put(strip, {
      left: attached ? left + scrollX : within(left, viewSize().width - size.width),
      top: attached ? top + scrollY : within(top, viewSize().height - size.height),
    });
  };

  /** Folded or opened by hand: a place for that is looked for. */
  const turn = (folded: boolean) => {
    docking.folded = folded;
    for (const list of painted) Object.assign(list, { spot: undefined, meanwhile: undefined, looked: false });
    update();
  };

  const does: Record<string, (button: HTMLElement) => void> = {
    fold() {
      turn(filled?.form === 'open');
      strip.querySelector<HTMLElement>('[aria-expanded]')?.focus();
    },
    move() {
      delete docking.dragged;
      docking.corner = docking.corner === bottomEnd ? bottomStart : bottomEnd;
      docking.folded = false;
      for (const list of painted) list.spot = clearOfBars(list, standIn());
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
    docking.folded ??= filled?.form !== 'open';
    place(standIn());
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
