/** A cheap look: may this part of a document hold an ingredient list at all? */
export const mayHoldLists = (root: Document | ShadowRoot | Element): boolean =>
  /ingredients|inci\b/i.test(root.textContent ?? (root as Document).body?.textContent ?? '');
