import type { StructureName } from '../store/structures/index.ts';

/** The control a shopper presses to see the list, in each structure that folds it away. */
const controls: Partial<Record<StructureName, string>> = {
  details: 'summary:has-text("Ingredients")',
  tabs: '#tab-title-label',
  'after-bullets': '[data-unfolds]',
  dialog: '[data-opens]',
  'custom-dialog': 'label-opener button',
  'after-click': '[data-loads]',
  accordion: '[data-mounts]',
};

/** Unfolds the list of a structure by pressing its control, where it has one. */
export async function reveal(
  press: (selector: string) => Promise<unknown>,
  structure: StructureName,
): Promise<void> {
  const control = controls[structure];
  if (control) await press(control);
}
