import type { Mark } from '../../contract/paint-order.ts';

/**
 * Underlines letters through the CSS Custom Highlight API: no node of the page is touched. The rules are in
 * entrypoints/reader.content/style.css.
 * @returns the undo
 */
export function underline(
  line: Mark['line'] | 'at',
  points: StaticRangeInit,
  scheme: 'light' | 'dark',
): () => void {
  const name = `strandline-${line}${scheme === 'dark' ? '-dark' : ''}`;
  const range = new StaticRange(points);
  const highlight = CSS.highlights.get(name) ?? new Highlight();
  CSS.highlights.set(name, highlight.add(range));
  return () => {
    highlight.delete(range);
    if (highlight.size === 0) CSS.highlights.delete(name);
  };
}
