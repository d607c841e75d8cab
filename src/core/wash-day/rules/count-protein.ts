import type { Finding } from '../../judge/finding.ts';
import {
  allowed,
  type Day,
  type DayStep,
  distinctProducts,
  filledSteps,
  finding,
  proteinMentions,
  type Rule,
} from './day.ts';

/** Distinct products among the filled steps that surely, and that possibly, carry protein. */
export function proteinCarriers(day: Day, among: (step: DayStep) => boolean = () => true) {
  const steps = distinctProducts(filledSteps(day).filter(among));
  return {
    sure: steps.filter(({ traits }) => traits.protein === 'yes'),
    maybe: steps.filter(({ traits }) => traits.protein === 'maybe'),
  };
}

/** How many carriers must go: one change takes one away at most. */
export const overBy = ({ reason }: Finding) => Number(reason.values?.n) - Number(reason.values?.allowed);

/**
 * Carriers against the allowance, as intervals: more sure ones than are allowed clash; only when even the
 * possible ones keep within it does it suit; between the two nobody can tell.
 */
export function countProtein(
  rule: Pick<Rule, 'id' | 'aspect'>,
  day: Day,
  what: 'products' | 'leaveOns',
  among?: (step: DayStep) => boolean,
): Finding[] {
  const { sure, maybe } = proteinCarriers(day, among);
  const limit = allowed(day, what);
  if (sure.length + maybe.length === 0) return [];
  const steps = [...sure, ...maybe];
  const mentions = steps.flatMap(proteinMentions);
  const values = { n: sure.length, maybe: maybe.length, allowed: limit.max, room: limit.max };
  const say = (key: string) => ({ key: `rules.${rule.id}.${key}`, values });
  const unknown = limit.told
    ? maybe.length > 0
      ? { key: 'rules.unknown.maybe-protein', values: { n: maybe.length } }
      : undefined
    : { key: 'rules.unknown.hair' };
  if (sure.length > limit.max)
    return [
      finding(rule, 'does-not-suit', say('too-many'), {
        steps: sure,
        mentions: sure.flatMap(proteinMentions),
      }),
    ];
  if (steps.length > limit.min)
    return [
      finding(rule, 'cannot-tell', say(limit.told ? 'maybe-too-many' : 'hair-unknown'), {
        steps,
        mentions,
        unknown,
      }),
    ];
  return [finding(rule, 'suits', say('within'), { steps, mentions, unknown })];
}
