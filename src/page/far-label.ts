import { attribute, documentOf, native, parentOf, textOf } from './dom.ts';

const labelAttributes = ['data-th', 'data-label', 'data-title', 'aria-label', 'title'];
const pointers = ['href', 'aria-controls', 'data-target', 'data-bs-target', 'data-modal', 'for'];

/** The label of a panel, dialog or cell that does not stand beside its text: by attribute or by reference. */
export function labelOf(block: Element | null): string {
  for (let at = block, level = 0; at && level < 5; at = parentOf(at), level++) {
    for (const name of labelAttributes) {
      const label = attribute(at, name);
      if (label) return label.slice(0, 80);
    }
    const document = documentOf(at);
    const id = attribute(at, 'id');
    const by = attribute(at, 'aria-labelledby');
    if (by) return textOf(native(document, 'getElementById')(by.split(' ')[0]!), 80);
    if (id && /^[\w-]+$/.test(id)) {
      const pointer = native(
        document,
        'querySelector',
      )(pointers.map((name) => `[${name}="#${id}"],[${name}="${id}"]`).join());
      if (pointer) return textOf(pointer, 80);
    }
  }
  return '';
}
