import type { Heading } from './headings.ts';
import { blank, levelLetters } from './letters.ts';
import { withoutRepeats } from './lists.ts';
import type { Remarks } from './no-names/remarks.ts';
import { partsOf } from './parts.ts';
import { cutPieces, type Piece } from './pieces.ts';

/** One name on the label, in the page's own letters. */
export type LabelPart = {
  raw: string;
  /** Offsets in the given text (UTF-16 units, `to` exclusive). */
  from: number;
  to: number;
  /** What to look up, best first: the whole name, then without its brackets, then its pieces. */
  names: string[];
  /** The share printed beside the name, in percent. */
  percent?: number;
  tail?: 'may-contain';
  /** Kits print several lists: amounts of different lists have nothing to do with one another. */
  list: number;
  /** For one of several names in brackets after a name: where that name begins (its `from`). */
  within?: number;
};

export type Label = {
  parts: LabelPart[];
  /** "Active / Inactive" headings: the order says nothing about amounts. */
  drugStyle: boolean;
};

type Section = { kind: Heading | 'start' | 'sub-head'; list: number; parts: LabelPart[] };

const fewestInList = 3; // names that make a list worth more than what stands before its heading
const lookahead = 300; // letters looked at to tell a list from a remark

/**
 * Label text → parts in order, with offsets true to its letters. Linear in the text; never throws. Left out:
 * what stands before the list's heading, what the label says is not in the product, sentences, legends of
 * asterisks, batch codes, and lists printed again.
 */
export function splitLabel(text: string, remarks: Remarks): Label {
  const letters = levelLetters(text);
  const sections: Section[] = [{ kind: 'start', list: 0, parts: [] }];
  let lists = 0;
  for (const piece of cutPieces(letters, remarks)) {
    const now = sections.at(-1)!;
    if (resumes(letters, piece, now, remarks)) sections.push({ kind: 'sub-head', list: ++lists, parts: [] });
    let from = skipLead(letters, piece, remarks);
    for (let turn = 0; turn < 3; turn++) {
      const heading = headingAt(
        letters,
        turn === 0 ? { ...piece, from } : { ...piece, from, after: '' },
        remarks,
      );
      if (!heading) break;
      const own = sections.at(-1)!;
      const goesOn =
        ['not-in', 'note', 'tail', 'contains'].includes(heading.kind) ||
        (heading.kind === 'inactive' && own.kind === 'active');
      sections.push({ kind: heading.kind, list: goesOn ? own.list : ++lists, parts: [] });
      from = skipLead(letters, { ...piece, from: from + heading.length }, remarks);
      if (heading.length === 0) break;
    }
    const section = sections.at(-1)!;
    if (section.kind === 'not-in' || section.kind === 'note') continue;
    const tail = section.kind === 'tail' ? { tail: 'may-contain' as const } : {};
    for (const part of partsOf(text, letters, from, piece.to, remarks))
      section.parts.push({ ...part, ...tail, list: section.list });
  }
  return {
    parts: numbered(withoutRepeats(chosen(sections))),
    drugStyle: sections.some(({ kind }) => kind === 'inactive'),
  };
}

/** A remark ends where a new paragraph goes on with a list; what is not in the product where a sentence ends and names follow. */
function resumes(letters: string, { from, to, after }: Piece, { kind }: Section, remarks: Remarks): boolean {
  if (kind !== 'not-in' && kind !== 'note') return false;
  if (kind === 'not-in' && after === '.')
    return letters[to] === ',' && !remarks.isProse(letters.slice(from, to));
  return after === '\n\n' && opensList(letters.slice(from, from + lookahead), remarks);
}

/** At least three commas, and not in a sentence. */
const opensList = (text: string, { isProse }: Remarks) => {
  const line = text.split('\n', 1)[0]!;
  return (line.match(/[,;•]/g)?.length ?? 0) >= 3 && !isProse(line);
};

/** The sections that count: from the first list heading on where there is one, and no "key ingredients" beside a list. */
function chosen(sections: Section[]): LabelPart[] {
  const first = sections.findIndex(({ kind }) => ['list', 'active', 'inactive'].includes(kind));
  const count = (of: Section[]) => of.reduce((sum, { parts }) => sum + parts.length, 0);
  const [before, after] = first < 0 ? [sections, []] : [sections.slice(0, first), sections.slice(first)];
  const from = count(after) >= Math.min(fewestInList, count(before)) ? after : sections;
  const main = from.filter(({ kind }) => kind !== 'key');
  return (count(main) >= fewestInList ? main : from).flatMap(({ parts }) => parts);
}

/** Lists numbered from 0 in the order they stand in. */
function numbered(parts: LabelPart[]): LabelPart[] {
  const numbers = new Map<number, number>();
  for (const { list } of parts) if (!numbers.has(list)) numbers.set(list, numbers.size);
  return parts.map((part) => ({ ...part, list: numbers.get(part.list)! }));
}

const skipLead = (letters: string, { from, to }: Pick<Piece, 'from' | 'to'>, { leadIn }: Remarks): number =>
  from + leadIn(letters.slice(from, Math.min(to, from + 200)));

function headingAt(letters: string, { from, to, after }: Piece, remarks: Remarks) {
  const { headingOf, leadingHeading, littleIn } = remarks;
  const text = letters.slice(from, Math.min(to, from + 160));
  const step = after === '\n\n' || after === '' ? /^\[\p{L}{3,9} ?0?\d\][\s:]*/u.exec(text) : undefined;
  if (step) return { kind: 'sub-head' as const, length: step[0].length };
  const little = littleIn(text);
  if (little) return { kind: 'contains' as const, length: little };
  const colon = /^([^:([]{2,80}(?:\([^()]{0,40}\)[^:([]{0,20})?):(?!\d|\/\/)/.exec(text);
  if (colon) {
    const kind = headingOf(colon[1]!.replaceAll(blank, ''));
    if (kind) return { kind, length: colon[0].length };
    // "רכיבים:": a heading in another script before Latin names.
    if (/\p{L}/u.test(colon[1]!) && !/\p{Script=Latin}/u.test(colon[1]!) && after !== ',')
      return { kind: 'list' as const, length: colon[0].length };
    const rest = letters.slice(from + colon[0].length, from + colon[0].length + lookahead);
    // "Glycerin: humectant, …": a name and what it does.
    if (remarks.isRemark(rest.split(/[,;.\n]/, 1)[0]!)) return undefined;
    const alone = from + colon[0].length >= to || !rest.slice(0, to - from - colon[0].length).trim();
    if (after !== ',' && (alone || opensList(rest, remarks) || leadingHeading(rest.trimStart())))
      return { kind: 'sub-head' as const, length: colon[0].length };
  }
  // "Hair Mask - Aqua, …": a title of a kit.
  const title = /^([^,;:([]{3,60}?)\s[-–—]\s/.exec(text);
  if (title && after !== ',' && remarks.isSentence(title[1]!))
    return { kind: 'sub-head' as const, length: title[0].length };
  return leadingHeading(text);
}
