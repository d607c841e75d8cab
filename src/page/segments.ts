import { parentOf, tagOf } from './dom.ts';
import { labelOf } from './far-label.ts';
import { denial, endsHere, goesOn, headingAnywhere, prose, teaser } from './headings.ts';
import { botanicalName, classOf, fold, type NameClass, nameHints, plainName, waterName } from './names.ts';
import { nodeAt, type Stream } from './stream.ts';

/** Part of a stream that reads as a cosmetic list. */
export type Segment = {
  from: number;
  to: number;
  /** Edges of inline elements are the separators. */
  soft: boolean;
  /** A known heading stands before it: on a line of its own, or in the same line. */
  headed: 'line' | 'inline' | undefined;
  /** Words right before the list that are no known heading: a product's name where there are several lists. */
  label: string;
};

const reachBack = 6; // lines before a line of names that may hold its heading
const reachOn = 4; // lines after it that may hold more of it
const fewestHints = 3; // names in one line, or lines of one name, worth a look without a heading
const mostLines = 12_000;
const longestName = 140;
const mostWords = 11;

type Item = { from: number; to: number; kind: NameClass; line: number; after: 'line' | 'stop' | 'mark' };
type Stop = {
  stop: 'heading' | 'label' | 'teaser' | 'denial' | 'end';
  line: number;
  words: string;
  inline: boolean;
};
type Step = Item | Stop;
type Line = { from: number; to: number };
type Page = { stream: Stream; text: string; low: string; lines: Line[] };

/** Every part of the stream that reads as a cosmetic list, in order. */
export function findSegments(stream: Stream): Segment[] {
  const { text } = stream;
  const page: Page = { stream, text, low: fold(text), lines: linesOf(text) };
  const found: Segment[] = [];
  let budget = mostLines;
  for (const [first, last] of windows(page)) {
    const steps: Step[] = [];
    for (let i = first; i <= last && budget > 0; i++, budget--) stepsOf(page, i, steps);
    segmentsOf(page, steps, found);
  }
  return found;
}

function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  for (let from = 0; from <= text.length; from = lines.at(-1)!.to + 1) {
    const next = text.indexOf('\n', from);
    lines.push({ from, to: next < 0 ? text.length : next });
  }
  return lines;
}

/** Runs of lines worth a look, as first and last index: many names in a line or in a row, or a name under a heading. */
function windows({ low, lines }: Page): [number, number][] {
  const headed = new Set<number>();
  let line = 0;
  headingAnywhere.lastIndex = 0;
  for (let hit = headingAnywhere.exec(low); hit; hit = headingAnywhere.exec(low)) {
    while (lines[line]!.to < hit.index) line++;
    headed.add(line);
  }
  const result: [number, number][] = [];
  let recent: number[] = []; // lines of the last few hits
  line = 0;
  nameHints.lastIndex = 0;
  for (let hit = nameHints.exec(low); hit; hit = nameHints.exec(low)) {
    while (lines[line]!.to < hit.index) line++;
    recent = [...recent.slice(1 - fewestHints), line];
    const { from, to } = lines[line]!;
    let worth =
      (recent.length === fewestHints && line - recent[0]! <= fewestHints) ||
      (to - from < 200 && botanicalName.test(hit[0]));
    for (let back = 0; back < reachBack && !worth; back++) worth = headed.has(line - back);
    if (!worth) continue;
    const first = Math.max(0, recent[0]! - reachBack);
    const last = Math.min(lines.length - 1, line + reachOn);
    const before = result.at(-1);
    if (before && first <= before[1] + 1) before[1] = last;
    else result.push([first, last]);
    nameHints.lastIndex = Math.max(nameHints.lastIndex, lines[line]!.to);
  }
  return result;
}

