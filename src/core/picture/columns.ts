import type { Grey } from './grey.ts';
import type { Box } from './join-lines.ts';
import { ink, inkColumns } from './measure-print.ts';

const gutter = 1.2; // heights of a line: wider than any gap between words that happen to stand over each other
const narrowest = 0.15; // of all print: what is narrower is an edge or a sign

/** The columns a picture's print stands in, from left to right; none where it is one. Expects a levelled picture. */
export function columnsOf(grey: Grey, lineHeight: number): Box[] {
  const { pixels, width, height } = grey;
  const print = inkColumns(grey);
  if (!print || lineHeight <= 0) return [];
  const filled = new Uint32Array(width);
  for (let at = 0; at < pixels.length; at++) if (pixels[at]! < ink) filled[at % width]!++;
  const columns: { left: number; right: number }[] = [{ left: print.from, right: print.to }];
  let empty = 0;
  for (let x = print.from; x <= print.to; x++) {
    if (filled[x]! <= height / 500) empty++;
    else {
      if (empty >= gutter * lineHeight) {
        columns.at(-1)!.right = x - empty;
        columns.push({ left: x, right: print.to });
      }
      empty = 0;
    }
  }
  const least = narrowest * (print.to - print.from);
  if (columns.length < 2 || columns.some(({ left, right }) => right - left < least)) return [];
  const margin = Math.floor((gutter * lineHeight) / 2);
  return columns.map(({ left, right }) => ({
    left: Math.max(0, left - margin),
    top: 0,
    right: Math.min(width, right + margin),
    bottom: height,
  }));
}
