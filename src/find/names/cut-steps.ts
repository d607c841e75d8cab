import type { Finder } from '../finder.ts';
import { trimmedEnd } from '../text/letters.ts';
import type { Page } from '../text/lines.ts';
import type { After, Cut } from './cut.ts';
import { isKnownKind, isNameKind, type NameKind } from './kinds.ts';
import { beforeLabel, proseAt } from './name-ends.ts';
import type { CutStep, Item, Stop } from './step.ts';

export const longestName = 140; // letters
const mostWords = 11; // words of an unknown name
const mostUnknown = 3; // words of an unknown name behind a label

/**
 * What the letters between two marks are: a name, a label and a name, the end of a list, or a name and the end.
 * `denies`: a denial began before them and goes on to the next label.
 */
export function stepsOfCut(
  { text, low }: Page,
  cut: Cut,
  line: number,
  finder: Finder,
  denies: boolean,
): CutStep[] {
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
  /** "Free from parabens, silicones and sulphates: …": the label ends what a denial began. */
  const labelStop = (said: string): Stop => stop(denies ? 'denial' : 'label', said);
  /** A name where running text takes over, if it is one. */
  const kept = (length: number, sure = false): Item[] => {
    const end = trimmedEnd(name.replace(/[.([…*]/g, ' '), 0, length);
    const kind = end > 1 ? kindOf(name.slice(0, end)) : 'other';
    return isNameKind(kind) || (sure && end > 2) ? [item(0, end, kind)] : [];
  };
  if (words.goesOn.begins(name) && !words.endsOn.test(name)) return [item(0, cut.to - cut.from, 'built')];

  const within = boxWithin(name, finder);
  if (within) {
    const { first, box, next } = within;
    return [
      item(0, first, kindOf(name.slice(0, first))),
      labelStop(raw.slice(...box)),
      item(next, name.length, kindOf(name.slice(next)), 'stop'),
    ];
  }
  const label = labelOf(name, cut.after);
  if (label) {
    const own = kindOf(label.words);
    if (cut.after === 'mark' && isKnownKind(own)) return [item(0, name.length, own)];
    const kind = kindOf(name.slice(label.length));
    // "Essential oils of: amethyst, …": the first name may be one nobody knows
    const rest = name.slice(label.length);
    const said = raw.slice(label.skip, label.skip + label.words.length).trim();
    // "Batch 24/118: Aqua", "LOT 2026 +: …": of which bottles the list is
    if (cut.after === 'line' && isKnownKind(kind) && isBatch(label.words, finder))
      return [labelStop(said), item(label.length, name.length, kind, 'stop')];
    if (
      cut.after !== 'mark' &&
      kind === 'other' &&
      rest.split(/\s+/).length <= mostUnknown &&
      !words.ends.begins(name) &&
      !words.denial.test(name) &&
      !words.prose.test(name)
    )
      return [item(label.length, name.length, kind, 'stop')];
    if (cut.after === 'mark' && words.denial.test(label.words)) return [stop('denial')];
    if (
      words.denial.test(label.words) ||
      words.ends.begins(name) ||
      /^[*†°]/.test(name) ||
      !isNameKind(kind)
    ) {
      // "Citric Acid Caution: …": a name may stand before the label
      const before = beforeLabel(label.words, raw, finder);
      return [...(cut.after === 'mark' && before > 0 ? kept(before) : []), stop('end')];
    }
    return [
      words.teaser.test(label.words) ? stop('teaser', said) : labelStop(said),
      item(label.length, name.length, kind, 'stop'),
    ];
  }

  const kind = name.length > longestName ? 'other' : kindOf(name);
  // "Curl Milk", an inline edge, "Aqua": the name begins behind the edge
  const edge = cut.after === 'mark' ? -1 : name.lastIndexOf('\v');
  const behind = edge > 0 ? kindOf(name.slice(edge + 1)) : 'other';
  const titled = behind === 'water' ? kindOf(name.slice(0, edge)) === 'other' : !isNameKind(kind);
  if (isKnownKind(behind) && titled && !words.ends.begins(name))
    return [labelStop(raw.slice(0, edge).trim()), item(edge + 1, name.length, behind, 'stop')];
  const told = proseAt(name, raw, finder);
  if (isKnownKind(kind) && told < 0) return [item(0, name.length, kind)];
  if (
    words.ends.begins(name) ||
    (cut.after !== 'mark' &&
      (words.denial.begins(name) || words.glued.test(name) || /^[*†°].*[a-z] [a-z]+ [a-z]/.test(name)))
  )
    return [stop('end')];
  const count = name.split(/\s+/).length;
  // "…, Parfum. Ingredients may change": a sentence about the list
  if (cut.after === 'stop' && kind === 'other' && count > 1 && finder.headings(name)[0]?.index === 0)
    return [stop('end')];
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

const longestBatch = 40; // letters

/** "Batch 24/118", "LOT 2026": words that end a list where they stand behind it. */
export const isBatch = (name: string, { words }: Finder): boolean =>
  name.length <= longestBatch && /\d/.test(name) && words.ends.begins(name) && !words.denial.test(name);

/** "Shampoo: Aqua", "[Step 01] Aqua", "13: Aqua": words that stand before a name and are none of it. */
function labelOf(name: string, after: After): { words: string; skip: number; length: number } | undefined {
  const box = after === 'mark' ? null : /^[[【]([^\]】]{1,40})[\]】]\s*[:：]?\s*(?=\S)/.exec(name);
  if (box && !/^[+±]/.test(box[1]!)) return { words: box[1]!, skip: 1, length: box[0].length };
  const colon =
    /^([^:：()]{1,60}(?:(?:\([^()]{1,40}\))?[^:：()\d]|\([^()]{1,40}\)))\s?[:：]\s*(?=\S)/.exec(name) ??
    (after === 'mark' ? null : /^(\d{1,3})\s?[:：]\s*(?=\S)/.exec(name));
  return colon ? { words: colon[1]!, skip: 0, length: colon[0].length } : undefined;
}

/** "Parfum [Step 02] Aqua", "Parfum 【Serum】 Aqua": a box that names the next list; "[nano]" and "[1]" do not. */
function boxWithin(
  name: string,
  { kindOf }: Finder,
): { first: number; box: [from: number, to: number]; next: number } | undefined {
  const boxed = /[[【]([^\][】+±]{2,40})([\]】][\s:：]*)(?=\S)/u.exec(name);
  if (!boxed) return undefined;
  const { index, 0: whole, 1: words = '', 2: end = '' } = boxed;
  const next = index + whole.length;
  const names =
    /\p{L}{2}/u.test(words) && (/\d/.test(words) || /[】:：]/.test(end)) && !isNameKind(kindOf(words));
  return names && isKnownKind(kindOf(name.slice(0, index))) && isKnownKind(kindOf(name.slice(next)))
    ? { first: trimmedEnd(name, 0, index), box: [index + 1, index + 1 + words.length], next }
    : undefined;
}
