import type { Drawing } from '../../contract/paint-order.ts';
import type { ShelfMark } from '../../contract/shelf.ts';
import { placeCard } from '../paint/card.ts';
import { doc } from '../paint/doc.ts';
import { draw, fill, put } from '../paint/draw.ts';
import type { Host } from '../paint/host/host.ts';
import { isOurs } from '../paint/where/visibility.ts';
import type { ShelfCard } from './cards.ts';
import { isHandedOn } from './follow-cards.ts';

/** How far outside the view marks are kept ready, in pixels. */
const ahead = '300px';
const inset = 6; // from the picture's edges
const types = ['scroll', 'resize', 'transitionend', 'animationend', 'toggle'];

type Placed = {
  card: ShelfCard;
  mark?: ShelfMark | undefined;
  button?: HTMLElement;
  veil?: HTMLElement;
  corner?: number | undefined;
};

/**
 * Draws marks over the pictures of product cards, in our own element: nothing of the page is moved or changed. Only
 * cards in and near the view are measured, all of them before anything is written.
 */
export function createOverlay(host: Host, signal: AbortSignal) {
  const layer = draw(['div', { class: 'marks' }]);
  const popped = draw(['div', { class: 'card shelf-card', popover: 'manual', role: 'note' }]);
  host.root.append(layer, popped);
  const placed = new Map<Element, Placed>();
  const near = new Set<Element>();
  let filters: string[] = [];
  let asked = false;
  let isReturning = false;
  let open: Placed | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const ask = () => {
    if (asked || signal.aborted) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      if (!signal.aborted) place();
    });
  };
  const seen = new IntersectionObserver(
    (changes) => {
      for (const { target, isIntersecting } of changes)
        if (isIntersecting) near.add(target);
        else {
          near.delete(target);
          const of = placed.get(target);
          if (of) hide(of);
        }
      ask();
    },
    { rootMargin: ahead },
  );

  const hide = ({ button, veil }: Placed) => {
    if (button) button.hidden = true;
    if (veil) veil.hidden = true;
  };

  function place() {
    const all = [...near].flatMap((element) => placed.get(element) ?? []);
    const at = all.map((of) => ({
      of,
      card: of.card.element.getBoundingClientRect(),
      picture: of.card.picture.getBoundingClientRect(),
    }));
    const { x, y, scale } = host.frame();
    const shown = at.filter(
      ({ of, card }) => of.mark && card.width > 0 && of.card.element.isConnected && !isHandedOn(of.card),
    );
    for (const { of, picture, card } of shown)
      of.corner ??= freeCorner(picture.width > 0 ? picture : card, of.card);
    for (const { of, card, picture } of at) {
      if (!of.mark || card.width === 0 || isHandedOn(of.card)) {
        hide(of);
        continue;
      }
      const button = buttonOf(of);
      button.hidden = false;
      const box = picture.width > 0 ? picture : card;
      const [right, bottom] = cornersOf[of.corner ?? 0]!;
      put(button, {
        left: ((right ? box.right - inset : box.left + inset) - x) / scale,
        top: ((bottom ? box.bottom - inset : box.top + inset) - y) / scale,
      });
      button.style.translate = `${right ? '-100%' : '0'} ${bottom ? '-100%' : '0'}`;
      const veiled = of.mark.read && filters.some((filter) => !of.mark!.passes.includes(filter));
      if (veiled || of.veil) {
        of.veil ??= layer.insertBefore(draw(['div', { class: 'veil' }]), layer.firstChild) as HTMLElement;
        of.veil.hidden = !veiled;
        put(of.veil, {
          left: (card.left - x) / scale,
          top: (card.top - y) / scale,
          width: card.width / scale,
          height: card.height / scale,
        });
      }
    }
    if (open) placePopped();
  }

  function buttonOf(of: Placed): HTMLElement {
    if (of.button) return of.button;
    const button = draw(['button', { class: 'mark' }]);
    of.button = button;
    layer.append(button);
    redraw(of);
    const later = (does: () => void, ms: number) => {
      clearTimeout(timer);
      timer = setTimeout(does, ms);
    };
    const hear = (type: string, does: (event: Event) => void) =>
      button.addEventListener(type, (event) => event.isTrusted && does(event), { signal });
    hear('pointerenter', () => later(() => show(of), open ? 60 : 160));
    hear('pointerleave', () => later(() => popped.matches(':hover') || close(), 260));
    hear('focus', () => !isReturning && button.matches(':focus-visible') && show(of));
    hear('blur', (event) => {
      const to = (event as FocusEvent).relatedTarget as Node | null;
      if (open === of && !popped.contains(to) && !popped.matches(':hover')) close();
    });
    hear('click', (event) => {
      event.preventDefault();
      show(of);
      // From the keyboard: on into the card, which else would come after all marks.
      if ((event as MouseEvent).detail === 0) buttonsOf(popped)[0]?.focus();
    });
    return button;
  }

  function redraw({ button, mark }: Placed) {
    if (!button || !mark) return;
    const [, { class: names = '' }, ...children] = mark.mark;
    button.className = `mark ${names}`;
    button.setAttribute('aria-label', mark.label);
    fill(button, children, []);
  }

  function show(of: Placed) {
    clearTimeout(timer);
    if (!of.mark || open === of) return;
    close();
    open = of;
    fill(popped, of.mark.card, []);
    outOfOrder(popped);
    popped.dataset.address = of.card.address;
    popped.showPopover();
    if (of.button) of.button.ariaDescribedByElements = [popped];
    placePopped();
  }
  /** Draws the open card anew; what came of an act on it stays said, and who was in it by the keyboard stays in it. */
  function refill(mark: ShelfMark) {
    const said = popped.querySelector('.said');
    const held = focusIn();
    fill(popped, mark.card, []);
    if (said) popped.append(said);
    outOfOrder(popped);
    if (held)
      (buttonsOf(popped).find((each) => each.dataset.which === held) ?? buttonsOf(popped)[0])?.focus();
  }
  /** Which button of the open card has the focus, if any. */
  const focusIn = () => {
    const { activeElement } = popped.getRootNode() as ShadowRoot;
    return popped.contains(activeElement) ? (activeElement as HTMLElement).dataset.which : undefined;
  };
  /** From button to button; over either end the keyboard is back at the card's mark, and goes on from there. */
  function goByTab(event: KeyboardEvent) {
    if (!event.isTrusted || event.key !== 'Tab') return;
    const all = buttonsOf(popped);
    const to = all[all.findIndex((each) => each.dataset.which === focusIn()) + (event.shiftKey ? -1 : 1)];
    if (to) to.focus();
    else goBack();
    // The browser itself goes on from the mark to the next.
    if (to || event.shiftKey) event.preventDefault();
  }
  function goBack() {
    isReturning = true;
    open?.button?.focus();
    isReturning = false;
  }
  function placePopped() {
    const at = open?.button?.getBoundingClientRect();
    if (!at || open?.button?.hidden) return close();
    put(popped, placeCard(at, popped.getBoundingClientRect(), { width: innerWidth, height: innerHeight }));
  }
  function close() {
    clearTimeout(timer);
    if (!open) return;
    if (open.button) open.button.ariaDescribedByElements = null;
    open = undefined;
    if (popped.matches(':popover-open')) popped.hidePopover();
  }
  popped.addEventListener('pointerleave', ({ isTrusted }) => isTrusted && close(), { signal });
  popped.addEventListener('keydown', goByTab, { signal });
  const onEscape = ({ key, isTrusted }: KeyboardEvent) => {
    if (!isTrusted || key !== 'Escape' || !open) return;
    if (focusIn()) goBack();
    close();
  };
  doc.addEventListener('keydown', onEscape, { signal, capture: true });
  doc.addEventListener(
    'pointerdown',
    ({ target, isTrusted }) => isTrusted && !isOurs(target as Element) && close(),
    { signal, capture: true, passive: true },
  );
  for (const type of types) {
    window.addEventListener(type, ask, { signal, capture: true, passive: true });
  }
  const sizes = new ResizeObserver(ask);
  sizes.observe(doc.body);
  signal.addEventListener('abort', () => {
    seen.disconnect();
    sizes.disconnect();
    clearTimeout(timer);
  });

  return {
    popped,
    /** Draws these cards; what is drawn of others goes. */
    show(cards: ShelfCard[], marks: ReadonlyMap<string, ShelfMark>) {
      const kept = new Set(cards.map(({ element }) => element));
      for (const [element, of] of placed)
        if (!kept.has(element)) {
          seen.unobserve(element);
          near.delete(element);
          of.button?.remove();
          of.veil?.remove();
          placed.delete(element);
          if (open === of) close();
        }
      for (const card of cards) {
        const mark = marks.get(card.address);
        const of = placed.get(card.element);
        if (of && of.card.address === card.address) {
          of.card = card;
          if (of.mark === mark) continue;
          of.mark = mark;
          redraw(of);
          if (open === of && mark) refill(mark);
          continue;
        }
        of?.button?.remove();
        of?.veil?.remove();
        if (of && open === of) close();
        placed.set(card.element, { card, mark });
        seen.observe(card.element);
      }
      ask();
    },
    /** Cards that are read and do not pass all of these are dimmed, or hidden where asked. */
    filter(by: string[], hides: boolean) {
      filters = by;
      layer.classList.toggle('filtering', by.length > 0);
      layer.classList.toggle('hiding', hides);
      ask();
    },
    /** Addresses of cards in view, in page order. */
    inView: () =>
      [...placed.values()]
        .filter(({ card: { element } }) => near.has(element) && showsInView(element))
        .map(({ card }) => card.address),
    /** Says on the open card what came of an act; one that was left meanwhile hears nothing, nor the card that is about to open. */
    say(said: Drawing[]) {
      if (!open) return;
      const line = draw(['div', { role: 'status', class: 'said' }]);
      popped.querySelector('.said')?.remove();
      popped.append(line);
      fill(line, said, []);
      outOfOrder(line);
      placePopped();
    },
    /** Takes marks off what shows another product by now; what it shows is marked once it is known. */
    check() {
      for (const of of placed.values()) if (isHandedOn(of.card)) hide(of);
      ask();
    },
    close,
  };
}

