import type { ProductFacts } from '../core/product.ts';

export type FoundList = { text: string; ranges: Range[]; via: string; product?: ProductFacts };

/** Elements whose own text reads like an ingredient list. */
export function findLists(root: Document | ShadowRoot | Element): FoundList[] {
  const found: FoundList[] = [];
  for (const element of root.querySelectorAll('p,dd,td,div,li,span')) {
    const text = element.textContent ?? '';
    if (element.querySelector('p,dd,td,div,li') || text.split(',').length < 8) continue;
    if (found.some((list) => list.text === text)) continue;
    const range = element.ownerDocument.createRange();
    range.selectNodeContents(element);
    found.push({ text, ranges: [range], via: 'text' });
  }
  return found;
}
