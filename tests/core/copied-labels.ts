// Whole labels as shops copy them, of a third hand: each with one to three of the ways of `copied/`, drawn at
// random and seeded. Written before any of the reading was looked at; half of wordings and forms is only counted.
import type { Making } from './copied/making.ts';
import { onLabels } from './copied/on-labels.ts';
import { onNames } from './copied/on-names.ts';
import { type Half, headings } from './copied/wordings.ts';
import { drawnLabels, pick } from './draws.ts';
import type { Worn } from './worn-labels.ts';

const ways = { ...onNames, ...onLabels };
const kinds = Object.keys(ways);
// A label broken in lines is one piece: nothing can be done to its names after.
const last = [
  'allergens apart',
  'numbered',
  'capitals',
  'broken where the column ends',
  'in another encoding',
];

/** `count` labels of 8 to 22 of these names (INCI, capitals); the weight of a name is how often it is drawn. */
export function copiedLabels(
  names: readonly { name: string; weight: number }[],
  count: number,
  seed: number,
  half: Half,
): Worn[] {
  return drawnLabels(names, count, seed, kinds, ({ own, kinds: chosen, draw, more }) => {
    const making: Making = {
      printed: own,
      sign: ', ',
      head: draw() < 0.3 ? '' : `${pick(draw, headings[half])} `,
      tail: '',
      names: [...own],
    };
    // Names one by one, then what takes names out or joins them.
    const rank = (kind: string) =>
      kind === 'allergens apart' ? 0 : kind in onNames ? 1 : last.includes(kind) ? 3 : 2;
    const order = [...chosen].toSorted((a, b) => rank(a) - rank(b));
    for (const kind of order) ways[kind]!(making, { draw, half, more });
    return {
      kinds: order,
      text: `${making.head}${making.printed.join(making.sign)}${making.tail}`,
      names: making.names,
    };
  });
}
