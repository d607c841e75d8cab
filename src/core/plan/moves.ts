import type { Use } from '../names/entry.ts';
import type { ProductKind } from '../product/product.ts';
import type { Cadence, Routine, Step } from '../wash-day/routine.ts';
import type { Day, DayStep } from '../wash-day/rules/day.ts';
import { treatmentDaysOf } from '../wash-day/rules/protein/treatments-apart.ts';
import type { Wish } from './wish.ts';

/** What is put into a step: a product (with those no rule can tell from it), or a wish where nothing on hand will do. */
export type Fill = { product: string; alternatives: string[]; owned: boolean } | { wish: Wish };

/** One change of a routine. An added step carries the id it would have. */
export type Move =
  | { do: 'swap'; step: string; with: Fill }
  | { do: 'add'; step: string; kind: ProductKind; use: Use; with: Fill }
  | { do: 'omit'; step: string }
  | { do: 'space'; step: string; cadence: Cadence };

/** A product or wish as the step it would be. */
export type StepChoice = { step: DayStep; fill: Fill };

/** A move with the step it takes away and the one it brings; at most one move touches a step. */
export type MoveOption = { move: Move; from: DayStep | undefined; to: DayStep | undefined };

/** Every single move that a day admits, products of one kind for steps of that kind. */
export function optionsOf(day: Day, choices: readonly StepChoice[]): MoveOption[] {
  const { strengthening } = day.practice.washDay.kinds;
  const options: MoveOption[] = [];
  for (const from of day.steps) {
    for (const { step, fill } of choices)
      if (step.kind === from.kind && step.product !== from.product) {
        const to = { ...step, id: from.id, optional: from.optional, cadence: from.cadence };
        options.push({ move: { do: 'swap', step: from.id, with: fill }, from, to });
      }
    if (!from.filled) continue;
    if (strengthening.includes(from.kind)) {
      const cadence: Cadence = {
        every: 'nth-wash',
        n: Math.max(2, Math.ceil(treatmentDaysOf(from, day) / Math.max(1, day.washEvery))),
      };
      options.push({ move: { do: 'space', step: from.id, cadence }, from, to: { ...from, cadence } });
    }
    options.push({ move: { do: 'omit', step: from.id }, from, to: undefined });
  }
  const planned = new Set(day.steps.map(({ product }) => product));
  for (const { step: to, fill } of choices)
    if (!planned.has(to.product))
      options.push({
        move: { do: 'add', step: to.id, kind: to.kind, use: to.use, with: fill },
        from: undefined,
        to,
      });
  return options;
}

/** Inserts a step before the first one whose kind usually comes later. */
export function insertUsually<S extends { kind: ProductKind }>(
  steps: readonly S[],
  step: S,
  order: readonly ProductKind[],
): S[] {
  const later = steps.findIndex(({ kind }) => order.indexOf(kind) > order.indexOf(step.kind));
  return steps.toSpliced(later < 0 ? steps.length : later, 0, step);
}

export function withOptions(day: Day, options: readonly MoveOption[]): Day {
  const { order } = day.practice.washDay.kinds;
  const steps = options.reduce<DayStep[]>((now, { move, to }) => {
    if (move.do === 'add') return insertUsually(now, to!, order);
    return to ? now.map((step) => (step.id === to.id ? to : step)) : now.filter(({ id }) => id !== move.step);
  }, day.steps);
  return { ...day, steps };
}

/** The routine after the moves; a wish leaves its step standing empty. */
export function applyMoves(
  routine: Routine,
  moves: readonly Move[],
  order: readonly ProductKind[],
  newId: () => string,
): Routine {
  const steps = moves.reduce<Step[]>((now, move) => {
    if (move.do === 'omit') return now.filter(({ id }) => id !== move.step);
    if (move.do === 'space')
      return now.map((step) => (step.id === move.step ? { ...step, cadence: move.cadence } : step));
    const product = 'product' in move.with ? { product: move.with.product } : {};
    if (move.do === 'swap')
      return now.map(({ product: old, ...step }) =>
        step.id === move.step
          ? { ...step, ...product }
          : { ...step, ...(old !== undefined && { product: old }) },
      );
    const { kind, use } = move;
    const step: Step = { id: newId(), kind, use, ...product, optional: false, cadence: { every: 'wash' } };
    return insertUsually(now, step, order);
  }, routine.steps);
  return { ...routine, steps };
}
