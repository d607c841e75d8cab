import { native } from './dom.ts';
import { botanicalName, nameHints } from './names.ts';

/** Distinct names a page must print before it is looked at closely. */
const enough = 2;

/**
 * Whether a document, or a part of one, may hold an ingredient list: some frequent cosmetic names stand in its
 * letters, its embedded data or its open shadow roots. Cheap, and says yes too often rather than too seldom.
 */
export function gate(root: Document | ShadowRoot | Element): boolean {
  const top = root.nodeType === 9 ? native(root as Document, 'documentElement') : root;
  if (!top) return false;
  if (holdsNames(String(native(top, 'textContent') ?? ''))) return true;
  for (const element of native(top as Element, 'querySelectorAll')('*')) {
    const name: unknown = element.localName;
    if (typeof name !== 'string') continue;
    if (name === 'meta' && holdsNames(element.getAttribute('content') ?? '')) return true;
    const shadow: unknown = element.shadowRoot;
    if (shadow && (shadow as Node).nodeType === 11 && gate(shadow as ShadowRoot)) return true;
  }
  return false;
}

function holdsNames(text: string): boolean {
  const low = text.toLowerCase();
  const names = new Set<string>();
  nameHints.lastIndex = 0;
  for (let hit = nameHints.exec(low); hit; hit = nameHints.exec(low))
    if (botanicalName.test(hit[0]) || names.add(hit[0]).size >= enough) return true;
  return false;
}
