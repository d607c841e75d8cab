export type Size = { width: number; height: number };

/** Of the strip: all of it, a tag of one line, or a tab at the edge of the view that is as wide as its glyph. */
export type Form = 'open' | 'folded' | 'slim';

/** Which of the places, in which form, and how many pixels nearer to the middle than a corner stands by itself. */
export type Spot = { where: number; form: Form; lift: number };

const edge = 12; // from the edges of the view
const gap = 10; // from the list

/** The view without the browser's own scrollbars, in client pixels. */
export const viewSize = (): Size => {
  const { width, height, scale } = visualViewport!;
  return { width: Math.floor(width * scale), height: Math.floor(height * scale) };
};

/**
 * Where something of this size stands in a spot, in client pixels; of `where` the best come first: three by the
 * list (under, after, before it), then the corners of the view (bottom end, bottom start, top end, top start).
 */
export function placeAt({ width, height }: Size, list: DOMRect, { where, form, lift }: Spot): DOMRect {
  const view = viewSize();
  const away = form === 'slim' ? 0 : edge;
  const end = view.width - away - width;
  const foot = view.height - edge - height - lift;
  const [left, top] = [
    [Math.max(edge, Math.min(list.left, end)), list.bottom + gap],
    [list.right + gap, list.top],
    [list.left - gap - width, list.top],
    [end, foot],
    [away, foot],
    [end, edge + lift],
    [away, edge + lift],
  ][where]!;
  return new DOMRect(left, top, width, height);
}

/** Where some of them stand in that list. */
export const bottomEnd = 3;
export const bottomStart = 4;
const topEnd = 5;
export const isCorner = (where: number) => where >= bottomEnd;

/** How far a corner's place has to give way so that it does not stand on this. */
export const liftOver = ({ where, lift }: Spot, place: DOMRect, bar: DOMRect): number =>
  lift + (where < topEnd ? place.bottom - bar.top : bar.bottom - place.top) + 6;

/** In which order they are tried, by their numbers: one corner before the others. */
export const inTurn = (corner: number) => new Set([0, 1, 2, corner, bottomEnd, bottomStart, topEnd, 6]);
