import type { Finder } from '../finder.ts';
import { fold } from '../text/letters.ts';
import type { Line, Page } from '../text/lines.ts';
import { cutsOf, seamIn } from './cut.ts';
import { isNameKind } from './kinds.ts';
import type { Stop } from './step.ts';

/** A heading in a line, from its first letter to where what it heads begins. */
export type Placed = Pick<Stop, 'stop' | 'words' | 'inline' | 'heads'> & {
  from: number;
  to: number;
  /** Whether what stands before it in the line may be names. */
  before: boolean;
};

const longestClause = 80; // letters before a heading that may belong to it
const shortLine = 120; // letters of a line that is a heading and no more
const deniedLine = 90; // letters of a line that only says what is left out
const shortTitle = 60; // letters of a line that is the title of two things
const shortTeaser = 40; // letters of a line that only says what is special
const namesAsked = 3; // names behind a heading without a mark that are looked at
const lettersAsked = 400;

/** The headings of one line, in order; one that says what is left out, where the line says only that. */
export function headingStops(page: Page, { from, to }: Line, finder: Finder): Placed[] {
  const { text, low } = page;
  const whole = low.slice(from, to);
  const found: Placed[] = [];
  let at = 0;
  for (const { index, length: all, weak } of finder.headings(whole)) {
    if (index < at) continue;
    const length = seamIn(text.slice(from + index, from + index + all)) || all; // "IngredientsAqua, …"
    const before = whole.slice(at, index);
    const rest = whole.slice(index + length);
    const tail = tailOf(
      page,
      whole,
      { before, rest, weak, first: text[from + index]!, at: from + index + length, end: to },
      finder,
    );
    if (!tail) continue;
    const clause = clauseOf(before);
    const word = whole.slice(index, index + length);
    const said = clause + word + tail.mark.replace(/\([^)]*\)/, '');
    const end = index + length + tail.mark.length;
    const words = plainWordsOf(text.slice(from + index - clause.length, from + end), finder);
    found.push({
      ...kindOf(said, clause, words, finder),
      words,
      inline: !tail.alone,
      heads: true,
      before: /\S[,;.]\s/.test(before),
      from: from + index,
      to: from + end,
    });
    at = end;
  }
  if (found.length === 0 && saysOnlyWhatIsLeftOut(whole, finder))
    found.push({ stop: 'denial', words: '', inline: false, before: false, from, to });
  else if (
    found.length === 0 &&
    finder.words.teasesAlone.begins(whole) &&
    whole.length < shortTeaser &&
    !/[,;、•·:]/.test(whole)
  )
    found.push({ stop: 'teaser', words: '', inline: false, before: false, from, to });
  return found;
}

/** The words before a heading that belong to it: not those of the sentence before, nor a word denied by itself. */
function clauseOf(before: string): string {
  return before
    .slice(-longestClause)
    .replace(/^[\s\S]*[.:;!?•·\v]/, '')
    .replace(/^[\s\S]*[\p{L}]-free/u, '');
}

/** What a heading announces. A word that says the whole list follows outweighs a teaser before it. */
function kindOf(said: string, clause: string, words: string, finder: Finder): Pick<Placed, 'stop'> {
  const { words: tests } = finder;
  if (tests.denial.test(said)) return { stop: 'denial' };
  const full = tests.full.test(clause.slice(-40)) || tests.full.test(said.slice(clause.length));
  if (!full && tests.teaser.test(said)) return { stop: 'teaser' };
  return { stop: full || saysNoMore(words) || headsAlso(said, finder) ? 'heading' : 'label' };
}

const saysNoMore = (words: string): boolean => !/\p{L}/u.test(words.replace(/\([^)]*\)/, ''));

/** "Ingredients | Nutrition", "How to use & ingredients": a title of two things, one of them the list. */
const headsAlso = (said: string, finder: Finder): boolean => {
  const parts = said.split(/[|&/+]/);
  return (
    parts.length > 1 &&
    said.length < shortTitle &&
    parts.some((part) => /\p{L}/u.test(part) && saysNoMore(plainWordsOf(part, finder)))
  );
};

type Around = { before: string; rest: string; weak: boolean; first: string; at: number; end: number };

