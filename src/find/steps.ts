import { type After, type Cut, cutsOf } from './cut.ts';
import type { Finder } from './finder.ts';
import { headingStops, type Placed } from './headings.ts';
import { isKnownKind, isNameKind, type NameKind } from './kinds.ts';
import { trimmedEnd } from './letters.ts';
import type { Page } from './lines.ts';

export type Step = Item | Stop;
export type Item = { from: number; to: number; line: number; name: string; kind: NameKind; after: After };
/** Something that is no name: what follows is a list, a choice of names, what is left out, or no list. */
export type Stop = {
  stop: 'heading' | 'label' | 'teaser' | 'denial' | 'end';
  line: number;
  /** What a heading or label says beyond being one: "Shampoo ingredients:" → "Shampoo". */
  words: string;
  inline: boolean;
};

const mostSteps = 4000; // of one place: longer lists than any label's
const pauseEvery = 100; // names
const longestName = 140; // letters
const mostWords = 11; // words of an unknown name
const namesAsked = 3; // names behind a stray that are looked at
const mostUnknown = 3; // words of an unknown name behind a label
const mostLabel = 4; // words of a label behind a name
const longestLine = 400_000; // letters of one line that are read

/** One line as names and stops, in order. Pauses now and then. */
export function* stepsOf(page: Page, line: number, finder: Finder, steps: Step[]): Generator<void, void> {
  const { from, to } = page.lines[line]!;
  const end = Math.min(to, from + longestLine);
  function* names(at: number, until: number) {
    const cuts = cutsOf(page, at, until);
    for (const [i, cut] of cuts.entries()) {
      if (steps.length >= mostSteps) return;
      if (i % pauseEvery === pauseEvery - 1) yield;
      const found = stepsOfCut(page, cut, line, finder);
      const last = found.at(-1);
      const ends = last && 'stop' in last && last.stop === 'end';
      if (ends && cut.after === 'mark' && namesGoOn(page, cuts.slice(i + 1, i + 1 + namesAsked), finder))
        steps.push(...asNames(page, cut, line, found));
      else steps.push(...found);
    }
  }
  let at = from;
  for (const placed of headingStops(page, { from, to: end }, finder)) {
    if (placed.before) yield* names(at, placed.from);
    steps.push(stopOf(placed, line));
    at = placed.to;
  }
  yield* names(at, end);
}

/** Whether names stand behind a stretch that is none: then it is a stray among them, and the list goes on. */
function namesGoOn({ low }: Page, next: Cut[], { kindOf }: Finder): boolean {
  const known = next.filter(
    ({ from, to }) => to - from <= longestName && isKnownKind(kindOf(low.slice(from, to))),
  );
  return (
    next.length > 0 && known.length >= Math.min(2, next.length) && next.every(({ after }) => after === 'mark')
  );
}

function asNames({ low }: Page, { from, to, after }: Cut, line: number, found: Step[]): Step[] {
  const items = found.filter((step) => !('stop' in step));
  return items.length > 0 ? items : [{ from, to, line, name: low.slice(from, to), kind: 'other', after }];
}

const stopOf = ({ stop, words, inline }: Placed, line: number): Stop => ({ stop, line, words, inline });

