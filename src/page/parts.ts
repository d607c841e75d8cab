import { documentOf, native } from './dom.ts';
import { headingAnywhere } from './headings.ts';
import { botanicalName, nameHints, plainName } from './names.ts';

/** Nodes in document order; `null` stands where something between them was left out. */
export type Parts = (Node | null)[];

const close = 260; // letters within which three names are worth a look
const reach = 600; // letters between a heading and a name
const around = 900; // letters looked at on either side of a name
const small = 3000; // letters of an element that is looked at as a whole

const lettersOf = (node: Node): string => String(native(node, 'textContent') ?? '');

/**
 * The parts of a tree that are worth walking: where names stand close together or under a heading, with what is
 * around them. The browser hands out the letters of a subtree hundreds of times faster than a walk over it.
 */
export function partsWorthWalking(top: Node): Parts {
  const spans = spansIn(lettersOf(top).toLowerCase());
  const parts: Parts = [];
  const end = spans.at(-1)?.[1] ?? 0;
  const take = (node: Node, start: number) => {
    const walker = native(documentOf(node), 'createTreeWalker')(node, 5); // elements and text
    let at = start;
    for (let child = walker.firstChild(); child && at < end; child = walker.nextSibling()) {
      const from = at;
      at += lettersOf(child).length;
      if (!spans.some((span) => span[0] < at && span[1] > from)) {
        if (at > from && parts.at(-1)) parts.push(null);
      } else if (
        child.nodeType === 3 ||
        at - from < small ||
        spans.some((span) => span[0] <= from && span[1] >= at)
      )
        parts.push(child);
      else take(child, from);
    }
  };
  take(top, 0);
  return parts;
}

function spansIn(text: string): [number, number][] {
  const spans: [number, number][] = [];
  const headings: number[] = [];
  headingAnywhere.lastIndex = 0;
  for (let hit = headingAnywhere.exec(text); hit; hit = headingAnywhere.exec(text)) headings.push(hit.index);
  let next = 0; // the next heading
  let [older, old] = [-1e9, -1e9]; // the two names before
  nameHints.lastIndex = 0;
  for (let hit = nameHints.exec(text); hit; hit = nameHints.exec(text)) {
    const at = hit.index;
    while (headings[next]! <= at) next++;
    const before = spans.at(-1);
    if (before && at < before[1]) before[1] = at + around;
    else if (at - older < close || at - (headings[next - 1] ?? -1e9) < reach || botanicalName.test(hit[0]))
      spans.push([(at - older < close ? older : at) - around, at + around]);
    if (plainName.test(hit[0])) continue; // "shea" stands on every other card of a shelf
    older = old;
    old = at;
  }
  return spans;
}
