import { glyphOfAnswer } from '../glyphs/shapes.ts';
import type { Translate } from '../words/index.ts';

import { linesOf } from './room-for-words.ts';
import { Bars, barsTall, barTall } from './wash-day-bars.tsx';
import type { DayColumn } from './wash-day-chart.tsx';
import { AllowanceBox, GlyphIn } from './wash-day-legend.tsx';
import type { ChartRow } from './wash-day-rows.ts';
import { pictureWide } from './wash-day-scale.ts';

const notesAt = (wide: boolean) => (wide ? 576 : 4);
const noteLines = ({ notes }: ChartRow, wide: boolean) =>
  notes.flatMap(({ words, answer }) =>
    linesOf(words, pictureWide(wide) - notesAt(wide) - 18).map((line, at) => ({
      line,
      answer,
      first: at === 0,
    })),
  );

export function rowHeight(row: ChartRow, wide: boolean): number {
  const notes = noteLines(row, wide).length * 15;
  return wide ? Math.max(barsTall + 16, notes + 16) : 38 + barsTall + notes + 8;
}

/** One step: what it is, what it brings on each kind of wash day, what is said of it. */
export function DayRow(props: {
  t: Translate;
  row: ChartRow;
  y: number;
  half: number;
  wide: boolean;
  columns: readonly DayColumn[];
}) {
  const { t, row, y, half, wide, columns } = props;
  const barsAt = wide ? y + 9 : y + 39;
  const notesTop = wide ? y + 20 : barsAt + barsTall + 11;
  const indent = row.nth ? 18 : 0;
  const words = (x: number, what: string) => (
    <text x={x} y={barsAt + barTall - 2} text-anchor="middle" class="unread">
      {what}
    </text>
  );
  return (
    <g class="row">
      <path d={`M0 ${y}H${pictureWide(wide)}`} class="rule" />
      {row.nth && <AllowanceBox x={1} y={y + 6} over={row.nth.over} filled />}
      <text x={indent} y={y + 16} class="name">
        {row.kind.charAt(0).toLocaleUpperCase(t.lang) + row.kind.slice(1)}
      </text>
      <text x={indent} y={y + 30} class="product">
        {short(row.product, wide ? 24 : 42)}
      </text>
      {columns.map(({ everything, middle }) => {
        const { stays } = row;
        if (!row.always && !everything)
          return <g key={middle}>{words(middle, t('routine.chart.not-due'))}</g>;
        if (row.unread) return <g key={middle}>{words(middle, row.unread)}</g>;
        return stays && <Bars key={middle} t={t} brings={stays} x={middle} y={barsAt} half={half} />;
      })}
      {noteLines(row, wide).map(({ line, answer, first }, index) => (
        <g
          key={index}
          class={`margin ${answer}`}
          transform={`translate(${notesAt(wide)} ${notesTop + index * 15})`}
        >
          {first && <GlyphIn name={glyphOfAnswer(answer)} x={0} y={-9.5} scale={0.8} />}
          <text x={16}>{line}</text>
        </g>
      ))}
    </g>
  );
}

const short = (text: string, most: number) =>
  text.length > most ? `${text.slice(0, most - 1).trimEnd()}…` : text;
