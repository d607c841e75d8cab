import { parentOf, tagOf } from './dom.ts';
import { denial, endsHere, goesOn, headingAlone, headingAnywhere, prose, tail, teaser } from './headings.ts';
import { classOf, type NameClass, nameHints, waterName } from './names.ts';
import { nodeAt, SOFT, type Stream } from './stream.ts';

/** Part of a stream that reads as a cosmetic list. */
export type Segment = {
  from: number;
  to: number;
  /** Edges of inline elements are the separators. */
  soft: boolean;
  /** A heading stands right before, and where. */
  headed: 'line' | 'inline' | undefined;
  /** Words right before the list that are no known heading: a product's name in a kit. */
  label: string;
  names: number;
};

const windowBefore = 8; // lines looked at around a line that holds names
const windowAfter = 12;
const headingReach = 5; // lines between a heading and its list
const longestName = 160;
const mostWords = 12;
const mostItems = 1500;

type Item = { from: number; to: number; kind: NameClass | 'prose'; line: number };
type Break = { stop: 'heading' | 'teaser' | 'denial' | 'end'; line: number; inline: boolean; label: string };
type Step = Item | Break;
type Line = { from: number; to: number; index: number };

/** Every part of the stream that reads as a cosmetic list, in order. */
export function findSegments(stream: Stream): Segment[] {
  const { text } = stream;
  const lines = linesOf(text);
  const found: Segment[] = [];
  for (const [first, last] of windows(text, lines)) {
    const steps: Step[] = [];
    for (let i = first; i <= last && steps.length < mostItems; i++) stepsOf(text, lines[i]!, steps);
    found.push(...segmentsOf(stream, lines, steps));
  }
  return found;
}

function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  for (let from = 0; from <= text.length; ) {
    const next = text.indexOf('\n', from);
    const to = next < 0 ? text.length : next;
    lines.push({ from, to, index: lines.length });
    from = to + 1;
  }
  return lines;
}

/** Runs of lines around those that hold names, as first and last index. */
function windows(text: string, lines: Line[]): [number, number][] {
  const result: [number, number][] = [];
  let line = 0;
  nameHints.lastIndex = 0;
  for (let hit = nameHints.exec(text); hit; hit = nameHints.exec(text)) {
    while (lines[line]!.to < hit.index) line++;
    nameHints.lastIndex = Math.max(nameHints.lastIndex, lines[line]!.to); // one hit a line is enough
    const first = Math.max(0, line - windowBefore);
    const last = Math.min(lines.length - 1, line + windowAfter);
    const before = result.at(-1);
    if (before && first <= before[1] + 1) before[1] = last;
    else result.push([first, last]);
  }
  return result;
}

// A comma parts names unless it stands between digits; a full stop only before a capital or at the end.
const separators =
  /[;،、，；•·●∙▪◦‧・｜|\v\u2022]+|(?<!\d),|,(?!\d)|(?<!\b(?:denat|var|ssp|spp|subsp|no|alc|c|st|ext|fd&c|d&c|approx|l|f))\.(?=[\s\v]+[\p{Lu}*\d(]|[\s\v]*$)|[ \v][-–—*/+][ \v]/giu;

/** One line as names, running text and breaks. */
function stepsOf(text: string, line: Line, steps: Step[]): void {
  const whole = text.slice(line.from, line.to);
  if (whole.length < 160 && headingAlone.test(whole)) {
    steps.push(breakFor(whole, line.index, false));
    return;
  }
  let from = 0;
  for (const match of whole.matchAll(headingAnywhere)) {
    const before = whole.slice(from, match.index);
    const rest = whole.slice(match.index + match[0].length);
    // "Ingredients: …", "INGREDIENTS Aqua, …" at the start, "Ingredients of the shampoo: …"
    const mark =
      /^[\s\v]*(?:(?:[:：=>]|[-–—][\s\v])[\s\v:：.*-]*|\.[\s\v]+)/u.exec(rest) ??
      (/^[^\p{L}\p{N}]*$/u.test(before) ? /^[\s\v]+(?=[\p{Lu}\p{N}(*])/u.exec(rest) : null) ??
      /^(?:[\s\v]+[^:,;.\v]{1,60}[:：]|[\s\v]*\([^)]{1,60}\)[\s\v]*[:：])[\s\v]*/u.exec(rest);
    if (!mark || match.index < from) continue;
    const end = match.index + match[0].length + mark[0].length;
    if (/\p{L}{3}/u.test(before)) itemsOf(text, line.from + from, line.from + match.index, line.index, steps);
    steps.push(breakFor(`${before.slice(-60)}${match[0]}${mark[0]}`, line.index, true));
    from = end;
  }
  itemsOf(text, line.from + from, line.to, line.index, steps);
}

const breakFor = (words: string, line: number, inline: boolean): Break => ({
  stop: denial.test(words) ? 'denial' : teaser.test(words) ? 'teaser' : 'heading',
  line,
  inline,
  label: words
    .replace(headingAnywhere, ' ')
    .replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N})]+$/gu, '')
    .slice(0, 80),
});

