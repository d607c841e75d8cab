import type { FoundText, TabPage } from '../../contract/messages.ts';
import type { ProductFacts } from '../../core/product/product.ts';

/** What is known of the product whose list this is: at least a name and where it was met. */
export function factsOfList({ product }: Pick<FoundText, 'product'>, page: TabPage | null): ProductFacts {
  const url = product?.url ?? page?.url;
  return { ...(product ?? { name: page?.title ?? '' }), ...(url && { url }) };
}

/** What the routine is told to add: `add:` and a list with its product, as JSON. */
export const addDetail = (text: string, facts: ProductFacts): string =>
  `add:${JSON.stringify({ text, facts })}`;
