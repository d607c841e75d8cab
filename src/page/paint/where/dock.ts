import type { Drawing, StripAction } from '../../../contract/paint-order.ts';
import { doc } from '../doc.ts';
import { fill, put } from '../draw.ts';
import type { PaintedList } from '../painted-list.ts';
import { breathe, coverOf, coversNothing, isInView, letters, needed } from './blank.ts';
import {
  bottomEnd,
  bottomStart,
  type DockSpot,
  type Form,
  isCorner,
  placeAt,
  pointsIn,
  type Size,
  viewWidth,
} from './dock-spots.ts';
import { whenDragged } from './drag.ts';
import { boxOf, isShown } from './letter-boxes.ts';
import { mayBeOverdrawn } from './top-layer.ts';
import { fixedAt } from './visibility.ts';

/** How the user left the strip: kept while the page stays, whatever is painted anew. */
export type Docking = {
  /** The corner of the view that is tried first, as `placeAt` counts. */
  corner: number;
  /** Folded (true) or opened (false) by hand. */
  folded?: boolean;
  dragged?: { left: number; top: number };
};

/** A list and what is known of places for its strip. */
type Docked = PaintedList & {
  spot?: DockSpot | undefined;
  /** Looked for in the present shape of the page. */
  looked?: boolean;
};

const settleAfter = 180;
const restless = 1000; // frames in which the page moved
const forms: Form[] = ['open', 'folded', 'slim'];
const climb = 48; // px from one height that is tried to the next, for a tab and for what the user opened
const writing = new Set(['keep', 'pause', 'not-a-list']);
const restsFor = 150; // ms a strip has stood still before a press on it counts

