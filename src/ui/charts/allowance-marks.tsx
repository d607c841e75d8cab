import type { Allowance } from '../../core/hair/head.ts';
import { allowances } from '../../core/hair/tolerance.ts';

/** Five upright marks, filled up to the level: how much protein is welcome, without colour. 5 × 6 units each. */
export function AllowanceMarks({ level, x = 0, y = 0 }: { level: Allowance; x?: number; y?: number }) {
  const at = allowances.indexOf(level);
  return (
    <g transform={`translate(${x} ${y})`} class="allowance-marks">
      {allowances.map((each, i) => {
        const height = 5 + i * 2;
        return i <= at ? (
          <rect key={each} x={i * 7} y={13 - height} width="4.5" height={height} class="mark-on" />
        ) : (
          <rect
            key={each}
            x={i * 7 + 0.5}
            y={13 - height + 0.5}
            width="3.5"
            height={height - 1}
            class="mark-off"
          />
        );
      })}
    </g>
  );
}
