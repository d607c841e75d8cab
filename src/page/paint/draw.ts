import type { Drawing, DrawnElement } from '../../contract/paint-order.ts';

const svg = 'http://www.w3.org/2000/svg';

/** Makes what is drawn; text enters as text, never as HTML. `shared` holds what a number stands for. */
export function draw(
  drawing: DrawnElement | number,
  shared: DrawnElement[] = [],
  inShape = false,
): HTMLElement {
  const [tag, attributes, ...children] = typeof drawing === 'number' ? shared[drawing]! : drawing;
  const isShape = inShape || tag === 'svg';
  const made = (isShape ? document.createElementNS(svg, tag) : document.createElement(tag)) as HTMLElement;
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
  node.replaceChildren(
    ...drawings.map((each) => (typeof each === 'string' ? each : draw(each, shared, inShape))),
  );
}

/** Sets sides of an element's box, in its own pixels. */
export function put({ style }: HTMLElement | SVGElement, sides: { [side: string]: number }): void {
  for (const side in sides) style.setProperty(side, `${sides[side]}px`);
}
