/** What of the page can be seen: what crops a list, what stands over its letters or stays in the view. */

/** Ancestors that crop what they hold. */
export function croppers(from: Element | undefined): Element[] {
  const found: Element[] = [];
  for (let at = from; at && at !== document.body; at = parentOf(at)) {
    const { overflow, display } = getComputedStyle(at);
    if (display !== 'inline' && overflow !== 'visible') found.push(at);
  }
  return found;
}

/** The element around one, through slots and out of shadow roots. */
const parentOf = (element: Element): Element | undefined =>
  element.assignedSlot ?? element.parentElement ?? (element.getRootNode() as ShadowRoot).host;

/** What croppers leave to be seen. */
export function cropOf(crops: Element[]): DOMRect {
  const boxes = crops.map((each) => each.getBoundingClientRect());
  const left = Math.max(...boxes.map((at) => at.left));
  const top = Math.max(...boxes.map((at) => at.top));
  const right = Math.min(...boxes.map((at) => at.right));
  const bottom = Math.min(...boxes.map((at) => at.bottom));
  return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
}

export const isOurs = (element: Element) => element.localName === 'strandline-label';

/** Whether something of the page stands over letters (a sticky header, a menu). Out of view: not known, so no. */
export function isCovered({ endContainer }: StaticRangeInit, x: number, y: number): boolean {
  const holder = endContainer.parentElement;
  const root = holder?.getRootNode() as Document | undefined;
  const hit = root?.elementFromPoint?.(x, y);
  return !!hit && !isOurs(hit) && !holder!.contains(hit) && !hit.contains(holder!);
}

/** Whether the page keeps something fixed (a sticky header) at a point. */
export function isFixedAt(x: number, y: number): boolean {
  let at = document.elementsFromPoint(x, y).find((each) => !isOurs(each));
  for (; at; at = parentOf(at)) if (/fixed|sticky/.test(getComputedStyle(at).position)) return true;
  return false;
}
