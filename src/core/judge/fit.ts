import type { Use } from '../names/entry.ts';
import { type ProductKind, usualUse } from '../product/product.ts';
import type { Reading } from '../reading/reading.ts';
import { type AspectRule, against, type FitContext } from './asked.ts';
import { type Answer, type Aspect, answersByWeight, type Finding, type Said, worstOf } from './finding.ts';
import { avoidList } from './rules/avoid-list.ts';
import { care } from './rules/care.ts';
import { cleansing } from './rules/cleansing.ts';
import { proteinRule } from './rules/protein.ts';
import { tooLittleRead } from './rules/too-little-read.ts';
import { weight } from './rules/weight.ts';
import { traitsOf } from './traits.ts';

export type { FitContext } from './asked.ts';

/** Every question about one product, what can hurt first. */
export const aspectRules: readonly AspectRule[] = [
  avoidList,
  tooLittleRead,
  proteinRule,
  weight,
  cleansing,
  care,
];

/**
 * One product against one head of hair. A product of no known kind or use is taken for one that stays on, the
 * careful reading. Steps in the findings carry the id `this`. Pure; never throws.
 */
export function fitProduct(
  {
    reading,
    kind = 'leave-in',
    use,
  }: { reading: Reading | undefined; kind?: ProductKind | undefined; use?: Use | undefined },
  context: FitContext,
): Finding[] {
  const worn = { kind, use: use ?? usualUse[kind] };
  const product = { id: 'this', ...worn, reading, traits: traitsOf(reading, worn, context.practice) };
  const head = against(context);
  return aspectRules.flatMap((rule) => rule.ask(product, head));
}

/** The answer in one aspect: what is avoided and what could not be read decide in every one. */
export const answerFor = (findings: readonly Finding[], aspect: Aspect): Answer =>
  worstOf(findings.filter((finding) => [aspect, 'avoid', 'label'].includes(finding.aspect)));

/** One answer for all: the worst of them. Its reason is the first that decides. */
export function answerOf(findings: readonly Finding[]): { answer: Answer; reason: Said } {
  for (const answer of answersByWeight.filter((each) => each !== 'suits')) {
    const deciding = findings.find((finding) => finding.answer === answer);
    if (deciding) return { answer, reason: deciding.reason };
  }
  const suits = findings.find(({ rule }) => rule !== 'avoid-list') ?? findings[0];
  return { answer: 'suits', reason: suits?.reason ?? { key: 'rules.nothing-to-say' } };
}
