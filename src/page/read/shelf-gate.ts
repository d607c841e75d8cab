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

/**
 * Calls once, when the page has time and turns out to be a shelf, or becomes one later.
 * @returns looks again: the page has stirred
 */
export function seekShelf(signal: AbortSignal, found: () => void): () => void {
  let isFound = false;
  const look = () => {
    if (isFound || signal.aborted || !maybeShelf(document)) return;
    isFound = true;
    found();
  };
  if ('requestIdleCallback' in window) requestIdleCallback(look);
  else setTimeout(look, 50);
  return look;
}
