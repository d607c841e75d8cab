import { useId } from 'preact/hooks';
import type { Range } from '../../core/entry.ts';
import type { WashDay } from '../../core/routine.ts';
import type { StepStays } from '../../core/stays.ts';
import type { Routine } from '../../core/wash-day.ts';
import { glyphs } from '../glyphs/shapes.ts';
import type { GlyphName } from '../paint-order.ts';
import type { Translate } from '../words/index.ts';
import { type ChartRow, chartRows } from './wash-day-rows.ts';

const ticks = [1, 10, 100];
/** Milligrams to a share of the half: a logarithm that starts at nothing. */
const reach = (mg: number) => Math.min(1, Math.log10(1 + mg) / Math.log10(1 + 400));
const bar = 7;

/** Proteins by size outward to one side, moisture by role to the other: glyph, pattern and side say it, hue repeats it. */
const lanes = {
  protein: [
    { key: 'free', glyph: 'free' },
    { key: 'small', glyph: 'small' },
    { key: 'large', glyph: 'large' },
    { key: 'bearing', glyph: 'bearing' },
  ],
  moisture: [
    { key: 'humectant', glyph: 'draws' },
    { key: 'emollient', glyph: 'softens' },
    { key: 'occlusive', glyph: 'seals' },
  ],
} as const satisfies Record<string, { key: string; glyph: GlyphName }[]>;

const amountOf = (stays: StepStays, key: string): Range => {
  const { protein, moisture, bearing } = stays;
  const all: Record<string, Range> = { ...protein, ...moisture, bearing };
  // A protein of unknown size is drawn as what may bear: hollow.
  if (key === 'bearing')
    return { min: bearing.min + protein.unknown.min, max: bearing.max + protein.unknown.max };
  return all[key]!;
};

/**
 * The whole wash day in one picture: a row for each step, what may stay of its protein by size on one side and
 * of its moisture by role on the other, as ranges in milligrams; the allowance as boxes to be filled; findings
 * as margin notes. `wide` puts the notes beside the rows, for screens with room, files and paper.
 */
export function WashDayChart(props: {
  t: Translate;
  routine: Routine;
  day: WashDay;
  names: Map<string, string>;
  wide: boolean;
  /** Printed over the picture, with a margin all round: for files and paper. */
  title?: string;
}) {
  const { t, routine, day, names, wide, title } = props;
  const id = useId();
  const rows = chartRows(t, routine, day, names);
  const width = wide ? 760 : 344;
  const middle = wide ? 330 : 150;
  const half = wide ? 170 : 136;
  const left = middle - half;
  const right = middle + half;
  const top = 66;
  const heights = rows.map((row) => rowHeight(row, wide));
  const tops = heights.map(
    (_, index) => top + heights.slice(0, index).reduce((sum, height) => sum + height, 0),
  );
  const foot = top + heights.reduce((sum, height) => sum + height, 0);
  const legend = wide ? 44 : 88;
  const { products } = day.protein;
  return (
    <svg
      class={`chart wash-day-chart ${wide ? 'wide' : 'narrow'}`}
      viewBox={title ? `-24 -56 ${width + 48} ${foot + 116 + legend}` : `0 0 ${width} ${foot + 38 + legend}`}
      role="img"
      aria-labelledby={`${id}t ${id}d`}
    >
      <title id={`${id}t`}>{t('routine.chart', { name: routine.name })}</title>
      <desc id={`${id}d`}>{rows.map(({ words }) => words).join(' ')}</desc>
      <Patterns id={id} />
      {title && (
        <text x={0} y={-22} class="chart-title">
          {title}
        </text>
      )}
      <Allowance t={t} allowed={products.allowed} used={products.sure} />
      <text x={middle - 10} y={top - 14} text-anchor="end" class="axis protein-words">
        {t('routine.chart.protein')}
      </text>
      <text x={middle + 10} y={top - 14} class="axis moisture-words">
        {t('routine.chart.moisture')}
      </text>
      {ticks.map((mg) => (
        <g key={mg} class="tick">
          <path
            d={`M${middle - reach(mg) * half} ${top}V${foot}M${middle + reach(mg) * half} ${top}V${foot}`}
          />
          {[-1, 1].map((side) => (
            <text key={side} x={middle + side * reach(mg) * half} y={foot + 13} text-anchor="middle">
              {mg}
            </text>
          ))}
        </g>
      ))}
      <text x={middle} y={foot + 27} text-anchor="middle" class="unit">
        {t('routine.chart.unit')}
      </text>
      {rows.map((row, index) => (
        <Row
          key={row.id}
          row={row}
          id={id}
          x={middle}
          y={tops[index]!}
          half={half}
          wide={wide}
          notesAt={wide ? right + 16 : left}
        />
      ))}
      <path d={`M${middle} ${top - 6}V${foot}`} class="spine" />
      <Legend t={t} id={id} y={foot + 46} wide={wide} />
    </svg>
  );
}

