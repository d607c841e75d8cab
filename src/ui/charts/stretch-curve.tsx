import { useId } from 'preact/hooks';
import type { StretchReading } from '../../core/hair/stretch.ts';
import type { StretchPractice } from '../../core/judge/practice.ts';
import type { Translate } from '../words/index.ts';

const left = 22;
const base = 108;
const top = 14;
const right = 300;
const mostPercent = 80; // percent at the right end

const xOf = (percent: number) => left + ((right - left) * Math.min(mostPercent, percent)) / mostPercent;

/**
 * The curve of wet hair from rest to break, with this strand on it. Edges of the regions are the published
 * ones (dictionary/allowance.json says from where); the height is a sketch, and says so.
 */
export function StretchCurve(props: {
  t: Translate;
  practice: StretchPractice;
  reading?: StretchReading;
  /** Extensions of earlier tests, percent: drawn small. */
  earlier?: readonly number[];
}) {
  const { t, practice, reading, earlier = [] } = props;
  const { preYieldTo: pre, yieldTo, wetBreak } = practice.curve;
  const id = useId();
  const heightAt = curve(pre, (yieldTo.min + yieldTo.max) / 2, wetBreak.max);
  const steps = Array.from({ length: 66 }, (_, i) => (i * wetBreak.max) / 65);
  const line = steps.map((x, i) => `${i ? 'L' : 'M'}${xOf(x).toFixed(1)} ${heightAt(x).toFixed(1)}`).join('');
  const extension = reading?.extension;
  const range = reading?.extensionRange;
  const remaining =
    extension !== undefined && reading?.recovery !== undefined
      ? extension * (1 - reading.recovery / 100)
      : undefined;
  const y = extension === undefined ? 0 : heightAt(extension);
  const described = [
    t('hair.stretch.curve.describe', {
      pre,
      yieldMin: yieldTo.min,
      yieldMax: yieldTo.max,
      breakMin: wetBreak.min,
      breakMax: wetBreak.max,
    }),
    ...(extension === undefined ? [] : [t('hair.stretch.curve.point', { percent: Math.round(extension) })]),
    ...(earlier.length === 0 ? [] : [t('hair.stretch.curve.earlier', { n: earlier.length })]),
    ...(remaining === undefined ? [] : [t('hair.stretch.curve.back', { percent: Math.round(remaining) })]),
  ];
  return (
    <svg class="chart curve" viewBox="0 0 312 146" role="img" aria-labelledby={`${id}t ${id}d`}>
      <title id={`${id}t`}>{t('hair.stretch.curve')}</title>
      <desc id={`${id}d`}>{described.join(' ')}</desc>
      <rect x={xOf(pre)} y={top} width={xOf(yieldTo.max) - xOf(pre)} height={base - top} class="region" />
      <path d={`M${xOf(yieldTo.min)} ${top}V${base}`} class="edge" />
      <rect
        x={xOf(wetBreak.min)}
        y={top}
        width={xOf(wetBreak.max) - xOf(wetBreak.min)}
        height={base - top}
        class="region breaks"
      />
      <text x={(xOf(pre) + xOf(yieldTo.max)) / 2} y={top - 4} text-anchor="middle">
        {t('hair.stretch.curve.yield')}
      </text>
      <text x={(xOf(wetBreak.min) + xOf(wetBreak.max)) / 2} y={top - 4} text-anchor="middle">
        {t('hair.stretch.curve.break')}
      </text>
      <path d={`M${left} ${top}V${base}H${right + 6}`} class="axis-line" />
      {[0, 20, 40, 60, 80].map((percent) => (
        <g key={percent}>
          <path d={`M${xOf(percent)} ${base}v4`} class="axis-line" />
          <text x={xOf(percent)} y={base + 15} text-anchor="middle">
            {percent}
          </text>
        </g>
      ))}
      <text x={(left + right) / 2} y={base + 31} text-anchor="middle">
        {t('hair.stretch.curve.x')}
      </text>
      <text x="12" y={(top + base) / 2} text-anchor="middle" transform={`rotate(-90 12 ${(top + base) / 2})`}>
        {t('hair.stretch.curve.y')}
      </text>
      <path d={line} class="line" />
      {earlier.map((percent, i) => (
        <circle key={i} cx={xOf(percent)} cy={heightAt(percent)} r="2.5" class="earlier-test" />
      ))}
      {extension !== undefined && (
        <g class="you">
          {remaining !== undefined && (
            <path d={`M${xOf(extension)} ${base - 6}H${xOf(remaining) + 1}m4 -4l-4 4l4 4`} class="back" />
          )}
          {range && (
            <path d={`M${xOf(range.min)} ${y}H${xOf(range.max)}m0 -4v8M${xOf(range.min)} ${y - 4}v8`} />
          )}
          <circle cx={xOf(extension)} cy={y} r="5" />
          <text
            x={xOf(extension)}
            y={y > 40 ? y - 10 : y + 36}
            text-anchor={extension > 60 ? 'end' : 'middle'}
            class="level"
          >
            {t('hair.stretch.curve.you')}
          </text>
        </g>
      )}
    </svg>
  );
}

/** A sketch of the curve's height (y downwards): steep, nearly level, steep. */
function curve(pre: number, yieldEnd: number, end: number) {
  return (percent: number) => {
    const part =
      percent <= pre
        ? (0.42 * percent) / pre
        : percent <= yieldEnd
          ? 0.42 + (0.1 * (percent - pre)) / (yieldEnd - pre)
          : 0.52 + 0.44 * ((Math.min(end, percent) - yieldEnd) / (end - yieldEnd)) ** 1.2;
    return base - part * (base - top);
  };
}
