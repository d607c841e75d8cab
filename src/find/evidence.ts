import { isSoft } from './cut.ts';
import { endsOf } from './ends.ts';
import type { Finder } from './finder.ts';
import { wordsOf } from './headings.ts';
import { isNameKind, type NameKind } from './kinds.ts';
import { fold } from './letters.ts';
import type { Page } from './lines.ts';
import { blockAt, upFrom } from './page-text.ts';
import { isWater } from './runs.ts';
import type { Item, Stop } from './steps.ts';
import {
  aboutPoints,
  allKnown,
  alphabeticalFrom,
  alternating,
  bar,
  besideLetters,
  fewestDeclared,
  fewestSpecies,
  fewestStrange,
  fewestTelling,
  fewestUnheaded,
  formPoints,
  knownShare,
  leadPoints,
  longList,
  longListKnown,
  mostForNames,
  mostOwn,
  namePoints,
  nothingElse,
  outOfOrder,
  reach,
  weighedOut,
} from './thresholds.ts';

/** One reason to take a run of names for a list, or not to. */
export type Evidence = { what: string; count: number; points: number };

/** A run of names with what speaks for its being a cosmetic list. */
export type Judged = {
  isList: boolean;
  names: Item[];
  evidence: Evidence[];
  points: number;
  /** Why it cannot be one, whatever its points. */
  not?: string;
  from: number;
  to: number;
  /** The places of its names alone, where other words stand between them. */
  parts?: { from: number; to: number }[];
  /** Edges of inline elements are the separators. */
  soft: boolean;
  /** A known heading stands before it: on a line of its own, or in the same line. */
  headed: 'line' | 'inline' | undefined;
  /** The page sells it for rooms, dishes or cloth. */
  forHome: boolean;
  /** Words right before the list that are no known heading: a product's name where there are several lists. */
  label: string;
};

/** Whether a run of names reads as a cosmetic list, and where it begins and ends. `lead` stands before it. */
export function judge(
  page: Page,
  run: Item[],
  lead: Stop | undefined,
  finder: Finder,
  about: string,
): Judged | undefined {
  const names = withoutStrangers(page, run, lead);
  const [first, last] = [names[0], names.at(-1)];
  if (!first || !last) return undefined;
  const stop = leadOf(page, names, lead, finder);
  const evidence = [
    ...namesSay(names),
    ...leadSays(stop, about),
    ...formSays(page, names, stop, run, finder),
    ...pageSays(page, names, about, finder),
  ];
  const points = evidence.reduce((sum, one) => sum + one.points, 0);
  const not = whyNot(page, names, stop, finder, about);
  const { from, to } = endsOf(page, first, last);
  return {
    isList: !not && points >= bar,
    names,
    evidence,
    points,
    ...(not ? { not } : {}),
    from,
    to,
    soft: isSoft(page.text.slice(from, to)),
    headed: stop?.stop === 'heading' ? (stop.inline ? 'inline' : 'line') : undefined,
    forHome: isForHome(page, names, about, finder),
    label: stop?.words || lineBefore(page, first.line, finder),
  };
}

/** Unknown names on lines of their own around a list are the shop's, not the list's. */
function withoutStrangers({ stream }: Page, run: Item[], lead: Stop | undefined): Item[] {
  let names = run;
  const unknown = (i: number) => names[i]!.kind === 'other' || names[i]!.kind === 'foreign';
  const strange = (i: number) =>
    names.length > 1 &&
    unknown(i) &&
    names[i - 1]?.line !== names[i]!.line &&
    names[i + 1]?.line !== names[i]!.line;
  const block = run[0] && blockAt(stream, run[0].from);
  const inItems = block && /^(?:li|dd|td)$/.test(block.tag);
  // the line right under a heading stays where more lines of one name follow it
  const oneALine =
    inItems || (run[1] && run[2] && run[1].line !== run[2].line && block === blockAt(stream, run[1].from));
  while (
    names.length > 1 &&
    ((strange(0) && names[0]!.line - (lead?.line ?? -9) > (oneALine ? 1 : 0)) ||
      // "Wash – Aqua, …": a product's name before a dash
      (unknown(0) && names[1]!.after === 'dash' && names[0]!.after !== 'mark'))
  )
    names = names.slice(1);
  while (
    names.length > 1 &&
    unknown(names.length - 1) &&
    (names.at(-1)!.after === 'stop' || (strange(names.length - 1) && !inItems))
  )
    names = names.slice(0, -1);
  return names;
}

const share = (names: Item[]) => names.filter(({ kind }) => isNameKind(kind)).length / names.length;
const count = (names: Item[], kind: NameKind) => names.filter((item) => item.kind === kind).length;

function namesSay(names: Item[]): Evidence[] {
  const kinds = Object.keys(namePoints) as (keyof typeof namePoints)[];
  const told = kinds.map((kind) => {
    const number = count(names, kind);
    return { what: `${kind} names`, count: number, points: number * namePoints[kind] };
  });
  const sum = told.reduce((all, one) => all + one.points, 0);
  const over =
    sum > mostForNames ? [{ what: 'more names than prove', count: 1, points: mostForNames - sum }] : [];
  return [...told.filter((one) => one.count > 0), ...over];
}

