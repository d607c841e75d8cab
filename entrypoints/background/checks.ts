import { allowanceOf } from '../../src/core/hair/tolerance.ts';
import { answerOf, fitProduct } from '../../src/core/judge/fit.ts';
import type { Practice } from '../../src/core/judge/practice.ts';
import type { Lookup } from '../../src/core/names/lookup.ts';
import { previewAdd } from '../../src/core/plan/preview.ts';
import { type ProductFacts, usualUse } from '../../src/core/product/product.ts';
import { type Reading, readLabel } from '../../src/core/reading/reading.ts';
import type { Remembered } from '../../src/store/remembered.ts';
import type { Check } from '../../src/ui/describe/strip.ts';
import { headInUse, routineInUse } from '../../src/ui/heads.ts';

type Weights = { remembered: Remembered; lookup: Lookup; practice: Practice; today: string };

/**
 * Holds one product of a page against the head in use and, where its kind is known, against the routine in
 * use. No head, no check.
 */
export function checksOf(
  reading: Reading,
  product: ProductFacts | undefined,
  { remembered, lookup, practice, today }: Weights,
): Check[] {
  const { products, log, readAs } = remembered;
  const head = headInUse(remembered);
  if (!head) return [];
  const kind = product?.kind;
  const use = product?.use ?? (kind && usualUse[kind]);
  const allowance = allowanceOf(head, practice.allowance, { today, log });
  const findings = fitProduct({ reading, kind, use }, { head, allowance, practice });
  const checks: Check[] = [{ about: 'head', who: head.name, answer: answerOf(findings).answer, findings }];

  const routine = routineInUse(remembered, head);
  if (!routine || !kind || !use) return checks;
  const labelOf = (id: string | undefined) => products.find((each) => each.id === id)?.labels[0]?.text;
  const readings = new Map(
    routine.steps.map((step) => {
      const label = labelOf(step.product);
      return [step.id, label === undefined ? undefined : readLabel(label, lookup, { use: step.use, readAs })];
    }),
  );
  const { comes } = previewAdd({
    routine,
    readings,
    head,
    allowance,
    log,
    today,
    practice,
    adding: {
      step: { id: 'met', kind, use, product: 'met', optional: false, cadence: { every: 'wash' } },
      reading,
    },
  });
  checks.push({ about: 'routine', who: routine.name, answer: answerOf(comes).answer, findings: comes });
  return checks;
}
