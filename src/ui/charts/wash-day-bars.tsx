import type { BringStep, Together } from '../../core/amounts/brings.ts';
import { glyphs } from '../glyphs/shapes.ts';
import type { Translate } from '../words/index.ts';
import { pressed } from './room-for-words.ts';
import { GlyphIn } from './wash-day-legend.tsx';
import { filledBoxes, mostSteps, partsOfSide, type Side, sides } from './wash-day-scale.ts';

export const barTall = 13;
/** Bars, and the words under them. */
export const barsTall = barTall + 16;

/**
 * Protein to the left of the middle, moisture to the right: three boxes a side for the four steps, filled as far as
 * is likely, a line over them from least to most, the middle line between them and not through words, the step in words below with the shapes of what makes it up.
 */
export function Bars(props: {
  t: Translate;
  brings: Together;
  x: number;
  y: number;
  half: number;
  /** The step of protein that the hair takes: a mark at its end. */
  takes?: BringStep | undefined;
}) {
  const { t, brings, x, y, half, takes } = props;
  const gap = 6;
  const box = (half - gap) / mostSteps;
  return (
    <g class="bars" transform={`translate(${x} ${y})`}>
      <path d={`M0 -4V${barsTall}`} class="spine" />
      {sides.map((side) => {
        const { step, least, most: top } = brings[side];
        const way = side === 'protein' ? -1 : 1;
        const at = (boxes: number) => way * (gap + boxes * box);
        const from = at(Math.max(0, filledBoxes(least) - 0.5));
        const to = at(Math.max(0, filledBoxes(top) - 0.5));
        return (
          <g key={side} class={side}>
            {[0, 1, 2].map((index) => (
              <rect
                key={index}
                x={Math.min(at(index), at(index + 1)) + 1}
                y={0}
                width={box - 2}
                height={barTall}
                class={index < filledBoxes(step) ? 'step-on' : 'step-off'}
              />
            ))}
            {from !== to && (
              <g class="range">
                <path class="range-edge" d={`M${from} ${barTall / 2}H${to}`} />
                <path d={`M${from} ${barTall / 2}H${to}M${from} 3.500V9.500M${to} 3.500V9.500`} />
              </g>
            )}
            {side === 'protein' && takes && (
              <path class="takes" d={`M${at(filledBoxes(takes))} -4V${barTall + 4}`} />
            )}
            <StepWords t={t} brings={brings} side={side} way={way} gap={gap} half={half} />
          </g>
        );
      })}
    </g>
  );
}

function StepWords(props: {
  t: Translate;
  brings: Together;
  side: Side;
  way: number;
  gap: number;
  half: number;
}) {
  const { t, brings, side, way, gap, half } = props;
  const words = t(`page.step.${brings[side].step}`);
  const room = half > 100 ? 3 : half > 80 ? 1 : 0;
  const shapes = partsOfSide(brings, side).slice(0, room);
  // Shapes stand outward of the middle, then the word: nothing need be measured.
  let along = gap;
  const placed = shapes.map((name) => {
    const { width } = glyphs[name];
    const start = along;
    along += width * 0.8 + 4;
    return { name, x: way > 0 ? start : -start - width * 0.8 };
  });
  return (
    <>
      {placed.map(({ name, x }) => (
        <GlyphIn key={name} name={name} x={x} y={barTall + 4} scale={0.8} />
      ))}
      <text
        x={way * (along + 1)}
        y={barTall + 12.5}
        text-anchor={way > 0 ? 'start' : 'end'}
        class="step-words"
        {...pressed(words, half - along - 1)}
      >
        {words}
      </text>
    </>
  );
}