/** One line as names and stops. */
function stepsOf(page: Page, line: number, steps: Step[]): void {
  const { from: start, to: end } = page.lines[line]!;
  const whole = page.low.slice(start, end);
  let from = 0;
  for (const match of whole.matchAll(headingAnywhere)) {
    if (match.index < from || isLetter(whole[match.index - 1])) continue;
    const before = whole.slice(from, match.index);
    const rest = whole.slice(match.index + match[0].length);
    if (isLetter(rest[0])) continue;
    const short = whole.length < 120 && !/[.,;]/.test(before) && !/[,;、・•·|]|[:：]\s*\S/.test(rest);
    const alone = short && (!/(?:[\s\v][^\s\v]+){3}/.test(rest) || denial.test(whole));
    // "Ingredients: …", "Ingredients of the shampoo: …", "INGREDIENTS Aqua, …" at the start of a line
    const mark = alone
      ? [rest]
      : (/^[\s\v]*(?:[:：=>.]|[-–—][\s\v])[\s\v:：.*•–-]*/.exec(rest) ??
        (prose.test(before) ? null : /^[\s\v]*(?:\([^)]{1,60}\)|[^:,;.\v(]{1,60})[:：][\s\v]*/.exec(rest)) ??
        (/^[^a-zà-žа-я0-9]*(?:full |complete |inactive |other |all |product )?$/.test(before)
          ? /^[\s\v)\]】]*/.exec(rest)
          : null));
    if (!mark) continue;
    const till: number = match.index + match[0].length + (mark[0] ?? '').length;
    const words = before.slice(-80) + match[0] + (mark[0] ?? '');
    if (/[^\s\v][,;.][\s\v]/.test(before)) itemsOf(page, start + from, start + match.index, line, steps);
    const near = words.slice(Math.max(0, before.slice(-80).search(/[^.:;!?\n]*$/))).replace(/\([^)]*\)/, '');
    steps.push({
      stop: denial.test(near) ? 'denial' : teaser.test(near) && !/inactive/.test(near) ? 'teaser' : 'heading',
      line,
      words: wordsOf(page.text.slice(start + match.index - before.slice(-80).length, start + till)),
      inline: !alone,
    });
    from = till;
  }
  if (
    from === 0 &&
    whole.length < 90 &&
    (denialAlone.test(whole) || (/[:：][\s\v]*$/.test(whole) && denial.test(whole)))
  )
    steps.push({ stop: 'denial', line, words: '', inline: false });
  else itemsOf(page, start + from, end, line, steps);
}

/** A line that only says that something is left out: "Formulated without", "Free from:". */
const denialAlone =
  /(?:without|free (?:from|of)|never|ohne|frei von|sans|senza|sin|sem|zonder|bez|без)[^a-zа-я]*$/;

const isLetter = (letter = '') => letter.toLowerCase() !== letter.toUpperCase();

/** What a heading says beyond being one: "Shampoo ingredients:" → "Shampoo". */
const wordsOf = (words: string) =>
  words
    .replace(/^.*[.!?]\s/, '')
    .replace(new RegExp(headingAnywhere.source, 'gi'), ' ')
    .replace(/\b(?:full|complete|inactive|other|all|product|list|of|the|for|inci)\b/gi, ' ')
    .replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N})]+$/gu, '');

