// Whole labels as they come off shop pages and worn bottles, made by another hand than `dressed-labels.ts`: each with
// one to three kinds of wear and the names it holds. Drawn at random and seeded; every wording written from memory of
// labels, invented; knows nothing of how labels are read. Of each kind there are two wordings: the first was looked at
// while reading was mended, the second after it had only been counted.

import { type Draw, drawnLabels, pick } from './draws.ts';
import type { Dressed } from './dressed-labels.ts';

export type Wording = 'first' | 'second';
export type Worn = Omit<Dressed, 'kinds'> & { kinds: string[] };

type Worded = Record<Wording, readonly string[]>;
/** A label in the making: printed pieces, how they are joined, what stands before and after, and the names in it. */
type Making = { printed: string[]; sign: string; head: string; tail: string; names: string[] };
type Tools = { draw: Draw; which: Wording; more: () => string };

const headings: Worded = {
  first: ['Ingredients: ', 'Full ingredient list:\n', 'INCI: ', 'Ingrédients / Ingredients: ', 'Zutaten (INCI): ', ''],
  second: ['Ingredients (INCI): ', 'What is inside: ', 'Composition : ', 'Ingredientes/Ingredients: ', 'INGREDIENTI: ', ''],
}; // biome-ignore format: wordings read best side by side
const legends: Worded = {
  first: [
    'grown without pesticides',
    'from certified organic agriculture',
    'Ingredients of natural origin',
    'ingredients from organic farming, 99% of the total is of natural origin',
    'component of essential oils',
    'allergens naturally present in essential oils',
    'aus biologischem Anbau',
    'Inhaltsstoffe aus kbA',
    'aus ätherischen Ölen',
    "ingrédients issus de l'agriculture biologique",
    'présent naturellement dans les huiles essentielles',
    'procedente de agricultura ecológica certificada',
    'presente de forma natural en los aceites esenciales',
    'ingredientes de agricultura biológica',
    'ingrediente da agricoltura biologica',
    'componente naturale degli oli essenziali',
    'van gecontroleerde biologische teelt',
    'ekologiskt odlad',
    'z rolnictwa ekologicznego',
    'organically farmed and fairly traded',
  ],
  second: [
    'organic origin',
    'USDA certified organic',
    'of organic origin',
    'obtained from organic farming',
    'derived from natural essential oils',
    'part of the natural perfume',
    'aus ökologischem Landbau',
    'aus zertifiziert biologischer Landwirtschaft',
    'Bestandteil ätherischer Öle',
    "produit issu de l'agriculture biologique",
    "constituant naturel d'huile essentielle",
    'ingrediente ecológico certificado',
    'componente de aceites esenciales naturales',
    'provenientes da agricultura biológica',
    'presente naturalmente nos óleos essenciais',
    'proveniente da coltivazione biologica',
    'presenti naturalmente negli oli essenziali',
    'uit gecertificeerde biologische landbouw',
    'från ekologiskt jordbruk',
    'pochodzące z upraw ekologicznych',
  ],
};
const doings: Worded = {
  first: [
    'surfactant',
    'moisturiser',
    'preservative',
    'conditions hair',
    'Tensid',
    'Konservierungsmittel',
    'émollient',
    'conservante',
    'humectant / Feuchthaltemittel',
    'pH adjuster',
    'film former',
    'solvent',
    'hydratant',
    'fragrance component',
  ],
  second: [
    'cleanser',
    'moisturizer',
    'stabiliser',
    'softens hair',
    'Lösungsmittel',
    'Duftstoff',
    'épaississant',
    'tensioactivo',
    'preservative / Konservierungsstoff',
    'pH regulator',
    'emulsifier',
    'chelating agent',
    'hidratante',
    'antistatic agent',
  ],
};
const froms: Worded = {
  first: ['from coconut', 'derived from palm', 'plant-based', 'aus Kokos', 'origine végétale', 'coconut derived', 'from corn'],
  second: ['from rapeseed', 'derived from coconut', 'plant origin', 'aus Zucker', 'végétal', 'sugar derived', 'from wheat'],
}; // biome-ignore format: wordings read best side by side
const praises: Worded = {
  first: [
    'Free from parabens, silicones and sulfates',
    'Vegan and cruelty free',
    'Dermatologically tested',
    'Suitable for coloured hair',
    '98 % natural origin',
    'Ohne Silikone und Parabene',
    'Sans silicone, sans sulfate',
    'Sin parabenos ni siliconas',
  ],
  second: [
    'Contains no parabens or mineral oil',
    'Not tested on animals',
    'Tested under dermatological control',
    'Safe for colour-treated hair',
    '95% of ingredients are of natural origin',
    'Frei von Silikonen und Mineralöl',
    'Sans paraben ni huile minérale',
    'Libre de sulfatos y siliconas',
  ],
};
const closings: Worded = {
  first: [
    'Keep out of reach of children',
    'Avoid contact with eyes',
    'Ingredients are subject to change, please check the label',
    'Contains milk',
    'Enthält Ei',
    'Contient du blé',
    'Contiene frutos secos',
    'Produced in a place that handles nuts',
    'Store below 25 °C',
    'Nicht in die Augen bringen',
    'Tenir hors de portée des enfants',
    'Sólo para uso externo',
    'Made in Italy',
    'Hergestellt in Österreich',
  ],
  second: [
    'For external use only. In case of contact with eyes, rinse well with water',
    'Do not swallow',
    'The list of ingredients may vary, refer to the pack you received',
    'Contains wheat',
    'Enthält Milch',
    'Contient des œufs',
    'Contiene trigo',
    'May contain traces of nuts',
    'Store in a dry place away from sunlight',
    'Kontakt mit den Augen vermeiden',
    'Usage externe uniquement',
    'Mantener alejado de los niños',
    'Produced in Spain',
    'Fabricado en Portugal',
  ],
};
const codes: Worded = {
  first: ['(FIL B204417/3)', 'Batch 7731A', 'F.I.L. N70012345/1', '[Code: 778120]', 'LOT: 5K12', 'EXP 09/2027'],
  second: ['FIL# T70019283/2', '(Lot no. 88213)', 'Formula 662 118 B', '[C231990/1]', 'L.4427 EXP 11-27', '(F.I.L. Z5512/2)'],
}; // biome-ignore format: wordings read best side by side
const mayContain: Worded = {
  first: ['May contain: ', '+/- ', 'Peut contenir : ', 'Kann enthalten: ', 'May contain (+/-): '],
  second: ['(+/-): ', 'May contain / Peut contenir: ', 'Puede contener: ', '[+/- ', 'Può contenere: '],
};
const kits: Worded = {
  first: ['Shampoo', 'Conditioner', 'Curl Cream', 'Hair Mask', 'Styling Gel', 'Leave-in Spray'],
  second: [
    'Gentle Shampoo 250 ml',
    'Rinse',
    'Defining Jelly',
    'Deep Treatment',
    'Foam',
    'Scalp Serum (30 ml)',
  ],
};
/** What shops print for one name in two or three languages. */
const slashed: Record<string, Worded> = {
  WATER: { first: ['Aqua / Water / Eau', 'Water/Aqua'], second: ['Water (Aqua/Eau)', 'AQUA/WATER/EAU', 'Aqua (Wasser)'] },
  AQUA: { first: ['Aqua / Water / Eau', 'Water/Aqua'], second: ['Water (Aqua/Eau)', 'AQUA/WATER/EAU', 'Aqua (Wasser)'] },
  PARFUM: { first: ['Parfum / Fragrance', 'Fragrance (Parfum)'], second: ['Parfum/Fragrance', 'Parfum (Duft)', 'Fragrance / Parfum'] },
  GLYCERIN: { first: ['Glycerin / Glycérine'], second: ['Glycerin (Glycerol)', 'Glycerin/Glicerina'] },
  'CITRIC ACID': { first: ['Citric Acid / Acide Citrique'], second: ['Citric Acid (Zitronensäure)'] },
  'SODIUM CHLORIDE': { first: ['Sodium Chloride / Chlorure de sodium'], second: ['Sodium Chloride (Salt)'] },
  HONEY: { first: ['Honey / Mel / Miel'], second: ['Mel (Honey)'] },
  MEL: { first: ['Honey / Mel / Miel'], second: ['Mel (Honey)'] },
  'CI 77891': { first: ['CI 77891 / Titanium Dioxide'], second: ['CI 77891 (Titanium Dioxide)'] },
  'CI 19140': { first: ['CI 19140 / Yellow 5'], second: ['CI 19140 (Yellow 5)', 'Yellow 5 (CI 19140)'] },
}; // biome-ignore format: wordings read best side by side
const footnotes: Record<Wording, readonly (readonly [string, string])[]> = {
  first: [['*', '**'], ['¹', '²'], ['•', '••'], ['(1)', '(2)'], ['Ψ', 'Ω'], ['†', '††']],
  second: [['*', '°'], ['**', '***'], ['◊', '#'], ['^', '^^'], ['[1]', '[2]'], ['§', '¤']],
}; // biome-ignore format: pairs read best side by side
const twins: Record<string, string> = {
  A: 'А', C: 'С', E: 'Е', H: 'Н', O: 'О', P: 'Ρ', T: 'Τ', a: 'а', c: 'с', e: 'е', o: 'ο', p: 'р', i: 'і',
}; // biome-ignore format: pairs read best side by side
const confused: [string, string][] = [
  ['rn', 'm'],
  ['m', 'rn'],
  ['l', 'I'],
  ['l', '1'],
  ['I', 'l'],
  ['O', '0'],
  ['o', '0'],
  ['i', 'ii'],
  ['ii', 'i'],
  ['cl', 'd'],
];

