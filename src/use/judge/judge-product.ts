import type { Head } from '../../core/hair/head.ts';
import type { Answer, Finding } from '../../core/judge/finding.ts';
import { answerOf, fitProduct } from '../../core/judge/fit.ts';
import type { Use } from '../../core/names/entry.ts';
import { type Preview, previewAdd } from '../../core/plan/preview.ts';
import { type ProductKind, usualUse } from '../../core/product/product.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { headInUse, rememberedAllowance, routineInUse } from '../in-use.ts';
import type { Knowing } from '../knowing.ts';
import { washDayInput } from './wash-day-input.ts';

/** Against what a product was held (a head, a routine), as `who` is named, and what the rules said. */
export type Check = {
  about: 'head' | 'routine';
  who: string;
  answer: Answer;
  findings: Finding[];
  /** The findings that gave the answer. */
  deciding: Finding[];
  /** Names of the label that decided it, as indices into its reading; none where it suits. */
  decides: number[];
  /** Of a routine: the day before and after. */
  preview?: Preview;
};

export type ToJudge = {
  reading: Reading;
  kind?: ProductKind | undefined;
  use?: Use | undefined;
  /** Id of the product kept that it is: it stacks with no step it stands in already. */
  product?: string | undefined;
};

/**
 * One product held against the head in use and, where its kind is known, against the routine in use. No head,
 * no check. What strip, panel and comparison show is this answer.
 */
export function judgeProduct(knowing: Knowing, judged: ToJudge): Check[] {
  const head = headInUse(knowing.remembered);
  if (!head) return [];
  const inRoutine = checkInRoutine(knowing, judged);
  return [checkForHead(knowing, head, judged), ...(inRoutine ? [inRoutine] : [])];
}

/** One product held against one head. */
export function checkForHead(knowing: Knowing, head: Head, { reading, kind, use }: ToJudge): Check {
  const allowance = rememberedAllowance(knowing, head);
  const washEvery = routineInUse(knowing.remembered, head)?.washEvery;
  const findings = fitProduct(
    { reading, kind, use },
    { head, allowance, washEvery, practice: knowing.practice },
  );
  return checkOf('head', head.name, findings);
}

/** What adding a product to the routine in use would bring; undefined without routine or kind. */
export function checkInRoutine(knowing: Knowing, judged: ToJudge): Check | undefined {
  const { remembered } = knowing;
  const routine = routineInUse(remembered, headInUse(remembered));
  const preview = routine && previewIn(knowing, routine, judged);
  return preview && { ...checkOf('routine', routine.name, preview.comes), preview };
}

/** Id of the step that a product on trial stands in. */
export const trialStep = 'on-trial';

/** A routine with one more product in it, before anything is changed; undefined where its kind is not known. */
export function previewIn(
  knowing: Knowing,
  routine: Routine,
  { reading, kind, use, product = trialStep, how }: ToJudge & { how?: 'fill' | 'beside' },
): Preview | undefined {
  if (!kind) return undefined;
  return previewAdd({
    ...washDayInput(knowing, routine),
    adding: {
      step: {
        id: trialStep,
        kind,
        use: use ?? usualUse[kind],
        product,
        optional: false,
        cadence: { every: 'wash' },
      },
      reading,
      how,
    },
  });
}

function checkOf(about: Check['about'], who: string, findings: Finding[]): Check {
  const { answer } = answerOf(findings);
  const deciding = findings.filter((each) => each.answer === answer);
  const named = deciding.flatMap(({ mentions }) => mentions.map(({ index }) => index));
  return { about, who, answer, findings, deciding, decides: answer === 'suits' ? [] : [...new Set(named)] };
}
