import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { focusOn } from './focus-on.ts';

/**
 * Each place keeps how far it was scrolled; one that is opened for something begins at its top. Where the element
 * with the focus is taken away, the focus goes to the heading of the place and never to nothing.
 */
export function useKeptPlace(view: RefObject<HTMLElement | null>, place: string, sent: boolean) {
  const scrolled = useRef<Record<string, number>>({});
  const at = useRef(place);
  useEffect(() => {
    const remember = () => {
      scrolled.current[at.current] = window.scrollY;
    };
    window.addEventListener('scroll', remember, { passive: true });
    return () => window.removeEventListener('scroll', remember);
  }, []);
  useEffect(() => {
    if (at.current === place) return;
    at.current = place;
    window.scrollTo(0, sent ? 0 : (scrolled.current[place] ?? 0));
  }, [place, sent]);
  useEffect(() => {
    const here = view.current;
    if (!here || typeof MutationObserver === 'undefined') return;
    let last: Element | null = null;
    const keep = (event: FocusEvent) => {
      last = event.target as Element;
    };
    const watch = new MutationObserver(() => {
      if (!last || last.isConnected || document.activeElement !== document.body) return;
      last = null;
      if (!focusOn(here.querySelector('h2'))) focusOn(here);
    });
    here.addEventListener('focusin', keep);
    watch.observe(here, { childList: true, subtree: true });
    return () => {
      here.removeEventListener('focusin', keep);
      watch.disconnect();
    };
  }, [view]);
}
