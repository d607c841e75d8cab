import { native } from './dom.ts';

/**
 * Whether a page may be a shelf: several links of it hold or stand by pictures, and money is spoken of. Cheap, and
 * says yes too often rather than too seldom; what a card is, the shelf's own file knows.
 */
export function maybeShelf(document: Document): boolean {
  const find = native(document, 'querySelectorAll');
  if (find('a[href]').length < 6 || find('img,picture,[style*="background-image"]').length < 3) return false;
  const words = String(native(native(document, 'documentElement'), 'textContent') ?? '');
  return /[€$£¥₹₺₩₽]\s?\d|\d\s?(?:[€£¥₹₺₩₽]|[A-Z]{3}\b|zł|Kč|kr|lei|Ft|лв|руб|円|원)|ItemList/.test(words);
}

const patience = [0, 700, 2000, 5000, 12000]; // ms after which a page that builds its shelf by script is asked again

/** Calls once, when the page has time and turns out to be a shelf, or becomes one later. */
export function seekShelf(signal: AbortSignal, found: () => void): void {
  let asked = 0;
  const look = () => {
    if (signal.aborted) return;
    if (maybeShelf(document)) return found();
    const next = patience[++asked];
    if (next !== undefined) setTimeout(idle, next);
  };
  const idle = () => ('requestIdleCallback' in window ? requestIdleCallback(look) : setTimeout(look, 50));
  idle();
  // A route of the shop's own script starts the asking anew.
  const { navigation } = window as Window & { navigation?: EventTarget };
  navigation?.addEventListener(
    'navigatesuccess',
    () => {
      if (asked < patience.length) return;
      asked = 0;
      idle();
    },
    { signal },
  );
}