function leadSays(stop: Stop | undefined, about: string): Evidence[] {
  const kind = stop && stop.stop !== 'end' ? stop.stop : 'none';
  const what = isProduct(stop, about) ? 'productName' : kind;
  return [
    { what: `led by ${what}${stop?.words ? ` “${stop.words}”` : ''}`, count: 1, points: leadPoints[what] },
  ];
}

/** Whether a label is the name of the product the page shows. */
const isProduct = (stop: Stop | undefined, about: string): boolean =>
  stop?.stop === 'label' && stop.words.length > 3 && about.includes(fold(stop.words));

/** One name a line, hardly two in one. */
function inLines({ low }: Page, names: Item[]): boolean {
  const n = names.length;
  const letters = low.slice(names[0]!.from, names.at(-1)!.to);
  return (
    n > 2 && new Set(names.map(({ line }) => line)).size > n / 2 && letters.split(/[,;•]/).length < n / 2
  );
}

function formSays(
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
  if (!headed && names.slice(0, 3).some(isWater)) say('waterFirst');
  if (
    !headed &&
    n >= longList &&
    names.filter(({ kind }) => isNameKind(kind)).length >= n * longListKnown &&
    !lines
  )
    say('longList');
  if (!headed && areWholeLines(page, names))
    say(!stop && !lines && share(names) >= nothingElse ? 'nothingElse' : 'wholeLines');
  if (inSentence(page, names, run, finder)) say('inSentence');
  const told = names.filter(
    ({ kind, after }) => !isNameKind(kind) && (after === 'dash' || after === 'stop'),
  ).length;
  if (told > 0) found.push({ what: 'explained', count: told, points: told * formPoints.explained });
  if (inTitle(page, names)) say('inTitle');
  if (lines && alternates(names)) say('alternating');
  if (lines && !headed) say('oneALine');
  const sorted = names.map(({ name }) => name.replace(/[^\p{L}\p{N}]+/gu, ''));
  const back = sorted.filter((name, i) => i > 0 && sorted[i - 1]! > name).length;
  if (lines && n >= alphabeticalFrom && back <= n * outOfOrder) say('alphabetical');
  if (names.filter(({ name }) => /\(\d+\)$|\d\d-\d\d-\d/.test(name)).length > 2) say('counted');
  if (lines && names.filter(({ name }) => measure.test(name)).length >= n * weighedOut) say('weighedOut');
  return found;
}

/** "2 spoons …", "200 g …": an amount before a name, in any language. */
const measure = /^(?:\d[\d.,/]*|[½¼¾⅓⅔])\s?\p{L}[\p{L}.]*\s+\p{L}/u;

/** The names stand in a heading element: they are the title of something. */
const inTitle = ({ stream }: Page, names: Item[]): boolean =>
  [...upFrom(stream, blockAt(stream, names[0]!.from), 2)].some(({ tag }) => /^h[1-6]$/.test(tag));

/** Known and unknown by turns: a name and what it does, a name and what it does. */
function alternates(names: Item[]): boolean {
  const known = names.map(({ kind }) => isNameKind(kind));
  const turns = known.filter((one, i) => i > 0 && one !== known[i - 1]).length;
  return known.filter((one) => !one).length >= fewestStrange && turns >= (names.length - 1) * alternating;
}

