import { useId } from 'preact/hooks';
import type { BringStep } from '../../core/amounts/brings.ts';
import type { WashDay } from '../../core/wash-day/add-up.ts';
import type { DayStays } from '../../core/wash-day/retained.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import type { Translate } from '../words/index.ts';
import { pressed } from './room-for-words.ts';
import { Bars, barsTall } from './wash-day-bars.tsx';
import { AllowanceLegend, Legend, legendTall } from './wash-day-legend.tsx';
import { DayRow, rowHeight } from './wash-day-row.tsx';
import { chartRows, totalWords } from './wash-day-rows.ts';
import { pictureWide, sides } from './wash-day-scale.ts';

/** A kind of wash day: what is due on it, and what it comes to. */
export type DayColumn = { title: string | undefined; everything: boolean; total: DayStays; middle: number };

/**
 * The whole wash day in one picture: a row for each step, protein to the left and moisture to the right of a middle
 * line in four steps, the likely one filled and the range drawn; a second column for the washes on which more comes;
 * the day's total with what the hair takes; findings as margin notes. `wide` puts the notes beside the rows.
 */
export function WashDayChart(props: {
  t: Translate;
  routine: Routine;
  day: WashDay;
  names: Map<string, string>;
  wide: boolean;
  /** Most protein of a day that the hair takes, where that is known. */
  takes?: BringStep | undefined;
  /** Printed over the picture, with a margin all round: for files and paper. */
  title?: string;
}) {
  const { t, routine, day, names, wide, takes, title } = props;
  const id = useId();
  const rows = chartRows(t, routine, day, names);
  const alternates = rows.some(({ always, stays }) => !always && stays);
  const width = pictureWide(wide);
  const [start, end] = wide ? [170, 560] : [2, 286];
  const count = alternates ? 2 : 1;
  const across = (end - start) / count;
  const half = Math.min(wide ? 130 : 140, across / 2 - (alternates ? 4 : 2));
  const middle = (column: number) => start + across * (column + 0.5);
  const columns: DayColumn[] = alternates
    ? [
        {
          title: t('routine.chart.each-wash'),
          everything: false,
          total: day.stays.everyWash,
          middle: middle(0),
        },
        { title: t('routine.chart.with-all'), everything: true, total: day.stays.day, middle: middle(1) },
      ]
    : [{ title: undefined, everything: true, total: day.stays.day, middle: middle(0) }];
  const top = (alternates ? 76 : 60) + (wide ? 0 : 16);
  const heights = rows.map((row) => rowHeight(row, wide));
  const tops = heights.map(
    (_, index) => top + heights.slice(0, index).reduce((sum, height) => sum + height, 0),
  );
  const foot = top + heights.reduce((sum, height) => sum + height, 0);
  const totalTall = (wide ? 12 : 30) + barsTall;
  const legendAt = foot + totalTall + 16;
  const tall = legendAt + legendTall(wide, takes !== undefined);
  const { products } = day.protein;
  return (
    <svg
      class={`chart wash-day-chart ${wide ? 'wide' : 'narrow'}`}
      viewBox={title ? `-24 -56 ${width + 48} ${tall + 80}` : `0 0 ${width} ${tall}`}
      role="img"
      aria-labelledby={`${id}t ${id}d`}
    >
      <title id={`${id}t`}>{t('routine.chart', { name: routine.name })}</title>
      <desc id={`${id}d`}>{[...rows.map(({ words }) => words), totalWords(t, day.stays.day)].join(' ')}</desc>
      {title && (
        <text x={0} y={-22} class="chart-title">
          {title}
        </text>
      )}
      <AllowanceLegend t={t} allowed={products.allowed} used={products.sure} wide={wide} />
      {columns.map(({ title: named, middle: x }) => (
        <g key={x}>
          {named && (
            <text x={x} y={top - 30} text-anchor="middle" class="column-title" {...pressed(named, 2 * half)}>
              {named}
            </text>
          )}
          {sides.map((side) => (
            <text
              key={side}
              x={side === 'protein' ? x - 7 : x + 7}
              y={top - 12}
              text-anchor={side === 'protein' ? 'end' : 'start'}
              class={`axis ${side}-words`}
              {...pressed(t(`routine.chart.${side}`), half - 7)}
            >
              {t(`routine.chart.${side}`)}
            </text>
          ))}
        </g>
      ))}
      {rows.map((row, index) => (
        <DayRow key={row.id} t={t} row={row} y={tops[index]!} half={half} wide={wide} columns={columns} />
      ))}
      <g class="total">
        <path d={`M0 ${foot}H${width}`} class="rule strong" />
        <text x={0} y={foot + 18} class="name">
          {t('routine.chart.total')}
        </text>
        {columns.map(({ total, middle: x }) => (
          <Bars key={x} t={t} brings={total} x={x} y={foot + (wide ? 9 : 27)} half={half} takes={takes} />
        ))}
      </g>
      <Legend t={t} y={legendAt} wide={wide} takes={takes !== undefined} />
    </svg>
  );
}
