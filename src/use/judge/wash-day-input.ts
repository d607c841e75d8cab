import type { Candidate } from '../../core/plan/suggest.ts';
import { type Product, usualUse } from '../../core/product/product.ts';
import type { ReadFor } from '../../core/product/read-as.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { WashDayInput } from '../../core/wash-day/add-up.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import type { Remembered } from '../../store/remembered.ts';
import { productById } from '../acts/matters/products.ts';
import { rememberedAllowance } from '../in-use.ts';
import type { Knowing } from '../knowing.ts';

/** The newest label of a product, read for a kind and use; undefined while it is read or where there is none. */
export function readingOf(knowing: Knowing, product: Product | undefined, as: ReadFor): Reading | undefined {
  const text = product?.labels[0]?.text;
  const { kind, use } = as;
  return text ? knowing.reading(text, { kind, use, sources: product.sources }) : undefined;
}

/** Routines whose labels are all read, by what they were put together from: asked for with every product kept. */
const assembled = new WeakMap<Routine, { of: unknown[]; input: WashDayInput }>();

/** All that the rules need to know of one routine: the one place where a wash day is put together. */
export function washDayInput(knowing: Knowing, routine: Routine): WashDayInput {
  const { remembered, today, practice, reading } = knowing;
  const of = [remembered, today, practice, reading];
  const before = assembled.get(routine);
  if (before?.of.every((each, at) => each === of[at])) return before.input;
  const head = remembered.heads.find(({ id }) => id === routine.head);
  const readings = new Map(
    routine.steps.map((step) => [step.id, readingOf(knowing, productById(remembered, step.product), step)]),
  );
  const allowance = rememberedAllowance(knowing, head);
  const input: WashDayInput = { routine, readings, head, allowance, log: remembered.log, today, practice };
  if (!stillReading(knowing, input)) assembled.set(routine, { of, input });
  return input;
}

/** Whether a label of the routine is still being read: then the findings would speak too early. */
export const stillReading = ({ remembered }: Knowing, { routine, readings }: WashDayInput): boolean =>
  routine.steps.some(
    ({ id, product }) => productById(remembered, product)?.labels[0]?.text && readings.get(id) === undefined,
  );

/** What was gathered last, with the considered ones and without; `complete` where no label was still being read. */
const gathered = new Map<boolean, { of: Remembered; candidates: readonly Candidate[]; complete: boolean }>();

const isSame = (a: Candidate, b: Candidate | undefined) =>
  a.product === b?.product &&
  a.kind === b.kind &&
  a.use === b.use &&
  a.owned === b.owned &&
  a.reading === b.reading;

/**
 * Products that could stand in a routine: on hand, and the considered ones where they are wanted. Worked out once for
 * each store, and the same list as before where a change left them as they were.
 */
export function candidatesOf(knowing: Knowing, considered: boolean): readonly Candidate[] {
  const { remembered } = knowing;
  const before = gathered.get(considered);
  if (before?.complete && before.of === remembered) return before.candidates;
  let complete = true;
  const fresh = remembered.products.flatMap((product) => {
    const { id, kind, owned } = product;
    if (!kind || !(owned || considered)) return [];
    const use = product.use ?? usualUse[kind];
    const reading = readingOf(knowing, product, { kind, use });
    if (!reading && product.labels[0]?.text) complete = false;
    return reading ? [{ product: id, kind, use, reading, owned }] : [];
  });
  const last = before?.candidates;
  const same = fresh.length === last?.length && fresh.every((each, at) => isSame(each, last[at]));
  const candidates = same ? last : fresh;
  gathered.set(considered, { of: remembered, candidates, complete });
  return candidates;
}
