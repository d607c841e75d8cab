import type { Drawing, DrawnElement } from '../../ui/paint-order.ts';

const html = 'http://www.w3.org/1999/xhtml';
const svg = 'http://www.w3.org/2000/svg';

/** Makes what is drawn; text enters as text, never as HTML. `shared` holds what a number stands for. */
export function draw(drawing: DrawnElement | number, shared: DrawnElement[] = [], space = html): HTMLElement {
  const [tag, attributes, ...children] = typeof drawing === 'number' ? shared[drawing]! : drawing;
  const inside = tag === 'svg' ? svg : space;
  const made = document.createElementNS(inside, tag) as HTMLElement;
  for (const name in attributes) made.setAttribute(name, String(attributes[name]));
  fill(made, children, shared, inside);
  return made;
}

/** Puts these drawings in place of what was in an element. */
export function fill(node: HTMLElement, drawings: Drawing[], shared: DrawnElement[], space?: string): void {
  node.replaceChildren(
    ...drawings.map((each) => (typeof each === 'string' ? each : draw(each, shared, space))),
  );
}
