import type { CardWords } from '../../ui/paint-order.ts';
import { drawGlyph, element, svgElement } from './element.ts';

/** Logarithmic place of a share on an axis from 0.01 to 100 percent, 0…1. */
export const along = (percent: number) =>
  Math.min(1, Math.max(0, (Math.log10(Math.max(percent, 0.01)) + 2) / 4));

function shareBar(doc: Document, card: CardWords, label: string): SVGElement {
  const wide = 200;
  const x = (percent: number) => 6 + along(percent) * wide;
  const line = (cls: string, d: string) => svgElement(doc, 'path', { class: cls, d, fill: 'none' });
  const { min, max } = card.share;
  const hue = card.glyphs[0] && ['draws', 'softens', 'seals'].includes(card.glyphs[0]) ? 'teal' : 'plum';
  const text = (percent: number) => {
    const made = svgElement(doc, 'text', { x: x(percent), y: 28, 'text-anchor': 'middle' });
    made.textContent = String(percent);
    return made;
  };
  return svgElement(
    doc,
    'svg',
    {
      class: `share ${hue}`,
      width: wide + 22,
      height: 31,
      role: 'img',
      'aria-label': `${label}: ${card.shareWords}`,
    },
    line('axis', `M${x(0.01)} 9H${x(100)}${[0.1, 1, 10, 100].map((at) => `M${x(at)} 6V13`).join('')}`),
    line('bar', `M${x(min)} 9H${Math.max(x(max), x(min) + 1)}`),
    line('end', `M${x(min)} 3V15M${x(max)} 3V15`),
    ...[0.1, 1, 10, 100].map(text),
  );
}

/** Fills the card with what one name is. */
export function fillCard(doc: Document, node: HTMLElement, card: CardWords, shareLabel: string): void {
  const line = (text: string, cls = '') => element(doc, 'p', { class: cls || undefined }, text);
  node.replaceChildren(
    element(doc, 'h3', {}, ...card.glyphs.slice(0, 1).map((name) => drawGlyph(doc, name)), card.title),
    line(card.kind, 'kind'),
    ...card.lines.map((each) => line(each)),
    line(shareLabel, 'axis-label'),
    shareBar(doc, card, shareLabel),
    line(card.shareWords),
    ...(card.source ? [line(card.source, 'source')] : []),
  );
}

/** Where the card stands: under the name's first line, above where there is no room, within the view. */
export function placeCard(
  name: DOMRect,
  size: { width: number; height: number },
  view: { width: number; height: number },
) {
  const edge = 8;
  const left = Math.max(edge, Math.min(name.left, view.width - size.width - edge));
  const below = name.bottom + 10;
  const above = name.top - 12 - size.height;
  const top = below + size.height <= view.height - edge || above < edge ? below : above;
  return { left, top };
}
