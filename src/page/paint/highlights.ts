import type { Mark } from '../../ui/paint-order.ts';

/** Our names in the document's highlight registry; the rules are in entrypoints/reader.content/style.css. */
export type Line = Mark['line'] | 'at';

const nameOf = (line: Line, dark: boolean) => `strandline-${line}${dark ? '-dark' : ''}`;

/**
 * Underlines letters through the CSS Custom Highlight API: no node of the page is touched.
 * @returns the undo
 */
export function underline(marks: { line: Line; points: StaticRangeInit }[], dark: boolean): () => void {
  const added = marks.map(({ line, points }) => {
    const name = nameOf(line, dark);
    const range = new StaticRange(points);
    const highlight = CSS.highlights.get(name) ?? new Highlight();
    CSS.highlights.set(name, highlight.add(range));
    return { name, highlight, range };
  });
  return () => {
    for (const { name, highlight, range } of added) {
      highlight.delete(range);
      if (highlight.size === 0) CSS.highlights.delete(name);
    }
  };
}
