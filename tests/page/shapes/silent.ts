// Pages on which nothing may be shown: what tempts a finder of ingredient lists. Shops and sentences are invented;
// words of food, drugs and fabrics come from WordNet, those of labels of medicine and pet food from memory.
import { dice } from '../make-parts.ts';
import { silentLabelWords } from '../random-lists.ts';
import { titled } from './names.ts';
import { openWords } from './open-words.ts';
import { page, stores, type Wording, wordings } from './stores.ts';

type Roll = ReturnType<typeof dice>;
type Maker = (roll: Roll, words: Wording) => string;

const open = openWords();
/** Names that food and cosmetics both print; from memory of both kinds of label. */
const both =
  'Water|Citric Acid|Xanthan Gum|Coconut Oil|Sunflower Oil|Glycerin|Sodium Benzoate|Potassium Sorbate|Honey|Guar Gum|Rosemary Extract|Tocopherols|Lecithin|Olive Oil|Beeswax|Titanium Dioxide|Ascorbic Acid|Green Tea Extract|Lactic Acid|Maltodextrin|Rice Starch|Aloe Vera Juice|Vanilla Extract|Sodium Chloride|Cocoa Butter|Almond Oil'.split(
    '|',
  );
const asTitle = (roll: Roll, names: string[]) => (roll.next() < 0.6 ? names.map(titled) : names);
const headings = [
  'Ingredients',
  'INGREDIENTS',
  'Ingredients list',
  'Ingrédients',
  'Zutaten',
  'Ingredientes',
  'Skład',
  'Ingredienti',
  'Składniki',
  'Состав',
  'Composition',
  'What’s inside',
];
const listed = (roll: Roll, names: string[], title = roll.pick(headings)) =>
  roll.next() < 0.5
    ? roll.pick(stores)(title, `<p>${names.join(', ')}</p>`)
    : `<p>${title}: ${names.join(', ')}.</p>`;
const mixed = (roll: Roll, some: string[], shared: number) =>
  roll.some([...asTitle(roll, roll.some(some, roll.int(3, 14))), ...roll.some(both, shared)], 40);
const amount = (roll: Roll) =>
  roll.pick(['1 cup', '2 tbsp', '1/2 tsp', '200 g', '3', '1 pinch of', '2 cups', '50 ml', 'a handful of']);
const oils = [
  'Lavender',
  'Neroli',
  'Jasmine',
  'Ylang Ylang',
  'Bergamot',
  'Sandalwood',
  'Frankincense',
  'Geranium',
];
const moods = [
  'calming',
  'uplifting',
  'grounding',
  'balances the mind',
  'sleepy evenings',
  'clears the head',
];
const actives = [
  'Argan Oil',
  'Hydrolyzed Keratin',
  'Panthenol',
  'Niacinamide',
  'Squalane',
  'Shea Butter',
  'Hyaluronic Acid',
  'Salicylic Acid',
  'Biotin',
  'Ceramides',
  'Dimethicone',
  'Glycerin',
  'Cetearyl Alcohol',
  'Phenoxyethanol',
];
const plastics = [
  'Polypropylene',
  'Polyethylene',
  'Recycled PET',
  'ABS plastic',
  'Silicone',
  'Stainless steel',
  'Bamboo',
  'Beech wood',
];
const seen = (words: Wording) => words === wordings.seen;

