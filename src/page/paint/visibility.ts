import { ours } from '../ours.ts';
import { native, parentOf } from '../read/dom.ts';
import { doc } from './doc.ts';
import { boxOf } from './letter-boxes.ts';
import { pointsIn } from './places.ts';

/** What of the page can be seen: what crops a list, what stands over its letters or stays in the view. */

type Maybe = Element | null | undefined;

/** Ancestors that crop what they hold. */
export function croppers(from: Element | undefined): Element[] {
  const found: Element[] = [];
  for (let at: Maybe = from; at && at !== doc.body; at = around(at)) {
    const { overflow, display } = getComputedStyle(at);
    if (display !== 'inline' && overflow !== 'visible') found.push(at);
  }
  return found;
}

/** The element around one, through slots and out of shadow roots. */
const around = (element: Element): Element | null => native(element, 'assignedSlot') ?? parentOf(element);

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

const holds = (one: Element, other: Element): boolean => native(one, 'contains')(other);

/** Whether something of the page stands over letters (a sticky header, a menu). Out of view: not known, so no. */
export function isCovered({ endContainer }: StaticRangeInit, x: number, y: number): boolean {
  const holder = parentOf(endContainer);
  if (!holder) return false;
  const root = native(holder, 'getRootNode')();
  const hit = 'elementFromPoint' in root ? native(root as Document, 'elementFromPoint')(x, y) : null;
  return !!hit && !isOurs(hit) && !holds(holder, hit) && !holds(hit, holder);
}

/** What holds an element and stays in the view (a sticky header, a bar at the foot), unless it holds the list too. */
export function fixedAround(from: Maybe, list?: Element): Maybe {
  let at = from;
  while (at && !/fixed|sticky/.test(getComputedStyle(at).position)) at = around(at);
  return at && list && holds(at, list) ? undefined : at;
}

/** What the page keeps fixed (a sticky header) at a point. */
export const fixedAt = (x: number, y: number, list?: Element): Maybe =>
  fixedAround(
    doc.elementsFromPoint(x, y).find((each) => !isOurs(each)),
    list,
  );

/** The first fixed thing met in a place; what is lower or narrower than 48 px may be missed. */
export function fixedIn(place: DOMRect, list: Element | undefined): DOMRect | undefined {
  for (const [x, y] of pointsIn(place, 48, 48)) {
    const found = fixedAt(x, y, list);
    if (found) return boxOf(found);
  }
  return undefined;
}
