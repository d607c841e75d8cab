import type { GlyphName } from '../../contract/paint-order.ts';
import { glyphs } from '../glyphs/shapes.ts';
import type { Translate } from '../words/index.ts';
import { bar, lanes } from './wash-day-scale.ts';

/** One box a product: empty while there is room, filled by a product, doubled where it is one too many. */
export function Box({ x, y, over, filled }: { x: number; y: number; over: boolean; filled: boolean }) {
  return (
    <g class={over ? 'box over' : 'box'}>
      <rect x={x} y={y} width="12" height="12" class="box-frame" />
      {filled && <rect x={x + 3} y={y + 3} width="6" height="6" class="box-fill" />}
      {over && <rect x={x - 2.5} y={y - 2.5} width="17" height="17" class="box-over" />}
    </g>
  );
}

export function Allowance(props: { t: Translate; allowed: number | undefined; used: number }) {
  const { t, allowed, used } = props;
  const boxes = Math.max(allowed ?? 0, used);
  return (
    <g class="allowance">
      {Array.from({ length: boxes }, (_, index) => (
        <Box
          key={index}
          x={3 + index * 20}
          y={4}
          over={allowed !== undefined && index >= allowed}
          filled={index < used}
        />
      ))}
      <text x={boxes * 20 + (boxes > 0 ? 6 : 0)} y={15}>
        {allowed === undefined
          ? t('routine.chart.no-allowance', { used })
          : t('routine.chart.allowance', { n: allowed, used })}
      </text>
    </g>
  );
}

/** A pattern for each size and role, so that the picture reads without colour. */
export function Patterns({ id }: { id: string }) {
  const tile = (key: string, side: string, size: number, d: string, solid = false) => (
    <pattern id={id + key} key={key} width={size} height={size} patternUnits="userSpaceOnUse" class={side}>
      {solid && <rect width={size} height={size} class="solid" />}
      <path d={d} class={solid ? 'cut' : 'ink'} />
    </pattern>
  );
  return (
    <defs>
      {tile('free', 'protein', 4, 'M1 2h1.600')}
      {tile('small', 'protein', 4, 'M1.5 0V4')}
      {tile('large', 'protein', 8, '', true)}
      {tile('bearing', 'protein', 6, 'M0 6L6 0')}
      {tile('humectant', 'moisture', 7, 'M2 1L5 3.5L2 6', true)}
      {tile('emollient', 'moisture', 8, '', true)}
      {tile('occlusive', 'moisture', 3.5, 'M0 1.2H3.5')}
    </defs>
  );
}

export function GlyphIn({
  name,
  x,
  y,
  scale = 1,
}: {
  name: GlyphName;
  x: number;
  y: number;
  scale?: number;
}) {
  return (
    <g transform={`translate(${x} ${y}) scale(${scale})`} class={`hue-${glyphs[name].hue}`}>
      {glyphs[name].shapes.map(({ as, d, width, dash }) =>
        as === 'fill' ? (
          <path key={d} d={d} class="glyph-fill" />
        ) : (
          <path
            key={d}
            d={d}
            class={as === 'cut' ? 'glyph-cut' : 'glyph-line'}
            stroke-width={width}
            stroke-dasharray={dash}
          />
        ),
      )}
    </g>
  );
}

export function Legend({ t, id, y, wide }: { t: Translate; id: string; y: number; wide: boolean }) {
  const all = [...lanes.protein, ...lanes.moisture];
  const columns = wide ? 4 : 2;
  const across = wide ? 190 : 172;
  return (
    <g class="legend">
      {all.map(({ key, glyph }, index) => {
        const x = (index % columns) * across;
        const at = y + Math.floor(index / columns) * 20;
        return (
          <g key={key} transform={`translate(${x} ${at})`}>
            <rect x="0" y="0" width="21" height={bar} fill={`url(#${id}${key})`} class="band" />
            <GlyphIn
              name={glyph}
              x={28}
              y={glyphs[glyph].height > 10 ? -4 : 0}
              scale={glyphs[glyph].height > 10 ? 0.9 : 1}
            />
            <text x={62} y={8}>
              {t(`routine.glyph.${glyph}`)}
            </text>
          </g>
        );
      })}
    </g>
  );
}
