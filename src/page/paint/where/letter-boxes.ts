import { native } from '../dom.ts';

/** Where letters stand on screen, in client pixels. */

// One for all questions: ranges are kept up to date by the browser, so many would slow every change of the page.
const range = new Range();

/** The box of an element of the page, which may be a form whose fields shadow its methods. */
export const boxOf = (element: Element): DOMRect => native(element, 'getBoundingClientRect')();

/** Whether it is shown, by styles too. */
export const isShown = (element: Element): boolean =>
  native(element, 'checkVisibility')({ visibilityProperty: true, opacityProperty: true });

/** One box for each line the letters stand on; none where they are not shown. */
export function boxesOf({
  startContainer,
  startOffset,
  endContainer,
  endOffset,
}: StaticRangeInit): DOMRect[] {
  range.setStart(startContainer, startOffset);
  range.setEnd(endContainer, endOffset);
  return [...range.getClientRects()].filter(({ width, height }) => width && height);
}

/** Whether a point is in a box or at most `slack` beside it. */
export const isIn = ({ left, top, right, bottom }: DOMRect, x: number, y: number, slack: number) =>
  x >= left - slack && x <= right + slack && y >= top - slack && y <= bottom + slack;
