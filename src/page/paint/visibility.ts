import { ours } from '../ours.ts';
import { native, parentOf } from '../read/dom.ts';
import { doc } from './doc.ts';
import { boxOf } from './letter-boxes.ts';

/** What of the page can be seen: what crops a list, what stands over its letters or stays in the view. */

/** Ancestors that crop what they hold. */
export function croppers(from: Element | undefined): Element[] {
  const found: Element[] = [];
  for (let at = from; at && at !== doc.body; at = around(at)) {
    const { overflow, display } = getComputedStyle(at);
    if (display !== 'inline' && overflow !== 'visible') found.push(at);
  }
  return found;
}

/** The element around one, through slots and out of shadow roots. */
const around = (element: Element): Element | undefined =>
  native(element, 'assignedSlot') ?? parentOf(element) ?? undefined;

/** What croppers leave to be seen. */
export function cropOf(crops: Element[]): DOMRect {
  const boxes = crops.map(boxOf);
  const left = Math.max(...boxes.map((at) => at.left));
  const top = Math.max(...boxes.map((at) => at.top));
  const right = Math.min(...boxes.map((at) => at.right));
  const bottom = Math.min(...boxes.map((at) => at.bottom));
  return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
}

export const isOurs = (element: Element) => ours.hosts.has(element);

/** Whether something of the page stands over letters (a sticky header, a menu). Out of view: not known, so no. */
export function isCovered({ endContainer }: StaticRangeInit, x: number, y: number): boolean {
  const holder = parentOf(endContainer);
  if (!holder) return false;
  const root = native(holder, 'getRootNode')();
  const hit = 'elementFromPoint' in root ? native(root as Document, 'elementFromPoint')(x, y) : null;
  const holds = (one: Element, other: Element) => native(one, 'contains')(other);
  return !!hit && !isOurs(hit) && !holds(holder, hit) && !holds(hit, holder);
}

/** What the page keeps fixed (a sticky header) at a point. */
export function fixedAt(x: number, y: number): Element | undefined {
  let at = doc.elementsFromPoint(x, y).find((each) => !isOurs(each));
  for (; at; at = around(at)) if (/fixed|sticky/.test(getComputedStyle(at).position)) return at;
  return undefined;
}
export const isFixedAt = (x: number, y: number) => fixedAt(x, y) !== undefined;
