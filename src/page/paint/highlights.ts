import { lines } from '../../contract/paint-order.ts';
import { ours } from '../ours.ts';

/**
 * Underlines letters through the CSS Custom Highlight API: no node of the page is touched. A page can list
 * highlights, so their names say nothing and are others in each document. Their rules: ui/describe/line-rules.ts.
 * @returns the undo
 */
export function underline(
  line: (typeof lines)[number],
  points: StaticRangeInit,
  scheme: 'light' | 'dark',
): () => void {
  const name = ours.seed + (2 * lines.indexOf(line) + Number(scheme === 'dark'));
  const range = new StaticRange(points);
  const highlight = CSS.highlights.get(name) ?? new Highlight();
  CSS.highlights.set(name, highlight.add(range));
  return () => {
    highlight.delete(range);
    if (highlight.size === 0) CSS.highlights.delete(name);
  };
}
