import type { Use } from '../names/entry.ts';
import type { ReadOptions } from '../reading/reading.ts';
import type { ProductKind } from './product.ts';

/** What a label is read for: a product, a step, the facts of a page. */
export type ReadFor = { kind?: ProductKind | undefined; use?: Use | undefined };

/** Kind and use of what a label is read for, where they are known, and nothing else of it. */
export const readAsOf = ({ kind, use }: ReadFor = {}): Pick<ReadOptions, 'kind' | 'use'> => ({
  ...(kind && { kind }),
  ...(use && { use }),
});
