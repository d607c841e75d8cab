import type { Holder, PageText } from '../../../contract/messages.ts';
import { attribute, documentOf, native, parentOf, tagOf, textOf } from '../dom.ts';
import type { Work } from '../in-slices.ts';

const labelAttributes = ['data-th', 'data-label', 'data-title', 'aria-label', 'title'];
const pointers = ['aria-controls', 'data-target', 'data-bs-target', 'data-modal', 'for', 'href'];
const pointing = `${pointers.map((name) => `[${name}`).join('],')}^="#"]`; // an address within the page

/** Attributes that tell something, among others of an element. */
const telling = /(?:^| )(?:role|hidden|style|id|title|aria-|data-)/;

const pauseAfter = 64; // nodes

/**
 * The elements around some text nodes, parents before children, with what tells of a list that they hold. Pauses
 * now and then.
 */
export function* holdersOf(nodes: Text[]): Work<Pick<PageText, 'parents' | 'elements'>> {
  const elements: Holder[] = [];
  const places = new Map<Element, number>();
  const unlabelled = new Map<string, Holder>();
  const add = (element: Element, parent: number) => {
    const holder: Holder = { tag: tagOf(element), parent };
    places.set(element, elements.push(holder) - 1);
    if (!telling.test(native(element, 'getAttributeNames')().join(' '))) return;
    const role = attribute(element, 'role');
    if (role) holder.role = role;
    if (isHidden(element)) holder.hidden = true;
    const by = attribute(element, 'aria-labelledby').split(' ')[0];
    const label =
      labelAttributes.map((name) => attribute(element, name)).find(Boolean) ||
      (by && textOf(native(documentOf(element), 'getElementById')(by), 80));
    const id = attribute(element, 'id');
    if (label) holder.label = label.slice(0, 80);
    else if (id) unlabelled.set(id, holder);
  };
  const placeOf = (element: Element | null): number => {
    const unmet: Element[] = [];
    let at = element;
    for (; at && !places.has(at); at = parentOf(at)) unmet.push(at);
    for (const each of unmet.reverse()) {
      add(each, at ? places.get(at)! : -1);
      at = each;
    }
    return element ? places.get(element)! : -1;
  };
  const parents: number[] = [];
  for (const node of nodes) if (parents.push(placeOf(parentOf(node))) % pauseAfter === 0) yield;
  const first = nodes[0];
  if (first && unlabelled.size > 0) labelByPointer(documentOf(first), unlabelled);
  return { parents, elements };
}

/** Panels and dialogs far from what opens them: its words are their label. */
function labelByPointer(document: Document, unlabelled: Map<string, Holder>): void {
  for (const pointer of native(document, 'querySelectorAll')(pointing)) {
    for (const name of pointers) {
      const holder = unlabelled.get(attribute(pointer, name).replace('#', ''));
      if (holder) holder.label ??= textOf(pointer, 80);
    }
  }
}

/** Hidden by an attribute; styles are not asked, that would force the page to lay itself out. */
const isHidden = (element: Element): boolean =>
  native(element, 'hasAttribute')('hidden') ||
  attribute(element, 'aria-hidden') === 'true' ||
  /display: ?none|visibility: ?hidden/.test(attribute(element, 'style'));
