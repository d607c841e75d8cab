import { ours } from '../../ours.ts';
import { doc } from '../doc.ts';
import { native, parentOf } from '../dom.ts';
import { boxOf } from './letter-boxes.ts';

/** What of the page can be seen: what crops a list, what stands over its letters or stays in the view. */

type Maybe = Element | null | undefined;

/** Ancestors that crop what they hold. */
export function croppers(from: Element | undefined): Element[] {
  const all = upFrom(from);
  return all.slice(0, all.indexOf(doc.body)).filter((at) => {
    const { overflow, display } = getComputedStyle(at);
    return display !== 'inline' && overflow !== 'visible';
  });
}

/** An element and those around it, through slots and out of shadow roots. */
const upFrom = (from: Maybe): Element[] =>
  from ? [from, ...upFrom(native(from, 'assignedSlot') ?? parentOf(from))] : [];

/** What croppers leave to be seen. */
export function cropOf(crops: Element[]): DOMRect {
  const boxes = crops.map(boxOf);
  const edge = (side: 'left' | 'top' | 'right' | 'bottom', most: typeof Math.max) =>
    most(...boxes.map((at) => at[side]));
  const [left, top] = [edge('left', Math.max), edge('top', Math.max)];
  const [right, bottom] = [edge('right', Math.min), edge('bottom', Math.min)];
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
  const at = upFrom(from).find((each) => /fixed|sticky/.test(getComputedStyle(each).position));
  return at && list && holds(at, list) ? undefined : at;
}

/** What the page keeps fixed (a sticky header) at a point. */
export const fixedAt = (x: number, y: number, list?: Element): Maybe =>
  fixedAround(
    doc.elementsFromPoint(x, y).find((each) => !isOurs(each)),
    list,
  );
