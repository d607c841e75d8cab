import { documentOf, native, tagOf } from './dom.ts';

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

/** Edge between two inline elements: a separator only where the names have no other. */
export const SOFT = '\v';

const mostNodes = 200_000;
const mostLetters = 3_000_000;
const mostDepth = 500;

const rejected = new Set(
  'script style noscript template textarea svg math select datalist head title iframe object embed canvas audio video input nav'.split(
    ' ',
  ),
);
const inline = new Set(
  'a abbr acronym b bdi bdo big button cite code data del dfn em font i ins kbd mark q s samp small span strike strong sub sup time tt u var wbr'.split(
    ' ',
  ),
);

/** Reads the letters under `root` in document order, open shadow roots included. A frame's document is read by the script in that frame. */
export function readStream(root: Node): Stream {
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
    const data = node.data;
    if (!/\S/.test(data)) {
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
    push(pre > 0 || looksPreformatted(data) ? data.replace(/[^\S\n]/g, ' ') : data.replace(/\s/g, ' '));
  };

  const walk = (top: Node) => {
    const walker = native(documentOf(top), 'createTreeWalker')(top, 5); // elements and text
    const kinds: number[] = []; // 0 inline, 1 block, 2 preformatted block
    const close = (kind: number) => {
      if (kind === 2) pre--;
      if (kind > 0) edge = '\n';
      else if (!edge) edge = SOFT;
    };
    let node: Node | null = walker.firstChild();
    while (node) {
      let down: Node | null = null;
      if (++seen > mostNodes || length > mostLetters) return;
      if (node.nodeType === 3) addText(node as Text);
      else {
        const element = node as Element;
        const tag = tagOf(element);
        if (tag === 'br') edge = '\n';
        else if (!rejected.has(tag) && !isTooltip(element, tag)) {
          const kind = tag === 'pre' ? 2 : inline.has(tag) ? 0 : 1;
          if (kind > 0) edge = '\n';
          else if (!edge) edge = SOFT;
          if (kind === 2) pre++;
          const shadow: unknown = tag === 'form' ? null : element.shadowRoot;
          if (shadow && (shadow as Node).nodeType === 11) walk(shadow as Node);
          down = kinds.length < mostDepth ? walker.firstChild() : null;
          if (down) kinds.push(kind);
          else close(kind);
        }
      }
      if (down) {
        node = down;
        continue;
      }
      node = walker.nextSibling();
      while (!node && kinds.length > 0) {
        walker.parentNode();
        close(kinds.pop()!);
        node = walker.nextSibling();
      }
    }
  };

  if (root.nodeType === 9) {
    const body = native(root as Document, 'body');
    if (body) walk(body);
  } else {
    const own = root.nodeType === 1 ? (root as Element).shadowRoot : null;
    if (own && own.nodeType === 11) walk(own);
    walk(root);
  }
  return { text: parts.join(''), nodes, starts };
}

/** Text written one name a line, shown so by `white-space: pre-line`: many lines and no commas. */
const looksPreformatted = (data: string): boolean => {
  if (data.length < 60 || !data.includes('\n')) return false;
  const lines = data.split(/\s*\n\s*/).filter(Boolean).length;
  return lines >= 6 && data.split(/[,;]/).length < lines / 2;
};

const isTooltip = (element: Element, tag: string): boolean =>
  (tag === 'span' || tag === 'div') && element.getAttribute('role') === 'tooltip';

/** Index in `nodes` of the node that holds offset `at`, or of the last one before it; -1 when there is none. */
export function nodeAt(stream: Stream, at: number): number {
  let low = 0;
  let high = stream.starts.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (stream.starts[middle]! <= at) low = middle + 1;
    else high = middle - 1;
  }
  return high;
}
