import type { Drawing, DrawnElement, GlyphName } from '../../../contract/paint-order.ts';
import { glyphs } from '../../glyphs/shapes.ts';

/** A glyph as the page draws it; decoration for screen readers. */
export function drawGlyph(name: GlyphName): DrawnElement {
  const { width, height, hue, shapes } = glyphs[name];
  return [
    'svg',
    { class: `glyph ${hue}`, width, height, viewBox: `0 0 ${width} ${height}`, 'aria-hidden': 'true' },
    ...shapes.map(
      ({ as, d, width: line, dash }): Drawing => [
        'path',
        { class: as, d, ...(line && { 'stroke-width': line }), ...(dash && { 'stroke-dasharray': dash }) },
      ],
    ),
  ];
}

/**
 * Elements that come more than once are said once: `shared` holds each, and its number stands where it was.
 * What `map` calls for each drawing is the way in; the answer is `map`'s with those numbers.
 */
export function sayOnce<T>(map: (each: <D extends Drawing>(drawing: D) => Drawing) => T): {
  said: T;
  shared: DrawnElement[];
} {
  const times = new Map<string, number>();
  map((drawing) => {
    count(drawing, times);
    return drawing;
  });
  const shared: DrawnElement[] = [];
  const numbers = new Map<string, number>();
  const put = (drawing: Drawing): Drawing => {
    if (!Array.isArray(drawing)) return drawing;
    const key = JSON.stringify(drawing);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    const [tag, attributes, ...children] = drawing;
    const said: DrawnElement = [tag, attributes, ...children.map(put)];
    if (times.get(key) === 1) return said;
    numbers.set(key, shared.push(said) - 1);
    return shared.length - 1;
  };
  return { said: map(put), shared };
}

/** How often each element comes; what is inside one that has come before is not counted again. */
function count(drawing: Drawing, times: Map<string, number>): void {
  if (!Array.isArray(drawing)) return;
  const key = JSON.stringify(drawing);
  const before = times.get(key) ?? 0;
  times.set(key, before + 1);
  if (before > 0) return;
  const [, , ...children] = drawing;
  for (const child of children) count(child, times);
}
