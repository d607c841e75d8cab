import { glyphOfAnswer } from '../glyphs/shapes.ts';
import { Box, GlyphIn } from './wash-day-legend.tsx';
import type { ChartRow } from './wash-day-rows.ts';
import { amountOf, bar, lanes, reach } from './wash-day-scale.ts';

const drawn = ({ stays }: ChartRow, side: 'protein' | 'moisture') =>
  stays ? lanes[side].filter(({ key }) => amountOf(stays, key).max > 0) : [];

export function rowHeight(row: ChartRow, wide: boolean): number {
  const lanesTall = Math.max(1, drawn(row, 'protein').length, drawn(row, 'moisture').length) * (bar + 3);
  return wide
    ? Math.max(34, lanesTall + 14, row.notes.length * 14 + 12)
    : 20 + lanesTall + row.notes.length * 15 + 10;
}

export function Row(props: {
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
          <GlyphIn name={glyphOfAnswer(answer)} x={0} y={-9.5} scale={0.8} />
          <text x={16}>{words}</text>
        </g>
      ))}
    </g>
  );
}

const short = (text: string, most: number) =>
  text.length > most ? `${text.slice(0, most - 1).trimEnd()}…` : text;
