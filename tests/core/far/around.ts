// What stands before and behind the names, and what happens to the letters of the whole label.
import { pick } from '../draws.ts';
import { type Kind, ofHalf } from './label.ts';

const heads = [
  'INGREDIENTS (INCI): ',
  'Zusammensetzung: ',
  'Full INCI declaration: ',
  'Skład: ',
  'Ingr.: ',
  'What’s inside? ',
  'Összetevők: ',
  '全成分：',
  'İçindekiler: ',
  'List of ingredients according to Regulation (EC) No 1223/2009: ',
  'Состав: ',
  'Inhaltsstoffe/INCI-Liste: ',
  'Complete ingredient list (may vary by batch): ',
  'Thành phần: ',
  'Ingredienser: ',
  'المكونات: ',
  'Sestavine (INCI): ',
  'Product ingredients as printed on the pack: ',
  'Συστατικά: ',
  'Ingredientes/Ingredients: ',
  'Koostis: ',
  'Made from: ',
  'Ingrédients (liste INCI) : ',
  '成分: ',
  'Lista składników (INCI): ',
  'Sudėtis: ',
  '전성분: ',
  'Ainesosat: ',
  'Složení: ',
  'Composição: ',
  'מרכיבים: ',
  'Compoziție (INCI): ',
];
const tails = [
  '. Ingredients may change; please check the pack before use.',
  '. Made in Italy.',
  '\nVegan. Cruelty free. Recyclable bottle.',
  '. Store in a cool dry place away from sunlight.',
  ' | Last updated 03/2024',
  '. Keep out of reach of children. For external use only.',
  '. 98% of the total ingredients are of natural origin.',
  '\nShow less',
  '. Les listes d’ingrédients sont mises à jour régulièrement.',
  '. Hergestellt in Deutschland.',
  '\nCopy list',
  '. Przechowywać w suchym miejscu.',
  '. Avoid contact with eyes.',
  '\nWas this helpful? Yes No',
  '. 100 % of fragrance is of natural origin.',
  '. No animal testing.',
  '. Best before: see bottom of jar.',
  '. PAO 12M',
  '\nBack to top',
  '. Utilizar antes de 12 meses.',
  '. Dermatologically tested.',
  '. Nicht in die Augen bringen.',
  '\nReturns & Shipping',
  '. Patch test recommended.',
];
const freeFrom = [
  '. Free from: parabens, silicones, sulfates.',
  '. Without mineral oil, SLS or dyes.',
  '\nDoes not contain: Dimethicone, Paraffin, Phenoxyethanol.',
  '. Ohne Silikone, Parabene und Mineralöl.',
  '. 0% parabens, 0% silicones.',
  '. No sulphates, no drying alcohols.',
  '. Sans silicones, sans sulfates, sans parabènes.',
  '. Sin siliconas, sin sulfatos.',
];
const directions = [
  '\nDirections: Apply to wet hair, lather and rinse well.',
  '. How to use: work through damp hair, leave for 5 minutes, rinse.',
  '\nAnwendung: Ins nasse Haar einmassieren und ausspülen.',
  '. Usage: shake well. Spray on towel-dried hair.',
  '\nMode d’emploi : appliquer sur cheveux mouillés, rincer.',
  '. Warning: in case of contact with eyes rinse with water.',
  '\nModo de uso: aplicar sobre el cabello húmedo.',
  '. Apply a small amount, scrunch and air dry.',
];
const around = (kind: string, half: Kind['half'], does: Kind['does']): Kind => ({
  kind,
  half,
  stage: 'around',
  does,
});

export const aroundKinds: Kind[] = [
  around('headings of many shops', 'both', (label, draw, half) => {
    label.head = pick(draw, ofHalf(heads, half));
  }),
  around('notes behind', 'both', (label, draw, half) => {
    label.tail += pick(draw, ofHalf(tails, half));
    if (draw() < 0.4) label.tail += ` ${pick(draw, ofHalf(tails, half)).replace(/^[.\s|]+/, '')}`;
  }),
  around('directions behind', 'both', (label, draw, half) => {
    label.tail += pick(draw, ofHalf(directions, half));
  }),
  around('what it is free from', 'both', (label, draw, half) => {
    label.tail += pick(draw, ofHalf(freeFrom, half));
  }),
  around('codes before and behind', 'looked at', (label, draw) => {
    const number = String(Math.floor(1e5 + draw() * 9e5));
    if (draw() < 0.5)
      label.head = `${pick(draw, [`#${number} `, `${number} - `, `REF. ${number}/1 `, `ING-${number}: `])}`;
    else
      label.tail += pick(draw, [
        ` (F.I.L. C${number}/1)`,
        `. Lot: L${number}A EXP 06/2027`,
        ` [${number}-02]`,
        `. EAN 4012345${number}`,
      ]);
  }),
  around('contents, price and stars', 'kept aside', (label, draw) => {
    if (draw() < 0.5)
      label.head = pick(draw, [
        '250 ml e 8.4 fl. oz. Ingredients: ',
        'Net Wt. 8 oz (227 g)\nIngredients: ',
        '€12.90 | INCI: ',
        '★★★★☆ (128)\nIngredients: ',
      ]);
    else
      label.tail += pick(draw, [
        '. Net contents: 250 ml',
        '\n★★★★☆ 128 reviews',
        '. 8.4 fl oz / 250 ml',
        '\n€12.90 incl. VAT',
        '. 200 g ℮',
      ]);
  }),
  around('the product’s own name before', 'looked at', (label, draw) => {
    label.head = pick(draw, [
      'Tidal Drift Curl Cream: ',
      'Marrow & Fern Conditioning Bar — Ingredients: ',
      'Pebble Foam Shampoo 300ml Ingredients ',
      'INGREDIENTS - MOSSWATER LEAVE-IN: ',
    ]);
  }),
  around('lines of praise before', 'kept aside', (label, draw) => {
    label.head = pick(draw, [
      'Soft, bouncy waves all day.\n\nIngredients: ',
      'Suitable for curly and coily hair. Full ingredient list: ',
      'Clean beauty, honestly made!\nINCI: ',
      'pH 4.5-5.5. Ingredients: ',
    ]);
  }),
];

