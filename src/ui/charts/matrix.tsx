import { useId } from 'preact/hooks';
import { type Head, porosities, thicknesses } from '../../core/hair/head.ts';
import type { AllowanceReading } from '../../core/hair/tolerance.ts';
import type { AllowancePractice } from '../../core/judge/practice.ts';
import type { Translate } from '../words/index.ts';
import { AllowanceMarks } from './allowance-marks.tsx';
import { inLines, linesOf } from './room-for-words.ts';

const left = 80;
const top = 38;
const wide = 81;
const tall = 62;
const width = left + 3 * wide + 4;
const height = top + 3 * tall + 4;

/** Letters that fit in one line under the picture. */
const longestLine = 42;

/**
 * Thickness × porosity: how much protein each kind of hair welcomes, and where this head stands. The picture
 * educators explain with: words and marks in every cell, the person's cell by a double frame, never by colour.
 */
export function Matrix(props: {
  t: Translate;
  base: AllowancePractice['base'];
  head?: Pick<Head, 'name' | 'thickness' | 'porosity'>;
  allowance?: Pick<AllowanceReading, 'level' | 'byHand'>;
}) {
  const { t, base, head, allowance } = props;
  const id = useId();
  const level = (of: keyof typeof words) => words[of];
  const words = {
    rarely: t('hair.allowance.level.rarely'),
    sparingly: t('hair.allowance.level.sparingly'),
    some: t('hair.allowance.level.some'),
    regular: t('hair.allowance.level.regular'),
    often: t('hair.allowance.level.often'),
  };
  const here = head?.thickness && head.porosity ? base[head.thickness][head.porosity] : undefined;
  const moved = here && allowance?.level && allowance.level !== here ? allowance.level : undefined;
  const place = here ? [t('hair.matrix.here', { name: head!.name })] : [];
  if (moved)
    place.push(t(allowance?.byHand ? 'hair.matrix.by-hand' : 'hair.matrix.moved', { level: level(moved) }));
  const lines = place.flatMap(wrapped);
  const cells = thicknesses.flatMap((thickness) => porosities.map((porosity) => ({ thickness, porosity })));
  return (
    <svg
      class="chart matrix"
      viewBox={`0 0 ${width} ${height + (lines.length > 0 ? 6 + 16 * lines.length : 0)}`}
      role="img"
      aria-labelledby={`${id}t ${id}d`}
    >
      <title id={`${id}t`}>{t('hair.matrix')}</title>
      <desc id={`${id}d`}>
        {cells
          .map(({ thickness, porosity }) =>
            t('hair.matrix.cell', {
              thickness: t(`hair.thickness.${thickness}`),
              porosity: t(`hair.porosity.${porosity}`),
              level: level(base[thickness][porosity]),
            }),
          )
          .join('. ')}
        {here && `. ${place.join('. ')}`}
      </desc>
      <text x={left + 1.5 * wide} y="12" class="axis" text-anchor="middle">
        {t('hair.matrix.columns')}
      </text>
      <text
        x="10"
        y={top + 1.5 * tall}
        class="axis"
        text-anchor="middle"
        transform={`rotate(-90 10 ${top + 1.5 * tall})`}
      >
        {t('hair.matrix.rows')}
      </text>
      {porosities.map((porosity, c) => (
        <text key={porosity} x={left + (c + 0.5) * wide} y={top - 9} text-anchor="middle" class="head">
          {t(`hair.porosity.${porosity}`)}
        </text>
      ))}
      {thicknesses.map((thickness, r) => (
        <g key={thickness}>
          <path
            d={`M22 ${top + (r + 0.5) * tall + 12}H${left - 10}`}
            class="strand"
            stroke-width={{ fine: 1, medium: 2.25, coarse: 4 }[thickness]}
          />
          <text x={22} y={top + (r + 0.5) * tall + 2} class="head">
            {t(`hair.thickness.${thickness}`)}
          </text>
        </g>
      ))}
      {cells.map(({ thickness, porosity }) => {
        const x = left + porosities.indexOf(porosity) * wide;
        const y = top + thicknesses.indexOf(thickness) * tall;
        const of = base[thickness][porosity];
        const words = inCell(level(of));
        const mine = head?.thickness === thickness && head.porosity === porosity;
        return (
          <g key={thickness + porosity} class={mine ? 'cell mine' : 'cell'}>
            <rect x={x} y={y} width={wide} height={tall} class="frame" />
            {mine && <rect x={x + 2} y={y + 2} width={wide - 4} height={tall - 4} class="double" />}
            <AllowanceMarks level={of} x={x + wide / 2 - 16.25} y={y + 12} />
            <text y={y + (words.length > 1 ? 41 : 46)} text-anchor="middle" class="level">
              {words.map((line, i) => (
                <tspan key={line} x={x + wide / 2} dy={i * 14}>
                  {line}
                </tspan>
              ))}
            </text>
          </g>
        );
      })}
      {lines.map((words, i) => (
        <text key={words} x={width - 4} y={height + 14 + 16 * i} text-anchor="end" class="here">
          {words}
        </text>
      ))}
    </svg>
  );
}

/** Bold letters are wider than the usual ones by a tenth. */
const inCell = (words: string): string[] => linesOf(words, (wide - 4) / 1.1);

/** Breaks words into lines that fit; one word longer than a line is cut, the whole of it is in the description. */
const wrapped = (words: string): string[] =>
  inLines(
    words.split(' ').map((word) => (word.length > longestLine ? `${word.slice(0, longestLine - 1)}…` : word)),
    longestLine,
  );
