import type { Range } from '../../core/names/entry.ts';
import { placeOf } from '../describe/share.ts';
import type { Translate } from '../words/index.ts';

/** "up to 4 %" · "1 to 20 %" · "3 %" */
export function rangeWords({ min, max }: Range, t: Translate): string {
  if (min === max) return t('shell.share.exactly', { max });
  return min === 0 ? t('shell.share.up-to', { max }) : t('shell.share.between', { min, max });
}

/**
 * A share as a bar with two ends on the one log scale every bar of a view shares (0.01 to 100 %). Where
 * nothing says how little, the left end has no stop. `hue` repeats what shape and words say already.
 */
export function ShareBar(props: {
  t: Translate;
  share: Range;
  hue: 'plum' | 'teal' | 'ink';
  /** Prints the scale's figures below. */
  scale?: boolean;
  /** Words are printed beside it already: then it is decoration. */
  silent?: boolean;
}) {
  const { share, t } = props;
  const width = 200;
  const at = (percent: number) => placeOf(percent) * width;
  const from = at(share.min);
  const to = Math.max(at(share.max), from + 1);
  const height = props.scale ? 26 : 14;
  return (
    <svg
      role="img"
      aria-label={rangeWords(share, t)}
      aria-hidden={props.silent}
      class={`share-bar ${props.hue}`}
      viewBox={`-8 0 ${width + 16} ${height}`}
      direction="ltr"
    >
      <path class="scale" d={`M0 7H${width}${[0.1, 1, 10, 100].map((v) => `M${at(v)} 4V10`).join('')}`} />
      <path class="bar" d={`M${from} 7H${to}`} />
      <path class="end" d={`M${to} 1V13${share.min > 0 ? `M${from} 1V13` : ''}`} />
      {props.scale &&
        [0.1, 1, 10, 100].map((v) => (
          <text key={v} x={at(v)} y="24">
            {new Intl.NumberFormat(t.lang).format(v)}
          </text>
        ))}
    </svg>
  );
}