const drawn = ({ stays }: ChartRow, side: 'protein' | 'moisture') =>
  stays ? lanes[side].filter(({ key }) => amountOf(stays, key).max > 0) : [];

function rowHeight(row: ChartRow, wide: boolean): number {
  const lanesTall = Math.max(1, drawn(row, 'protein').length, drawn(row, 'moisture').length) * (bar + 3);
  return wide
    ? Math.max(34, lanesTall + 14, row.notes.length * 14 + 12)
    : 20 + lanesTall + row.notes.length * 15 + 10;
}

function Row(props: {
  row: ChartRow;
  id: string;
  x: number;
  y: number;
  half: number;
  wide: boolean;
  notesAt: number;
}) {
  const { row, id, x, y, half, wide, notesAt } = props;
  const lanesAt = wide ? y + 10 : y + 22;
  const lanesTall = Math.max(1, drawn(row, 'protein').length, drawn(row, 'moisture').length) * (bar + 3);
  const notesTop = wide ? y + 18 : lanesAt + lanesTall + 11;
  const indent = row.nth ? 18 : 0;
  return (
    <g class="row">
      <path d={`M0 ${y}H${wide ? 760 : 344}`} class="rule" />
      {row.nth && <Box x={1} y={y + 5} over={row.nth.over} filled />}
      <text x={indent} y={y + 15} class="name">
        {row.kind}
      </text>
      <text
        x={wide ? indent : 344}
        y={wide ? y + 28 : y + 15}
        text-anchor={wide ? 'start' : 'end'}
        class="product"
      >
        {short(row.product, wide ? 26 : 30)}
      </text>
      {(['protein', 'moisture'] as const).map((side) =>
        drawn(row, side).map(({ key }, lane) => {
          const { min, max } = amountOf(row.stays!, key);
          const way = side === 'protein' ? -1 : 1;
          const from = way * reach(min) * half;
          const to = way * Math.max(reach(max) * half, 3);
          const at = lanesAt + lane * (bar + 3);
          return (
            // A group of its own place: a pattern begins anew in each bar.
            <g key={side + key} class={side} transform={`translate(${x} ${at})`}>
              {min > 0 && <path d={`M0 ${bar / 2}H${from}`} class="sure" />}
              <rect
                x={Math.min(from, to)}
                y={0}
                width={Math.max(2, Math.abs(to - from))}
                height={bar}
                fill={`url(#${id}${key})`}
                class="band"
              />
              <path d={`M${to} -1v${bar + 2}${min > 0 ? `M${from} -1v${bar + 2}` : ''}`} class="end" />
            </g>
          );
        }),
      )}
      {row.unread && (
        <text x={x + 8} y={lanesAt + bar} class="unread">
          {row.unread}
        </text>
      )}
      {row.notes.map(({ words, answer }, index) => (
        <g
          key={words}
          class={`margin ${answer}`}
          transform={`translate(${notesAt} ${notesTop + index * (wide ? 14 : 15)})`}
        >
          <GlyphIn name={answer === 'clashes' ? 'clashes' : 'unsure'} x={0} y={-9.5} scale={0.8} />
          <text x={16}>{words}</text>
        </g>
      ))}
    </g>
  );
}

const short = (text: string, most: number) =>
  text.length > most ? `${text.slice(0, most - 1).trimEnd()}…` : text;

/** One box a product: empty while there is room, filled by a product, doubled where it is one too many. */
function Box({ x, y, over, filled }: { x: number; y: number; over: boolean; filled: boolean }) {
  return (
    <g class={over ? 'box over' : 'box'}>
      <rect x={x} y={y} width="12" height="12" class="box-frame" />
      {filled && <rect x={x + 3} y={y + 3} width="6" height="6" class="box-fill" />}
      {over && <rect x={x - 2.5} y={y - 2.5} width="17" height="17" class="box-over" />}
    </g>
  );
}

function Allowance(props: { t: Translate; allowed: number | undefined; used: number }) {
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
function Patterns({ id }: { id: string }) {
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

function GlyphIn({ name, x, y, scale = 1 }: { name: GlyphName; x: number; y: number; scale?: number }) {
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

function Legend({ t, id, y, wide }: { t: Translate; id: string; y: number; wide: boolean }) {
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
