import { type Market, type Markets, marketOf, type Sold } from '../amounts/market.ts';
import type { Use } from '../names/entry.ts';
import type { ReadOptions } from '../reading/reading.ts';
import type { ProductKind } from './product.ts';

/** What a label is read for: a product, a step, what is known of a product that was met. */
export type ReadFor = {
  kind?: ProductKind | undefined;
  use?: Use | undefined;
  /** Where it is sold: the pages of a product kept, or the facts of a page. */
  sources?: readonly Sold[];
  facts?: Sold;
};

/** How the market is told: the user's own word before what the pages say. */
export type MarketBy = { markets: Markets; told?: Market | undefined };

/** How a label is read for something: its kind, use and market, where they are known, and nothing else of it. */
export function readAsOf(
  { kind, use, sources = [], facts }: ReadFor = {},
  by?: MarketBy,
): Pick<ReadOptions, 'kind' | 'use' | 'market'> {
  const market = by && (by.told ?? marketOf([...sources, ...(facts ? [facts] : [])], by.markets));
  return { ...(kind && { kind }), ...(use && { use }), ...(market && { market }) };
}