const someAt = <T>(draw: Draw, list: readonly T[], fits: (one: T) => boolean): number => {
  const places = list.flatMap((one, i) => (fits(one) ? [i] : []));
  return places.length === 0 ? -1 : pick(draw, places);
};
/** Changes `times` pieces that fit; one piece is changed once. */
function change(making: Making, draw: Draw, times: number, how: (one: string) => string, fits = plain) {
  const done = new Set<string>();
  for (let n = 0; n < times; n++) {
    const at = someAt(draw, making.printed, (one) => fits(one) && !done.has(one));
    if (at < 0) return;
    making.printed[at] = how(making.printed[at]!);
    done.add(making.printed[at]!);
  }
}
const plain = (name: string) => /^[A-Za-z\d][A-Za-z\d -]+$/.test(name);
const long = (name: string) => /^[A-Za-z-]{8,}(?: |$)/.test(name);
const inWord = (name: string) =>
  [...name.matchAll(/(?<=[A-Za-z]{2})[a-z](?=[a-z]{2})/gi)].map(({ index }) => index);

function slipped(name: string, draw: Draw): string {
  const places = inWord(name);
  if (places.length === 0) return name;
  const at = pick(draw, places);
  const [before, letter, after] = [name.slice(0, at), name[at]!, name.slice(at + 1)];
  const other = pick(draw, [...'abcdefghiklmnoprstuvy']);
  return pick(draw, [
    `${before}${after}`,
    `${before}${letter}${letter}${after}`,
    `${before}${other}${after}`,
    `${before}${after[0]}${letter}${after.slice(1)}`,
  ]);
}

