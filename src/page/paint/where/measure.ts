import { doc } from '../doc.ts';
import type { NameSpot } from './glyph-box.ts';
import { boxesOf } from './letter-boxes.ts';

/** One name as it stands on screen now: its last line (client pixels), if any, and the room at its end. */
export type Measured = { last?: DOMRect; spot?: NameSpot };

const aLetter = /[^\s,;.،、，]/;
/** Letters that run to the left, whatever the paragraph's direction: Hebrew, Arabic and their kin. */
const runsBack = /[\u0590-\u08ff\ufb1d-\ufefc]/;

const brush = doc.createElement('canvas').getContext('2d')!;

/** Where a name stands now. Reads the page's layout, writes nothing. */
export function measure(points: StaticRangeInit): Measured {
  const last = boxesOf(points).at(-1);
  const { endContainer, endOffset } = points;
  const holder = endContainer.parentElement;
  if (!last || !holder) return {};
  const style = getComputedStyle(holder);
  if (style.writingMode !== 'horizontal-tb') return { last };
  const size = parseFloat(style.fontSize);
  const pitch = parseFloat(style.lineHeight) || size * 1.2;
  const tail = (endContainer as Text).data.slice(Math.max(0, endOffset - 6), endOffset);
  // Firefox leaves `font` empty where its parts do not fit in one.
  brush.font = style.font || `${size}px ${style.fontFamily}`;
  const ink = brush.measureText(style.textTransform === 'uppercase' ? tail.toUpperCase() : tail);
  const all = brush.measureText('gjpqy,;(');
  const scale = last.height / (all.fontBoundingBoxAscent + all.fontBoundingBoxDescent); // page zoom and transforms
  const forward = runsBack.test(tail) ? -1 : 1;
  return {
    last,
    spot: {
      end: forward === 1 ? last.right : last.left,
      forward,
      baseline: last.top + all.fontBoundingBoxAscent * scale,
      ink: ink.actualBoundingBoxAscent * scale,
      gap: (pitch - ink.actualBoundingBoxAscent - all.actualBoundingBoxDescent) * scale,
      room: roomAfter(endContainer as Text, endOffset, last, forward, size),
      foot: 0.42 * size * scale,
      width: last.width,
    },
  };
}

/** Blank width after the name, `most` at most: to the first letter on its line that is neither blank nor comma. */
function roomAfter(node: Text, from: number, last: DOMRect, forward: 1 | -1, most: number): number {
  const walker = doc.createTreeWalker(node.getRootNode(), 4); // text
  walker.currentNode = node;
  for (let text: Text | null = node; text; text = walker.nextNode() as Text | null) {
    const start = text === node ? from : 0;
    const offset = start + text.data.slice(start).search(aLetter);
    if (offset < start) continue;
    const letter = { startContainer: text, startOffset: offset, endContainer: text, endOffset: offset + 1 };
    const [next] = boxesOf(letter);
    if (!next || Math.abs(next.bottom - last.bottom) > last.height / 2) return most;
    return Math.max(0, Math.min(most, forward === 1 ? next.left - last.right : last.left - next.right));
  }
  return most;
}

/** Whether an element's letters are light, as on a dark ground. */
export function isLight(element: Element | null | undefined): boolean {
  const [r = 0, g = 0, b = 0] = element
    ? (getComputedStyle(element).color.match(/[\d.]+/g) ?? []).map(Number)
    : [];
  return 0.2 * r + 0.7 * g + 0.1 * b > 140;
}
