import type { Holder, PageText } from '../../contract/messages.ts';

/** Edge between two inline elements in a page's letters: a separator only where the names have no other. */
export const SOFT = '\v';

/** Letters that stand in no text node of a page. */
export const looseText = (text: string): PageText => ({
  text,
  starts: [],
  lengths: [],
  parents: [],
  elements: [],
});

/** Index of the text node that holds offset `at`, or of the last one before it; -1 when there is none. */
export function nodeAt({ starts }: Pick<PageText, 'starts'>, at: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (starts[middle]! <= at) low = middle + 1;
    else high = middle - 1;
  }
  return high;
}

/** The element around this one; undefined at the top. */
export const around = ({ elements }: PageText, holder: Holder): Holder | undefined => elements[holder.parent];

/** Nearest element around a place that is no inline element. */
export function blockAt(page: PageText, at: number): Holder | undefined {
  let element = page.elements[page.parents[nodeAt(page, at)] ?? -1];
  while (element && /^(?:a|b|button|em|font|i|mark|s|small|span|strong|sub|sup|u)$/.test(element.tag))
    element = around(page, element);
  return element;
}

/** A block and what is around it, nearest first, at most so many. */
export function* upFrom(page: PageText, block: Holder | undefined, most = 1000): Generator<Holder> {
  for (let at = block; at && most > 0; at = around(page, at), most--) yield at;
}