function itemsOf(text: string, from: number, to: number, line: number, steps: Step[]): void {
  const part = text.slice(from, to);
  let start = 0;
  const add = (end: number) => {
    const raw = part.slice(start, end);
    const lead = /^[\s\v]*(?:[*+–—-][\s\v]+)?/.exec(raw)![0].length;
    const name = raw.slice(lead).trimEnd();
    if (!name) return;
    const at = from + start + lead;
    // "Shampoo: Aqua": the words before the colon are a label, unless the list goes on there
    const label = goesOn.test(name) ? null : /^([^:：()]{2,60})[:：][\s\v]*(?=\S)/u.exec(name);
    if (label && !/\d$/.test(label[1]!)) {
      const first = name.slice(label[0].length);
      if (denial.test(label[1]!) || endsHere.test(name) || classOf(first) === 'other')
        steps.push({ stop: denial.test(name) ? 'denial' : 'end', line, inline: true, label: '' });
      else {
        steps.push({
          stop: teaser.test(label[1]!) ? 'teaser' : 'heading',
          line,
          inline: true,
          label: label[1]!.trim(),
        });
        pushItem(first, at + label[0].length, line, steps);
      }
      return;
    }
    pushItem(name, at, line, steps);
  };
  for (const match of part.matchAll(separators)) {
    add(match.index);
    start = match.index + match[0].length;
    // keep the full stop of "Alcohol Denat." style ends with the name
  }
  add(part.length);
}

function pushItem(name: string, at: number, line: number, steps: Step[]): void {
  if (!/[\p{L}\d]/u.test(name)) return;
  const kind = name.length > 400 ? 'other' : classOf(name);
  if (goesOn.test(name)) {
    steps.push({ from: at, to: at + name.length, kind: 'shared', line });
    return;
  }
  if (endsHere.test(name) && !(kind === 'cosmetic' && name.length < 60)) {
    steps.push({ stop: denial.test(name) ? 'denial' : 'end', line, inline: true, label: '' });
    return;
  }
  const cut = tail.exec(name);
  const kept = cut && cut.index > 2 ? name.slice(0, cut.index) : name;
  const words = kept.split(/[\s\v]+/).length;
  const common = kept.match(prose)?.length ?? 0;
  const running =
    kept.length > longestName ||
    words > mostWords ||
    common > (kind === 'cosmetic' ? 2 : 1) ||
    (common === 1 && kind === 'other' && words > 3);
  steps.push({
    from: at,
    to: at + kept.length,
    kind: running ? 'prose' : cut ? classOf(kept) : kind,
    line,
  });
  if (cut) steps.push({ stop: 'end', line, inline: true, label: '' });
}

/** Joins names into segments and keeps those that read as cosmetic lists. */
function segmentsOf(stream: Stream, lines: Line[], steps: Step[]): Segment[] {
  const found: Segment[] = [];
  let run: Item[] = [];
  let lead: Break | undefined; // the last break, as long as it is near
  let start: Break | undefined; // the break the run began after
  let mute = -1; // line whose rest is not looked at
  const flush = () => {
    const segment = judge(stream, lines, run, start);
    if (segment) found.push(segment);
    run = [];
  };
  for (const step of steps) {
    if ('stop' in step) {
      flush();
      lead = step;
      mute = step.stop === 'end' || step.stop === 'denial' ? step.line : -1;
      continue;
    }
    if (step.line === mute) continue;
    if (step.kind === 'prose') {
      flush();
      continue;
    }
    const last = run.at(-1);
    if (last && !joins(stream, lines, run, last, step)) flush();
    if (run.length === 0) start = lead && step.line - lead.line <= headingReach ? lead : undefined;
    run.push(step);
  }
  flush();
  return found;
}

const known = (item: Item) => item.kind === 'cosmetic' || item.kind === 'shared' || item.kind === 'plant';

