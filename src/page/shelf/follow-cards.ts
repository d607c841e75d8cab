import { attribute, native } from '../read/dom.ts';
import type { ShelfCard } from './cards.ts';

/** Whether a grid handed this card's nodes to another product since it was found. */
export const isHandedOn = ({ link, href }: ShelfCard) => attribute(link, 'href') !== href;

/**
 * Hears at once, before the page is painted anew, that a grid gave nodes of its own to another product (virtual
 * grids) or took cards away (filters of the shop), which a watch over what comes does not hear.
 */
export function followCards(doc: Document, signal: AbortSignal, changed: () => void) {
  let cards: readonly ShelfCard[] = [];
  const roots = new WeakSet<Node>();
  const observer = new MutationObserver((records) => {
    const isLink = records.some(({ type }) => type === 'attributes');
    const went = () =>
      records.some(({ removedNodes }) => removedNodes.length > 0) &&
      cards.some(({ element }) => !element.isConnected);
    if (isLink || went()) changed();
  });
  const hear = (root: Node) => {
    if (roots.has(root)) return;
    roots.add(root);
    observer.observe(root, { subtree: true, childList: true, attributeFilter: ['href'] });
  };
  hear(doc);
  signal.addEventListener('abort', () => observer.disconnect());
  return {
    /** These are the cards now; they may stand in shadow roots. */
    now(found: readonly ShelfCard[]) {
      cards = found;
      for (const { link } of found) hear(native(link, 'getRootNode')());
    },
  };
}