export const silentShapes: Record<string, Maker> = {
  'food in a list': (roll) => listed(roll, mixed(roll, open.food, roll.int(0, 3))),
  'food with four and more shared names': (roll) => listed(roll, mixed(roll, open.food, roll.int(4, 8))),
  recipe: (roll) => {
    const lines = roll.some(open.food, roll.int(4, 12)).map((name) => `<li>${amount(roll)} ${name}</li>`);
    const shared = roll
      .some(both, roll.int(0, 3))
      .map((name) => `<li>${amount(roll)} ${name.toLowerCase()}</li>`);
    return `<h2>${roll.pick(headings)}</h2><ul>${[...lines, ...shared].join('')}</ul><h2>Method</h2><ol><li>Stir well and bake for 20 minutes.</li></ol>`;
  },
  'drug leaflet': (roll) =>
    `<p>Active ingredient: ${roll.pick(open.drugs)} ${roll.int(5, 500)} mg</p>${listed(roll, roll.some(silentLabelWords.medicine, roll.int(4, 14)), roll.pick(['Inactive ingredients', 'Other ingredients', 'Excipients', 'Inactive Ingredients', 'Composition']))}<p>Do not exceed the stated dose.</p>`,
  supplement: (roll) =>
    listed(
      roll,
      roll.some(silentLabelWords.supplement, roll.int(4, 14)),
      roll.pick(['Other ingredients', 'Ingredients', 'Supplement facts']),
    ),
  'pet food': (roll) => listed(roll, asTitle(roll, roll.some(silentLabelWords['pet food'], roll.int(5, 22)))),
  fabric: (roll, words) =>
    roll.pick(stores)(
      roll.pick(['Composition', 'Ingredients', 'Material', 'Состав', 'Composición']),
      seen(words)
        ? '<p>100 % natural bamboo</p>'
        : `<p>${roll.int(40, 90)}% ${roll.pick(open.fabrics)}, ${roll.int(5, 40)}% ${roll.pick(open.fabrics)}, ${roll.int(1, 5)}% elastane</p>`,
    ),
  packaging: (roll) =>
    roll.pick(stores)(
      'Ingredients',
      `<p>${roll.pick(['Refer to product packaging.', 'Please see the box for the full list.', 'Click here for the ingredients.', '', 'See outer carton', 'Coming soon', 'N/A'])}</p>`,
    ),
  plastics: (roll) => listed(roll, roll.some(plastics, roll.int(1, 4))),
  'aromatherapy talk': (roll) =>
    `<h3>Ingredients</h3><p>${roll
      .some(oils, 4)
      .map((oil) => `${oil} ${roll.pick(['–', ':', '-'])} ${roll.pick(moods)}.`)
      .join(' ')}</p>`,
  'key ingredients': (roll) => {
    const names = roll.some(actives, roll.int(2, 6));
    return roll.pick(stores)(
      roll.pick([
        'Key Ingredients',
        'Hero ingredients',
        'Star Ingredients',
        'Active ingredients we love',
        'Actifs clés',
        'Hauptwirkstoffe',
      ]),
      roll.pick([
        `<p>${names.join(', ')}</p>`,
        `<ul>${names.map((name) => `<li>${name}</li>`).join('')}</ul>`,
        names.map((name) => `<p><b>${name}</b>: ${roll.pick(moods)}</p>`).join(''),
      ]),
    );
  },
  'made without': (roll) =>
    roll.pick(stores)(
      roll.pick([
        'Free from',
        'Made without',
        'What’s not inside',
        'No nasties',
        'Never any',
        'Ohne',
        'Sans',
      ]),
      `<p>${roll.some(['Parabens', 'Sodium Lauryl Sulfate', 'Mineral Oil', 'Phthalates', 'Dimethicone', 'Petrolatum', 'Triclosan', 'Formaldehyde', 'Propylene Glycol', 'Methylisothiazolinone'], roll.int(4, 10)).join(', ')}</p>`,
    ),
  glossary: (roll) =>
    `<h1>Ingredient glossary</h1><dl>${roll
      .some(actives, 8)
      .map(
        (name) =>
          `<dt>${name}</dt><dd>A ${roll.pick(['humectant', 'softener', 'preservative', 'film former'])} that ${roll.pick(['draws water', 'keeps a cream fresh', 'smooths the hair'])}.</dd>`,
      )
      .join('')}</dl>`,
  'article about ingredients': (roll) => {
    const names = roll.some(actives, 6);
    return `<article><h2>Which ingredients suit fine hair?</h2><p>If your hair is fine, look for ${names[0]!.toLowerCase()}, ${names[1]!.toLowerCase()} and ${names[2]!.toLowerCase()}, which are light. Heavier ones such as ${names[3]!.toLowerCase()}, ${names[4]!.toLowerCase()} or ${names[5]!.toLowerCase()} weigh it down, and many people prefer to keep them for the ends.</p></article>`;
  },
  category: (roll) =>
    `<h1>Shop by ingredient</h1><ul>${roll
      .some(actives, 9)
      .map((name) => `<li><a href="#">${name}</a> (${roll.int(1, 60)})</li>`)
      .join('')}</ul>`,
  'shelf of goods': (roll) =>
    `<ul>${roll
      .some(actives, 8)
      .map(
        (name) =>
          `<li><a href="#"><h3>${name} ${roll.pick(['Serum', 'Mask', 'Hair Oil', 'Shampoo 250 ml'])}</h3></a><p>€ ${roll.int(4, 40)}.00</p><button>Add to basket</button></li>`,
      )
      .join('')}</ul>`,
  'do it yourself': (roll) =>
    `<h2>Ingredients</h2><ul><li>${roll.int(1, 3)} cups flax seeds</li><li>1 tbsp ${roll.pick(['honey', 'aloe vera gel', 'glycerin'])}</li><li>${roll.int(2, 9)} drops lavender essential oil</li><li>1 tsp vitamin E</li></ul><h2>Steps</h2><p>Simmer and strain.</p>`,
};

export const silentShapeNames = Object.keys(silentShapes);
export function silentDrawn(shape: string, count: number, set: 'seen' | 'unseen'): string[] {
  const words = {
    ...wordings[set],
    title: ['Harbour loaf', 'Daily tablets', 'Kennel supper', 'Linen throw', 'Larder jar'],
  };
  return Array.from({ length: count }, (_, i) => {
    const roll = dice((set === 'seen' ? 90_000 : 3_000_000) + i * 613 + shape.length * 7);
    const part = silentShapes[shape]!(roll, wordings[set]);
    return page(roll, words, part);
  });
}
