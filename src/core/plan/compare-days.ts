import { type Answer, type Finding, worstOf } from '../judge/finding.ts';

export type DayChange = 'better' | 'same' | 'worse' | 'cannot-tell';

/** What one rule says before and after a change. */
export type RuleChange = { rule: string; change: DayChange; before: Answer; after: Answer };

const loudness: Record<Answer, number> = { suits: 0, 'cannot-tell': 1, 'with-care': 1, 'does-not-suit': 2 };

/** A rule that spoke already and now speaks louder by this part is worse. */
const louder = 1.05;

/**
 * A day before and after, rule by rule: which speaks newly, louder, less loud, or no more. `of` says which
 * findings of a rule belong together: of a rule about single products those of one step.
 */
export function changesOf(before: readonly Finding[], after: readonly Finding[]): RuleChange[] {
  const of = (findings: readonly Finding[]) => Map.groupBy(findings, ({ rule }) => rule);
  const [had, has] = [of(before), of(after)];
  return [...new Set([...had.keys(), ...has.keys()])].map((rule) => {
    const [was, is] = [had.get(rule) ?? [], has.get(rule) ?? []];
    return { rule, change: changeOf(was, is), before: worstOf(was), after: worstOf(is) };
  });
}

function changeOf(was: readonly Finding[], is: readonly Finding[]): DayChange {
  const count = (findings: readonly Finding[], answer: Answer) =>
    findings.filter((finding) => finding.answer === answer).length;
  const [before, after] = [worstOf(was), worstOf(is)];
  if (after === 'does-not-suit' && before !== after) return 'worse';
  if (before === 'does-not-suit' && before !== after) return 'better';
  for (const answer of ['does-not-suit', 'with-care'] as const) {
    if (after !== answer && before !== answer) continue;
    if (before !== after)
      return after === answer ? 'worse' : after === 'cannot-tell' ? 'cannot-tell' : 'better';
    const [had, has] = [extentOf(was, answer), extentOf(is, answer)];
    if (count(is, answer) > count(was, answer) || has > had + Math.abs(had) * (louder - 1)) return 'worse';
    return count(is, answer) < count(was, answer) || has < had - Math.abs(had) * (louder - 1)
      ? 'better'
      : 'same';
  }
  const [untold, nowUntold] = [count(was, 'cannot-tell'), count(is, 'cannot-tell')];
  return nowUntold > untold ? 'cannot-tell' : nowUntold < untold ? 'better' : 'same';
}

const extentOf = (findings: readonly Finding[], answer: Answer) =>
  Math.max(...findings.filter((finding) => finding.answer === answer).map(({ extent = 0 }) => extent));

/** The change in one word: what gets worse weighs more than what gets better, unless that was the worse of the two. */
export function changeOfAll(changes: readonly RuleChange[], gains: number): DayChange {
  const worse = changes.filter(({ change }) => change === 'worse');
  const better = changes.filter(({ change }) => change === 'better');
  const most = (list: readonly RuleChange[], which: 'before' | 'after') =>
    Math.max(0, ...list.map((change) => loudness[change[which]]));
  if (worse.length > 0) return most(better, 'before') > most(worse, 'after') ? 'better' : 'worse';
  if (changes.some(({ change }) => change === 'cannot-tell')) return 'cannot-tell';
  return better.length + gains > 0 ? 'better' : 'same';
}

/** Findings that speak newly, louder or can be told no more after a change, and those that it settles. */
export function comeAndGo(
  changes: readonly RuleChange[],
  before: readonly Finding[],
  after: readonly Finding[],
): { comes: Finding[]; goes: Finding[] } {
  const of = (wanted: DayChange, findings: readonly Finding[]) => {
    const rules = new Set(changes.filter(({ change }) => change === wanted).map(({ rule }) => rule));
    return findings.filter(({ answer, rule }) => answer !== 'suits' && rules.has(rule));
  };
  return { comes: [...of('worse', after), ...of('cannot-tell', after)], goes: of('better', before) };
}