/**
 * Where the strip stands. By itself it covers no letter of the page: open under or beside its list or in a
 * blank corner of the view, else folded to a tag in such a place, else as a slim tab where an edge of the view is
 * blank. What the page keeps in view (bars, a basket, a chat) is given way to. The user may open, fold, drag or
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
  let shown: Drawing[] | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let searches = 0;
  let movedAt = 0; // by the page or on our own; not where the user is arranging it
  let arranging = 0;
  let stood: string | undefined;
  const sizes = new Map<string, Size>();

  const show = (list: Docked, form: Form) => {
    if (filled?.list !== list || filled.form !== form) {
      const { scheme, order } = list;
      strip.style.colorScheme = scheme;
      strip.ariaLabel = order.strip.label;
      strip.className = `strip ${form}`;
      const drawn = order.strip[form === 'open' ? form : 'folded'];
      if (drawn !== shown) fill(strip, drawn, order.shared);
      shown = drawn;
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
  const placeFor = (list: Docked, spot: DockSpot) => placeAt(sizeOf(list, spot.form), list.box(), spot);

  /** Places to try, best first: open before folded, by the list before a corner, the user's corner first. */
  async function* candidates(list: Docked, again: DockSpot | undefined): AsyncGenerator<DockSpot> {
    const { folded, corner } = docking;
    const besides = !list.cropped && seenOf(list) > 0;
    // One that had to leave an open place folds, so that it does not walk from corner to corner.
    const openInCorner = folded === false || !again;
    for (const form of forms) {
      if (folded === (form === 'open')) continue;
      if (again?.form === form) yield again;
      for (let lift = 0; lift < (form === 'slim' || folded === false ? innerHeight : 1); lift += climb)
        for (const where of new Set([0, 1, 2, corner, bottomEnd, bottomStart]))
          if (isCorner(where) ? form !== 'open' || openInCorner : besides && form !== 'slim')
            yield clearOfBars(list, { where, form, lift });
    }
  }

  /** A corner, nearer to the middle where the page keeps something in it. */
  const clearOfBars = async (list: Docked, spot: DockSpot): Promise<DockSpot> => {
    for (let bars = 0; isCorner(spot.where) && bars < 4; bars++) {
      await breathe();
      const place = placeFor(list, spot);
      let bar: Element | null | undefined;
      for (const [x, y] of pointsIn(place)) {
        await breathe();
        bar ??= fixedAt(x, y, list.element);
      }
      if (!bar) break;
      spot = { ...spot, lift: spot.lift + place.bottom - boxOf(bar).top + 6 };
    }
    return spot;
  };

  /**
   * Looks for a blank place, `again` where it stands before others of its form; called off by whatever moves the
   * page meanwhile. What the user opened, and a tab, take the least bad place where none is blank.
   */
  const search = async (list: Docked, again?: DockSpot) => {
    list.looked = true;
    const turn = ++searches;
    const off = () => turn !== searches;
    const byHand = docking.folded === false;
    let found: DockSpot | undefined;
    let least = needed + 1;
    for await (const spot of candidates(list, again)) {
      const enough = byHand || spot.form === 'slim' ? least : letters;
      const cover = await coverOf(placeFor(list, spot), strip, list.element, off, enough);
      if (off()) break;
      if (cover < enough) {
        found = spot;
        least = cover;
      }
      // Where the user opened it, it does not walk about for the sake of a few letters.
      if (least === coversNothing || (least === letters && byHand && spot === again)) break;
    }
    if (off()) {
      list.looked = !!again;
      return;
    }
    list.spot = found;
    update();
  };

  /** After a scroll: a place that is blank no more is left. */
  const settle = () => (docking.dragged ? update() : search(current, current.spot));

  const update = () => {
    if (!strip.isConnected) return;
    const held = strip.matches(':focus-within');
    if (!held) for (const list of painted) if (seenOf(list) > seenOf(current)) current = list;
    const modal = doc.querySelector('dialog:modal');
    if (!strip.togglePopover(!modal || modal.contains(current.element ?? null))) return;
    const { dragged, folded } = docking;
    if (!dragged && !current.looked) void search(current);
    const { spot } = current;
    const good = !dragged && spot && stands(spot);
    const by = folded === false ? 'open' : dragged || folded ? 'folded' : 'slim';
    const form = held && filled ? filled.form : good ? spot.form : by;
    // Out of sight until it has a place; a page that never rests gets it all the same.
    show(current, form);
    strip.classList.toggle('seeking', !good && !held && form === 'slim' && searches < restless);
    place(good ? { ...spot, form } : { where: docking.corner, form, lift: 0 });
  };

  /** A spot by the list counts while it is in view and nothing fixed passes over it. */
  const stands = (spot: DockSpot): boolean => {
    if (isCorner(spot.where)) return true;
    const at = placeFor(current, spot);
    return isInView(at) && ![...pointsIn(at)].some(([x, y]) => fixedAt(x, y, current.element));
  };

  const place = (spot: DockSpot) => {
    const size = sizeNow();
    const attached = !docking.dragged && !isCorner(spot.where);
    const { left, top } = docking.dragged ?? placeAt(size, current.box(), spot);
    const within = (px: number, most: number) => (attached ? px : Math.max(0, Math.min(px, most)));
    const at = `${[left, top, size.height].map(Math.round)}`;
    if (at !== stood && performance.now() > arranging) movedAt = performance.now();
    stood = at;
    strip.classList.toggle('attached', attached);
    put(strip, {
      left: attached ? left + scrollX : within(left, viewWidth() - size.width),
      top: attached ? top + scrollY : within(top, innerHeight - size.height),
    });
  };

  /** Folded or opened by hand: a place for that is looked for. */
  const turn = (folded: boolean) => {
    docking.folded = folded;
    filled = undefined;
    for (const list of painted) Object.assign(list, { spot: undefined, looked: false });
    update();
  };

  const does: Record<string, (button: HTMLElement) => void> = {
    fold() {
      turn(filled?.form === 'open');
      strip.querySelector<HTMLElement>('[aria-expanded]')?.focus();
    },
    async move() {
      delete docking.dragged;
      docking.corner = bottomEnd + bottomStart - docking.corner;
      docking.folded = false;
      filled = undefined;
      for (const list of painted)
        list.spot = await clearOfBars(list, { where: docking.corner, form: 'open', lift: 0 });
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
    // A strip that has just come under the pointer was not what the user meant to press.
    if (event.detail && performance.now() - movedAt < restsFor) return;
    act(current.id, event.detail && writing.has(what) && mayBeOverdrawn() ? 'panel' : (what as StripAction));
  });
  whenDragged(strip, (left, top) => {
    docking.dragged = { left, top };
    docking.folded ??= filled?.form !== 'open';
    update();
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
  if (!list.element || !isShown(list.element)) return 0;
  const { top, bottom } = list.box();
  return Math.max(0, Math.min(bottom, innerHeight) - Math.max(top, 0));
}
