// A printed day as the program knows it: a routine of steps, each with its label read.
import { type ProductKind, usualUse } from '../../src/core/product/product.ts';
import type { WashDayInput } from '../../src/core/wash-day/add-up.ts';
import type { Step } from '../../src/core/wash-day/routine.ts';
import { contextOf, productOf } from './judge-row.ts';
import { type PlannedStep, type Row, type Rows, rowOf, stepsOf } from './rows.ts';

export type Printed = string | readonly (string | Partial<PlannedStep>)[];

export function stepOf({ kind, label, every }: PlannedStep, labels: Rows, id: string) {
  const row = rowOf(labels, label);
  if (!row) throw new Error(`no label ${label}`);
  // Used for another step than it is sold for, it is used as that step is.
  const product = productOf(kind === row.kind ? row : { ...row, use: '' }, kind);
  const known = kind as ProductKind;
  const step: Step = {
    id,
    kind: known,
    use: product.use ?? usualUse[known],
    product: label,
    optional: false,
    cadence: every > 1 ? { every: 'nth-wash', n: every } : { every: 'wash' },
  };
  return { step, reading: product.reading };
}

export function dayInput(head: Row, printed: Printed, labels: Rows): WashDayInput {
  const { washEvery, ...context } = contextOf(head);
  const steps = stepsOf(printed).map((planned, at) => stepOf(planned, labels, `step-${at}`));
  return {
    ...context,
    log: [],
    readings: new Map(steps.map(({ step, reading }) => [step.id, reading])),
    routine: {
      id: 'day',
      head: context.head.id,
      name: 'day',
      steps: steps.map(({ step }) => step),
      washEvery: Math.round(washEvery ?? context.practice.judge.wash.usualEvery),
      added: context.today,
    },
  };
}
