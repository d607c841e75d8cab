import type { Place } from './blank.ts';

export type Size = { width: number; height: number };
export type Corner = 'bottom-end' | 'bottom-start' | 'top-end' | 'top-start';

/** Where the strip stands, open or folded to a tag: at a place relative to its list, or in a corner of the view. */
export type Spot = { folded: boolean } & (
  | { by: 'list'; dx: number; dy: number }
  | { by: 'corner'; corner: Corner }
);

type View = { innerWidth: number; innerHeight: number };

const edge = 12; // from the edges of the view
const gap = 10; // from the list

/** Where a spot is in the view now; `at` is where its list is. */
export function placeOf(spot: Spot, size: Size, at: DOMRect | undefined, view: View): Place {
  if (spot.by === 'list' && at) return { left: at.left + spot.dx, top: at.top + spot.dy, ...size };
  const corner = spot.by === 'corner' ? spot.corner : 'bottom-end';
  return {
    left: corner.endsWith('end') ? view.innerWidth - edge - size.width : edge,
    top: corner.startsWith('top') ? edge : view.innerHeight - edge - size.height,
    ...size,
  };
}

/** Under its list, after it, before it. */
export function besideList(at: DOMRect, size: Size, folded: boolean, view: View): Spot[] {
  const inside = Math.max(edge, Math.min(at.left, view.innerWidth - size.width - edge));
  return [
    { left: inside, top: at.bottom + gap },
    { left: at.right + gap, top: at.top },
    { left: at.left - gap - size.width, top: at.top },
  ].map(({ left, top }) => ({ by: 'list', dx: left - at.left, dy: top - at.top, folded }));
}

/** The corners of the view, the reader's own first. */
export const corners = (first: Corner, folded: boolean): Spot[] =>
  [...new Set<Corner>([first, 'bottom-end', 'bottom-start', 'top-end', 'top-start'])].map((corner) => ({
    by: 'corner',
    corner,
    folded,
  }));
