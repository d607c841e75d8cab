import type { ProductFacts } from '../core/product.ts';
import { attribute, native, parentOf, tagOf } from './dom.ts';
import { embeddedLines } from './embedded.ts';
import { partsWorthWalking } from './parts.ts';
import { type Piece, rangeOf, textAndPieces } from './pieces.ts';
import { blockAt, findSegments, type Segment } from './segments.ts';
import { shadowRootsIn } from './shadow-roots.ts';
import { readStream, type Stream } from './stream.ts';

export { type Piece, rangeOf } from './pieces.ts';

/** Where a list stands: its letters and the way back to the page's text nodes. */
export type Place = { text: string; pieces: Piece[]; via: string };

/** One distinct list of a page, with every place that prints it (the first is the one to paint). */
export type FoundList = {
  /** The list's letters only, without its heading. Block edges and `<br>` are "\n". */
  text: string;
  /** The whole list in the page; empty when it stands only in the page's data. */
  ranges: Range[];
  /** How it was found: the structure around it, or `names` when no heading announced it. */
  via: string;
  product?: ProductFacts;
  pieces: Piece[];
  places: Place[];
};

/** Finds the ingredient lists under `root`. Reads letters only: no layout is forced, nothing is changed. */
export function findLists(root: Document | ShadowRoot | Element): FoundList[] {
  const body = root.nodeType === 9 ? native(root as Document, 'body') : root;
  if (!body) return [];
  const own = root.nodeType === 1 ? (root as Element).shadowRoot : null;
  const tops = [body, ...(own?.nodeType === 11 ? [own, ...shadowRootsIn(own)] : []), ...shadowRootsIn(root)];
  const places = placesIn(readStream(tops.flatMap((top) => [...partsWorthWalking(top), null])));
  if (places.length > 0 || root.nodeType !== 9) return merge(places);
  const data = embeddedLines(root as Document);
  return merge(placesIn({ text: data, nodes: [], starts: [] }).map((place) => ({ ...place, via: 'data' })));
}

const placesIn = (stream: Stream): Found[] => findSegments(stream).map((segment) => placeOf(stream, segment));

type Found = Place & { label: string; hidden: boolean };

function placeOf(stream: Stream, segment: Segment): Found {
  const { text, pieces } = textAndPieces(stream, segment.from, segment.to, segment.soft);
  const block = blockAt(stream, segment.from);
  return { text, pieces, via: viaOf(block, segment), label: segment.label, hidden: isHidden(block) };
}

function viaOf(block: Element | null, segment: Segment): string {
  for (let at = block, level = 0; at && level < 12; at = parentOf(at), level++) {
    const tag = tagOf(at);
    const role = attribute(at, 'role');
    if (tag === 'details' || tag === 'table' || tag === 'dl') return tag;
    if (tag === 'dialog' || role === 'dialog') return 'dialog';
    if (role === 'tabpanel') return 'tab';
  }
  return segment.headed === 'inline' ? 'paragraph' : segment.headed ? 'heading' : 'names';
}

/** Hidden by an attribute; styles are not asked, that would force the page to lay itself out. */
function isHidden(block: Element | null): boolean {
  for (let at = block; at; at = parentOf(at))
    if (
      at.hasAttribute('hidden') ||
      attribute(at, 'aria-hidden') === 'true' ||
      /display: ?none|visibility: ?hidden/.test(attribute(at, 'style'))
    )
      return true;
  return false;
}

const letters = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');

/** One list for each distinct text: a truncated copy belongs to its fullest, the visible copy is preferred. */
function merge(places: Found[]): FoundList[] {
  const groups: { key: string; places: Found[] }[] = [];
  for (const place of places) {
    const key = letters(place.text);
    const group = groups.find(
      (one) => one.key === key || (key.length > 40 && (one.key.includes(key) || key.includes(one.key))),
    );
    if (!group) groups.push({ key, places: [place] });
    else {
      group.places.push(place);
      if (key.length > group.key.length) group.key = key;
    }
  }
  const several = groups.length > 1;
  return groups.map(({ places: same }) => {
    const longest = Math.max(...same.map((place) => letters(place.text).length));
    const rank = (place: Found) =>
      (letters(place.text).length >= longest * 0.98 ? 2 : 0) + (place.hidden ? 0 : 1);
    const sorted = [...same].sort((a, b) => rank(b) - rank(a));
    const best = sorted[0]!;
    const product = several && same.find((place) => place.label)?.label;
    return {
      text: best.text,
      via: best.via,
      pieces: best.pieces,
      ranges: rangeOf(best, 0, best.text.length),
      places: sorted.map(({ text, pieces, via }) => ({ text, pieces, via })),
      ...(product ? { product: { name: product } } : {}),
    };
  });
}
