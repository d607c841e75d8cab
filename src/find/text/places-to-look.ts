import type { Finder } from '../finder.ts';
import type { Page } from './lines.ts';

const reachBack = 6; // lines before a line of names that may hold its heading
const reachOn = 12; // lines after it that may hold more of it
const pauseEvery = 200; // lines
const mostHeading = 20_000; // letters of a line in which a heading may stand that alone makes it worth a look
const closeLines = 3; // lines within which three words of names are worth a look without a heading

/**
 * Runs of lines worth a look, as first and last index: where words that the dictionary's names are made of stand
 * close together, or below a heading. Each word is asked of a set, so a long page costs little. Pauses now and then.
 */
export function* placesToLook({ low, lines }: Page, finder: Finder): Generator<void, [number, number][]> {
  const found: [number, number][] = [];
  let [older, old] = [-9, -9]; // lines of the two hits before
  let headed = -9; // last line with a heading word
  let reached = -9; // last line of the last place
  for (let line = 0; line < lines.length; line++) {
    const { from, to } = lines[line]!;
    if (to - from < 2) continue;
    const letters = low.slice(from, to);
    if (line % pauseEvery === 0) yield;
    if (finder.heads(letters.slice(0, mostHeading))) headed = line;
    const hits = finder.hits(letters, closeLines);
    for (let n = 0; n < hits; n++) {
      const near = line - older < closeLines;
      [older, old] = [old, line];
      if (line > reached + 1 && !near && line - headed >= reachBack) continue;
      const first = Math.max(0, line - reachBack - (near ? closeLines : 0), reached + 1);
      if (line > reached + 1 && first > reached + 1) found.push([first, line]);
      else if (found.length === 0) found.push([first, line]);
      reached = Math.min(lines.length - 1, line + reachOn);
      found.at(-1)![1] = reached;
    }
  }
  return found;
}
