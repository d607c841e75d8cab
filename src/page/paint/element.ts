import { type Glyph, glyphs } from '../../ui/glyphs/shapes.ts';
import type { GlyphName } from '../../ui/paint-order.ts';

type Props = Record<string, string | number | boolean | undefined>;

/** Makes one of our own elements; text enters as text, never as HTML. */
export function element<K extends keyof HTMLElementTagNameMap>(
  doc: Document,
  tag: K,
  props: Props = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = doc.createElement(tag);
  for (const [name, value] of Object.entries(props))
    if (value !== undefined && value !== false) made.setAttribute(name, value === true ? '' : String(value));
  made.append(...children);
  return made;
}

const svg = 'http://www.w3.org/2000/svg';

export function svgElement(doc: Document, tag: string, props: Props = {}, ...children: Node[]): SVGElement {
  const made = doc.createElementNS(svg, tag) as SVGElement;
  for (const [name, value] of Object.entries(props)) made.setAttribute(name, String(value));
  made.append(...children);
  return made;
}

/** A glyph as SVG, `scale` times its size; decoration for screen readers. */
export function drawGlyph(doc: Document, name: GlyphName, scale = 1): SVGElement {
  const { width, height, hue, shapes }: Glyph = glyphs[name];
  return svgElement(
    doc,
    'svg',
    {
      class: `glyph ${hue}`,
      width: width * scale,
      height: height * scale,
      viewBox: `0 0 ${width} ${height}`,
      'aria-hidden': 'true',
    },
    ...shapes.map(({ as, d, width: line = 1, dash = 'none' }) =>
      svgElement(doc, 'path', {
        class: as,
        d,
        ...(as === 'fill' ? {} : { 'stroke-width': line, 'stroke-dasharray': dash }),
      }),
    ),
  );
}