/** Whether the list goes on from `last` to `next`. */
function joins(stream: Stream, lines: Line[], run: Item[], last: Item, next: Item): boolean {
  const { text } = stream;
  const startsAnew =
    run.length >= 4 &&
    waterName.test(text.slice(next.from, next.to)) &&
    run.some((item) => waterName.test(text.slice(item.from, item.to)));
  if (last.line === next.line) return !(startsAnew && /[.\n]/.test(text.slice(last.to, next.from)));
  if (startsAnew) return false;
  const line = lines[next.line]!;
  const between = text.slice(last.to, next.from);
  if (/^[.)*\s]*[,;•·/|&]|[,;•·/|&][\s\v]*$/.test(between)) return next.line - last.line <= 2;
  if (goesOn.test(text.slice(next.from, next.to))) return true;
  const lastAlone = run.filter((item) => item.line === last.line).length === 1;
  const nextWords = text.slice(line.from, line.to);
  const nextMany = (nextWords.match(/[,;•·]/g)?.length ?? 0) >= 2;
  if (!sameKin(stream, last.from, next.from))
    return nextMany && known(next) && known(last) && !lastAlone && next.line - last.line === 1;
  if (nextMany) return lastAlone ? run.filter(known).length * 2 > run.length : known(next);
  return lastAlone || known(next);
}

/** Whether two places stand in one block, in sibling blocks, or in the same place of sibling blocks. */
function sameKin(stream: Stream, a: number, b: number): boolean {
  let first: Element | null = blockAt(stream, a);
  let second: Element | null = blockAt(stream, b);
  for (let level = 0; level < 4 && first && second; level++) {
    if (first === second) return true;
    if (tagOf(first) !== tagOf(second)) return false;
    first = parentOf(first);
    second = parentOf(second);
  }
  return false;
}

const inlineTags = /^(?:a|abbr|b|bdi|bdo|big|button|em|font|i|mark|s|small|span|strong|sub|sup|u)$/;

export function blockAt(stream: Stream, at: number): Element | null {
  const node = stream.nodes[nodeAt(stream, at)];
  let element = node ? parentOf(node) : null;
  while (element && inlineTags.test(tagOf(element))) element = parentOf(element);
  return element;
}

/** Decides by the share of names. */
function judge(stream: Stream, lines: Line[], items: Item[], lead: Break | undefined): Segment | undefined {
  const { text } = stream;
  if (lead?.stop === 'denial' || items.length === 0) return undefined;
  const headed = lead?.stop === 'heading' ? lead : undefined;
  let run = items;
  // names the reader's shop put around the list, each on a line of its own
  if (!(headed && headed.line === run[0]!.line)) {
    const first = run.findIndex((item, i) => known(item) || run[i + 1]?.line === item.line);
    if (first > 0) run = run.slice(first);
  }
  while (run.length > 1 && !known(run.at(-1)!) && run.at(-1)!.line !== run.at(-2)!.line) {
    if (
      sameKin(stream, run[0]!.from, run.at(-1)!.from) &&
      /^(?:li|dd|td)$/.test(tagOf(blockAt(stream, run[0]!.from)!))
    )
      break;
    run = run.slice(0, -1);
  }
  const count = (kind: NameClass) => run.filter((item) => item.kind === kind).length;
  const n = run.length;
  const cosmetic = count('cosmetic');
  const edible = count('edible');
  const sure = cosmetic + count('shared') + count('plant');
  if (edible * 3 > cosmetic) return undefined;
  const near = headed !== undefined;
  const fine =
    lead?.stop === 'teaser'
      ? n >= 12 && cosmetic >= 6 && sure >= n * 0.7
      : near
        ? (cosmetic >= 2 && n >= 3 && sure >= n * 0.4) || (cosmetic >= 1 && n <= 4 && sure === n)
        : cosmetic >= 4 && n >= 6 && sure >= n * 0.6;
  if (!fine) return undefined;
  let from = run[0]!.from;
  let to = run.at(-1)!.to;
  const batch = /^(?:[A-Z]{0,3}\d{4,}[\w/-]*(?: \d{1,2})?[\s\v]*[-–•:]?[\s\v]+)(?=\p{L})/u.exec(
    text.slice(from, to),
  );
  if (batch) from += batch[0].length;
  const closing = /^[\s\v]*[.*)\]†‡]+/.exec(text.slice(to, to + 4));
  if (closing) to += closing[0].trimEnd().length;
  const letters = text.slice(from, to);
  void lines;
  return {
    from,
    to,
    soft: letters.split(SOFT).length > n / 2 && letters.split(/[,;•·|]/).length < n / 2,
    headed: headed ? (headed.inline ? 'inline' : 'line') : undefined,
    label: headed?.label ?? '',
    names: n,
  };
}
