import { exposureOf } from '../core/amounts/brings.ts';
import type { ProductFacts } from '../core/product/product.ts';
import { headInUse, routineInUse } from './in-use.ts';
import type { Knowing } from './knowing.ts';

/**
 * Grams of a product that one wash takes: as its step in the routine in use says (`id` is that of a kept product),
 * else what is usual for its kind; undefined where the kind is not known.
 */
export function gramsAWash(
  { remembered, practice }: Pick<Knowing, 'remembered' | 'practice'>,
  { id, kind, use }: Pick<ProductFacts, 'kind' | 'use'> & { id?: string | undefined },
): number | undefined {
  const steps = routineInUse(remembered, headInUse(remembered))?.steps ?? [];
  const step = id === undefined ? undefined : steps.find(({ product }) => product === id);
  if (step) return exposureOf(step, practice.washDay).grams;
  return kind && exposureOf({ kind, ...(use && { use }) }, practice.washDay).grams;
}
