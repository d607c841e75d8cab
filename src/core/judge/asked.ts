import type { Head } from '../hair/head.ts';
import type { Use } from '../names/entry.ts';
import type { ProductKind } from '../product/product.ts';
import type { Reading } from '../reading/reading.ts';
import type { Answer, Aspect, Finding, Said } from './finding.ts';
import { type AllowanceInUse, type HairNumbers, hairNumbers, type Untold } from './hair-numbers.ts';
import type { Practice } from './practice.ts';
import type { Traits } from './traits.ts';

/** A product as the rules see it; `id` is the step it stands in. */
export type Judged = {
  id: string;
  kind: ProductKind;
  use: Use;
  reading: Reading | undefined;
  traits: Traits;
};

/** What a product is weighed against. `allowance` is what `allowanceOf` (hair/tolerance.ts) says of the head. */
export type FitContext = {
  head?: Head | undefined;
  allowance?: AllowanceInUse | undefined;
  /** Days between wash days; usual practice where that is not known. */
  washEvery?: number | undefined;
  practice: Practice;
};

/** The head in numbers; more than one where an answer is missing. */
export type Against = {
  head: Head | undefined;
  numbers: readonly HairNumbers[];
  untold: Untold[];
  practice: Practice;
};

export const against = ({ head, allowance, washEvery, practice }: FitContext): Against => ({
  head,
  practice,
  ...hairNumbers({ head, allowance, washEvery: washEvery ?? practice.judge.wash.usualEvery, practice }),
});

/** One question about one product. `id` is the file's name. */
export type AspectRule = {
  id: string;
  aspect: Aspect;
  ask(product: Judged, against: Against): Finding[];
};

/** How much against how much is borne: within it, with care up to `upTo` times as much, or too much. */
export const byRatio = (ratio: number, upTo: number): Answer =>
  ratio <= 1 ? 'suits' : ratio <= upTo ? 'with-care' : 'does-not-suit';

/**
 * One answer for every head it may be. Where the missing answers decide between yes and no, nobody can tell;
 * between yes and with care, care is the safe one of the two.
 */
export function acrossHeads<H = HairNumbers>(numbers: readonly H[], ask: (numbers: H) => Answer): Answer {
  const answers = new Set(numbers.map(ask));
  if (answers.size === 1) return [...answers][0]!;
  return answers.has('does-not-suit') || answers.has('cannot-tell') ? 'cannot-tell' : 'with-care';
}

/** What is missing, where that keeps an answer open. */
export const untoldOf = (answer: Answer, { untold }: Against): Said | undefined =>
  answer === 'cannot-tell' && untold.length > 0
    ? { key: 'rules.unknown.head', values: { first: untold[0]!, n: untold.length } }
    : undefined;

type Rest = {
  mentions?: Finding['mentions'];
  condition?: Said | undefined;
  unknown?: Said | undefined;
};

/** A finding about one product. */
export const tell = (
  { id, aspect }: Pick<AspectRule, 'id' | 'aspect'>,
  product: Judged,
  answer: Answer,
  reason: Said,
  { mentions = [], condition, unknown }: Rest = {},
): Finding => ({
  rule: id,
  aspect,
  answer,
  reason,
  steps: [product.id],
  mentions,
  ...(condition && answer === 'with-care' && { condition }),
  ...(unknown && { unknown }),
});

/** Mentions of a product, or of a step, as a finding names them. */
export const mentionsOf = ({ id }: Pick<Judged, 'id'>, indexes: readonly number[]) =>
  indexes.map((index) => ({ step: id, index }));
