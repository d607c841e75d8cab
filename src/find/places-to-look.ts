import type { PageText } from '../contract/messages.ts';
import { headingAnywhere } from './headings.ts';
import { botanicalName, fold, nameHints } from './names.ts';

/** A stream with its letters folded for testing, and its lines. */
export type Page = { stream: PageText; text: string; low: string; lines: Line[] };
export type Line = { from: number; to: number };

const reachBack = 6; // lines before a line of names that may hold its heading
const reachOn = 12; // lines after it that may hold more of it
const fewestHints = 3; // lines within which three names are worth a look without a heading
const shortLine = 200; // letters of a line that may be one botanical name

export function pageOf(stream: PageText): Page {
  const { text } = stream;
  const lines: Line[] = [];
  for (let from = 0; from <= text.length; from = lines.at(-1)!.to + 1) {
    const next = text.indexOf('\n', from);
    lines.push({ from, to: next < 0 ? text.length : next });
  }
  return { stream, text, low: fold(text), lines };
}

/** Runs of lines worth a look, as first and last index: many names in a line or in a row, or a name under a heading. */
export function placesToLook({ low, lines }: Page): [number, number][] {
  const found: [number, number][] = [];
  const eachHit = (words: RegExp, visit: (line: number, hit: string) => unknown) => {
    let line = 0;
    words.lastIndex = 0;
    for (let hit = words.exec(low); hit; hit = words.exec(low)) {
      while (lines[line]!.to < hit.index) line++;
      if (visit(line, hit[0])) words.lastIndex = Math.max(words.lastIndex, lines[line]!.to);
    }
  };
  const headed: number[] = [];
  eachHit(headingAnywhere, (line) => headed.push(line));
  let heading = 0; // the next heading in `headed`
  let [older, old] = [-9, -9]; // lines of the two hits before
  let reached = -9; // last line of the last place
  eachHit(nameHints, (line, hit) => {
    while (headed[heading]! <= line) heading++;
    const first = Math.max(0, (line - older <= fewestHints ? older : line) - reachBack);
    const worth =
      line <= reached + 1 ||
      line - older <= fewestHints ||
      line - (headed[heading - 1] ?? -9) < reachBack ||
      (botanicalName.test(hit) && lines[line]!.to - lines[line]!.from < shortLine);
    older = old;
    old = line;
    if (!worth) return false;
    if (first > reached + 1) found.push([first, line]);
    reached = Math.min(lines.length - 1, line + reachOn);
    found.at(-1)![1] = reached;
    return true;
  });
  return found;
}
