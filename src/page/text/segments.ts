import type { PageText } from '../../messages.ts';
import { denial, goesOn, headingAnywhere, teaser } from './headings.ts';
import { botanicalName, plainName, waterName } from './names.ts';
import { around, blockAt, upFrom } from './page-text.ts';
import { type Page, pageOf, placesToLook } from './places-to-look.ts';
import { type Item, isSoft, type Stop, stepsOf, wordsOf } from './steps.ts';

/** Part of a page's letters that reads as a cosmetic list. */
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

const mostLines = 12_000;
const reach = 6; // lines between a heading and its list

/** Every part of a page's letters that reads as a cosmetic list, in order. */
export function findSegments(stream: PageText): Segment[] {
  const page = pageOf(stream);
  const found: Segment[] = [];
  let budget = mostLines;
  for (const [first, last] of placesToLook(page)) {
    const steps: (Item | Stop)[] = [];
    for (let i = first; i <= last && budget > 0; i++, budget--) stepsOf(page, i, steps);
    segmentsOf(page, steps, found);
  }
  return found;
}

const isKnown = ({ kind }: Item) => kind === 'cosmetic' || kind === 'likely';
const isWater = (item: Item | undefined) => item !== undefined && waterName.test(item.name);

/** Joins names into segments and keeps those that read as cosmetic lists. */
function segmentsOf(page: Page, steps: (Item | Stop)[], found: Segment[]): void {
  let run: Item[] = [];
  let lead: Stop | undefined; // the last stop that says what follows
  let outer: Stop | undefined; // the last heading on a line of its own: an inline stop speaks for its own line
  let kit: Stop | undefined; // the last plain heading: a label near it or near its list names one product of it
  let muted = -1; // line whose rest is not looked at
  const flush = () => {
    const segment = judge(page, run, lead);
    if (segment) {
      found.push(segment);
      lead = lead && { ...lead, stop: 'label', words: '' };
      outer = lead;
      if (kit) kit = { ...kit, line: run.at(-1)!.line };
    }
    run = [];
  };
  for (const step of steps) {
    if ('stop' in step) {
      flush();
      const named = step.stop === 'label' && kit && step.line - kit.line < (kit.inline ? 1 : reach);
      const now: Stop = named ? { ...step, stop: kit!.stop } : step;
      if (!now.inline) outer = now;
      if ((now.stop === 'heading' || now.stop === 'teaser') && !named) kit = now;
      if (now.stop !== 'end') lead = now;
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
function joins({ stream, text, lines }: Page, run: Item[], next: Item): boolean {
  const last = run.at(-1)!;
  if (run.length > 3 && next.after !== 'mark' && isWater(next) && run.some(isWater)) return false;
  const down = next.line - last.line;
  if (down === 0) return true;
  if (down > 2) return false;
  if (/^[)*\s]*[,;•·/|&]|[,;•·/|&]\s*$/.test(text.slice(last.to, next.from)) || goesOn.test(next.name))
    return true;
  // several names in a line, marks within brackets aside
  const many = ({ line }: Item) => {
    const { from, to } = lines[line]!;
    return (
      text
        .slice(from, to)
        .replace(/\([^)]*\)/g, '')
        .split(/[,;•·]/).length > 2
    );
  };
  const [lastMany, nextMany] = [many(last), many(next)];
  if ((nextMany && isWater(next)) || !sameKin(stream, last.from, next.from)) return false;
  if (!lastMany) return !nextMany || run.filter(isKnown).length * 2 > run.length;
  return nextMany
    ? isKnown(next)
    : down === 1 && (next.kind === 'cosmetic' || /acid|water|glycerin/.test(next.name));
}

/** Whether two places stand in one block, in sibling blocks, or in the same place of sibling blocks. */
function sameKin(stream: PageText, a: number, b: number): boolean {
  let first = blockAt(stream, a);
  let second = blockAt(stream, b);
  for (let level = 0; level < 4 && first && second; level++) {
    if (first === second) return true;
    if (first.tag !== second.tag) return false;
    first = around(stream, first);
    second = around(stream, second);
  }
  return false;
}

/** Decides by the names. */
function judge(page: Page, run: Item[], lead: Stop | undefined): Segment | undefined {
  const { text, low, stream } = page;
  // lines of one unknown name around the list are the shop's, not the list's
  const strange = (i: number) =>
    run.length > 1 &&
    run[i]!.kind === 'other' &&
    run[i - 1]?.line !== run[i]!.line &&
    run[i + 1]?.line !== run[i]!.line;
  const sameBlock = (a: Item, b: Item) => blockAt(stream, a.from) === blockAt(stream, b.from);
  let block = run[0] && blockAt(stream, run[0].from);
  const inItems = block && /^(?:li|dd|td)$/.test(block.tag);
  // the line right under a heading stays where more lines of one name follow it
  const oneALine = inItems || (run[1] && run[2] && run[1].line !== run[2].line && sameBlock(run[0]!, run[1]));
  while (strange(0) && run[0]!.line - (lead?.line ?? -9) > (oneALine ? 1 : 0)) run = run.slice(1);
  block = run[0] && blockAt(stream, run[0].from);
  while (
    run.length > 1 &&
    run.at(-1)!.kind === 'other' &&
    (run.at(-1)!.after === 'stop' || (strange(run.length - 1) && !inItems))
  )
    run = run.slice(0, -1);
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last) return undefined;
  const n = run.length;
  const count = (kind: string) => run.filter((item) => item.kind === kind).length;
  const cosmetic = count('cosmetic');
  const chemical = run.filter(({ kind, name }) => kind === 'cosmetic' && !plainName.test(name)).length;
  const edible = count('edible');
  const sure = cosmetic + count('likely');
  const letters = low.slice(first.from, last.to);
  const inLines =
    n > 2 && new Set(run.map(({ line }) => line)).size > n / 2 && letters.split(/[,;•]/).length < n / 2;
  if (
    cosmetic === 0 ||
    edible * 2 > cosmetic + 1 ||
    // a glossary or a menu; counts of a filter; a safety sheet
    (inLines && n > 5 && run.every(({ name }, i) => i === 0 || run[i - 1]!.name <= name)) ||
    run.filter(({ name }) => /\(\d+\)$|\d\d-\d\d-\d/.test(name)).length > 2
  )
    return undefined;
  let stop = lead && first.line - lead.line < reach ? lead : undefined;
  if ((!stop || (stop.stop === 'label' && n < 12)) && block && (n > 5 || sure === n)) {
    // the label of a panel, dialog or cell that does not stand beside its text
    const words = ([...upFrom(stream, block, 5)].find(({ label }) => label)?.label ?? '').toLowerCase();
    const kind = denial.test(words) ? 'denial' : teaser.test(words) ? 'teaser' : 'heading';
    if (kind === 'denial' || words.search(headingAnywhere) >= 0)
      stop = { stop: kind, line: first.line, words: '', inline: false };
  }
  const fine = {
    denial: false,
    teaser: n >= 15 && cosmetic >= 7 && sure >= n * 0.7,
    heading:
      (cosmetic >= 2 &&
        n >= (inLines ? 6 : chemical > 0 ? 4 : 5) &&
        sure >= n * (/[a-z]{4}/.test(letters) ? 0.6 : 0.4)) ||
      (sure === n &&
        n < 6 &&
        !inLines &&
        (n === 3 ? cosmetic > 1 && !plainName.test(letters) : botanicalName.test(letters))),
    other:
      first.after !== 'mark' &&
      chemical >= 4 &&
      n >= 7 &&
      sure >= n * 0.65 &&
      (run.slice(0, 3).some(isWater) ||
        (!inLines &&
          ((n >= 15 && chemical >= 8) ||
            // a paragraph of names and nothing else, that nothing leads to
            (!lead && chemical >= 5 && sure >= n * 0.85 && isWholeLine(page, first, last)) ||
            run.filter(({ name }) => botanicalName.test(name)).length > 2))),
  };
  const how = stop?.stop ?? 'other';
  if (!(how in fine ? fine[how as 'heading'] : fine.other)) return undefined;
  let { from } = first;
  let { to } = last;
  from += /^[\u200b-\u200f\ufeff]*(?:[a-z]{0,3}\d{4,}[\w/]*(?: [a-z]?\d{1,3})?\s*[-–•:]?\s+(?=[a-z]))?/.exec(
    letters,
  )![0].length;
  const code = letters.search(/[\s(]+(?:f\.?i\.?l\.?|code|lot|batch|ref|formula)[\s.:#][^,]*$/);
  if (code > 0) to = first.from + code;
  to += /^(?:[*)\]†‡]*\s*\.+|[*)\]†‡]*)/.exec(text.slice(to, to + 4).replace(/\n[\s\S]*/, ''))![0].length;
  return {
    from,
    to,
    soft: isSoft(text.slice(from, to)),
    headed: stop?.stop === 'heading' ? (stop.inline ? 'inline' : 'line') : undefined,
    label: stop?.words || lineBefore(page, first.line),
  };
}

const isWholeLine = ({ text, lines }: Page, first: Item, last: Item): boolean =>
  first.line === last.line &&
  /^[^\p{L}]*$/u.test(text.slice(lines[first.line]!.from, first.from)) &&
  /^[^\p{L}]*$/u.test(text.slice(last.to, lines[last.line]!.to));

/** A short line right before a list may be the name of its product. */
function lineBefore({ text, lines }: Page, line: number): string {
  const before = lines[line - 1];
  const words = before ? text.slice(before.from, before.to).trim() : '';
  return words.length < 80 && !/[.!?,;]/.test(words) ? wordsOf(words) : '';
}
