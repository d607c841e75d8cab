import type { Head } from '../hair/head.ts';
import type { Use } from '../names/entry.ts';
import { type ProductKind, usualUse } from '../product/product.ts';
import type { Reading } from '../reading/reading.ts';
import { type AllowanceInUse, dayStep } from '../wash-day/rules/day.ts';
import { rules } from '../wash-day/rules/index.ts';
import { type Answer, answersByWeight, type Finding, type Said } from './finding.ts';
import type { Practice } from './practice.ts';

/** What a product is weighed against. `allowance` is what `allowanceOf` (hair.ts) says of the head. */
export type FitContext = {
  head?: Head | undefined;
  allowance?: AllowanceInUse | undefined;
  practice: Practice;
};

/**
 * One product against one head of hair, by the rules that ask of a product alone. A product of no known kind
 * or use is taken for one that stays on, the careful reading. Steps in the findings carry the id `this`.
 * Pure; never throws.
 */
export function fitProduct(
  {
    reading,
    kind,
    use,
  }: { reading: Reading | undefined; kind?: ProductKind | undefined; use?: Use | undefined },
  { head, allowance, practice }: FitContext,
): Finding[] {
  const step = {
    id: 'this',
    kind: kind ?? 'leave-in',
    use: use ?? (kind ? usualUse[kind] : 'leave-on'),
    optional: false,
    cadence: { every: 'wash' as const },
  };
  const day = {
    steps: [dayStep(step, reading, practice.washDay, true)],
    head,
    numbers: allowance?.numbers,
    washEvery: 7,
    log: [],
    today: '1970-01-01',
    practice,
  };
  return rules.filter(({ of }) => of === 'product').flatMap((rule) => rule.ask(day));
}

/** One answer for all: the worst of them. Its reason is the first that decides. */
export function answerOf(findings: readonly Finding[]): { answer: Answer; reason: Said } {
  for (const answer of answersByWeight.filter((each) => each !== 'suits')) {
    const deciding = findings.find((finding) => finding.answer === answer);
    if (deciding) return { answer, reason: deciding.reason };
  }
  const suits = findings.find(({ rule }) => rule !== 'avoid-list') ?? findings[0];
  return { answer: 'suits', reason: suits?.reason ?? { key: 'rules.nothing-to-say' } };
}