/** Running text leads to the names, or goes on right behind them, in one sentence. */
function inSentence({ text, low, lines }: Page, names: Item[], run: Item[], { words }: Finder): boolean {
  const [first, last] = [names[0]!, run.at(-1)!];
  const before = low
    .slice(Math.max(lines[first.line]!.from, first.from - 120), first.from)
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

function pageSays({ low }: Page, names: Item[], about: string, { words }: Finder): Evidence[] {
  const near = `${low.slice(Math.max(0, names[0]!.from - 500), names[0]!.from)}\n${low.slice(names.at(-1)!.to, names.at(-1)!.to + 500)}`;
  const say = (where: string, text: string, weight: number): Evidence[] => {
    const [cosmetic, elsewise] = [words.cosmetic.test(text), words.elsewise.test(text)];
    if (cosmetic === elsewise) return [];
    const what = cosmetic ? 'cosmetic' : 'elsewise';
    return [
      {
        what: `${where} speaks of ${cosmetic ? 'cosmetics' : 'other goods'}`,
        count: 1,
        points: aboutPoints[what] * weight,
      },
    ];
  };
  const title = say('the page’s name', about, 1);
  return title.length > 0 ? title : say('the text around', near, 0.5);
}

const nearEnough = 500; // letters around a list that speak of what it is for
const homeWords = 2; // of them in the text around, where the page's name says nothing

/** Whether the page's name, or several words around the names, speak of rooms, dishes or cloth, and none of a body. */
function isForHome({ low }: Page, names: Item[], about: string, { words }: Finder): boolean {
  let other = about; // "dish soap" is no soap
  for (const { index, length } of words.home.every(about).toReversed())
    other = `${other.slice(0, index)} ${other.slice(index + length)}`;
  if (words.cosmetic.test(other)) return false;
  if (other !== about) return true;
  const [from, to] = [names[0]!.from, names.at(-1)!.to];
  const near = `${low.slice(Math.max(0, from - nearEnough), from)}\n${low.slice(to, to + nearEnough)}`;
  const said = new Set(words.home.every(near).map(({ index, length }) => near.slice(index, index + length)));
  return (said.size >= homeWords || words.detergent.test(near)) && !words.cosmetic.test(near);
}

/** What leads to a list: the stop near before it, or the label of its panel, dialog or cell. */
function leadOf({ stream }: Page, names: Item[], lead: Stop | undefined, finder: Finder): Stop | undefined {
  const first = names[0]!;
  const near = lead && first.line - lead.line < reach ? lead : undefined;
  const block = blockAt(stream, first.from);
  if ((near && near.stop !== 'label') || !block) return near;
  const words = ([...upFrom(stream, block, 5)].find(({ label }) => label)?.label ?? '').toLowerCase();
  const kind = finder.words.denial.test(words)
    ? 'denial'
    : finder.words.teaser.test(words)
      ? 'teaser'
      : 'heading';
  return kind === 'denial' || finder.heads(words)
    ? { stop: kind, line: first.line, words: '', inline: false }
    : near;
}

/** What rules a list out. */
function whyNot(
  page: Page,
  names: Item[],
  stop: Stop | undefined,
  finder: Finder,
  about: string,
): string | undefined {
  const n = names.length;
  const headed = stop?.stop === 'heading' || isProduct(stop, about);
  if (stop?.stop === 'denial') return 'what is left out';
  const known = share(names);
  if (known < (headed ? knownShare.heading : knownShare.none))
    return `only ${Math.round(known * 100)} % are names`;
  if (n === 1) {
    const { kind, name } = names[0]!;
    const pressed = finder.words.single.ends(name.replace(/\([^)]*\)|[*†.]/g, '').trim());
    if (!headed || !pressed || (kind !== 'plant' && kind !== 'own') || !areWholeLines(page, names))
      return 'one name';
  }
  if (n <= allKnown && known < 1) return 'few names, not all known';
  if (n <= allKnown && otherGoodsBeside(page, names, finder)) return 'few names among those of other goods';
  const classes = finder.words.detergent.every(lettersOf(page, names)).length;
  if (classes >= fewestDeclared || (classes > 0 && isForHome(page, names, about, finder)))
    return 'classes of a detergent';
  if (n >= fewestSpecies && !finder.words.cosmetic.test(about) && areSpecies(names, finder))
    return 'species and no more';
  if (!headed && count(names, 'own') + count(names, 'plant') < fewestTelling) return 'no name tells';
  if (!headed && n < fewestUnheaded) return 'few names without a heading';
  if (!headed && names[0]!.after === 'mark') return 'begins in the middle of a line';
  return undefined;
}

const lettersOf = ({ low }: Page, names: Item[]) => low.slice(names[0]!.from, names.at(-1)!.to);

/** Whether the same lines print what only other goods hold, right before or behind the names. */
function otherGoodsBeside({ low, lines }: Page, names: Item[], { words }: Finder): boolean {
  const [first, last] = [names[0]!, names.at(-1)!];
  const before = low.slice(Math.max(lines[first.line]!.from, first.from - besideLetters), first.from);
  const after = low.slice(last.to, Math.min(lines[last.line]!.to, last.to + besideLetters));
  return words.otherGoods.test(before) || words.otherGoods.test(after);
}

/** Plants by their two Latin names, or an everyday name with them: nothing is said of what is taken of them. */
const areSpecies = (names: Item[], { words }: Finder): boolean =>
  count(names, 'plant') * 2 >= names.length &&
  count(names, 'own') <= names.length * mostOwn &&
  names.every(({ name }) => !words.pressed.test(name.replace(/\([^)]*\)/g, ''))) &&
  !names.some(isWater);

/** Nothing but names, their heading and marks in the lines of the run. */
function areWholeLines({ text, lines }: Page, names: Item[]): boolean {
  const [first, last] = [names[0]!, names.at(-1)!];
  return (
    (first.after !== 'mark' || /^[^\p{L}]*$/u.test(text.slice(lines[first.line]!.from, first.from))) &&
    /^[^\p{L}]*$/u.test(text.slice(last.to, Math.min(lines[last.line]!.to, last.to + 200)))
  );
}

/** A short line right before a list may be the name of its product. */
function lineBefore({ text, lines }: Page, line: number, finder: Finder): string {
  const before = lines[line - 1];
  const words = before && before.to - before.from < 80 ? text.slice(before.from, before.to).trim() : '';
  return /[.!?,;]/.test(words) ? '' : wordsOf(words, finder);
}
