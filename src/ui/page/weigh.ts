import type { Head } from '../../core/hair/head.ts';
import { allowanceOf } from '../../core/hair/tolerance.ts';
import type { Answer, Finding } from '../../core/judge/finding.ts';
import { answerOf, fitProduct } from '../../core/judge/fit.ts';
import type { Use } from '../../core/names/entry.ts';
import type { ProductKind } from '../../core/product/product.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { World } from '../world.ts';

export type Weighed = { answer: Answer; findings: Finding[]; decides: number[] };

/** One product held against one head: the answer, the findings that gave it, the names that decided it. */
export function weigh(
  { practice, today, remembered }: Pick<World, 'practice' | 'today' | 'remembered'>,
  head: Head,
  reading: Reading,
  kind: ProductKind | undefined,
  use: Use | undefined,
): Weighed {
  const allowance = allowanceOf(head, practice.allowance, { today, log: remembered.log });
  const findings = fitProduct({ reading, kind, use }, { head, allowance, practice });
  const { answer } = answerOf(findings);
  const deciding = findings.filter((each) => each.answer === answer);
  return {
    answer,
    findings: deciding,
    decides:
      answer === 'suits'
        ? []
        : [...new Set(deciding.flatMap(({ mentions }) => mentions.map(({ index }) => index)))],
  };
}
