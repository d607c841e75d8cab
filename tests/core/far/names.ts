// What happens to single names on a label: remarks beside them, shortened and split words, slips of whoever typed them.
import { type Draw, pick } from '../draws.ts';
import { type Item, type Kind, type Label, ofHalf, onNames, someOf } from './label.ts';

const share = (draw: Draw) => pick(draw, ['0.1', '0,5', '1', '2', '2.5', '3', '5', '0.05', '10', '12.5']);

const functions = [
  'humectant',
  'emollient',
  'Emulgator',
  'preservative',
  'agent conditionneur',
  'surfactant',
  'conditioning agent',
  'thickener',
  'Feuchthaltemittel',
  'pH adjuster',
  'tensioactivo',
  'antioxidant',
  'Konservierungsmittel',
  'chelating agent',
  'émollient',
  'emulsifier',
  'konserwant',
  'skin conditioning',
  'viscosity controlling',
  'solvent',
  'antistatic',
  'conservante',
];
const origins = [
  'from coconut',
  'plant-derived',
  'vegetable origin',
  'derived from corn',
  'RSPO certified',
  'fair trade',
  'cold-pressed',
  'unrefined',
  'from sugar beet',
  'non-GMO',
  'from rapeseed',
  'palm free',
  'wildcrafted',
  'certified organic',
  'aus kontrolliert biologischem Anbau',
  'food grade',
  "d'origine végétale",
  'naturally derived',
  'kbA',
  'issu de l’agriculture biologique',
  'de cultivo ecológico',
  'from flax',
];
const legends = [
  'certified organic',
  'from controlled organic cultivation',
  'naturally occurring in essential oils',
  'ingredients from organic farming',
  "issu de l'agriculture biologique",
  'natural component of the plant extracts',
  'fair trade ingredient',
  'de agricultura ecológica',
  'aus biologischem Anbau',
  'Bestandteil natürlicher ätherischer Öle',
  'upcycled',
  'da agricoltura biologica',
  'z upraw ekologicznych',
  'vegan source',
];
const marks = ['*', '**', '†', '¹', '°', '(1)', '#', '^', '‡', '²', '⁺', '(*)', '◊', '★'];

const registry = (draw: Draw) => {
  const digits = String(Math.floor(50000 + draw() * 900000));
  const body = digits + String(Math.floor(10 + draw() * 89));
  const check = [...body].reverse().reduce((sum, digit, i) => sum + Number(digit) * (i + 1), 0) % 10;
  return `${digits}-${body.slice(-2)}-${check}`;
};
const code = (draw: Draw) =>
  Array.from({ length: 10 }, () => pick(draw, [...'0123456789ABCDEFGHJKMNPQRSTUVWXYZ'])).join('');

/** Swaps in one word what `turn` makes of it; words of five letters and more, none of digits. */
const inOneWord = (text: string, draw: Draw, turn: (word: string) => string): string => {
  const words = [...text.matchAll(/[A-Za-z]{6,}/g)];
  if (words.length === 0) return text;
  const word = pick(draw, words);
  return text.slice(0, word.index) + turn(word[0]) + text.slice(word.index + word[0].length);
};
const within = (word: string, draw: Draw) => 1 + Math.floor(draw() * (word.length - 3));
const plant = /^([A-Z][a-z]+ [A-Z]?[a-z]+(?: [A-Z]?[a-z]+)?) \(([A-Za-z ]+)\) (.+)$/;
const latin =
  /^([A-Z][a-z]+ [A-Z]?[a-z]+)( (?:\([^)]+\) )?(?:Seed|Leaf|Fruit|Flower|Kernel|Root|Peel|Bark|Bran)? ?(?:Oil|Extract|Butter|Powder|Juice|Water))$/i;
const parted = /^(.+) (Seed|Leaf|Fruit|Flower|Kernel|Root|Peel|Bark) (Oil|Extract|Butter|Powder|Juice)$/i;
const long = (text: string) => /[a-z]{8}/i.test(text);

