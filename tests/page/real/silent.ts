// What makes a saved recipe page more tempting. Sentences and names are invented or common words of kitchens and baths.
import { type Roll, rolled } from '../other/roll.ts';
import type { Changes } from './changes.ts';
import { nodesIn, textsIn } from './host.ts';
import type { Host } from './make.ts';

const words = [
  'My hands were dry afterwards, so I used my shea butter cream with glycerin and aloe vera.',
  'You may know xanthan gum and citric acid from shampoo; here they thicken and sour.',
  'Free from parabens, silicones and sulfates, as my conditioner says.',
  'Also in our shop: Argan Oil Hair Mask, Aloe Vera Gel, Coconut Oil Conditioner, Tea Tree Shampoo.',
  'Leftover coconut oil, honey and olive oil make a fine hair mask.',
  'The bottle smelled of limonene, linalool and citral, like soap.',
  'Do not take essential oils for this: lavender oil, peppermint oil and rosemary oil are for the bath.',
];
// Names that foods and cosmetics print alike.
const additives =
  'glycerin|citric acid|xanthan gum|coconut oil|sodium bicarbonate|aloe vera juice|sunflower oil|tocopherol|sodium benzoate|potassium sorbate|ascorbic acid|lecithin|honey|sea salt|rosemary extract|lactic acid'.split(
    '|',
  );

function oddWords({ document }: Host, roll: Roll, { say }: Changes): boolean {
  const places = nodesIn(document.body, 1).filter(
    (node) => /^(?:p|li)$/i.test(node.nodeName) && (node.textContent ?? '').trim().length > 20,
  );
  for (const place of roll.some(places, 6)) {
    const last = textsIn(place).at(-1);
    if (last) say(last, `${last.data} ${roll.pick(words)}`);
  }
  return places.length > 0;
}

/** A third of the ingredients are what factories put in. */
function fromFactory({ printings }: Host, roll: Roll, { say }: Changes): boolean {
  for (const { items } of printings) {
    const some = roll.some(additives, Math.floor(items.length / 3));
    for (const [at, item] of roll.some(items, some.length).entries()) say(textsIn(item).at(-1), some[at]!);
  }
  return printings.length > 0;
}

const makers: Record<string, (host: Host, roll: Roll, changes: Changes) => boolean> = {
  'as they are': () => true,
  'with odd cosmetic words and additives': (...of) => [oddWords(...of), fromFactory(...of)].some(Boolean),
};
export const silentNames = Object.keys(makers);

/** Makes the host tempting; false where it has no place for that. */
export function tempt(kind: string, host: Host, changes: Changes): boolean {
  const roll = rolled(
    [...kind, ...host.title].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) | 0, 11),
  );
  return makers[kind]!(host, roll, changes);
}
