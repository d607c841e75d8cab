import type { GlyphName } from '../../contract/paint-order.ts';
import { glyphs } from '../glyphs/shapes.ts';
import type { Translate } from '../words/index.ts';
import { pressed } from './room-for-words.ts';
import { glyphsOfSide, pictureWide } from './wash-day-scale.ts';

/** One box a product: empty while there is room, filled by a product, doubled where it is one too many. */
export function AllowanceBox({
  x,
  y,
  over,
  filled,
}: {
  x: number;
  y: number;
  over: boolean;
  filled: boolean;
}) {
  return (
    <g class={over ? 'box over' : 'box'}>
      <rect x={x} y={y} width="12" height="12" class="box-frame" />
      {filled && <rect x={x + 3} y={y + 3} width="6" height="6" class="box-fill" />}
      {over && <rect x={x - 2.5} y={y - 2.5} width="17" height="17" class="box-over" />}
    </g>
  );
}

export function AllowanceLegend(props: {
  t: Translate;
  allowed: number | undefined;
  used: number;
  wide: boolean;
}) {
  const { t, allowed, used, wide } = props;
  const boxes = Math.max(allowed ?? 0, used);
  const words =
    allowed === undefined
      ? t('routine.chart.no-allowance', { used })
      : t('routine.chart.allowance', { n: allowed, used });
  const at = wide ? boxes * 20 + (boxes > 0 ? 6 : 0) : 0;
  return (
    <g class="allowance">
      {Array.from({ length: boxes }, (_, index) => (
        <AllowanceBox
          key={index}
          x={3 + index * 20}
          y={4}
          over={allowed !== undefined && index >= allowed}
          filled={index < used}
        />
      ))}
      <text x={at} y={wide || boxes === 0 ? 15 : 33} {...pressed(words, pictureWide(wide) - at)}>
        {words}
      </text>
    </g>
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

const listed = [...Object.values(glyphsOfSide.protein), ...Object.values(glyphsOfSide.moisture)];
const line = 17;

/** Keys stand one below the other, so that their words have room in every language. */
const columnsOf = (wide: boolean) => (wide ? 2 : 1);
export const legendTall = (wide: boolean, takes: boolean) =>
  Math.ceil((listed.length + (takes ? 3 : 2)) / columnsOf(wide)) * line + 6;

export function Legend({ t, y, wide, takes }: { t: Translate; y: number; wide: boolean; takes: boolean }) {
  const keys = [
    {
      key: 'likely',
      words: t('page.likely.key'),
      mark: <rect x="1" y="0" width="24" height="10" class="step-on" />,
    },
    {
      key: 'range',
      words: t('page.range.key'),
      mark: <path d="M1 5H25M1 2V8M25 2V8" class="range-key" />,
    },
    ...(takes
      ? [
          {
            key: 'takes',
            words: t('routine.chart.takes'),
            mark: <path d="M13 -2V12" class="takes" />,
          },
        ]
      : []),
    ...listed.map((name) => ({
      key: name,
      words: t(`routine.glyph.${name}`),
      mark: <GlyphIn name={name} x={0} y={glyphs[name].height > 10 ? -3 : 1} scale={0.9} />,
    })),
  ];
  const rows = Math.ceil(keys.length / columnsOf(wide));
  return (
    <g class="legend protein">
      {keys.map(({ key, words, mark }, index) => (
        <g key={key} transform={`translate(${Math.floor(index / rows) * 380} ${y + (index % rows) * line})`}>
          {mark}
          <text x={36} y={9}>
            {words}
          </text>
        </g>
      ))}
    </g>
  );
}
