import { speaksAgainst } from '../judge/finding.ts';
import type { Day, DayStep, Rule } from '../wash-day/rules/day.ts';
import { rules } from '../wash-day/rules/index.ts';
import type { MoveOption } from './moves.ts';

export type Clash = { rule: Rule; step: string | undefined; least: number };

/**
 * Asks all rules of a day for clashes: product rules once for each step, rules of the whole day once for each
 * row of looks, since they see nothing else.
 */
export function asker(reachable: ReadonlyMap<Rule, string[]>) {
  const alone = rules.filter(({ of }) => of === 'product');
  const whole = rules
    .filter(({ of }) => of === 'day')
    .map((rule) => ({ rule, known: new Map<string, Clash[]>(), letters: new Map<string, string>() }));
  const steps = new WeakMap<DayStep, { own: Clash[]; looks: string[] }>();
  const look = (step: DayStep, day: Day) => {
    const own = alone
      .filter((rule) => rule.ask({ ...day, steps: [step] }).some(speaksAgainst))
      .map((rule) => ({ rule, step: step.id, least: 1 }));
    const looked = { own, looks: whole.map(({ rule, letters }) => letterFor(letters, rule.sees(step, day))) };
    steps.set(step, looked);
    return looked;
  };
  return (day: Day): Clash[] => {
    const looked = day.steps.map((step) => steps.get(step) ?? look(step, day));
    const clashes = looked.flatMap(({ own }) => own);
    whole.forEach(({ rule, known }, at) => {
      let row = '';
      for (const { looks } of looked) row += looks[at];
      let found = known.get(row);
      if (!found) {
        found = rule
          .ask(day)
          .filter(speaksAgainst)
          .map((finding) => ({
            rule,
            step: undefined,
            least: rule.excess?.(finding, reachable.get(rule)!) ?? 1,
          }));
        known.set(row, found);
      }
      clashes.push(...found);
    });
    return clashes;
  };
}

/** One letter for each look, so that a row of them is a short word. */
function letterFor(letters: Map<string, string>, look: string): string {
  const letter = letters.get(look) ?? String.fromCodePoint(letters.size + 1);
  letters.set(look, letter);
  return letter;
}

/** All that a rule could see of a step after some option. */
export const seenAfter = (day: Day, options: readonly MoveOption[]) =>
  new Map(rules.map((rule) => [rule, [...new Set(options.map(({ to }) => (to ? rule.sees(to, day) : '')))]]));

/** Which options may help with a clash: a rule sees the same of the same step all through a search. */
export function helper(day: Day, options: readonly MoveOption[]) {
  const byRule = new Map(
    rules.map((rule) => [
      rule,
      options.flatMap(({ from, to }, at) => {
        const before = from ? rule.sees(from, day) : '';
        const after = to ? rule.sees(to, day) : '';
        return before !== after && (rule.mayHelp?.(before, after) ?? true) ? [at] : [];
      }),
    ]),
  );
  const known = new Map<string, number[]>();
  return ({ rule, step }: Pick<Clash, 'rule' | 'step'>): number[] => {
    if (step === undefined) return byRule.get(rule)!;
    const key = `${rule.id} ${step}`;
    const at = known.get(key) ?? byRule.get(rule)!.filter((one) => options[one]!.from?.id === step);
    known.set(key, at);
    return at;
  };
}
