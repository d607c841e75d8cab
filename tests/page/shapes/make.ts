// Sixteen ways real shops print their lists, drawn at random: other names, markup and wording each time.
import { dice } from '../make-parts.ts';
import { lowerNames, plainNames, slip, someNames } from './names.ts';
import { page, stores, type Wording, wordings } from './stores.ts';

type Roll = ReturnType<typeof dice>;
/** A page and the names of each list on it, in order. */
export type Drawn = { shape: string; body: string; wanted: string[][]; also: number };
/** `also`: lists that may be shown besides, such as a translation of the same. */
type Shape = (
  roll: Roll,
  words: Wording,
) => { part: string; wanted: string[][]; also?: number; title?: string };

const html = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
const joined = (names: string[], by = ', ') => html(names.join(by));
const put = (roll: Roll, words: Wording, text: string, title = roll.pick(words.headings)) =>
  roll.pick(stores)(title, text);
const long = (roll: Roll) => someNames(roll, roll.int(9, 32));
const stop = (roll: Roll) => roll.pick(['', '.', '']);

const highlights = [
  'Oat Milk',
  'Marine Extract',
  'Baobab',
  'Sea Silt',
  'Rosehip',
  'Willow Bark',
  'Green Tea',
  'Squalane',
];
const frees = [
  'Paraben-Free',
  'Silicone-Free',
  'Alcohol-Free',
  'Sulfate-Free',
  'Cruelty-Free',
  'Vegan',
  'Gluten-Free',
  'Mineral Oil-Free',
];
const does = [
  'helps skin to hold water',
  'calms and cools',
  'softens the lengths',
  'a source of omega acids',
  'gives shine without weight',
];

