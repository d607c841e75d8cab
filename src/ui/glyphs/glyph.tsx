import type { GlyphName } from '../../contract/paint-order.ts';
import { glyphs } from './shapes.ts';

/**
 * One glyph as SVG. Sizes in pixels; `label` makes it an image with a name, without it the glyph is
 * decoration. `ground` is the colour that shows through its cuts.
 */
export function Glyph(props: { name: GlyphName; size?: number; label?: string; ground?: string }) {
  const { width, height, hue, shapes } = glyphs[props.name];
  const scale = props.size ?? 1;
  const said = props.label ? { role: 'img' as const, 'aria-label': props.label } : { 'aria-hidden': true };
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: named by aria-label, or decoration
    <svg
      {...said}
      class={`glyph ${props.name}`}
      width={`${width * scale}px`}
      height={`${height * scale}px`}
      viewBox={`0 0 ${width} ${height}`}
      fill="none"
      stroke-linecap="round"
      stroke-linejoin="round"
      style={{ color: `var(--${hue})` }}
    >
      {shapes.map(({ as, d, width: line, dash }) => {
        const paint = as === 'cut' ? (props.ground ?? 'var(--paper)') : 'currentColor';
        return as === 'fill' ? (
          <path key={d} d={d} fill={paint} />
        ) : (
          <path key={d} d={d} stroke={paint} stroke-width={line} stroke-dasharray={dash} />
        );
      })}
    </svg>
  );
}
