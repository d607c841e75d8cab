import type { Finder } from '../finder.ts';
import { isSoft } from '../names/cut.ts';
import { isNameKind } from '../names/kinds.ts';
import type { Item, Stop } from '../names/step.ts';
import type { Page } from '../text/lines.ts';
import { blockAt, nodeAt, upFrom } from '../text/page-text.ts';
import type { Evidence } from './judged.ts';
import { share } from './names-say.ts';
import {
  alphabeticalFrom,
  alternating,
  fewestInLines,
  fewestStrange,
  fewestUnheaded,
  formPoints,
  longList,
  longListKnown,
  nothingElse,
  outOfOrder,
  weighedOut,
} from './thresholds.ts';

export function formSays(
  page: Page,
  names: Item[],
  stop: Stop | undefined,
  run: Item[],
  finder: Finder,
): Evidence[] {
  const n = names.length;
  const found: Evidence[] = [];
  const say = (what: keyof typeof formPoints) => found.push({ what, count: 1, points: formPoints[what] });
  const headed = stop?.stop === 'heading';
  const lines = inLines(page, names);
  if (!headed && names.slice(0, 3).some(({ kind }) => kind === 'water')) say('waterFirst');
  if (
    !headed &&
    n >= longList &&
    names.filter(({ kind }) => isNameKind(kind)).length >= n * longListKnown &&
    !lines
  )
    say('longList');
  if (!headed && areWholeLines(page, names))
    say(!stop && !lines && share(names) >= nothingElse ? 'nothingElse' : 'wholeLines');
  if (inSentence(page, names, run, finder, headed ? (stop.to ?? 0) : 0)) say('inSentence');
  const told = names.filter(
    ({ kind, after }) => !isNameKind(kind) && (after === 'dash' || after === 'stop'),
  ).length;
  if (told > 0) found.push({ what: 'explained', count: told, points: told * formPoints.explained });
  if (inTitle(page, names)) say('inTitle');
  if (lines && alternates(names)) say('alternating');
  if (areChosen(page, names, headed)) say('chosen');
  if (lines && !headed) {
    if (areLinks(page, names)) say('links');
    else if (names[0]!.kind !== 'water' || n < fewestInLines || share(names) < 1) say('oneALine');
  }
  if (!headed && isSoft(page.text.slice(names[0]!.from, names.at(-1)!.to))) say('onlyEdges');
  const sorted = names.map(({ name }) => name.replace(/[^\p{L}\p{N}]+/gu, ''));
  const back = sorted.filter((name, i) => i > 0 && sorted[i - 1]! > name).length;
  if (lines && n >= alphabeticalFrom && back <= n * outOfOrder) say('alphabetical');
  if (names.filter(({ name }) => /\(\d+\)$|\d\d-\d\d-\d/.test(name)).length > 2) say('counted');
  if (lines && names.filter(({ name }) => measure.test(name)).length >= n * weighedOut) say('weighedOut');
  return found;
}

/** "2 spoons …", "200 g …", "5 % …": an amount before a name, in any language. */
const measure = /^(?:\d[\d.,/]*|[½¼¾⅓⅔])\s?(?:\p{L}[\p{L}.]*|%)\s+\p{L}/u;

/** One name a line, hardly two in one. */
function inLines({ low }: Page, names: Item[]): boolean {
  const n = names.length;
  const letters = low.slice(names[0]!.from, names.at(-1)!.to);
  return (
    n > 2 && new Set(names.map(({ line }) => line)).size > n / 2 && letters.split(/[,;•]/).length < n / 2
  );
}

/** The names stand in a heading element: they are the title of something. */
const inTitle = ({ stream }: Page, names: Item[]): boolean =>
  [...upFrom(stream, blockAt(stream, names[0]!.from), 2)].some(({ tag }) => /^h[1-6]$/.test(tag));

/** Boxes to tick: of a filter or a form, unless they stand under a heading, begin with water and nobody asks for them. */
function areChosen({ stream }: Page, names: Item[], headed: boolean): boolean {
  const [first, last] = [names[0]!, names.at(-1)!].map(({ from }) => [
    ...upFrom(stream, blockAt(stream, from)),
  ]);
  if (![first, last].some((around) => around!.slice(0, 2).some(({ tag }) => tag === 'label'))) return false;
  return (
    !headed ||
    !names.slice(0, 2).some(({ kind }) => kind === 'water') ||
    first!.some(({ tag }) => asks.test(tag))
  );
}
const asks = /^(?:form|fieldset|aside|dialog)$/;

/** Each name is a link: what others searched for, a menu of a lexicon. */
const areLinks = ({ stream }: Page, names: Item[]): boolean =>
  names.every(({ from }) => stream.elements[stream.parents[nodeAt(stream, from)] ?? -1]?.tag === 'a');

/** Known and unknown by turns: a name and what it does, a name and what it does. */
function alternates(names: Item[]): boolean {
  const known = names.map(({ kind }) => isNameKind(kind));
  const turns = known.filter((one, i) => i > 0 && one !== known[i - 1]).length;
  return known.filter((one) => !one).length >= fewestStrange && turns >= (names.length - 1) * alternating;
}

/** Running text leads to the names, or goes on right behind them, in one sentence. */
function inSentence(
  { text, low, lines }: Page,
  names: Item[],
  run: Item[],
  { words }: Finder,
  headedTo: number,
): boolean {
  const [first, last] = [names[0]!, run.at(-1)!];
  const before = low
    .slice(Math.max(lines[first.line]!.from, first.from - 120, headedTo), first.from)
    .replace(/^[\s\S]*[.:!?\])】]\s?/, '');
  const after = low.slice(last.to, Math.min(lines[last.line]!.to, last.to + 60));
  const short = names.length < fewestUnheaded;
  return (
    words.prose.test(before) ||
    (/^\s?\p{Ll}/u.test(text.slice(last.to, last.to + 2)) && words.prose.test(after)) ||
    words.prose.test(first.name.replace(/\([^)]*\)/g, '')) ||
    (short && /\s(?:and|und|et|y|e|or|oder|ou|o)\s/.test(last.name))
  );
}

/** Nothing but names, their heading and marks in the lines of the run. */
export function areWholeLines({ text, lines }: Page, names: Item[]): boolean {
  const [first, last] = [names[0]!, names.at(-1)!];
  return (
    (first.after !== 'mark' || /^[^\p{L}]*$/u.test(text.slice(lines[first.line]!.from, first.from))) &&
    /^[^\p{L}]*$/u.test(text.slice(last.to, Math.min(lines[last.line]!.to, last.to + 200)))
  );
}
