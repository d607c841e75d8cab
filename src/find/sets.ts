import type { JudgedRun } from './evidence/judged.ts';
import { fewestUnheaded } from './evidence/thresholds.ts';
import type { Finder } from './finder.ts';
import type { Item, Stop } from './names/step.ts';
import type { Page } from './text/lines.ts';

/** A run that was no list by itself, and what led to it. */
export type OpenSet = { run: Item[]; lead: Stop; at: number };

const longestTitle = 80; // letters

/** Whether a line says something of a list rather than whose it is. */
const speaks = (name: string, words: Finder['words']): boolean =>
  [words.denial, words.teaser, words.ends, words.prose].some((test) => test.test(name));

/** "LOT 2026:" on a line of its own, after another list: what headed that one heads the next. */
export function labelsAList(
  { low, lines }: Page,
  { name, from, to, line, kind }: Item,
  { words }: Finder,
): boolean {
  return (
    kind === 'other' &&
    /[:：]$/.test(name) &&
    low.slice(lines[line]!.from, lines[line]!.to).trim() === low.slice(from, to) &&
    !speaks(name, words)
  );
}

/** A run of one unknown name that fills a short line: it may be the title of the list on the next. */
export const titleIn = ({ low, lines }: Page, run: Item[], { words }: Finder): Item | undefined => {
  const [only] = run;
  if (!only || run.length > 1 || only.kind !== 'other' || only.name.length > longestTitle) return undefined;
  const { from, to } = lines[only.line]!;
  const beside = low.slice(from, only.from) + low.slice(only.to, to);
  return speaks(only.name, words) || /[\p{L}\p{N}]/u.test(beside) || /[.!?]$/.test(beside.trim())
    ? undefined
    : only;
};

/** Whether a list goes under a title of its own right below another one's, and is no excerpt of that one. */
export function isTitled(
  { low }: Page,
  title: Item | undefined,
  run: Item[],
  before: JudgedRun | undefined,
): boolean {
  if (!title || !before || run.length < fewestUnheaded || title.from < before.to) return false;
  if (/\p{L}/u.test(low.slice(title.to, run[0]!.from))) return false;
  const had = new Set(before.names.map(({ name }) => name));
  return run.length >= had.size || run.some(({ name }) => !had.has(name));
}