export const shapes: Record<string, Shape> = {
  'claims and list in one paragraph': (roll, words) => {
    const names = long(roll);
    const edge = roll.pick([' ', '<br>', ' ', '</p><p>']);
    const text = `<p>Key Highlights ${roll.pick(highlights)}${edge}Ingredient Highlights${edge}${roll.some(frees, 3).join(edge)}${edge}${roll.pick(words.full)} ${joined(names)}${roll.pick(['', `. ${roll.pick(words.glued)}`, `${stop(roll)} ${roll.pick(words.glued)}`])}</p>`;
    return {
      part: put(roll, words, text, roll.pick(['Ingredients', 'INGREDIENTS', 'Key Ingredients', 'Details'])),
      wanted: [names],
    };
  },
  'highlights that explain': (roll, words) => {
    const names = long(roll);
    const said = roll.some(highlights, 3).map((each) => `${each}: ${roll.pick(does)}.`);
    const text = `<p>${said.join(roll.pick([' ', '<br>', ' ']))} ${roll.pick(words.full)} ${joined(names)}${stop(roll)}</p>`;
    return {
      part: put(roll, words, text, roll.pick(['Ingredients', 'Key ingredients', 'Composition'])),
      wanted: [names],
    };
  },
  'translated tab': (roll, words) => {
    const names = long(roll);
    const [first, full] = roll.pick([
      ['Основной состав', 'Полный состав'],
      ['Principaux ingrédients', 'Liste complète des ingrédients'],
      ['Hauptwirkstoffe', 'Vollständige Inhaltsstoffe'],
      ['Ingredientes principales', 'Lista completa de ingredientes'],
    ] as const);
    const text = `<span>${first}<br>• ${roll.pick(highlights)}: ${roll.pick(does)}.<br>• ${roll.pick(highlights)} – ${roll.pick(does)}.<br><br>${full}${roll.pick([' ', '<br>', ': '])}${joined(names)}</span>`;
    return {
      part: put(roll, words, text, roll.pick(['Состав', 'Composition', 'Ingredients'])),
      wanted: [names],
    };
  },
  'plain English, short': (roll, words) => {
    const names = roll.some(plainNames, roll.int(4, 11));
    const tail = roll.next() < 0.3 ? ' (May contain: Spirulina, Yellow Oxide)' : '';
    const all = tail ? [...names, 'Color'] : names;
    const list = `${joined(all)}${tail}${stop(roll)}`;
    const title = roll.pick(words.title);
    const part = roll.pick([
      () => `<p>${roll.pick(['Ingredients: ', 'Ingredents: ', 'INGREDIENTS - ', 'Made with: '])}${list}</p>`,
      () => put(roll, words, `<p>${list}</p>`),
      () => `<p><b>${title}:</b> ${list}</p>`,
    ])();
    return { title, part, wanted: [tail ? [...all, 'Spirulina', 'Yellow Oxide'] : all] };
  },
  'lower case': (roll, words) => {
    const names = roll.some(lowerNames, roll.int(5, 14));
    const list = `${roll.next() < 0.25 ? 'essential oils of: ' : ''}${joined(names)}`;
    return {
      part: roll.next() < 0.5 ? put(roll, words, `<p>${list}</p>`) : `<p>ingredients: ${list}</p>`,
      wanted: [names],
    };
  },
  'a short list': (roll, words) => {
    const names = roll.pick([
      ['Alcohol', 'Aqua', 'Parfum', 'Linalool', 'BHT'],
      ['Tapioca Starch', 'Oryza Sativa (Rice) Powder', 'Calendula Flower Extract'],
      ['Purified Water', 'Green Tea Extract (35%)', '1,2-Hexanediol'],
      ['Alcohol Denat.', 'Parfum (Fragrance)', 'Limonene', 'Citral'],
      ['Sodium Bicarbonate', 'Zea Mays Starch', 'Lavandula Angustifolia Oil', 'Linalool'],
      ['Argania Spinosa Kernel Oil', 'Tocopherol', 'Parfum'],
      ['Rosa Damascena Flower Water', 'Sodium Benzoate', 'Citric Acid'],
      someNames(roll, roll.int(3, 8)),
    ]);
    const list = joined(names) + stop(roll);
    return {
      part:
        roll.next() < 0.6
          ? put(roll, words, `<p>${list}</p>`)
          : `<p>${roll.pick(words.headings).replace(/:$/, '')}: ${list}</p>`,
      wanted: [names],
    };
  },
  'amounts after names': (roll, words) => {
    const names = long(roll).map((name, i) =>
      i % 3 === 1 && !/\d|\(/.test(name)
        ? `${name}${roll.pick([' (120,000 ppm)', '(2,040ppm)', ' 5%', ' (0.5 %)', ' 110ppb', ' 2.5%'])}`
        : name,
    );
    return { part: put(roll, words, `<p>${joined(names)}</p>`), wanted: [names] };
  },
  'sets in one block': (roll, words) => {
    const [a, b] = [long(roll), long(roll)];
    const [one, two] = roll.pick([
      ['Shampoo:', 'Treatment:'],
      ['[Step 01]', '[Step 02]'],
      ['【Serum】:', '【Cream】:'],
      ['13:', '15:'],
      ['Daily:', 'Night:'],
      ['Wash –', 'Balm –'],
    ] as const);
    const text = `<p>${one} ${joined(a)}${roll.pick(['. ', '<br>', '<br><br>', '.</p><p>'])}${two} ${joined(b)}</p>`;
    return { part: put(roll, words, text), wanted: [a, b] };
  },
  'the same list twice': (roll, words) => {
    const names = long(roll);
    const text = joined(names);
    return {
      part: `<p>Contents: 250 ml</p><div role="tabpanel"><p>${text}</p></div><details class="phone"><summary>${roll.pick(words.headings)}</summary><p>${text}</p></details>`,
      wanted: [names],
    };
  },
  'breaks in the middle of names': (roll, words) => {
    const names = long(roll);
    let n = 0;
    const text = joined(names).replace(/ (?=[A-Z][a-z]+(?:,|$))/g, (space) =>
      ++n % 5 === 0 ? '<br>' : space,
    );
    return { part: put(roll, words, `<p>${text}</p>`), wanted: [names] };
  },
  'half translated, then the original': (roll, words) => {
    const names = long(roll);
    const half = [
      'Eau',
      'Huile de noyau de Prunus Armeniaca (Abricot)',
      'Glycérine',
      'Beurre de karité',
      'Extrait de thé vert',
      'Parfum',
    ];
    return {
      part: put(
        roll,
        words,
        `<p>${half.slice(0, roll.int(3, 6)).join('<br>')}</p><p>${roll.pick(words.full)}</p><p>${names.map(html).join('<br>')}</p>`,
      ),
      wanted: [names],
      also: 1,
    };
  },
  'asterisks, a break and a legend': (roll, words) => {
    const names = long(roll);
    const starred = names.map((name, i) => (i % 4 === 2 ? `*${name}` : name));
    const at = Math.floor(names.length / 2);
    const text = `<p>${joined(starred.slice(0, at))},</p><p>${joined(starred.slice(at))}. *Certified organic. **Natural fragrance</p>`;
    return { part: put(roll, words, text), wanted: [names] };
  },
  'odd headings and a decoy': (roll, words) => {
    const names = long(roll);
    return {
      part: `<details><summary>What are your raw materials?</summary><p>We source glycerin, shea butter and argan oil from growers we know, and never use parabens.</p></details>${put(roll, words, `<p>${joined(names)}</p>`)}`,
      wanted: [names],
    };
  },
  'the description is the list': (roll) => {
    const names = someNames(roll, roll.int(9, 30), { wet: true });
    return {
      part: `<div class="product__description rte">${roll.pick(['<p>', '', '<span>'])}${joined(names)}${stop(roll)}</div>`,
      wanted: [names],
    };
  },
  'capitals with bullets behind a number': (roll, words) => {
    const names = long(roll).map((name) => name.toUpperCase());
    const script = `<script>var data = ${JSON.stringify({ a: 'x'.repeat(400), names: 'parfum alcohol aqua' })};</script>`;
    const text = `#${roll.int(10000, 99999)} ${joined(names, ' • ')}`;
    return {
      part: `${script}${roll.next() < 0.5 ? put(roll, words, `<p>${text}</p>`) : `<div><p>${text}</p></div>`}${script}`,
      wanted: [names],
    };
  },
  'misspelt names': (roll, words) => {
    const names = (
      roll.next() < 0.5 ? someNames(roll, roll.int(6, 18)) : roll.some(plainNames, roll.int(6, 12))
    ).map((name, i) => (i % 2 ? slip(roll, name) : name));
    return { part: put(roll, words, `<p>${joined(names)}</p>`), wanted: [names] };
  },
  // five plain ways, as labels of any kind are shown
  'under a heading': (roll, words) => {
    const names = long(roll);
    return {
      part: put(
        roll,
        words,
        `<p>${joined(names, roll.pick([', ', ' , ', '; ', ' • ', ',']))}${stop(roll)}</p>`,
      ),
      wanted: [names],
    };
  },
  'in one line with its heading': (roll, words) => {
    const names = long(roll);
    return {
      part: `<p>${roll.pick(words.claims)} ${roll.pick(words.headings).replace(/:$/, '')}: ${joined(names)}</p>`,
      wanted: [names],
    };
  },
  'one name a line': (roll, words) => {
    const names = long(roll);
    return {
      part: put(
        roll,
        words,
        roll.pick([
          `<ul>${names.map((name) => `<li>${html(name)}</li>`).join('')}</ul>`,
          `<p>${names.map(html).join('<br>')}</p>`,
        ]),
      ),
      wanted: [names],
    };
  },
};

export const shapeNames = Object.keys(shapes);

/** `count` pages of a shape. The sets differ in wording and seeds: nothing is tuned by the second. */
export function drawn(shape: string, count: number, set: 'seen' | 'unseen'): Drawn[] {
  const words = wordings[set];
  return Array.from({ length: count }, (_, i) => {
    const roll = dice((set === 'seen' ? 40_000 : 7_000_000) + i * 977 + shape.length * 13);
    const { part, wanted, also = 0, title } = shapes[shape]!(roll, words);
    return { shape, body: page(roll, words, part, title), wanted, also };
  });
}
