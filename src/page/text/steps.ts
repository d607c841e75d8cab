import { denial, denialAlone, endsHere, goesOn, headingAnywhere, prose, teaser } from './headings.ts';
import { classOf, fold, type NameClass } from './names.ts';
import type { Page } from './places-to-look.ts';

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
const mostSteps = 4000;

const marks = /[;،、，；•·●∙▪◦‧・｜|]+|,(?!\d)|(?<!\d),|\.(?=\s+[A-ZÀ-ÞА-Я*\d(]|\s*$)|\s[-–—*/+](?=\s)/g;
const softMarks = new RegExp(`${marks.source}|\\v`, 'g');
/** Full stops that end no name. */
const abbreviated = /\b(?:denat|var|ssp|spp|no|alc|st|ext|c|c\.?i|f|l)$/;

/** Whether the edges of inline elements part the names of these letters. */
export const isSoft = (letters: string) => {
  const edges = letters.split('\v').length - 1;
  return edges >= 3 && letters.split(/[,;•·|、，]/).length - 1 < edges / 2;
};

export function wordsOf(words: string): string {
  let kept = '';
  let at = 0;
  for (const { index, 0: match } of fold(words).matchAll(headingAnywhere)) {
    kept += `${words.slice(at, index)} `;
    at = index + match.length;
  }
  return (kept + words.slice(at))
    .replace(/^.*[.!?]\s/, '')
    .replace(
      /\b(?:full|complete|inactive|other|all|product|list[aeo]?|elenco|of|the|in|our|inci|d?e[nsl]?|degli|dos|compl[eè]t[aeo]?|voll\S+|tous|alle)(?![a-zà-ž])/gi,
      ' ',
    )
    .replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N})]+$/gu, '');
}

const isLetter = (letter = '') => letter.toLowerCase() !== letter.toUpperCase();

/** One line as names and stops, in order. */
export function stepsOf({ text, low, lines }: Page, line: number, steps: (Item | Stop)[]): void {
  const { from: start, to: end } = lines[line]!;
  const whole = low.slice(start, end);
  let from = 0;
  const stop = (what: Stop['stop'], words = '', inline = true) =>
    steps.push({ stop: what, line, words, inline });

  for (const { index, 0: match } of whole.matchAll(headingAnywhere)) {
    const before = whole.slice(from, Math.max(from, index));
    const rest = whole.slice(index + match.length);
    if (index < from || isLetter(whole[index - 1]) || isLetter(rest[0])) continue;
    const short = whole.length < 120 && !/[.,;]/.test(before) && !/[,;、・•·|]|[:：]\s*\S/.test(rest);
    const alone = short && (!/(?:\s\S+){3}/.test(rest) || denial.test(whole));
    const mark = alone ? rest : afterHeading(before, rest);
    if (mark === undefined) continue;
    if (/\S[,;.]\s/.test(before)) namesOf(from, index);
    const clause = before.slice(-80).replace(/^.*[.:;!?]/, '');
    const near = clause + match + mark.replace(/\([^)]*\)/, '');
    from = index + match.length + mark.length;
    const more = wordsOf(text.slice(start + index - clause.length, start + from));
    const bare = !/\p{L}/u.test(more.replace(/\([^)]*\)/, ''));
    stop(
      denial.test(near)
        ? 'denial'
        : teaser.test(near) && !/inactive/.test(near)
          ? 'teaser'
          : bare
            ? 'heading'
            : 'label',
      more,
      !alone,
    );
  }
  if (
    from === 0 &&
    whole.length < 90 &&
    denial.test(whole) &&
    (denialAlone.test(whole) || /[:：]\s*$/.test(whole))
  )
    stop('denial', '', false);
  else namesOf(from, whole.length);

  function namesOf(at: number, till: number): void {
    const part = text.slice(start + at, start + till);
    let begin = 0;
    let after: After = 'line';
    const add = (to: number) => {
      const raw = part.slice(begin, to);
      const lead = raw.search(/\S/) < 0 ? raw.length : /^\s*(?:[+–—-]\s+)?/.exec(raw)![0].length;
      const name = whole.slice(at + begin + lead, at + to).trimEnd();
      if (/[^\s\d.,*]/.test(name) && steps.length < mostSteps) {
        addName(name, start + at + begin + lead, after);
        after = 'mark';
      }
    };
    for (const { index, 0: mark } of part.matchAll(isSoft(part) ? softMarks : marks)) {
      if (mark === '.' && abbreviated.test(whole.slice(at + begin, at + index))) continue;
      add(index);
      begin = index + mark.length;
      if (mark === '.') after = 'stop';
    }
    add(part.length);
  }

  function addName(name: string, at: number, after: After): void {
    const item = (skip: number, length: number, kind: NameClass, how = after) =>
      steps.push({
        from: at + skip,
        to: at + length,
        line,
        name: name.slice(skip, length),
        kind,
        after: how,
      });
    if (goesOn.test(name)) return void item(0, name.length, 'likely');
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
        const kept = label.replace(/\s+\S+$/, '');
        const keptKind = classOf(kept);
        if (after === 'mark' && kept !== label && /^[cl]/.test(keptKind)) item(0, kept.length, keptKind);
        return void stop('end');
      }
      stop(teaser.test(label) ? 'teaser' : 'label', text.slice(at, at + label.length).trim());
      return void item(labelled.length, name.length, kind, 'stop');
    }
    if (
      endsHere.test(name) ||
      (after !== 'mark' &&
        (name.search(denial) === 0 || /[\s-]free$/.test(name) || /^[*†°].*[a-z] [a-z]+ [a-z]/.test(name)))
    )
      return void stop('end');
    const kind = name.length > 400 ? 'other' : classOf(name);
    const words = name.split(/\s+/).length;
    const cut = cutOf(name, text.slice(at, at + name.length));
    if (
      cut < 0 &&
      name.length <= longestName &&
      words <= mostWords &&
      !(after === 'stop' && kind === 'other' && words > 3)
    )
      return void item(0, name.length, kind);
    const kept = name.slice(0, Math.max(0, cut)).replace(/[\s.([…*]+$/, '');
    const keptKind = classOf(kept);
    const sentence = after === 'mark' && /^\W*[A-ZÀ-Þ][a-zà-ž]/.test(text.slice(at + cut, at + cut + 9));
    if (kept.length > 2 && (/^[cl]/.test(keptKind) || sentence) && !denial.test(kept))
      item(0, kept.length, keptKind);
    stop('end');
  }
}

/** What stands between a heading and its list, or undefined when the word is no heading here. */
function afterHeading(before: string, rest: string): string | undefined {
  const found =
    // "Ingredients: …"
    /^\s*(?:[:：=>.]|[-–—]\s)[\s:：.*•–-]*/.exec(rest) ??
    // "Ingredients of the shampoo: …"
    (prose.test(before) ? null : /^\s*(?:\([^)]{1,60}\)|[^:,;.\v(]{1,60})[:：]\s*/.exec(rest)) ??
    // "INGREDIENTS Aqua, …"
    (/^[^a-zà-žа-я0-9]*(?:(?:full|complete|inactive|other|all|product) )?$/.test(before)
      ? /^[\s)\]】]*/.exec(rest)
      : null);
  return found?.[0];
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
