import { denial, denialAlone, headingAnywhere, prose, teaser } from './headings.ts';
import { fold } from './names.ts';
import { namesIn, type Step, type Stop } from './names-in.ts';
import type { Page } from './places-to-look.ts';

const mostSteps = 4000;

/** What a heading says beyond being one. */
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
export function stepsOf(page: Page, line: number, steps: Step[]): void {
  const { text, low, lines } = page;
  const { from: start, to: end } = lines[line]!;
  const whole = low.slice(start, end);
  let from = 0;
  const names = (at: number, to: number) =>
    steps.push(...namesIn(page, line, at, to, mostSteps - steps.length));
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
    if (/\S[,;.]\s/.test(before)) names(start + from, start + index);
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
  else names(start + from, end);
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
