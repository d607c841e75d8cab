import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { focusOn } from './focus-on.ts';

const settling = 1000; // ms in which what is worked out meanwhile may still come in above

/** Scrolls there, and again when the view grows, until the user does anything or all is there. */
function scrolledTo(top: number, view: HTMLElement | null) {
  window.scrollTo(0, top);
  if (!view || top === 0 || typeof ResizeObserver === 'undefined') return undefined;
  const watch = new ResizeObserver(() => window.scrollTo(0, top));
  watch.observe(view);
  const over = new AbortController();
  const end = () => {
    watch.disconnect();
    over.abort();
  };
  for (const event of ['wheel', 'pointerdown', 'keydown', 'touchstart'])
    window.addEventListener(event, end, { signal: over.signal, passive: true });
  setTimeout(end, settling);
  return end;
}

/** Where the focus stands: its row in a list, and the card around it. */
function standing(target: Element) {
  const row = target.closest('li, tr, [role=listitem]');
  const list = row?.parentElement;
  return { list, nth: list ? [...list.children].indexOf(row!) : 0, card: target.closest('.card') };
}

/** What comes next where something was taken away: the row that took its place, else the heading of its card. */
function next({ list, nth, card }: ReturnType<typeof standing>): Element | null | undefined {
  const row = list?.isConnected ? (list.children[nth] ?? list.lastElementChild) : undefined;
  const control = row?.querySelector('a, button:not(:disabled), input, select, summary');
  return control ?? (card?.isConnected ? card.querySelector('h3, h4') : undefined);
}

/**
 * Each place keeps how far it was scrolled; one that is opened for something begins at its top. Where the element
 * with the focus is taken away, the focus goes to the next row, to the heading of its card or of the place, and never
 * to nothing.
 */
export function useKeptPlace(view: RefObject<HTMLElement | null>, place: string, sent: boolean) {
  const scrolled = useRef<Record<string, number>>({});
  const at = useRef(place);
  // As it stands before another place is drawn: of the last scroll the browser may not have told yet.
  if (at.current !== place) scrolled.current[at.current] = window.scrollY;
  // Before it is seen: what a shorter place does to the scroll is not taken for the user's own.
  useLayoutEffect(() => {
    if (at.current === place) return;
    at.current = place;
    return scrolledTo(sent ? 0 : (scrolled.current[place] ?? 0), view.current);
  }, [place, sent]);
  useEffect(() => {
    const here = view.current;
    if (!here || typeof MutationObserver === 'undefined') return;
    let last: Element | null = null;
    let lastAt = at.current;
    let stood: ReturnType<typeof standing> | undefined;
    const keep = (event: FocusEvent) => {
      last = event.target as Element;
      lastAt = at.current;
      stood = standing(last);
    };
    const watch = new MutationObserver(() => {
      if (!last || last.isConnected || document.activeElement !== document.body) return;
      last = null;
      // Another place is scrolled as it was left.
      const stay = lastAt !== at.current;
      if (!stay && focusOn(stood && next(stood))) return;
      if (!focusOn(here.querySelector('h2'), stay)) focusOn(here, stay);
    });
    here.addEventListener('focusin', keep);
    watch.observe(here, { childList: true, subtree: true });
    return () => {
      here.removeEventListener('focusin', keep);
      watch.disconnect();
    };
  }, [view]);
}
