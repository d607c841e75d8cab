import { useId } from 'preact/hooks';
import type { WashDay } from '../../core/wash-day/add-up.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import type { Translate } from '../words/index.ts';
import { Allowance, Legend, Patterns } from './wash-day-legend.tsx';
import { Row, rowHeight } from './wash-day-row.tsx';
import { chartRows } from './wash-day-rows.ts';
import { reach, ticks } from './wash-day-scale.ts';

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
      <path d={`M${middle} ${top - 6}V${foot}`} class="spine" />
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
      <Legend t={t} id={id} y={foot + 46} wide={wide} />
    </svg>
  );
}
