import { SOFT } from '../../../find/text/page-text.ts';
import { documentOf, native, tagOf } from '../dom.ts';
import { finished, type Work } from '../in-slices.ts';

/** Nodes in document order; `null` stands where something between them was left out, `undefined` at the edge of a block. */
export type NodeStream = (Node | null | undefined)[];

/**
 * A document as one string, with the way back. Block edges and `<br>` are "\n"; edges of neighbouring inline
 * elements are SOFT; the letters of each text node stand one for one (white space as spaces), so an offset in
 * the string is an offset in a node.
 */
export type Stream = {
  text: string;
  nodes: Text[];
  /** Offset in `text` of the first letter of each node. */
  starts: number[];
};

const gap = '\n'.repeat(8);
const mostNodes = 200_000;
const mostLetters = 3_000_000;
const mostDepth = 500;
const pauseAfter = 256; // nodes

/** How an element parts its text from what is around it. */
const kinds = new Map<string, number>();
const [inline, block, preformatted, rejected, lineBreak] = [1, 2, 3, 4, 5];
const say = (kind: number, tags: string) => {
  for (const tag of tags.split(' ')) kinds.set(tag, kind);
};
say(
  inline,
  'a abbr b bdi bdo big button cite code del dfn em font i ins kbd mark q s small span strong sub sup time u wbr',
);
say(
  rejected,
  'script style noscript template textarea svg math select datalist head title iframe object embed canvas audio video input nav',
);
say(preformatted, 'pre');
say(lineBreak, 'br');
const kindOf = (node: Node): number => kinds.get(tagOf(node as Element)) ?? block;

/** Whether the letters within an element are none of the page's text. */
export const isRejected = (node: Node): boolean => node.nodeType === 1 && kindOf(node) === rejected;
/** Whether the letters within a node stand in one line with those around it. */
export const isInline = (node: Node): boolean => node.nodeType === 3 || kindOf(node) === inline;

/**
 * Reads the letters of some nodes, in document order, open shadow roots included. A frame's document is read by
 * the script in that frame. What was left out between two nodes parts them like many lines. Pauses now and then.
 */
export function* readingStream(tops: NodeStream): Work<Stream> {
  const parts: string[] = [];
  const nodes: Text[] = [];
  const starts: number[] = [];
  let length = 0;
  let seen = 0;
  let edge = ''; // what is due before the next letters
  let space = false;
  let pre = 0;

  const push = (part: string) => {
    parts.push(part);
    length += part.length;
  };
  const addText = (node: Text) => {
    const { data } = node;
    if (data.trim() === '') {
      space = true;
      return;
    }
    if (length > 0) {
      if (edge === '\n') push('\n');
      else if (space) push(edge ? ` ${edge}` : ' ');
      else if (edge && /^\s*[^a-zà-ž]/.test(data) && !/[A-Z]$/.test(parts.at(-1)!)) push(edge);
    }
    edge = '';
    space = false;
    nodes.push(node);
    starts.push(length);
    // Letters keep their offsets. A line break in the source is a space unless the text is preformatted.
    push(!data.includes('\n') || pre > 0 || looksPreformatted(data) ? data : data.replace(/\n/g, ' '));
  };

  /** What parts an element from the text before it; its kind, or nothing where its letters are left out. */
  const begin = (element: Element): number | undefined => {
    const tag = tagOf(element);
    const kind = kinds.get(tag) ?? block;
    if (kind === rejected || isAside(element, tag)) return undefined;
    if (kind !== inline) edge = '\n';
    else edge ||= SOFT;
    if (kind === lineBreak) return undefined;
    if (kind === preformatted) pre++;
    return kind;
  };
  const close = (kind: number) => {
    if (kind === preformatted) pre--;
    if (kind !== inline) edge = '\n';
    else edge ||= SOFT;
  };

  /** Reads what is within an element's open shadow root; a form may call a field so. */
  function* walkShadow({ shadowRoot }: Element): Work<void> {
    if (shadowRoot?.nodeType === 11) yield* walk(shadowRoot);
  }

  /** Reads what is within a node. */
  function* walk(top: Node): Work<void> {
    const walker = native(documentOf(top), 'createTreeWalker')(top, 5); // elements and text
    const open: number[] = [];
    let node: Node | null = walker.firstChild();
    while (node) {
      let down: Node | null = null;
      if (++seen > mostNodes || length > mostLetters) return;
      if (seen % pauseAfter === 0) yield;
      if (node.nodeType === 3) addText(node as Text);
      else {
        const kind = begin(node as Element);
        if (kind) yield* walkShadow(node as Element);
        if (kind && open.length < mostDepth) down = walker.firstChild();
        if (down) open.push(kind!);
        else if (kind) close(kind);
      }
      node = down ?? walker.nextSibling();
      while (!node && open.length > 0) {
        walker.parentNode();
        close(open.pop()!);
        node = walker.nextSibling();
      }
    }
  }

  for (const top of tops) {
    if (!top) {
      if (top === null && length > 0) push(gap);
      edge = '\n';
    } else if (top.nodeType === 3) addText(top as Text);
    else if (top.nodeType !== 1) yield* walk(top);
    else {
      const kind = begin(top as Element);
      if (!kind) continue;
      yield* walkShadow(top as Element);
      yield* walk(top);
      close(kind);
    }
  }
  return { text: parts.join(''), nodes, starts };
}

/** The same in one go. */
export const readStream = (tops: NodeStream): Stream => finished(readingStream(tops));

/** Text written one name a line, shown so by `white-space: pre-line`: many lines and no commas. */
const looksPreformatted = (data: string): boolean => {
  if (data.length < 60 || !data.includes('\n')) return false;
  const lines = data.split('\n').filter((line) => line.trim()).length;
  return lines >= 6 && data.split(/[,;]/).length < lines / 2;
};

/** Words about a name: no part of a list. */
const isAside = (element: Element, tag: string): boolean =>
  (tag === 'span' || tag === 'div') && element.getAttribute('role') === 'tooltip';
