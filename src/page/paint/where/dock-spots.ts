export type Size = { width: number; height: number };

/** Of the strip: all of it, a tag of one line, or a tab at the edge of the view that is as wide as its glyph. */
export type Form = 'open' | 'folded' | 'slim';

/** Which of the places, in which form, and how many pixels nearer to the middle than a corner stands by itself. */
export type DockSpot = { where: number; form: Form; lift: number };

const edge = 12; // from the edges of the view
const gap = 10; // from the list

/** Width of the view without the browser's own scrollbar, in client pixels. */
export const viewWidth = () => visualViewport!.width * visualViewport!.scale;

/**
 * Where something of this size stands in a spot, in client pixels; of `where` the best come first: three by the
 * list (under, after, before it), then the corners at the foot of the view (end, start).
 */
export function placeAt({ width, height }: Size, list: DOMRect, { where, form, lift }: DockSpot): DOMRect {
  const away = form === 'slim' ? 0 : edge;
  const end = viewWidth() - away - width;
  const foot = innerHeight - edge - height - lift;
  const [left, top] = [
    [Math.max(edge, Math.min(list.left, end)), list.bottom + gap],
    [list.right + gap, list.top],
    [list.left - gap - width, list.top],
    [end, foot],
    [away, foot],
  ][where]!;
  return new DOMRect(left, top, width, height);
}

/** Where some of them stand in that list. */
export const bottomEnd = 3;
export const bottomStart = 4;
export const isCorner = (where: number) => where >= bottomEnd;

/**
 * Points of a grid over a place, so far apart and to its edges, from its foot up: under a list most stands there. What
 * the page keeps in view is looked for at the widest: what is lower or narrower than 48 px may be missed.
 */
export function* pointsIn({ left, top, right, bottom }: DOMRect, wide = 48, high = wide) {
  for (let y = bottom - 1; y > top - high; y -= high)
    for (let x = left + 1; x < right + wide; x += wide)
      yield [Math.min(x, right - 1), Math.max(y, top + 1)] as const;
}
