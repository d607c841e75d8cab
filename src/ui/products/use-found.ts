import { useEffect, useMemo, useState } from 'preact/hooks';
import { atOnce } from '../../core/at-once.ts';
import type { Product } from '../../core/product/product.ts';
import { inTurns } from '../../use/in-turns.ts';
import type { Translate } from '../words/index.ts';
import { createSearch } from './search.ts';

const mostAtOnce = 500; // products that are searched before the next frame

/** What is searched for, best first; of many products it comes a little later, and what was found before stands until then. */
export function useFound(products: readonly Product[], t: Translate, query: string): Product[] {
  const search = useMemo(() => createSearch(products, t), [products, t]);
  const [later, setLater] = useState<Product[]>([]);
  const now = useMemo(() => {
    if (query.trim() && products.length > mostAtOnce) return undefined;
    return atOnce(search(query));
  }, [search, query]);
  useEffect(() => {
    if (now) return;
    let off = false;
    void inTurns(search(query), () => off).then((found) => found && !off && setLater(found));
    return () => {
      off = true;
    };
  }, [search, query]);
  return now ?? later;
}
