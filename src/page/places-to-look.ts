import { headingAnywhere } from './headings.ts';
import { botanicalName, fold, nameHints } from './names.ts';
import type { Stream } from './stream.ts';

/** A stream with its letters folded for testing, and its lines. */
export type Page = { stream: Stream; text: string; low: string; lines: Line[] };
export type Line = { from: number; to: number };

const reachBack = 6; // lines before a line of names that may hold its heading
const reachOn = 4; // lines after it that may hold more of it
const fewestHints = 3; // names in one line, or in lines in a row, worth a look without a heading
const shortLine = 200; // letters of a line that may be one botanical name

export function pageOf(stream: Stream): Page {
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
  const headed = new Set<number>();
  const found: [number, number][] = [];
  const eachHit = (words: RegExp, visit: (line: number, hit: string) => unknown) => {
    let line = 0;
    words.lastIndex = 0;
    for (let hit = words.exec(low); hit; hit = words.exec(low)) {
      while (lines[line]!.to < hit.index) line++;
      if (visit(line, hit[0])) words.lastIndex = Math.max(words.lastIndex, lines[line]!.to);
    }
  };
  eachHit(headingAnywhere, (line) => headed.add(line));
  let recent: number[] = []; // lines of the last few hits
  eachHit(nameHints, (line, hit) => {
    recent = [...recent.slice(1 - fewestHints), line];
    const before = found.at(-1);
    let worth =
      (before !== undefined && line <= before[1] + 1) ||
      (recent.length === fewestHints && line - recent[0]! <= fewestHints) ||
      (lines[line]!.to - lines[line]!.from < shortLine && botanicalName.test(hit));
    for (let back = 0; back < reachBack && !worth; back++) worth = headed.has(line - back);
    if (!worth) return false;
    const first = Math.max(0, recent[0]! - reachBack);
    const last = Math.min(lines.length - 1, line + reachOn);
    if (before && first <= before[1] + 1) before[1] = last;
    else found.push([first, last]);
    return true;
  });
  return found;
}
