import type { Drawing, DrawnElement } from '../../contract/paint-order.ts';
import { doc } from './doc.ts';

const svg = 'http://www.w3.org/2000/svg';

/**
 * Makes what is drawn. Text enters as an attribute that a rule of ours shows: never as HTML, and in no node where
 * the page's `window.find` could look for it. `shared` holds what a number stands for.
 */
export function draw(
  drawing: DrawnElement | number,
  shared: DrawnElement[] = [],
  inShape = false,
): HTMLElement {
  const [tag, attributes, ...children] = typeof drawing === 'number' ? shared[drawing]! : drawing;
  const isShape = inShape || tag === 'svg';
  const made = (isShape ? doc.createElementNS(svg, tag) : doc.createElement(tag)) as HTMLElement;
  for (const name in attributes) made.setAttribute(name, attributes[name] as string);
  fill(made, children, shared, isShape);
  return made;
}

/** Puts these drawings in place of what was in an element. */
export function fill(
  node: HTMLElement,
  drawings: Drawing[],
  shared: DrawnElement[],
  inShape?: boolean,
): void {
  const [only] = drawings;
  const said = typeof only === 'string' && drawings.length === 1 && !inShape;
  if (said) node.dataset.t = only;
  node.replaceChildren(
    ...(said ? [] : drawings).map((each) =>
      typeof each !== 'string' ? draw(each, shared, inShape) : inShape ? each : draw(['span', {}, each]),
    ),
  );
}

/** Sets sides of an element's box, in its own pixels. */
export function put({ style }: HTMLElement | SVGElement, sides: { [side: string]: number }): void {
  for (const side in sides) style.setProperty(side, `${sides[side]}px`);
}
