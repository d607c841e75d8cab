/** What of a list can be seen: what crops it, and what of the page stands over its letters. */

/** Ancestors that crop what they hold. */
export function croppers(from: Element | undefined): Element[] {
  const found: Element[] = [];
  for (let at: Element | null | undefined = from; at && at !== at.ownerDocument.body; at = parentOf(at)) {
    const { overflowX, overflowY, display } = getComputedStyle(at);
    if (display !== 'inline' && (overflowX !== 'visible' || overflowY !== 'visible')) found.push(at);
  }
  return found;
}

function parentOf(element: Element): Element | null {
  const root = element.getRootNode();
  return element.assignedSlot ?? element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
}

export function cropOf(crops: Element[]): DOMRect | undefined {
  let [left, top, right, bottom] = [-1e5, -1e5, 1e5, 1e5];
  if (crops.length === 0) return undefined;
  for (const each of crops) {
    const at = each.getBoundingClientRect();
    left = Math.max(left, at.left);
    top = Math.max(top, at.top);
    right = Math.min(right, at.right);
    bottom = Math.min(bottom, at.bottom);
  }
  return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
}

/** Whether something of the page stands over the letters (a sticky header, a menu). Out of view: not known, so no. */
export function isCovered(doc: Document, points: StaticRangeInit, x: number, y: number): boolean {
  const holder = points.endContainer.parentElement;
  const root = holder?.getRootNode();
  const hit = (root instanceof ShadowRoot ? root : doc).elementFromPoint(x, y);
  if (!hit || !holder || hit.localName === 'strandline-label') return false;
  return !holder.contains(hit) && !hit.contains(holder);
}
