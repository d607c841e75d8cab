import type { Spot } from './place.ts';

/** One name as it stands on screen now: its line fragments (client pixels) and the room at its end. */
export type Measured = { fragments: DOMRect[]; spot: Spot | undefined };

type Metrics = { ascent: number; descent: number; ink(text: string): number; below: number };

const separators = /[\s,;.،、，]/;

/** Reads the page's layout, writes nothing. One instance serves one pass: fonts are measured once. */
export function createRuler(doc: Document) {
  const brush = doc.createElement('canvas').getContext('2d');
  const range = doc.createRange();
  const fonts = new Map<string, Metrics>();
  const styles = new Map<Element, CSSStyleDeclaration>();

  const styleOf = (element: Element) => {
    const style = styles.get(element) ?? getComputedStyle(element);
    styles.set(element, style);
    return style;
  };

  const metricsOf = (font: string, size: number): Metrics => {
    const known = fonts.get(font);
    if (known) return known;
    const measure = (text: string) => {
      if (brush && brush.font !== font) brush.font = font;
      return brush?.measureText(text);
    };
    const all = measure('gjpqy,;(');
    const made: Metrics = {
      ascent: all?.fontBoundingBoxAscent ?? size * 0.9,
      descent: all?.fontBoundingBoxDescent ?? size * 0.25,
      below: all?.actualBoundingBoxDescent ?? size * 0.22,
      ink: (text) => measure(text)?.actualBoundingBoxAscent ?? size * 0.74,
    };
    fonts.set(font, made);
    return made;
  };

  const rectsOf = (points: StaticRangeInit) => {
    range.setStart(points.startContainer, points.startOffset);
    range.setEnd(points.endContainer, points.endOffset);
    return [...range.getClientRects()].filter((rect) => rect.width > 0 && rect.height > 0);
  };

  /** Blank width after the name: to the first letter that is neither blank nor comma, on the same line. */
  const roomAfter = (points: StaticRangeInit, last: DOMRect, forward: 1 | -1, most: number): number => {
    let node: Node | null = points.endContainer;
    let offset = points.endOffset;
    const walker = doc.createTreeWalker(node.parentElement?.parentElement ?? node, NodeFilter.SHOW_TEXT);
    walker.currentNode = node;
    for (let looked = 0; node && looked < 40; looked++) {
      const text = node as Text;
      if (offset >= text.length) {
        node = walker.nextNode();
        offset = 0;
        continue;
      }
      if (!separators.test(text.data[offset]!)) {
        const [next] = rectsOf({
          startContainer: text,
          startOffset: offset,
          endContainer: text,
          endOffset: offset + 1,
        });
        if (!next || Math.abs(next.bottom - last.bottom) > last.height / 2) return most;
        const room = forward === 1 ? next.left - last.right : last.left - next.right;
        return Math.max(0, Math.min(most, room));
      }
      offset++;
    }
    return most;
  };

  /** Whether the last letters run to the left (whatever the paragraph's direction). */
  const runsBack = ({ endContainer, endOffset }: StaticRangeInit): boolean => {
    if (endOffset < 2) return false;
    const [before, last] = [2, 1].map(
      (back) =>
        rectsOf({
          startContainer: endContainer,
          startOffset: endOffset - back,
          endContainer,
          endOffset: endOffset - back + 1,
        })[0],
    );
    return (
      before !== undefined &&
      last !== undefined &&
      Math.abs(before.top - last.top) < 2 &&
      last.left < before.left
    );
  };

  return {
    measure(points: StaticRangeInit): Measured {
      const fragments = rectsOf(points);
      const last = fragments.at(-1);
      const holder = points.endContainer.parentElement;
      if (!last || !holder) return { fragments, spot: undefined };
      const style = styleOf(holder);
      if (style.writingMode !== 'horizontal-tb') return { fragments, spot: undefined };
      const size = Number.parseFloat(style.fontSize);
      const { ascent, descent, ink, below } = metricsOf(style.font || `${size}px ${style.fontFamily}`, size);
      const scale = last.height / (ascent + descent); // page zoom and transforms
      const tail = (points.endContainer as Text).data.slice(
        Math.max(0, points.endOffset - 6),
        points.endOffset,
      );
      const inkHeight = ink(style.textTransform === 'uppercase' ? tail.toUpperCase() : tail) * scale;
      const pitch = (Number.parseFloat(style.lineHeight) || size * 1.2) * scale;
      const forward = runsBack(points) ? -1 : 1;
      return {
        fragments,
        spot: {
          end: forward === 1 ? last.right : last.left,
          forward,
          baseline: last.top + ascent * scale,
          ink: inkHeight,
          gap: pitch - inkHeight - below * scale,
          room: roomAfter(points, last, forward, size),
          foot: 0.42 * size * scale,
          width: last.width,
        },
      };
    },
    /** Whether the text at `points` is light on a dark ground. */
    isDark(points: StaticRangeInit): boolean {
      const holder = points.startContainer.parentElement;
      const [r = 0, g = 0, b = 0] = holder ? (styleOf(holder).color.match(/[\d.]+/g) ?? []).map(Number) : [];
      return 0.2126 * r + 0.7152 * g + 0.0722 * b > 140;
    },
  };
}