const lookAlikes: Record<string, string> = {
  a: 'а',
  e: 'е',
  o: 'о',
  c: 'с',
  p: 'р',
  x: 'х',
  A: 'А',
  E: 'Е',
  O: 'О',
  C: 'С',
  P: 'Р',
};
const ringed: [RegExp, string][] = [
  [/l/, '1'],
  [/o/, '0'],
  [/I/, 'l'],
  [/rn/, 'm'],
  [/i/, 'l'],
  [/O/, '0'],
  [/m/, 'rn'],
  [/S/, '5'],
];
const fullWidth = (letter: string) => String.fromCodePoint(letter.codePointAt(0)! + 0xfee0);
const bold = (letter: string) =>
  String.fromCodePoint(letter.codePointAt(0)! + (letter < 'a' ? 0x1d400 - 65 : 0x1d41a - 97));
const letters = (
  kind: string,
  half: Kind['half'],
  turn: (text: string, draw: () => number) => string,
  clear?: true,
): Kind => ({
  kind,
  half,
  stage: 'letters',
  ...(clear && { clear }),
  does: (label, draw) => {
    label.text = turn(label.text, draw);
  },
});

export const letterKinds: Kind[] = [
  letters('Turkish capitals', 'looked at', (text) => text.toLocaleUpperCase('tr')),
  letters('Turkish small letters', 'kept aside', (text) => text.toUpperCase().toLocaleLowerCase('tr')),
  letters('grown-together letters of a PDF', 'looked at', (text) =>
    text.replace(/ffi/g, 'ﬃ').replace(/ff/g, 'ﬀ').replace(/fi/g, 'ﬁ').replace(/fl/g, 'ﬂ'),
  ),
  letters('wide letters', 'kept aside', (text, draw) =>
    draw() < 0.5 ? text.replace(/[A-Za-z0-9]/g, fullWidth) : text.replace(/[A-Za-z]/g, bold),
  ),
  letters('broken where the column ends', 'looked at', (text, draw) => {
    const width = 22 + Math.floor(draw() * 20);
    let column = 0;
    return [...text.matchAll(/\s+|[^\s]+/g)]
      .map(([part]) => {
        column += part.length;
        if (column < width || /^\s/.test(part)) return part;
        const at = Math.floor(part.length / 2);
        column = part.length - at;
        return /^[A-Za-z]{8,}[,;]?$/.test(part) ? `${part.slice(0, at)}-\n${part.slice(at)}` : `\n${part}`;
      })
      .join('')
      .replace(/ +\n/g, '\n');
  }),
  letters('soft hyphens and spaces of no width', 'kept aside', (text, draw) =>
    text.replace(/[a-z]{4}(?=[a-z]{3})/gi, (run) =>
      draw() < 0.4 ? run + pick(draw, ['\u00ad', '\u200b', '\u2060', '\ufeff']) : run,
    ),
  ),
  letters(
    'letters mistaken by readers of pictures',
    'looked at',
    (text, draw) => {
      let left = 3;
      return text.replace(/[A-Za-z]{7,}/g, (word) => {
        if (left === 0 || draw() < 0.7) return word;
        left--;
        const [what, by] = pick(draw, ringed);
        return word.slice(0, 1) + word.slice(1).replace(what, by);
      });
    },
    true,
  ),
  letters('commas mistaken by readers of pictures', 'kept aside', (text, draw) =>
    text.replace(/, /g, (comma) => (draw() < 0.2 ? pick(draw, ['. ', '‚ ', ' , ', '; ', ',']) : comma)),
  ),
  letters('right-to-left marks', 'looked at', (text, draw) =>
    text.replace(/, /g, () => pick(draw, [', \u200e', '\u200f, ', ', '])),
  ),
  letters('entities of HTML', 'kept aside', (text, draw) =>
    text
      .replace(/&/g, '&amp;')
      .replace(/ /g, (space) => (draw() < 0.15 ? '&nbsp;' : space))
      .replace(/\P{ASCII}/gu, (letter) => `&#${letter.codePointAt(0)};`),
  ),
  letters('look-alike letters of Cyrillic', 'looked at', (text, draw) =>
    text.replace(/[aeocpxAEOCP]/g, (letter) => (draw() < 0.12 ? lookAlikes[letter]! : letter)),
  ),
  letters('spaces of many kinds', 'both', (text, draw) =>
    text.replace(/ /g, (space) =>
      draw() < 0.3 ? pick(draw, ['\u00a0', '  ', '\u2009', '\t', '\u3000']) : space,
    ),
  ),
  letters('capitals lost', 'both', (text) => text.toLowerCase()),
];