const marks =
  /[;،、，；•·●∙▪◦‧・｜|]+|,(?!\d)|(?<!\d),|\.(?=[\s\v]+[A-ZÀ-ÞА-Я*\d(]|[\s\v]*$)|[\s\v][-–—*/+](?=[\s\v])/g;
const softMarks = new RegExp(`${marks.source}|\\v`, 'g');
const abbreviated = /(?:denat|var|ssp|spp|no|alc|st|ext|\bc\.?i|\bf|\bl)$/;

/** Whether the edges of inline elements part the names of these letters. */
const isSoft = (part: string) => {
  const edges = part.split('\v').length - 1;
  return edges >= 3 && part.split(/[,;•·|、，]/).length - 1 < edges / 2;
};

function itemsOf(page: Page, from: number, to: number, line: number, steps: Step[]): void {
  const part = page.text.slice(from, to);
  let start = 0;
  let after: Item['after'] = 'line';
  const add = (end: number) => {
    const lead = /^[\s\v]*(?:[+–—-][\s\v]+)?/.exec(part.slice(start, end))![0].length;
    const at = from + start + lead;
    const name = page.low.slice(at, from + end).trimEnd();
    if (/[^\s\v\d.,*]/.test(name)) after = addItem(page, name, at, line, after, steps) ? 'mark' : after;
  };
  for (const match of part.matchAll(isSoft(part) ? softMarks : marks)) {
    const stop = match[0] === '.';
    if (stop && abbreviated.test(page.low.slice(from + start, from + match.index))) continue;
    add(match.index);
    start = match.index + match[0].length;
    if (stop) after = 'stop';
  }
  add(part.length);
}

/** Adds one name, or the stop that these letters are. */
function addItem(
  page: Page,
  name: string,
  at: number,
  line: number,
  after: Item['after'],
  steps: Step[],
): boolean {
  const stop = (what: Stop['stop'], words = '') => steps.push({ stop: what, line, words, inline: true });
  const item = (from: number, to: number, kind: NameClass) => steps.push({ from, to, kind, line, after });
  if (goesOn.test(name)) return item(at, at + name.length, 'shared') > 0;
  // "Shampoo: Aqua": the words before the colon are a label
  const label = /^([^:：()]{2,60})[:：][\s\v]*(?=\S)/.exec(name);
  if (label && !/\d$/.test(label[1]!)) {
    const first = name.slice(label[0].length);
    const known = classOf(first);
    if (denial.test(label[1]!) || endsHere.test(name) || known === 'other' || known === 'edible') stop('end');
    else {
      stop(teaser.test(label[1]!) ? 'teaser' : 'label', page.text.slice(at, at + label[1]!.length).trim());
      steps.push({ from: at + label[0].length, to: at + name.length, kind: known, line, after: 'stop' });
    }
    return true;
  }
  const kind = name.length > 400 ? 'other' : classOf(name);
  if (
    endsHere.test(name) ||
    (after !== 'mark' && name.search(denial) === 0) ||
    (/^[*†°]/.test(name) && /[a-z] [a-z]+ [a-z]/.test(name) && after !== 'mark')
  ) {
    stop('end');
    return true;
  }
  const words = name.split(/[\s\v]+/).length;
  const cut = cutOf(name, page.text.slice(at, at + name.length));
  if (
    cut < 0 &&
    name.length <= longestName &&
    words <= mostWords &&
    !(after === 'stop' && kind === 'other' && words > 3)
  )
    item(at, at + name.length, kind);
  else {
    const kept = name.slice(0, Math.max(0, cut)).replace(/[\s\v.([…*]+$/, '');
    const keptKind = classOf(kept);
    const sentence = after === 'mark' && /^\W*[A-ZÀ-Þ][a-zà-ž]/.test(page.text.slice(at + cut));
    if (kept.length > 2 && (/^[csl]/.test(keptKind) || sentence) && !denial.test(kept))
      item(at, at + kept.length, keptKind);
    stop('end');
  }
  return true;
}

/** Where running text begins within a name: at a word no name holds, at a new sentence, at a button; -1 nowhere. */
function cutOf(name: string, text: string): number {
  const cuts = [name.search(prose), text.search(/[\s\v.…](?=[\s\v]*[A-ZÀ-Þ][a-zà-ž]+(?: [a-zà-ž]{2,}){2})/)];
  const note = /[^\s\v,][\s\v]+\*+ ?(?=[a-zà-ž]+ [a-zà-ž]+)/.exec(name);
  if (note) cuts.push(note.index + 1);
  const button = /^([^\v]{3,}?)[\s…]*\v([^\s\d.…]{3,}(?: \S+)?)$/.exec(name);
  if (button && classOf(button[1]!) !== 'other' && classOf(button[2]!) === 'other')
    cuts.push(button[1]!.length);
  const found = cuts.filter((at) => at >= 0);
  return found.length > 0 ? Math.min(...found) : -1;
}

const isKnown = (item: Item) => item.kind !== 'other' && item.kind !== 'edible';

/** Joins names into segments and keeps those that read as cosmetic lists. */
function segmentsOf(page: Page, steps: Step[], found: Segment[]): void {
  let run: Item[] = [];
  let lead: Stop | undefined; // the last stop that says what follows
  let outer: Stop | undefined; // the last heading on a line of its own: an inline stop speaks for its own line
  let muted = -1; // line whose rest is not looked at
  const flush = () => {
    const segment = judge(page, run, lead);
    if (segment) {
      found.push(segment);
      lead = lead && { ...lead, stop: 'label', words: '' };
      outer = lead;
    }
    run = [];
  };
  for (const step of steps) {
    if ('stop' in step) {
      flush();
      if (!step.inline) outer = step;
      if (step.stop !== 'end') lead = step;
      else if (lead?.inline) lead = outer;
      muted = step.stop === 'end' || step.stop === 'denial' ? step.line : -1;
    } else if (step.line !== muted) {
      if (run.length > 0 && !joins(page, run, step)) flush();
      if (run.length === 0 && lead?.inline && step.line > lead.line) lead = outer;
      run.push(step);
    }
  }
  flush();
}

/** Whether the list goes on with `next`. */
function joins({ stream, text, low, lines }: Page, run: Item[], next: Item): boolean {
  const last = run.at(-1)!;
  const water = (item: Item) => waterName.test(low.slice(item.from, item.to));
  const anew = run.length >= 4 && next.after !== 'mark' && water(next) && run.some(water);
  if (anew) return false;
  if (last.line === next.line) return true;
  const between = text.slice(last.to, next.from);
  if (/^[)*\s\v]*[,;•·/|&]|[,;•·/|&][\s\v]*$/.test(between)) return next.line - last.line <= 2;
  if (goesOn.test(low.slice(next.from, next.to))) return true;
  const lastMany = run.at(-2)?.line === last.line;
  const { from, to } = lines[next.line]!;
  const nextMany = text.slice(from, to).split(/[,;•·]/).length > 2;
  if (next.line - last.line > 2 || (nextMany && water(next))) return false;
  if (!sameKin(stream, last.from, next.from)) return false;
  if (lastMany !== nextMany)
    return lastMany
      ? /^[cs]/.test(next.kind) && next.line - last.line === 1
      : run.filter(isKnown).length * 2 > run.length;
  return !lastMany || isKnown(next);
}

/** Whether two places stand in one block, in sibling blocks, or in the same place of sibling blocks. */
function sameKin(stream: Stream, a: number, b: number): boolean {
  let first = blockAt(stream, a);
  let second = blockAt(stream, b);
  for (let level = 0; level < 4 && first && second; level++) {
    if (first === second) return true;
    if (tagOf(first) !== tagOf(second)) return false;
    first = parentOf(first);
    second = parentOf(second);
  }
  return false;
}

/** Nearest element around a place that is no inline element. */
export function blockAt(stream: Stream, at: number): Element | null {
  const node = stream.nodes[nodeAt(stream, at)];
  let element = node ? parentOf(node) : null;
  while (element && /^(?:a|b|button|em|font|i|mark|s|small|span|strong|sub|sup|u)$/.test(tagOf(element)))
    element = parentOf(element);
  return element;
}

/** Decides by the names. */
function judge(page: Page, items: Item[], lead: Stop | undefined): Segment | undefined {
  const { text, low, stream } = page;
  let run = items;
  const inline = lead && run[0]?.line === lead.line;
  // lines of one unknown name around the list are the shop's, not the list's
  const alone = (i: number) => run[i - 1]?.line !== run[i]!.line && run[i + 1]?.line !== run[i]!.line;
  while (!inline && run.length > 1 && run[0]!.kind === 'other' && alone(0)) run = run.slice(1);
  const inItems =
    run.length > 1 &&
    /^(?:li|dd|td|button)$/.test(tagOf(blockAt(stream, run[0]!.from) ?? ({ localName: '' } as Element)));
  while (
    run.length > 1 &&
    run.at(-1)!.kind === 'other' &&
    (run.at(-1)!.after === 'stop' || (alone(run.length - 1) && !inItems))
  )
    run = run.slice(0, -1);
  if (run.length === 0) return undefined;
  const count = (kind: NameClass) => run.filter((item) => item.kind === kind).length;
  const cosmetic = count('cosmetic');
  const edible = count('edible');
  if (cosmetic === 0 || edible * 3 > cosmetic) return undefined;
  const n = run.length;
  const sure = n - edible - count('other');
  const first = run[0]!;
  const last = run.at(-1)!;
  let stop = lead && first.line - lead.line < reachBack ? lead : undefined;
  if (!stop || (stop.stop === 'label' && n < 12)) {
    const far = stream.nodes.length > 0 && (n > 5 || sure === n) ? labelOf(blockAt(stream, first.from)) : '';
    const words = far.toLowerCase();
    headingAnywhere.lastIndex = 0;
    if (denial.test(words)) return undefined;
    if (headingAnywhere.test(words))
      stop = { stop: teaser.test(words) ? 'teaser' : 'heading', line: first.line, words: '', inline: false };
  }
  const lines = new Set(run.map((item) => item.line)).size;
  const inLines = lines > n / 2 && n > 2 && text.slice(first.from, last.to).split(/[,;•]/).length < n / 2;
  if (stop?.stop === 'denial') return undefined;
  if (inLines && isSorted(run.map((item) => low.slice(item.from, item.to)))) return undefined;
  if (run.filter((item) => /\(\d+\)$|\d{2,}-\d\d-\d/.test(low.slice(item.from, item.to))).length > 2)
    return undefined;
  const letters = low.slice(first.from, last.to);
  const water = (item: Item) => waterName.test(low.slice(item.from, item.to));
  const whole = first.after !== 'mark';
  const fine =
    stop?.stop === 'teaser'
      ? n >= 15 && cosmetic >= 7 && sure >= n * 0.7
      : stop?.stop === 'heading'
        ? (cosmetic >= 2 && n >= (inLines ? 6 : 4) && sure >= n * 0.5) ||
          (sure === n &&
            n <= 5 &&
            !inLines &&
            (n === 3 ? !plainName.test(letters) && cosmetic > 1 : botanicalName.test(letters)))
        : whole &&
          cosmetic >= 4 &&
          n >= 7 &&
          sure >= n * 0.65 &&
          (!inLines || water(run[0]!) || water(run[1]!));
  if (!fine) return undefined;
  let from = first.from + /^[\u200b-\u200f\ufeff]*/.exec(text.slice(first.from, last.to))![0].length;
  let { to } = last;
  const batch = /^[a-z]{0,3}\d{4,}[\w/]*(?: [a-z]?\d{1,3})?[\s\v]*[-–•:]?[\s\v]+(?=[a-z])/.exec(
    low.slice(from, to),
  );
  if (batch) from += batch[0].length;
  const code = low.slice(from, to).search(/[\s\v(]+(?:f\.?i\.?l\.?|code|lot|batch|ref|formula)[\s.:#][^,]*$/);
  if (code > 0) to = from + code;
  const closing = /^[*)\]†‡]*[\s\v]*\.+|^[*)\]†‡]+/.exec(text.slice(to, to + 4).split('\n')[0]!);
  if (closing) to += closing[0].length;
  return {
    from,
    to,
    soft: isSoft(text.slice(from, to)),
    headed: stop?.stop === 'heading' ? (stop.inline ? 'inline' : 'line') : undefined,
    label: stop?.words || lineBefore(page, first.line),
  };
}

const isSorted = (names: string[]) =>
  names.length > 5 && names.every((name, i) => i === 0 || names[i - 1]! <= name);

/** A short line right before a list may be the name of its product. */
function lineBefore({ text, lines }: Page, line: number): string {
  const before = lines[line - 1];
  const words = before ? text.slice(before.from, before.to).trim() : '';
  return words.length < 80 && !/[.!?,;]/.test(words) ? wordsOf(words) : '';
}
