import { denial, endsHere, goesOn, prose, teaser } from './headings.ts';
import { classOf, type NameClass } from './names.ts';
import type { Page } from './places-to-look.ts';

export type Step = Item | Stop;
/** What stands before a name: the edge of a line, a full stop or colon, or a mark between names. */
type After = 'line' | 'stop' | 'mark';
export type Item = { from: number; to: number; line: number; name: string; kind: NameClass; after: After };
/** Something that is no name: what follows is a list, a choice of names, what is left out, or no list. */
export type Stop = {
  stop: 'heading' | 'label' | 'teaser' | 'denial' | 'end';
  line: number;
  /** What a heading or label says beyond being one: "Shampoo ingredients:" → "Shampoo". */
  words: string;
  inline: boolean;
};

const longestName = 140;
const mostWords = 11;

const marks = /[;،、，；•·●∙▪◦‧・｜|]+|,(?!\d)|(?<!\d),|\.(?=\s+[A-ZÀ-ÞА-Я*\d(]|\s*$)|\s[-–—*/+](?=\s)/g;
const softMarks = new RegExp(`${marks.source}|\\v`, 'g');
/** Full stops that end no name. */
const abbreviated = /\b(?:denat|var|ssp|spp|no|alc|st|ext|c|c\.?i|f|l)$/;

/** Whether the edges of inline elements part the names of these letters. */
export const isSoft = (letters: string) => {
  const edges = letters.split('\v').length - 1;
  return edges >= 3 && letters.split(/[,;•·|、，]/).length - 1 < edges / 2;
};

/** Names between two places of one line, and what stands among them; no more than `most` are looked at. */
export function namesIn({ text, low }: Page, line: number, from: number, to: number, most: number): Step[] {
  const steps: Step[] = [];
  let begin = from;
  let after: After = 'line';
  const add = (end: number) => {
    const raw = text.slice(begin, end);
    const lead = raw.search(/\S/) < 0 ? raw.length : /^\s*(?:[+–—-]\s+)?/.exec(raw)![0].length;
    const at = begin + lead;
    const name = low.slice(at, end).trimEnd();
    if (!/[^\s\d.,*]/.test(name) || steps.length >= most) return;
    steps.push(...stepsOfName(name, text.slice(at, at + name.length), { at, line, after }));
    after = 'mark';
  };
  const part = text.slice(from, to);
  for (const { index, 0: mark } of part.matchAll(isSoft(part) ? softMarks : marks)) {
    if (mark === '.' && abbreviated.test(low.slice(begin, from + index))) continue;
    add(from + index);
    begin = from + index + mark.length;
    if (mark === '.') after = 'stop';
  }
  add(to);
  return steps;
}

/** What the letters between two marks are: a name, a label and a name, the end of a list, or a name and the end. */
function stepsOfName(
  name: string,
  raw: string,
  { at, line, after }: { at: number; line: number; after: After },
): Step[] {
  const item = (skip: number, length: number, kind: NameClass, how = after): Item => ({
    from: at + skip,
    to: at + length,
    line,
    name: name.slice(skip, length),
    kind,
    after: how,
  });
  const stop = (what: Stop['stop'], words = ''): Stop => ({ stop: what, line, words, inline: true });
  /** A name where running text takes over, if it is one. */
  const kept = (length: number, sure = false): Item[] => {
    const kind = classOf(name.slice(0, length));
    return sure || kind === 'cosmetic' || kind === 'likely' ? [item(0, length, kind)] : [];
  };
  if (goesOn.test(name)) return [item(0, name.length, 'likely')];
  // "Shampoo: Aqua": the words before the colon are a label
  const [labelled, label] = /^([^:：()]{2,60}[^:：()\d])[:：]\s*(?=\S)/.exec(name) ?? [''];
  if (label && !(after === 'mark' && classOf(label) === 'cosmetic')) {
    const kind = classOf(name.slice(labelled.length));
    if (
      denial.test(label) ||
      endsHere.test(name) ||
      /^[*†°]/.test(label) ||
      kind === 'other' ||
      kind === 'edible'
    ) {
      // "Citric Acid Caution: …": a name may stand before the label
      const before = label.replace(/\s+\S+$/, '');
      return [...(after === 'mark' && before !== label ? kept(before.length) : []), stop('end')];
    }
    const words = raw.slice(0, label.length).trim();
    return [
      stop(teaser.test(label) ? 'teaser' : 'label', words),
      item(labelled.length, name.length, kind, 'stop'),
    ];
  }
  if (
    endsHere.test(name) ||
    (after !== 'mark' &&
      (name.search(denial) === 0 || /[\s-]free$/.test(name) || /^[*†°].*[a-z] [a-z]+ [a-z]/.test(name)))
  )
    return [stop('end')];
  const kind = name.length > 400 ? 'other' : classOf(name);
  const words = name.split(/\s+/).length;
  const cut = cutOf(name, raw);
  if (
    cut < 0 &&
    name.length <= longestName &&
    words <= mostWords &&
    !(after === 'stop' && kind === 'other' && words > 3)
  )
    return [item(0, name.length, kind)];
  const before = name.slice(0, Math.max(0, cut)).replace(/[\s.([…*]+$/, '');
  const sentence = after === 'mark' && /^\W*[A-ZÀ-Þ][a-zà-ž]/.test(raw.slice(cut, cut + 9));
  const holds = before.length > 2 && !denial.test(before);
  return [...(holds ? kept(before.length, sentence) : []), stop('end')];
}

/** Where running text begins within a name: a word no name holds, a new sentence, a footnote, a button; -1 nowhere. */
function cutOf(name: string, text: string): number {
  const button = /^([^\v]{3,}?)[\s…]*\v([^\s\d.…]{3,}(?: \S+)?)$/.exec(name);
  const sentence = text.search(/[\s.…](?=\s*[A-ZÀ-Þ][a-zà-ž]+(?: [a-zà-ž]{2,}){2})/);
  const cuts = [
    name.search(prose),
    sentence >= 0 && classOf(name.slice(sentence)) === 'other' ? sentence : -1,
    name.search(/(?<=[^\s,])\s+(?:\(\*|\*+ ?[a-zà-ž]+ [a-zà-ž])/),
    button && classOf(button[1]!) !== 'other' && classOf(button[2]!) === 'other' ? button[1]!.length : -1,
  ].filter((at) => at >= 0);
  return cuts.length > 0 ? Math.min(...cuts) : -1;
}