/** What stands between a heading and what it heads; nothing when the word is no heading here. */
function tailOf(
  page: Page,
  whole: string,
  around: Around,
  finder: Finder,
): { mark: string; alone: boolean } | undefined {
  const { before, rest, weak } = around;
  const bare = whole.length < shortLine && !/\p{L}/u.test(plainWordsOf(whole, finder));
  const short =
    bare || (whole.length < shortLine && !/[.,;]/.test(before) && !/[,;、・•·|]|[:：]\s*\S/.test(rest));
  const alone = short && (weak ? bare : !/(?:\s\S+){3}/.test(rest) || finder.words.denial.test(whole));
  // "Ingredients + Directions": a title of two things
  const second =
    whole.length < shortTitle &&
    /^\s*[|&/+]\s*(?=[^\s,;:•·|/]{1,40}(?:\s[^\s,;:•·|/]{1,40}){0,3}$)/.exec(rest)?.[0];
  if (second && !isNameKind(finder.kindOf(rest.slice(second.length)))) return { mark: rest, alone: true };
  if (alone) return { mark: rest, alone };
  // "Ingredients: …"
  const colon = /^[\s)\]?？]*(?:[:：=>.]|[-–—]\s)[\s:：.*•–-]*/.exec(rest);
  if (colon && !(weak && /\p{L}/u.test(plainWordsOf(clauseOf(before), finder))))
    return { mark: colon[0], alone };
  // "<b>Made with</b> Shea Butter, …", "What's in it Aqua, …": the line begins so, and names follow
  const gap = weak && /^[^\p{L}\p{N}]*$/u.test(before) ? /^[\s\v]+/.exec(rest)?.[0] : undefined;
  if (gap && namesFollow(page, around.at + gap.length, around.end, finder, !gap.includes('\v')))
    return { mark: gap, alone };
  if (weak) return undefined;
  // "Ingredients of the shampoo: …"
  const said = finder.words.prose.test(before)
    ? null
    : /^\s*(?:\([^)]{1,60}\)\s?|[^:,;.\v(]{1,60})[:：]\s*/.exec(rest);
  if (said) return { mark: said[0], alone };
  // "INGREDIENTS Aqua, …"
  const leads = /^[^\p{L}\p{N}]*(?:(?:full|complete|inactive|other|all|product) )?$/u.test(before);
  const space = /^[\s)\]】\v]*(?:\([^)]{1,40}\)|lists?(?=\s)|listesi(?=\s)|inci(?=\s))?[\s)\]】:：\v]*/u.exec(
    rest,
  )!;
  if (leads) return { mark: space[0], alone };
  // "… Full list of ingredients Water, …": no mark, but names follow
  const capital = !/\p{Ll}/u.test(around.first);
  const announced =
    capital ||
    finder.words.full.test(clauseOf(before).slice(-40)) ||
    finder.words.full.test(rest.slice(0, 16));
  return announced && namesFollow(page, around.at + space[0].length, around.end, finder)
    ? { mark: space[0], alone }
    : undefined;
}

function namesFollow(page: Page, from: number, to: number, { kindOf }: Finder, andWater = false): boolean {
  const cuts = cutsOf(page, from, Math.min(to, from + lettersAsked)).slice(0, namesAsked);
  const kinds = cuts.map((cut) => kindOf(page.low.slice(cut.from, cut.to)));
  const names = kinds.filter(isNameKind).length;
  return names >= Math.min(2, cuts.length) && cuts.length > 0 && (!andWater || kinds.includes('water'));
}

const saysOnlyWhatIsLeftOut = (whole: string, { words }: Finder): boolean => {
  if (whole.length >= deniedLine) return false;
  const bare = whole.trim();
  return (
    (words.denial.ends(bare) ||
      (words.denial.test(bare) && /[:：]$/.test(bare)) ||
      words.deniesAlone.begins(bare)) &&
    !/[,;、•·]/.test(bare)
  );
};

/** What a heading says beyond being one. */
export function plainWordsOf(words: string, finder: Finder): string {
  const low = fold(words);
  let kept = '';
  let at = 0;
  for (const { index, length } of finder.headings(low)) {
    if (index < at) continue;
    kept += `${words.slice(at, index)} `;
    at = index + length;
  }
  kept += words.slice(at);
  kept = kept.replace(/^.*[.!?]\s/, '');
  const folded = fold(kept);
  let said = '';
  at = 0;
  for (const { index, length } of finder.words.asides.every(folded)) {
    said += `${kept.slice(at, index)} `;
    at = index + length;
  }
  return (said + kept.slice(at)).replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N})]+$/gu, '').replace(/\s+/g, ' ');
}

/** Whether a title says that an ingredient list is below it. */
export function namesAList(title: string, finder: Finder): boolean {
  const low = fold(title);
  return finder.heads(low) && !finder.words.denial.test(low) && !finder.words.teaser.test(low);
}