const shortened: [RegExp, string][] = [
  [/\bExtract\b/i, 'Ext.'],
  [/\bHydrolyzed\b/i, 'Hydr.'],
  [/\bSodium\b/i, 'Sod.'],
  [/\bPotassium\b/i, 'Pot.'],
  [/\bChloride\b/i, 'Chl.'],
  [/\bHydrogenated\b/i, 'Hydrog.'],
  [/\bMagnesium\b/i, 'Mag.'],
];
const split: [RegExp, string][] = [
  [/hydroxyethyl/i, 'Hydroxy Ethyl '],
  [/phenoxyethanol/i, 'Phenoxy Ethanol'],
  [/(methyl|ethyl|propyl|butyl)(paraben)/i, '$1 $2'],
  [/isopropyl/i, 'Iso Propyl'],
  [/cyclopenta/i, 'Cyclo Penta '],
  [/ethylhexyl/i, 'Ethyl Hexyl '],
  [/triethanol/i, 'Tri Ethanol '],
  [/polyquaternium/i, 'Poly Quaternium'],
  [/amodimethicone/i, 'Amo Dimethicone'],
  [/cocamidopropyl/i, 'Cocamido Propyl'],
  [/behentrimonium/i, 'Behen Trimonium'],
  [/propanediol/i, 'Propane Diol'],
  [/stearamidopropyl/i, 'Stearamido Propyl'],
  [/hydroxypropyl/i, 'Hydroxy Propyl '],
];
const byEar: [RegExp, string][] = [
  [/ph/i, 'f'],
  [/sc/i, 's'],
  [/yl\b/i, 'il'],
  [/c(?=[eiy])/i, 's'],
  [/ch(?=l)/i, 'c'],
  [/ium\b/i, 'um'],
  [/th/i, 't'],
  [/(l|n|t|m)\1/i, '$1'],
  [/y/i, 'i'],
  [/z/i, 's'],
  [/ea/i, 'ee'],
  [/ine?\b/i, 'een'],
  [/x/i, 'ks'],
  [/ate\b/i, 'ait'],
  [/ae/i, 'e'],
  [/k/i, 'c'],
];
const beside: Record<string, string> = {
  a: 's',
  s: 'd',
  d: 'f',
  e: 'r',
  r: 't',
  t: 'y',
  i: 'o',
  o: 'p',
  n: 'm',
  m: 'n',
  l: 'k',
  h: 'j',
  c: 'v',
  y: 'u',
  u: 'i',
  p: 'o',
};

const changed = (rules: [RegExp, string][]) => (text: string, draw: Draw) => {
  const fitting = rules.filter(([what]) => what.test(text));
  if (fitting.length === 0) return text;
  const [what, by] = pick(draw, fitting);
  const loud = text === text.toUpperCase() && text.length > 3;
  return text
    .replace(what, loud ? by.toUpperCase() : by)
    .replace(/ {2,}/g, ' ')
    .trim();
};
const fitsAny = (rules: [RegExp, string][]) => (text: string) => rules.some(([what]) => what.test(text));

const marked: Kind = {
  kind: 'footnote marks with their legends',
  half: 'both',
  stage: 'names',
  does: (label, draw, half) => {
    const [mark, other] = [pick(draw, ofHalf(marks, half)), pick(draw, ofHalf(marks, half))];
    const before = draw() < 0.25;
    for (const item of someOf(label, draw, 5))
      item.text = before ? `${mark}${item.text}` : `${item.text}${mark}`;
    label.tail += `${pick(draw, ['. ', '\n', ' '])}${mark}${pick(draw, ['', ' ', ' = '])}${pick(draw, ofHalf(legends, half))}`;
    if (other === mark || draw() < 0.5) return;
    for (const item of someOf(label, draw, 2))
      item.text = before ? `${other}${item.text}` : `${item.text}${other}`;
    label.tail += `${pick(draw, [', ', '\n', '; '])}${other} ${pick(draw, ofHalf(legends, half))}`;
  },
};

/** Joins runs of two or three neighbours into one item. */
function together(
  label: Label,
  draw: Draw,
  most: number,
  print: (texts: string[], draw: Draw) => string,
): void {
  for (let times = 0; times < most && label.items.length > 5; times++) {
    const at = 1 + Math.floor(draw() * (label.items.length - 4));
    const run = label.items.slice(at, at + (draw() < 0.5 ? 2 : 3));
    if (run.some(({ touched }) => touched)) continue;
    const joined: Item = {
      text: print(
        run.map(({ text }) => text),
        draw,
      ),
      names: run.flatMap(({ names }) => names),
      touched: true,
    };
    label.items.splice(at, run.length, joined);
  }
}
const joins = (
  kind: string,
  half: Kind['half'],
  most: number,
  print: (texts: string[], draw: Draw) => string,
): Kind => ({
  kind,
  half,
  stage: 'names',
  does: (label, draw) => together(label, draw, most, print),
});

