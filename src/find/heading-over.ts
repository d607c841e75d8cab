import type { Holder } from '../contract/messages.ts';
import type { Page } from './text/lines.ts';
import { blockAt, upFrom } from './text/page-text.ts';

const plainLine = 9; // rank of a line that is no heading element

const plainEnds = 3; // a heading in a plain line is over at an h3

const nameBelow = 2; // lines below a heading in which the product's name may stand as one

const shortestName = 4; // letters

/**
 * Whether a heading of the same rank or a higher one stands in a line: what the one before it headed is over. What
 * stands within that one ends nothing, nor does the name of the page's product below it.
 */
export function isOver(page: Page, heading: number, line: number, about: string): boolean {
  const [own, next] = [titleOf(page, heading), titleOf(page, line)];
  const rank = rankOf(next);
  if (rank > (own ? rankOf(own) : plainEnds) || own === next) return false;
  const { from, to } = page.lines[line]!;
  const words = page.low.slice(from, to).trim();
  return line - heading > nameBelow || words.length < shortestName || !about.includes(words);
}

/** The heading element that a line stands in. */
function titleOf({ stream, lines }: Page, line: number): Holder | undefined {
  const { from } = lines[line]!;
  return [...upFrom(stream, blockAt(stream, from), 2)].find(({ tag }) => /^h[1-6]$/.test(tag));
}

const rankOf = (title: Holder | undefined): number => (title ? Number(title.tag[1]) : plainLine);
