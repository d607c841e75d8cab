// Where a saved page prints what is stated of it.

/** Letters alone, in lower case: how a stated text and a printed one are compared, whatever stands between its parts. */
export const keyOf = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\P{L}+/gu, '');

const longest = 400; // letters of a node that may print one ingredient
const unprinted = 'script,style,noscript,template,head,svg,textarea,select';

/** Nodes under another one in the order of the page, unprinted ones left out; `what`: 1 elements, 4 text, 5 both. */
export function nodesIn(top: Node, what: number): Node[] {
  const walker = (top.ownerDocument ?? (top as Document)).createTreeWalker(top, 5);
  const found: Node[] = [];
  let node = walker.firstChild();
  while (node) {
    const hidden = node.nodeType === 1 && (node as Element).matches(unprinted);
    if (!hidden && (node.nodeType === 1 ? what & 1 : what & 4)) found.push(node);
    let next = hidden ? null : walker.firstChild();
    while (!next) {
      next = walker.nextSibling();
      if (!next && (!walker.parentNode() || walker.currentNode === top)) return found;
    }
    node = next;
  }
  return found;
}

/** Text nodes under a node that print something; the node itself where it is one. */
export const textsIn = (node: Node): Text[] =>
  (node.nodeType === 3 ? [node] : nodesIn(node, 4)).filter((text) => text.textContent?.trim()) as Text[];

/** Nodes by the letters they print, outermost of those that print the same. */
function printedBy(document: Document, wanted: ReadonlySet<string>): Map<string, Node[]> {
  const found = new Map<string, Node[]>();
  for (const node of document.body ? nodesIn(document.body, 5) : []) {
    const text = node.textContent ?? '';
    if (text.length > longest || text.trim() === '') continue;
    const key = keyOf(text);
    if (!wanted.has(key)) continue;
    const same = found.get(key);
    if (!same) found.set(key, [node]);
    else if (!same.some((outer) => outer.contains(node))) same.push(node);
  }
  return found;
}

/** One printing of the stated ingredients: the element that holds all, and the node of each, in order. */
export type Printing = { holder: Element; items: Node[] };

const fewest = 4; // different ingredients of a page that is a host

/** Every printing of all the stated ingredients; a page may print them twice, for paper or for small screens. */
export function printingsOf(document: Document, ingredients: readonly string[]): Printing[] {
  const wanted = new Set(ingredients.map(keyOf).filter(Boolean));
  if (wanted.size < fewest) return [];
  const printed = printedBy(document, wanted);
  if (printed.size < wanted.size) return [];
  const held = new Map<Element, number>();
  for (const nodes of printed.values()) {
    const around = new Set<Element>();
    for (const node of nodes) for (let up = node.parentElement; up; up = up.parentElement) around.add(up);
    for (const each of around) held.set(each, (held.get(each) ?? 0) + 1);
  }
  const whole = [...held].filter(([, count]) => count === wanted.size).map(([element]) => element);
  const holders = new Set(whole);
  for (const element of whole)
    for (let up = element.parentElement; up; up = up.parentElement) holders.delete(up);
  const all = new Set([...printed.values()].flat());
  return [...holders].map((holder) => ({
    holder,
    items: outermost(nodesIn(holder, 5).filter((node) => all.has(node))),
  }));
}

const outermost = (nodes: Node[]): Node[] =>
  nodes.filter((node) => !nodes.some((other) => other !== node && other.contains(node)));

/** Elements that print one of the stated sentences, outermost first. */
export function printing(document: Document, stated: readonly string[]): Element[] {
  const wanted = new Set(stated.map(keyOf).filter(({ length }) => length > 3));
  const isOne = ({ textContent }: Node) =>
    (textContent ?? '').length < 3000 && wanted.has(keyOf(textContent ?? ''));
  return document.body ? (nodesIn(document.body, 1).filter(isOne) as Element[]) : [];
}
