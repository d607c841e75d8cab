export type Size = { width: number; height: number };

/** Where the strip may stand: places by its list and corners of the view, best first. */
export const besideList = ['under', 'after', 'before'] as const;
export const corners = ['bottom-end', 'bottom-start', 'top-end', 'top-start'] as const;
export type Corner = (typeof corners)[number];
export type Where = (typeof besideList)[number] | Corner;

const edge = 12; // from the edges of the view
const gap = 10; // from the list

/** Where that is in the view now; `list` is where the list stands. */
export function placeOf(where: Where, { width, height }: Size, list: DOMRect): DOMRect {
  const end = innerWidth - edge - width;
  const foot = innerHeight - edge - height;
  const places: Record<Where, [left: number, top: number]> = {
    under: [Math.max(edge, Math.min(list.left, end)), list.bottom + gap],
    after: [list.right + gap, list.top],
    before: [list.left - gap - width, list.top],
    'bottom-end': [end, foot],
    'bottom-start': [edge, foot],
    'top-end': [end, edge],
    'top-start': [edge, edge],
  };
  return new DOMRect(...places[where], width, height);
}
