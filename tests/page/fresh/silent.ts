// Pages on which nothing may be shown, in ten languages: other goods, talk, glossaries, filters, what is left out.
import { existsSync, readFileSync } from 'node:fs';
import { dice } from '../make-parts.ts';
import { someNames } from '../shapes/names.ts';
import { cleaners, foods, type Goods, medicines, paints, petFood, supplements } from './goods.ts';
import { around, type SetName, sets } from './make.ts';
import { type Tongue, tongues } from './tongues.ts';

type Roll = ReturnType<typeof dice>;
type Maker = (roll: Roll, tongue: Tongue) => { part: string; title?: string };

const openFile = process.env.STRANDLINE_FOODS;
/** Foods with their Latin plants: "Barley (Hordeum vulgare)". */
const openFoods =
  openFile && existsSync(openFile)
    ? [...readFileSync(openFile, 'utf8').matchAll(/^"\w\d+","([^"]+)","([^"]*)"/gm)].map(
        ([, name, latin]) => ({
          name: name!,
          latin: latin!,
        }),
      )
    : [];
export const hasOpenFoods = openFoods.length > 0;

const shown = (roll: Roll, { heading, names }: Goods): string => {
  const some = roll.some(names, roll.int(6, names.length));
  return roll.pick([
    () => `<p><b>${heading}:</b> ${some.join(', ')}.</p>`,
    () => `<h3>${heading}</h3><p>${some.join(', ')}</p>`,
    () => `<details><summary>${heading}</summary><p>${some.join(', ')}</p></details>`,
    () => `<h3>${heading}</h3><ul>${some.map((name) => `<li>${name}</li>`).join('')}</ul>`,
    () => `<table><tr><td>${heading}</td><td>${some.join(', ')}</td></tr></table>`,
    () => `<p>${some.join(', ')}.</p>`,
  ])();
};
const goods =
  (all: Goods[], titles: string[]): Maker =>
  (roll) => ({
    part: shown(roll, roll.pick(all)),
    title: roll.pick(titles),
  });

const amounts = [
  '200 g',
  '1 EL',
  '2 TL',
  '1 c. à s.',
  '2 cucharadas',
  '1 łyżka',
  '2 msk',
  '1 yemek kaşığı',
  '3',
  '50 ml',
  '1 lžíce',
];

