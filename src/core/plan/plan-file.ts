import type { Use } from '../names/entry.ts';
import type { Product, ProductKind } from '../product/product.ts';
import type { Cadence, Routine } from '../wash-day/routine.ts';

/** Readers of version 1 know no turns and would have two steps come on one day: only plans with turns are 2. */
export const planFileVersion = 2;

/** A product of a plan: its label, and nothing of where or when it was met. */
export type PlanProduct = {
  /** What steps call it, within this file only. */
  ref: string;
  name: string;
  maker?: string;
  kind?: ProductKind;
  use?: Use;
  label: string;
};

export type PlanStep = {
  kind: ProductKind;
  use: Use;
  product?: string;
  optional: boolean;
  cadence: Cadence;
  grams?: number;
};

/** One routine with its labels, for somebody else: no head, no photo, no log, no shop, no id of ours. */
export type PlanFile = {
  strandline: 'wash-day-plan';
  version: 1 | typeof planFileVersion;
  /** ISO date. */
  made: string;
  name: string;
  washEvery: number;
  /** Words of whoever made it. */
  note?: string;
  products: PlanProduct[];
  steps: PlanStep[];
};

/** A routine as a plan for somebody else. */
export function planFileOf(routine: Routine, products: readonly Product[], made: string): PlanFile {
  const ids = [...new Set(routine.steps.flatMap(({ product }) => product ?? []))];
  const known = ids.flatMap((id) => products.find((product) => product.id === id) ?? []);
  const refs = new Map(known.map(({ id }, at) => [id, `p${at + 1}`]));
  return {
    strandline: 'wash-day-plan',
    version: routine.steps.some(({ cadence }) => 'from' in cadence) ? planFileVersion : 1,
    made,
    name: routine.name,
    washEvery: routine.washEvery,
    ...(routine.note && { note: routine.note }),
    products: known.map(({ id, name, maker, kind, use, labels }) => ({
      ref: refs.get(id)!,
      name,
      ...(maker && { maker }),
      ...(kind && { kind }),
      ...(use && { use }),
      label: labels[0]?.text ?? '',
    })),
    steps: routine.steps.map(({ kind, use, product, optional, cadence, grams }) => {
      const ref = product && refs.get(product);
      return {
        kind,
        use,
        ...(ref && { product: ref }),
        optional,
        cadence,
        ...(grams !== undefined && { grams }),
      };
    }),
  };
}
