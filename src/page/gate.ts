import { attribute, native } from './dom.ts';
import { shadowRootsIn } from './shadow-roots.ts';

/**
 * Stems of headings and of the commonest label names, in the scripts labels are printed in: hardly a list does
 * without two of them. The gate's own data; the finder knows more.
 */
const stems =
  /ingr[eé]di|inci\b|inhaltss|composi|состав|съст|성분|成分|glyc[eo]|phenox|parfum|fragr|aqua|sodium|tocoph|alcohol| extract|seed o|citric|dimeth|betain|panthen|limonen|linalo|glucosid|ci 77|kernel o|butyro|ricinus|barbad|글리세|정제수|グリセリン|香料|甘油|香精|глицер|جليسر|γλυκερ|กลีเซ/g;
/** Distinct stems a page must print before it is looked at closely. */
const enough = 2;

/**
 * Whether a document, or a part of one, may hold an ingredient list: some frequent cosmetic names stand in its
 * letters, its embedded data or its open shadow roots. Cheap, and says yes too often rather than too seldom.
 */
export function gate(root: Document | ShadowRoot | Element): boolean {
  const top = root.nodeType === 9 ? native(root as Document, 'documentElement') : root;
  if (!top) return false;
  if (holdsNames(String(native(top, 'textContent') ?? ''))) return true;
  for (const meta of native(top as Element, 'querySelectorAll')('[itemprop][content]'))
    if (holdsNames(attribute(meta, 'content'))) return true;
  return shadowRootsIn(top as Element).some((shadow) => holdsNames(shadow.textContent ?? ''));
}

function holdsNames(text: string): boolean {
  const low = text.toLowerCase();
  const seen = new Set<string>();
  stems.lastIndex = 0;
  for (let hit = stems.exec(low); hit; hit = stems.exec(low))
    if (seen.add(hit[0]).size >= enough) return true;
  return false;
}
