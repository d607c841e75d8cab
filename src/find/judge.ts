import { denial, headingAnywhere, teaser } from './headings.ts';
import { botanicalName, plainName, waterName } from './names.ts';
import { type Item, isSoft, type Stop } from './names-in.ts';
import { blockAt, upFrom } from './page-text.ts';
import type { Page } from './places-to-look.ts';
import { wordsOf } from './steps.ts';

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

export const reach = 6; // lines between a heading and its list

export const isWater = (item: Item | undefined) => item !== undefined && waterName.test(item.name);

/** Whether a run of names reads as a cosmetic list, and where it begins and ends. `lead` stands before it. */
export function judge(page: Page, run: Item[], lead: Stop | undefined): Segment | undefined {
  const names = withoutStrangers(page, run, lead);
  const [first, last] = [names[0], names.at(-1)];
  if (!first || !last) return undefined;
  const tally = tallyOf(page, names);
  if (isSomethingElse(tally)) return undefined;
  const stop = leadOf(page, tally, lead);
  if (!isList(page, tally, stop, !lead)) return undefined;
  const { from, to } = endsOf(page, first, last);
  return {
    from,
    to,
    soft: isSoft(page.text.slice(from, to)),
    headed: stop?.stop === 'heading' ? (stop.inline ? 'inline' : 'line') : undefined,
    label: stop?.words || lineBefore(page, first.line),
  };
}

/** Lines of one unknown name around a list are the shop's, not the list's. */
function withoutStrangers({ stream }: Page, run: Item[], lead: Stop | undefined): Item[] {
  let names = run;
  const strange = (i: number) =>
    names.length > 1 &&
    names[i]!.kind === 'other' &&
    names[i - 1]?.line !== names[i]!.line &&
    names[i + 1]?.line !== names[i]!.line;
  const block = run[0] && blockAt(stream, run[0].from);
  const inItems = block && /^(?:li|dd|td)$/.test(block.tag);
  // the line right under a heading stays where more lines of one name follow it
  const oneALine =
    inItems || (run[1] && run[2] && run[1].line !== run[2].line && block === blockAt(stream, run[1].from));
  while (strange(0) && names[0]!.line - (lead?.line ?? -9) > (oneALine ? 1 : 0)) names = names.slice(1);
  while (
    names.length > 1 &&
    names.at(-1)!.kind === 'other' &&
    (names.at(-1)!.after === 'stop' || (strange(names.length - 1) && !inItems))
  )
    names = names.slice(0, -1);
  return names;
}

/** What the names of a run speak for. */
type Tally = {
  names: Item[];
  /** Lower-case letters of the whole run. */
  letters: string;
  cosmetic: number;
  /** Cosmetic ones under the names only labels print. */
  chemical: number;
  edible: number;
  /** Names that are cosmetic or likely. */
  sure: number;
  /** One name a line. */
  inLines: boolean;
};

function tallyOf({ low }: Page, names: Item[]): Tally {
  const n = names.length;
  const count = (kind: string) => names.filter((item) => item.kind === kind).length;
  const letters = low.slice(names[0]!.from, names.at(-1)!.to);
  const cosmetic = count('cosmetic');
  return {
    names,
    letters,
    cosmetic,
    chemical: names.filter(({ kind, name }) => kind === 'cosmetic' && !plainName.test(name)).length,
    edible: count('edible'),
    sure: cosmetic + count('likely'),
    inLines:
      n > 2 && new Set(names.map(({ line }) => line)).size > n / 2 && letters.split(/[,;•]/).length < n / 2,
  };
}

/** Food; a glossary or a menu, in the order of the alphabet; counts of a filter; a safety sheet. */
const isSomethingElse = ({ names, cosmetic, edible, inLines }: Tally): boolean =>
  cosmetic === 0 ||
  edible * 2 > cosmetic + 1 ||
  (inLines && names.length > 5 && names.every(({ name }, i) => i === 0 || names[i - 1]!.name <= name)) ||
  names.filter(({ name }) => /\(\d+\)$|\d\d-\d\d-\d/.test(name)).length > 2;

/** What leads to a list: the stop near before it, or the label of its panel, dialog or cell. */
function leadOf({ stream }: Page, { names, sure }: Tally, lead: Stop | undefined): Stop | undefined {
  const first = names[0]!;
  const n = names.length;
  const near = lead && first.line - lead.line < reach ? lead : undefined;
  const block = blockAt(stream, first.from);
  if ((near && (near.stop !== 'label' || n >= 12)) || !block || (n <= 5 && sure !== n)) return near;
  const words = ([...upFrom(stream, block, 5)].find(({ label }) => label)?.label ?? '').toLowerCase();
  const kind = denial.test(words) ? 'denial' : teaser.test(words) ? 'teaser' : 'heading';
  return kind === 'denial' || words.search(headingAnywhere) >= 0
    ? { stop: kind, line: first.line, words: '', inline: false }
    : near;
}

/** Decides by the names: the less leads to them, the more they must say themselves. */
function isList(page: Page, tally: Tally, stop: Stop | undefined, alone: boolean): boolean {
  const { names, letters, cosmetic, chemical, sure, inLines } = tally;
  const n = names.length;
  switch (stop?.stop) {
    case 'denial':
      return false;
    case 'teaser':
      return n >= 15 && cosmetic >= 7 && sure >= n * 0.7;
    case 'heading':
      return (
        (cosmetic >= 2 &&
          n >= (inLines ? 6 : chemical > 0 ? 4 : 5) &&
          sure >= n * (/[a-z]{4}/.test(letters) ? 0.6 : 0.4)) ||
        (sure === n &&
          n < 6 &&
          !inLines &&
          (n === 3 ? cosmetic > 1 && !plainName.test(letters) : botanicalName.test(letters)))
      );
    default:
      return (
        names[0]!.after !== 'mark' &&
        chemical >= 4 &&
        n >= 7 &&
        sure >= n * 0.65 &&
        (names.slice(0, 3).some(isWater) ||
          (!inLines &&
            ((n >= 15 && chemical >= 8) ||
              // a paragraph of names and nothing else, that nothing leads to
              (alone && chemical >= 5 && sure >= n * 0.85 && isWholeLine(page, names[0]!, names.at(-1)!)) ||
              names.filter(({ name }) => botanicalName.test(name)).length > 2)))
      );
  }
}

/** Offsets of a list's letters: without a number before it and a code after it, with its full stop or footnote mark. */
function endsOf({ text, low }: Page, first: Item, last: Item): { from: number; to: number } {
  const letters = low.slice(first.from, last.to);
  const number =
    /^[\u200b-\u200f\ufeff]*(?:[a-z]{0,3}\d{4,}[\w/]*(?: [a-z]?\d{1,3})?\s*[-–•:]?\s+(?=[a-z]))?/.exec(
      letters,
    )!;
  const code = letters.search(/[\s(]+(?:f\.?i\.?l\.?|code|lot|batch|ref|formula)[\s.:#][^,]*$/);
  const to = code > 0 ? first.from + code : last.to;
  const marks = /^(?:[*)\]†‡]*\s*\.+|[*)\]†‡]*)/.exec(text.slice(to, to + 4).replace(/\n[\s\S]*/, ''))!;
  return { from: first.from + number[0].length, to: to + marks[0].length };
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
