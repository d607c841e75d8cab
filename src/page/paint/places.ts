export type Size = { width: number; height: number };

const edge = 12; // from the edges of the view
const gap = 10; // from the list

/**
 * Places something of this size may stand at, in client pixels and best first: three by the list (under, after,
 * before it), then the corners of the view (bottom end, bottom start, top end, top start).
 */
export function placesFor({ width, height }: Size, list: DOMRect): DOMRect[] {
  const end = innerWidth - edge - width;
  const foot = innerHeight - edge - height;
  return [
    [Math.max(edge, Math.min(list.left, end)), list.bottom + gap],
    [list.right + gap, list.top],
    [list.left - gap - width, list.top],
    [end, foot],
    [edge, foot],
    [end, edge],
    [edge, edge],
  ].map(([left, top]) => new DOMRect(left, top, width, height));
}

/** Where some of them stand in that list. */
export const bottomEnd = 3;
export const bottomStart = 4;
export const isCorner = (where: number) => where >= bottomEnd;

/** In which order they are tried, by their numbers: one corner before the others. */
export const inTurn = (corner: number) => new Set([0, 1, 2, corner, bottomEnd, bottomStart, 5, 6]);
