import { lines } from '../../../contract/paint-order.ts';

const plum = ['#6b2a5b', '#e6aad6'];
// Half as strong as a protein's line, so that it is no link.
const quietTeal = ['#0d5a6180', '#82d3d080'];

/** Each kind of name has a line style of its own; colour, on light and on dark ground, repeats it. */
const styles: { [line in (typeof lines)[number]]: [style: string, colours: string[]] } = {
  free: ['text-decoration:underline dotted 2.5px', plum],
  small: ['text-decoration:underline dashed 2px', plum],
  large: ['text-decoration:underline double 1.5px', plum],
  bearing: ['text-decoration:underline dotted 1.5px', plum],
  moisture: ['text-decoration:underline solid 1px', quietTeal],
  at: ['background-color:', ['#f8ecd0', '#3a2d12']],
};

/**
 * Rules for the highlights of one document, within these elements alone: rules that may concern every element
 * make the browser style the whole page anew, 100 ms at 30,000 elements.
 */
export function lineRules(seed: string, selectors: readonly string[]): string {
  const rules = lines.flatMap((line, nth) => {
    const [style, colours] = styles[line];
    return colours.map((colour, i) => {
      const name = `::highlight(${seed}${2 * nth + i})`;
      const within = selectors.flatMap((selector) => [`${selector}${name}`, `${selector} *${name}`]);
      return `${within.join(',')}{${style} ${colour}}`;
    });
  });
  return `@media not print{${rules.join('')}}`;
}