const ways: Record<string, (making: Making, tools: Tools) => void> = {
  'cut by a comma': (making, { draw }) =>
    change(
      making,
      draw,
      1,
      (name) => name.replace(/ (?=[A-Z])/, pick(draw, [', ', ','])),
      (name) => /^[A-Z][a-z]{3,} [A-Z][a-z]{3,}/.test(name),
    ),
  'cut before its number': (making, { draw }) =>
    change(
      making,
      draw,
      2,
      (name) => name.replace(/-(\d+)$/, pick(draw, [', $1', ' -$1', ',-$1', '- $1'])),
      (name) => /[a-z]-\d+$/.test(name),
    ),
  'broken in lines': (making, { draw }) => {
    making.printed = making.printed.map((name, i) =>
      i % 4 === 2 ? name.replace(' ', '\n') : i % 4 === 0 && draw() < 0.6 ? name.replace(/(?<=[a-z]{4})(?=[a-z]{4})/, '-\n') : name,
    ); // biome-ignore format: one line a choice
  },
  'a comma left out': (making, { draw }) => {
    for (let n = 0; n < 2; n++) {
      const at = Math.floor(draw() * (making.printed.length - 1));
      making.printed.splice(at, 2, `${making.printed[at]} ${making.printed[at + 1]}`);
    }
  },
  'a dot for a comma': (making, { draw }) => {
    const at = Math.floor(draw() * (making.printed.length - 1));
    making.printed.splice(at, 2, `${making.printed[at]}${pick(draw, ['. ', '.', '; ', ' - ', ',,'])}${making.printed[at + 1]}`);
  }, // biome-ignore format: one line a choice
  'no space inside': (making, { draw }) =>
    change(
      making,
      draw,
      2,
      (name) => name.replace(/ (?=[A-Z])/, ''),
      (name) => /^[A-Z][a-z]{3,} [A-Z][a-z]{3,}/.test(name),
    ),
  'letters off': (making, { draw }) => change(making, draw, 2, (name) => slipped(name, draw), long),
  'two letters off': (making, { draw }) =>
    change(
      making,
      draw,
      1,
      (name) => slipped(slipped(name, draw), draw),
      (name) => name.length > 16 && long(name),
    ),
  'read from a picture': (making, { draw }) =>
    change(making, draw, 2, (name) => {
      const [from, to] = pick(draw, confused.filter(([from]) => name.includes(from)).concat([['', '']]));
      return from ? name.replace(from, to) : name;
    }),
  'letters of another script': (making, { draw }) =>
    change(making, draw, 2, (name) =>
      [...name].map((letter) => (twins[letter] && draw() < 0.4 ? twins[letter] : letter)).join(''),
    ),
  'letters with spaces': (making, { draw }) =>
    change(
      making,
      draw,
      1,
      (name) => name.replace(/^[A-Za-z]+/, (word) => [...word.toUpperCase()].join(' ')),
      long,
    ),
  'a mark with its legend': (making, { draw, which }) => {
    const [mark] = pick(draw, footnotes[which]);
    change(making, draw, 3, (name) => `${name}${pick(draw, ['', '', ' '])}${mark}`);
    making.tail += `${pick(draw, ['. ', '\n', ' ', '.\n\n'])}${mark}${pick(draw, ['', ' ', ': ', ' - '])}${pick(draw, legends[which])}`;
  },
  'two marks with legends': (making, { draw, which }) => {
    const [one, two] = pick(draw, footnotes[which]);
    change(making, draw, 2, (name) => name + one);
    change(making, draw, 2, (name) => name + two);
    making.tail += `. ${one}${pick(draw, [' ', ''])}${pick(draw, legends[which])}${pick(draw, ['. ', ' ', '\n', '; '])}${two}${pick(draw, [' ', ''])}${pick(draw, legends[which])}${pick(draw, ['', '.'])}`;
  },
  'what it does': (making, { draw, which }) =>
    change(making, draw, 4, (name) => {
      const doing = pick(draw, doings[which]);
      return pick(draw, [`${name} (${doing})`, `${name} - ${doing}`, `${name} [${doing}]`, `${name}: ${doing}`]);
    }), // biome-ignore format: one line a choice
  'where it comes from': (making, { draw, which }) =>
    change(making, draw, 3, (name) => {
      const from = pick(draw, froms[which]);
      return pick(draw, [`${name} (${from})`, `${name} (${from})`, `${name} ${from.startsWith('from') ? from : `(${from})`}`]);
    }), // biome-ignore format: one line a choice
  shares: (making, { draw }) =>
    change(
      making,
      draw,
      3,
      (name) => `${name} ${pick(draw, ['(1%)', '0.25 %', '2,5%', '(<1 %)', '50mg', '– 5 %'])}`,
    ),
  'a code': (making, { draw, which }) => {
    making.tail += `${pick(draw, ['. ', ' ', ', '])}${pick(draw, codes[which])}`;
  },
  'what may be in it': (making, { draw, which, more }) => {
    const own = [more(), more()].filter((name) => !making.names.includes(name));
    const words = pick(draw, mayContain[which]);
    making.names.push(...own);
    making.tail += `${pick(draw, ['. ', ', ', ' '])}${words}${own.join(', ')}${words.startsWith('[') ? ']' : ''}`;
  },
  'a kit of two': (making, { draw, which }) => {
    const middle = Math.floor(making.printed.length / 2);
    const [one, two] = [pick(draw, kits[which]), pick(draw, kits[which])];
    const after = pick(draw, [': ', ' - ', ':\n', '\n']);
    making.head = `${one}${after}`;
    making.printed.splice(
      middle,
      2,
      `${making.printed[middle]}${pick(draw, ['.\n', '\n\n', '. '])}${two}${after}${making.printed[middle + 1]}`,
    );
  },
  praise: (making, { draw, which }) => {
    making.tail += `${pick(draw, ['. ', '.\n', '\n'])}${pick(draw, praises[which])}${pick(draw, ['', '.'])}`;
  },
  'a closing sentence': (making, { draw, which }) => {
    making.tail += `${pick(draw, ['. ', '.\n', '\n', '. '])}${pick(draw, closings[which])}${pick(draw, ['', '.'])}`;
  },
  'two languages': (making, { draw, which }) => {
    making.printed = making.printed.map((name) => {
      const wordings = slashed[name.toUpperCase()];
      return wordings ? pick(draw, wordings[which]) : name;
    });
  },
  'organic before': (making, { draw }) =>
    change(
      making,
      draw,
      2,
      (name) => `${pick(draw, ['Organic', 'Certified organic', 'Natural', 'Raw', 'Cold-pressed', 'Pure'])} ${name}`,
      (name) => /(?:Oil|Extract|Butter|Juice|Water)$/.test(name),
    ), // biome-ignore format: one line a choice
  'signs of trade': (making, { draw }) =>
    change(making, draw, 2, (name) => `${name}${pick(draw, ['®', '™', ' ™', '(TM)'])}`),
  'other signs between': (making, { draw }) => {
    making.sign = pick(draw, [' / ', ' | ', '; ', ' · ', ' • ', '\n', ',\n', ' , ', ',']);
  },
  'all in capitals': (making) => {
    making.printed = making.printed.map((name) => name.toUpperCase());
  },
};

const kinds = Object.keys(ways);
// What changes single names is done before what joins them.
const joining = new Set([
  'a comma left out',
  'a dot for a comma',
  'a kit of two',
  'all in capitals',
  'other signs between',
  'broken in lines',
]);

/** `count` labels of 8 to 22 of these names (INCI, capitals); the weight of a name is how often it is drawn. */
export function wornLabels(
  names: readonly { name: string; weight: number }[],
  count: number,
  seed: number,
  which: Wording,
): Worn[] {
  return drawnLabels(names, count, seed, kinds, ({ own, kinds: chosen, draw, more }) => {
    const making: Making = {
      printed: own,
      sign: ', ',
      head: pick(draw, headings[which]),
      tail: '',
      names: [...own],
    };
    const order = [...chosen].toSorted((a, b) => Number(joining.has(a)) - Number(joining.has(b)));
    for (const kind of order) ways[kind]!(making, { draw, which, more });
    return {
      kinds: order,
      text: `${making.head}${making.printed.join(making.sign)}${making.tail}`,
      names: making.names,
    };
  });
}