export const nameKinds: Kind[] = [
  onNames(
    'amounts before names',
    'looked at',
    (text, draw) => `${share(draw)}${pick(draw, ['% ', ' % ', '% w/w '])}${text}`,
  ),
  onNames(
    'amounts behind names',
    'kept aside',
    (text, draw) =>
      pick(draw, [
        `${text} – ${share(draw)} %`,
        `${text}: ${share(draw)}%`,
        `${text} (${share(draw)} g)`,
        `${text} ${share(draw)}%`,
        `${text} - ${share(draw)} % w/w`,
      ]),
    { most: 7 },
  ),
  onNames(
    'functions beside names',
    'both',
    (text, draw, half) => {
      const what = pick(draw, ofHalf(functions, half));
      return half === 'looked at'
        ? pick(draw, [`${text} (${what})`, `${text} - ${what}`])
        : pick(draw, [`${text} [${what}]`, `${text} (${what})`, `${text} – ${what}`]);
    },
    { most: 5 },
  ),
  onNames('origins beside names', 'both', (text, draw, half) => {
    const what = pick(draw, ofHalf(origins, half));
    return half === 'looked at'
      ? pick(draw, [`${text} (${what})`, `${text}, ${what}`.replace(', ', ' ')])
      : pick(draw, [`${text} (${what})`, `${text} [${what}]`, `${text} - ${what}`]);
  }),
  onNames(
    'organic before names',
    'looked at',
    (text, draw) =>
      `${pick(draw, ['Organic ', 'Bio-', '*Organic ', 'Certified Organic ', 'Pure ', 'Bio '])}${text}`,
    { fits: (text) => latin.test(text) },
  ),
  onNames(
    'registry numbers beside names',
    'kept aside',
    (text, draw) =>
      pick(draw, [
        `${text} (CAS ${registry(draw)})`,
        `${text} [${registry(draw)}]`,
        `${text} CAS No. ${registry(draw)}`,
        `${text} (CAS# ${registry(draw)})`,
      ]),
    { most: 6 },
  ),
  onNames(
    'drug sheet codes beside names',
    'looked at',
    (text, draw) => `${text.toUpperCase()} (UNII: ${code(draw)})`,
    { most: 9 },
  ),
  onNames(
    'pictographs before names',
    'looked at',
    (text, draw) => `${pick(draw, ['🌿', '💧', '✨', '🥥', '✔️', '🌱', '🧴'])} ${text}`,
    { most: 6 },
  ),
  onNames(
    'pictographs behind names',
    'kept aside',
    (text, draw) => `${text} ${pick(draw, ['🌿', '💧', '🍯', '🥑', '❤️', '🌸'])}`,
    { most: 4 },
  ),
  onNames(
    'grades behind names',
    'kept aside',
    (text, draw) =>
      `${text} ${pick(draw, ['USP', 'NF', 'Ph. Eur.', '(cosmetic grade)', 'BP', '(USP grade)', '99.5%', '(refined)', 'IP', '(technical grade)'])}`,
  ),
  marked,
  onNames(
    'plant brackets swapped',
    'looked at',
    (text, draw) => {
      const [, species, common, part] = plant.exec(text)!;
      return draw() < 0.5 ? `${common} (${species}) ${part}` : `${common} ${part} (${species})`;
    },
    { fits: (text) => plant.test(text), most: 6 },
  ),
  onNames(
    'authors of plant names',
    'kept aside',
    (text, draw) =>
      text.replace(
        latin,
        (_, species: string, rest: string) =>
          `${species} ${pick(draw, ['L.', 'Mill.', 'DC.', '(L.)', 'Linn.', 'Lam.'])}${rest}`,
      ),
    { fits: (text) => latin.test(text) },
  ),
  onNames('part of the plant first', 'looked at', (text) => text.replace(parted, '$3 of $1 $2'), {
    fits: (text) => parted.test(text),
  }),
  onNames('part of the plant in brackets', 'kept aside', (text) => text.replace(parted, '$1 ($2) $3'), {
    fits: (text) => parted.test(text),
  }),
  onNames(
    'hyphens of numbers',
    'looked at',
    (text, draw) => text.replace(/-(\d)/, `${pick(draw, [' ', '–', '- ', ' -', '‑', '−', ''])}$1`),
    { fits: (text) => /[a-z]-\d/i.test(text), most: 6 },
  ),
  onNames(
    'slashes otherwise',
    'kept aside',
    (text, draw) => text.replace(/\//g, pick(draw, [' / ', ' - ', '∕', ' & ', '/ ', '-'])),
    { fits: (text) => /[a-z]\/[a-z]/i.test(text) },
  ),
  onNames('words shortened', 'looked at', changed(shortened), { fits: fitsAny(shortened) }),
  onNames('words split', 'kept aside', changed(split), { fits: fitsAny(split), most: 3 }),
  onNames(
    'two words grown together',
    'looked at',
    (text) =>
      text.replace(/([a-z]) ([a-z])(?=[a-z]+$)/i, (_, one: string, two: string) => one + two.toLowerCase()),
    { fits: (text) => /^[a-z]+ [a-z]{3,}$/i.test(text), most: 3 },
  ),
  onNames('spelt by ear', 'both', (text, draw, half) => changed(ofHalf(byEar, half))(text, draw), {
    fits: (text) => long(text),
    most: 3,
  }),
  onNames(
    'British spelling',
    'kept aside',
    (text) =>
      text
        .replace(/sulf/gi, 'sulph')
        .replace(/lyz/gi, 'lys')
        .replace(/glycerin\b/gi, 'glycerine')
        .replace(/aluminum/gi, 'aluminium'),
    { fits: (text) => /sulf|lyz|glycerin\b/i.test(text), most: 6 },
  ),
  onNames(
    'key beside the right one',
    'looked at',
    (text, draw) =>
      inOneWord(text, draw, (word) => {
        const at = within(word, draw);
        return word.slice(0, at) + (beside[word[at]!.toLowerCase()] ?? word[at]!) + word.slice(at + 1);
      }),
    { fits: long, most: 2, clear: true },
  ),
  onNames(
    'letters changed places',
    'kept aside',
    (text, draw) =>
      inOneWord(text, draw, (word) => {
        const at = within(word, draw);
        return word.slice(0, at) + word[at + 1]! + word[at]! + word.slice(at + 2);
      }),
    { fits: long, most: 2, clear: true },
  ),
  onNames(
    'letters doubled or dropped',
    'looked at',
    (text, draw) =>
      inOneWord(text, draw, (word) => {
        const at = within(word, draw);
        return word.slice(0, at) + (draw() < 0.5 ? word[at]! + word[at]! : '') + word.slice(at + 1);
      }),
    { fits: long, most: 2, clear: true },
  ),
  onNames(
    'names that were spaced out',
    'kept aside',
    (text) =>
      text
        .split(' ')
        .map((word) => [...word].join(' '))
        .join('  '),
    { fits: (text) => /^[a-z ]+$/i.test(text), most: 1, clear: true },
  ),
  joins('commas lost between names', 'looked at', 2, (texts) => texts.join(' ')),
  joins('blends of suppliers', 'kept aside', 2, (texts, draw) =>
    texts.join(pick(draw, [' (and) ', ' (and) ', ' & ', ' and '])),
  ),
  joins(
    'invented trade name with INCI in brackets',
    'looked at',
    1,
    (texts, draw) =>
      `${pick(draw, ['Lumovelle™', 'Quillinare® HD', 'Vestromyl™', 'Oshkarine® Complex', 'Fennolux™ 3'])} (${texts.join(', ')})`,
  ),
  joins('groups with brackets of their own', 'kept aside', 1, (texts, draw) =>
    `${pick(draw, ['Conditioning blend', 'Moisture complex', 'Preservative system', 'Active complex', 'Botanical blend'])} ${pick(draw, ['(', '['])}${texts.join(', ')})`.replace(
      /\[([^[]*)\)$/,
      '[$1]',
    ),
  ),
  joins('full stops for commas', 'kept aside', 3, (texts) => texts.join('. ')),
  joins(
    'brackets that never close',
    'looked at',
    1,
    ([first, ...others], draw) =>
      `${first} (${pick(draw, ['plant', 'natural', 'vegetable'])}, ${others.join(', ')}`,
  ),
];
