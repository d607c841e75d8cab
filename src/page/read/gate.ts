import { attribute, native } from './dom.ts';
import { finished, type Work } from './in-slices.ts';
import { shadowRootsIn } from './shadow-roots.ts';

/**
 * Stems of headings and of the commonest label names, in the scripts labels are printed in: hardly a list does
 * without two of them close together. All the page's own script knows of names; the background knows the rest.
 */
const stems = new RegExp(
  'ingr[eéi]?d|inci\\b|inhaltss|[ck]ompos|samens[et]|sk[łl]ad|sast[aā]v|koost|склад|ainesos|in(?:ne|n|d)h[åo]l|összet|çindek|çerik|состав|съст|성분|成分|' +
    'glyc|gli[cs]er|phenox|parf[uüyé]m|fragr| (?:oil|butter|wax|clay|juice)[,;•*]|aqua|sodium|potass|tocoph|alcohol| extr|seed o|kernel o|citr[aiou]|thicon|betain|limonen|linalo|gluco|ci \\d{5}|' +
    'hydro[glx]|poly[gqs]|olymer|stear|thyl|propan|propyl|butyl|diol|benz[oy]|silic|silox|palmit|geran|th-\\d|hexy|peptid|chlori|sulf|capr[iy]|ol[ei]y|cety|lauro|cocam|myrist|behen|squal|allant|amid|' +
    'butyro|simmond|ri[cz]in|barbad|cocos|arg[aá]n|olea|persea|helianth|amygdal|jojoba|shea|karit|aloe|pant[eh]|l[ae]v[ae]nd|(?:x|ks)ant|sorb[aio]|ro[sz]m|rycyn|' +
    'huile|aceite|óleo|olej|yağı|(?:ol(?:ja|i[eo])|öl)[,;•*]|' +
    '글리세|정제수|グリセリン|香料|甘油|香精|глицер|جليسر|γλυκερ|กลีเซ',
  'gi',
);
const piece = 2e5; // letters looked through at a time
const around = 600; // letters between two stems of one list, and looked at on either side of them: a heading, the rest of it

/** Stretch of a text; `to` exclusive. */
export type Span = [from: number, to: number];

/**
 * Stretches of a text that may hold a list, one after the other: two different stems stand close together. Pauses
 * within a long text.
 */
export function* spanning(text: string): Work<Span[]> {
  const spans: Span[] = [];
  let last = ''; // the stem before
  let lastAt = -around;
  let otherAt = lastAt; // the last one that differs from it
  for (let from = 0; from < text.length; from += piece) {
    // A stem that begins in this piece may end in the next; met there once more it changes nothing.
    for (const hit of text.slice(from, from + piece + around).matchAll(stems)) {
      const stem = hit[0].toLowerCase();
      const at = from + hit.index;
      if (stem !== last) otherAt = lastAt;
      last = stem;
      lastAt = at;
      const before = spans.at(-1);
      if (before && at < before[1]) before[1] = at + around;
      else if (at - otherAt < around) spans.push([Math.max(before?.[1] ?? 0, otherAt - around), at + around]);
    }
    yield;
  }
  return spans;
}

const mayHold = (text: string) => !!finished(spanning(text))[0];

/** All letters of a subtree, its scripts' too. */
export const lettersIn = (node: Node): string => String(native(node, 'textContent') ?? '');

/** The trees of a document, or of a part of one: itself and its open shadow roots. */
export function treesOf(root: Document | ShadowRoot | Element, roots = shadowRootsIn(root)): Node[] {
  const top = root.nodeType === 9 ? native(root as Document, 'documentElement') : root;
  return top ? [top, ...roots] : [];
}

/** Whether names stand in attributes of microdata. */
export const namesInMeta = (root: Document | ShadowRoot | Element): boolean => {
  const said = [...native(root as Element, 'querySelectorAll')('[itemprop][content]')];
  return mayHold(said.map((element) => attribute(element, 'content')).join('\n'));
};

/**
 * Whether a document, or a part of one, may hold an ingredient list: some frequent cosmetic names stand close
 * together in its letters, its embedded data or its open shadow roots. Cheap, and says yes too often rather
 * than too seldom.
 */
export const gate = (root: Document | ShadowRoot | Element): boolean =>
  treesOf(root).some((tree) => mayHold(lettersIn(tree))) || namesInMeta(root);