export const silentShapes: Record<string, Maker> = {
  'food label': goods(foods, [
    'Knusper 200 g',
    'Sablés',
    'Galletas',
    'Crema spalmabile',
    'Herbatniki',
    'Kex',
    'Bisküvi',
  ]),
  supplement: goods(supplements, [
    'Haut & Haar Kapseln',
    'Complément beauté',
    'Collagen Gummies',
    'Suplement diety',
    'Complemento',
  ]),
  'package leaflet': goods(medicines, ['Packungsbeilage', 'Notice', 'Prospecto', 'Ulotka', 'Leaflet']),
  'pet food': goods(petFood, ['Katzenfutter', 'Croquettes chien', 'Pienso', 'Dog dinner']),
  detergent: goods(cleaners, ['Waschmittel', 'Lessive', 'Detergente', 'Płyn do prania', 'Laundry liquid']),
  paint: goods(paints, ['Wandfarbe', 'Peinture murale', 'Wall paint', 'Hartwachsöl']),
  recipe: (roll, { names, headings, titles }) => {
    const food = roll.pick(foods).names;
    const lines = [...roll.some(food, roll.int(4, 9)), ...roll.some(names, roll.int(0, 4))];
    return {
      part: `<h2>${headings[0]}</h2><ul>${lines.map((name) => `<li>${roll.pick(amounts)} ${name}</li>`).join('')}</ul><ol><li>20 min, 180 °C.</li></ol>`,
      title: `${titles[0]!.split(' ')[0]} – Rezept, recette, receta`,
    };
  },
  'home-made cosmetics': (roll, { names, headings }) => ({
    part: `<h2>${headings[0]}</h2><ul>${roll
      .some(names, roll.int(4, 8))
      .map((name) => `<li>${roll.pick(amounts)} ${name}</li>`)
      .join('')}</ul><ol><li>70 °C.</li></ol>`,
  }),
  'talk naming ten in prose': (roll, { names, talk }) => ({
    part: `<article><p>${talk(roll.some(names, 10))}</p></article>`,
  }),
  'talk naming Latin ones': (roll, { talk, claims }) => ({
    part: `<article><p>${roll.pick(claims)}</p><p>${talk(someNames(roll, 10, { wet: false }))}</p></article>`,
  }),
  glossary: (roll, { names, claims }) => ({
    part: `<dl>${roll
      .some(names, 9)
      .map((name) => `<dt>${name}</dt><dd>${roll.pick(claims)}</dd>`)
      .join('')}</dl>`,
    title: 'A–Z',
  }),
  'alphabetical index': (roll, { names }) => ({
    part: `<ul>${roll
      .some(names, 14)
      .sort()
      .map((name) => `<li><a href="#">${name}</a></li>`)
      .join('')}</ul>`,
    title: 'A–Z',
  }),
  'filter list': (roll, { names, headings }) => ({
    part: `<aside><h4>${headings[0]}</h4><ul>${roll
      .some(names, 10)
      .map(
        (name) => `<li><label><input type="checkbox"> ${name} <span>(${roll.int(1, 80)})</span></label></li>`,
      )
      .join('')}</ul></aside>`,
  }),
  'filter list without counts': (roll, { names, headings }) => ({
    part: `<aside><h4>${headings[0]}</h4><ul>${roll
      .some(names, 10)
      .sort()
      .map((name) => `<li><label><input type="checkbox"> ${name}</label></li>`)
      .join('')}</ul></aside>`,
  }),
  'key ingredients': (roll, { names, key }) => ({
    part: `<h3>${roll.pick(key)}</h3>${roll.pick([
      () => `<p>${roll.some(names.slice(1), 4).join(', ')}</p>`,
      () =>
        `<ul>${roll
          .some(names.slice(1), 4)
          .map((name) => `<li>${name}</li>`)
          .join('')}</ul>`,
    ])()}`,
  }),
  'left out': (roll, { freeFrom, names }) => ({
    part: `<h3>${roll.pick(freeFrom)}</h3><p>${roll.some(['Parabene', 'Silicone', 'Sulfate', 'Mineralöl', 'Palmöl', 'Phthalates', 'PEG', 'Formaldehyd', ...names.slice(19)], 7).join(', ')}</p>`,
  }),
  'raw materials by the kilo': (roll, { names }) => ({
    part: `<ul>${roll
      .some(names.slice(1), 12)
      .map((name) => `<li><a href="#"><h3>${name}</h3></a><span>${roll.int(3, 40)},50 € / kg</span></li>`)
      .join('')}</ul>`,
  }),
  'raw materials in a menu': (roll, { names }) => ({
    part: `<nav><ul>${roll
      .some(names.slice(1), 12)
      .map((name) => `<li><a href="#">${name}</a></li>`)
      .join('')}</ul></nav>`,
  }),
  'a row of scents': (roll, { names, claims }) => ({
    part: `<p>${roll.pick(claims)}</p><p>${roll
      .some(
        names.filter((name) => /lav|ros|cam|kami|rum/i.test(name)),
        4,
      )
      .join(' · ')}</p>`,
  }),
  'a review naming some': (roll, { names, claims }) => ({
    part: `<blockquote><p>${roll.pick(claims)} ${roll.some(names.slice(1), 5).join(', ')}!!! ${roll.pick(claims)}</p></blockquote>`,
  }),
  ...(hasOpenFoods && {
    'open foods with their plants': (roll: Roll) => ({
      part: shown(roll, {
        heading: 'Ingredients',
        names: roll
          .some(openFoods, 16)
          .map(({ name, latin }) => (latin && roll.next() < 0.6 ? `${name} (${latin})` : name)),
      }),
      title: 'Food composition',
    }),
    'open plants alone': (roll: Roll) => ({
      part: shown(roll, {
        heading: roll.pick(['Species', 'Composition', 'Plants']),
        names: roll
          .some(
            openFoods.filter(({ latin }) => latin),
            14,
          )
          .map(({ latin }) => latin),
      }),
      title: 'Garden seeds',
    }),
  }),
};
export const silentNames = Object.keys(silentShapes);

export function silentDrawn(shape: string, count: number, set: SetName): { body: string; tongue: string }[] {
  return Array.from({ length: count }, (_, i) => {
    const roll = dice((set === 'seen' ? 660_000 : 9_400_000) + i * 419 + shape.length * 23);
    const name = sets[set][i % sets[set].length]!;
    const tongue = tongues[name]!;
    const { part, title } = silentShapes[shape]!(roll, tongue);
    return { body: around(roll, tongue, part, title), tongue: name };
  });
}
