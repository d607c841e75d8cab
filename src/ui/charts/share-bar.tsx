import type { Range } from '../../core/names/entry.ts';
import { placeOf, rangeWords } from '../describe/share.ts';
import type { Translate } from '../words/index.ts';

/**
 * A share as a bar with two ends on the one log scale every bar of a view shares (0.01 to 100 %). Where
 * nothing says how little, the left end has no stop. Outlined: what the label allows. Solid: what is likely, or
 * all of it where nothing is likelier. `hue` repeats what shape and words say already.
 */
export function ShareBar(props: {
  t: Translate;
  share: Range;
  likely?: Range | undefined;
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
  const solid = Math.max(at((props.likely ?? share).max), from + 1);
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
      {solid < to && <path class="allowed" d={`M${from} 4.5H${to}V9.5H${from}z`} />}
      <path class="bar" d={`M${from} 7H${solid}`} />
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