/** What the letters between two marks are: a name, a label and a name, the end of a list, or a name and the end. */
function stepsOfCut({ text, low }: Page, cut: Cut, line: number, finder: Finder): Step[] {
  const { words, kindOf } = finder;
  const name = low.slice(cut.from, Math.min(cut.to, cut.from + 4 * longestName));
  const raw = text.slice(cut.from, cut.from + name.length);
  const item = (skip: number, length: number, kind: NameKind, after = cut.after): Item => ({
    from: cut.from + skip,
    to: cut.from + length,
    line,
    name: name.slice(skip, length),
    kind,
    after,
  });
  const stop = (what: Stop['stop'], said = ''): Stop => ({ stop: what, line, words: said, inline: true });
  /** A name where running text takes over, if it is one. */
  const kept = (length: number, sure = false): Item[] => {
    const end = trimmedEnd(name.replace(/[.([…*]/g, ' '), 0, length);
    const kind = end > 1 ? kindOf(name.slice(0, end)) : 'other';
    return isNameKind(kind) || (sure && end > 2) ? [item(0, end, kind)] : [];
  };
  if (words.goesOn.begins(name)) return [item(0, cut.to - cut.from, 'built')];

  const label = labelOf(name, cut.after);
  if (label) {
    const own = kindOf(label.words);
    if (cut.after === 'mark' && isKnownKind(own)) return [item(0, name.length, own)];
    const kind = kindOf(name.slice(label.length));
    // "Essential oils of: amethyst, …": the first name may be one nobody knows
    const rest = name.slice(label.length);
    if (
      cut.after !== 'mark' &&
      kind === 'other' &&
      rest.split(/\s+/).length <= mostUnknown &&
      !words.ends.begins(name) &&
      !words.denial.test(name) &&
      !words.prose.test(name)
    )
      return [item(label.length, name.length, kind, 'stop')];
    if (
      words.denial.test(label.words) ||
      words.ends.begins(name) ||
      /^[*†°]/.test(name) ||
      !isNameKind(kind)
    ) {
      // "Citric Acid Caution: …": a name may stand before the label
      const before = beforeLabel(label.words, finder);
      return [...(cut.after === 'mark' && before > 0 ? kept(before) : []), stop('end')];
    }
    return [
      stop(
        words.teaser.test(label.words) ? 'teaser' : 'label',
        raw.slice(label.skip, label.skip + label.words.length).trim(),
      ),
      item(label.length, name.length, kind, 'stop'),
    ];
  }

  const kind = name.length > longestName ? 'other' : kindOf(name);
  const told = proseAt(name, raw, finder);
  if (isKnownKind(kind) && told < 0) return [item(0, name.length, kind)];
  if (
    words.ends.begins(name) ||
    (cut.after !== 'mark' &&
      (words.denial.begins(name) || words.glued.test(name) || /^[*†°].*[a-z] [a-z]+ [a-z]/.test(name)))
  )
    return [stop('end')];
  const count = name.split(/\s+/).length;
  // "Curl Milk", an inline edge, "Aqua": the name begins behind the edge
  const edge = name.lastIndexOf('\v');
  if (edge > 0 && cut.after !== 'mark' && !isNameKind(kind) && isKnownKind(kindOf(name.slice(edge + 1))))
    return [
      stop('label', raw.slice(0, edge).trim()),
      item(edge + 1, name.length, kindOf(name.slice(edge + 1)), 'stop'),
    ];
  if (
    told < 0 &&
    name.length <= longestName &&
    count <= mostWords &&
    !(cut.after === 'stop' && kind === 'other' && count > 3)
  )
    return [item(0, name.length, kind)];
  if (told < 0) return [stop('end')];
  const sentence = cut.after === 'mark' && /^\W*\p{Lu}\p{Ll}/u.test(raw.slice(told, told + 9));
  const before = name.slice(0, told);
  return [
    ...(before.trim().length > 2 && !words.denial.test(before) ? kept(told, sentence) : []),
    stop('end'),
  ];
}

/** "Shampoo: Aqua", "[Step 01] Aqua", "13: Aqua": words that stand before a name and are none of it. */
function labelOf(name: string, after: After): { words: string; skip: number; length: number } | undefined {
  const box = after === 'mark' ? null : /^[[【]([^\]】]{1,40})[\]】]\s*[:：]?\s*(?=\S)/.exec(name);
  if (box && !/^[+±]/.test(box[1]!)) return { words: box[1]!, skip: 1, length: box[0].length };
  const colon =
    /^([^:：()]{1,60}(?:\([^()]{1,40}\))?[^:：()\d])\s?[:：]\s*(?=\S)/.exec(name) ??
    (after === 'mark' ? null : /^(\d{1,3})\s?[:：]\s*(?=\S)/.exec(name));
  return colon ? { words: colon[1]!, skip: 0, length: colon[0].length } : undefined;
}

/** Where a label begins behind a name, "Castor Oil How to use": at an inline edge, or where a known name ends; 0 nowhere. */
function beforeLabel(words: string, finder: Finder): number {
  const edge = edgeAfterName(words, finder);
  if (edge >= 0) return edge;
  const spaces = [...words.matchAll(/\s+/g)].slice(-mostLabel).reverse();
  return (
    (spaces.find(({ index }) => isKnownKind(finder.kindOf(words.slice(0, index)))) ?? spaces[0])?.index ?? 0
  );
}

/** The inline edge behind which no name stands any more: a button, a bold label; −1 without one. */
function edgeAfterName(name: string, { kindOf }: Finder): number {
  for (let at = name.indexOf('\v', 3); at >= 0; at = name.indexOf('\v', at + 1)) {
    const next =
      name
        .slice(at + 1)
        .split('\v')
        .find((part) => part.trim() !== '') ?? '';
    if (!/^[\s\d.…]*$/.test(next) && isNameKind(kindOf(name.slice(0, at))) && !isNameKind(kindOf(next)))
      return at;
  }
  return -1;
}

/** Where running text begins within a name: a word no name holds, a new sentence, a footnote, a button; −1 nowhere. */
function proseAt(name: string, raw: string, finder: Finder): number {
  const { words, kindOf } = finder;
  const outside = name.replace(/\([^()]{0,120}\)/g, (held) => '·'.repeat(held.length));
  const sentence = raw.search(/[\s.…](?=\s?\p{Lu}\p{Ll}+(?: \p{Ll}{2,}){2})/u);
  const footnote = name.search(/[^\s,]\s+(?:\(\*|\*+ ?[a-zà-ž]+ [a-zà-ž])/);
  const cuts = [
    words.prose.first(outside)?.index ?? -1,
    sentence > 0 && kindOf(name.slice(sentence + 1)) === 'other' ? sentence : -1,
    footnote >= 0 ? footnote + 1 : -1,
    // "Panthenol… read more": a list that breaks off
    outside.search(/(?<=\p{L}[)\]]?)\s?(?:…|\.{3})\s?[\p{L}\v]/u),
    edgeAfterName(name, finder),
    // "Tocopherol May contain traces", "Parfum Vegan": a known name, then what a list ends before
    endAfterName(name, outside, words, kindOf),
  ].filter((at) => at >= 0);
  return cuts.length > 0 ? Math.min(...cuts) : -1;
}

const mostTries = 8; // words of a name behind which a list may end

function endAfterName(
  name: string,
  outside: string,
  words: Finder['words'],
  kindOf: Finder['kindOf'],
): number {
  let tries = 0;
  for (const { index } of outside.matchAll(/[\s\v]+/g)) {
    if (++tries > mostTries) return -1;
    const rest = name.slice(index).trim();
    if ((words.ends.begins(rest) || words.goesOn.begins(rest)) && isKnownKind(kindOf(name.slice(0, index))))
      return index;
  }
  return -1;
}