const buttonsOf = (of: Element) => [...of.querySelectorAll<HTMLElement>('button')];
/** Out of the page's order: the card is entered from its mark, not after all marks. */
const outOfOrder = (of: Element) => {
  for (const each of buttonsOf(of)) each.tabIndex = -1;
};

const showsInView = (element: Element) => {
  const { top, bottom, left, right } = element.getBoundingClientRect();
  return bottom > 0 && top < innerHeight && right > 0 && left < innerWidth;
};

/** Corners of a picture, best first: [at the right, at the foot]. */
const cornersOf: [right: boolean, bottom: boolean][] = [
  [false, true],
  [true, true],
  [false, false],
  [true, false],
];

/** The first corner where nothing of the card's own (a sale sign, a heart, a quick-add button) stands; the first where all are taken or out of view. */
function freeCorner(
  { left, right, top, bottom }: DOMRect,
  { element, picture }: ShelfCard,
): number | undefined {
  const room = 18;
  if (bottom < 0 || top > innerHeight || right < 0 || left > innerWidth) return undefined;
  const corner = cornersOf.findIndex(([atRight, atFoot]) => {
    const x = atRight ? right - room : left + room;
    const y = atFoot ? bottom - room : top + room;
    const hit = doc.elementsFromPoint(x, y).find((each) => !isOurs(each));
    if (!hit) return false;
    if (hit === picture || picture.contains(hit) || hit.contains(picture)) return true;
    // A link laid over the whole card is no sign.
    const box = hit.getBoundingClientRect();
    return element.contains(hit) && box.width * box.height > (right - left) * (bottom - top) * 0.6;
  });
  return Math.max(0, corner);
}
