// How names are listed: joined, numbered, grouped, explained, exported.
import { type Draw, pick } from '../draws.ts';
import { type Item, type Kind, type Label, ofHalf } from './label.ts';

const texts = (label: Label) => label.items.map(({ text }) => text);
const whole = (
  kind: string,
  half: Kind['half'],
  print: (label: Label, draw: Draw, half: Kind['half']) => string,
  clear?: true,
): Kind => ({
  kind,
  half,
  stage: 'list',
  ...(clear && { clear }),
  does: (label, draw, at) => {
    label.text = print(label, draw, at);
  },
});

/** The items in two to four runs, none empty. */
const runs = (items: Item[], draw: Draw): Item[][] => {
  const count = 2 + Math.floor(draw() * 3);
  const size = Math.ceil(items.length / count);
  return Array.from({ length: count }, (_, i) => items.slice(i * size, (i + 1) * size)).filter(
    (run) => run.length > 0,
  );
};
const grouped = (heads: readonly string[], join: string, between: string) => (label: Label, draw: Draw) =>
  runs(label.items, draw)
    .map((run, i) => `${heads[i % heads.length]}${run.map(({ text }) => text).join(join)}`)
    .join(between);

const separators = [
  ' • ',
  '; ',
  ' | ',
  ' ▪ ',
  ' · ',
  '，',
  ';',
  ' ~ ',
  ' ● ',
  '、',
  ' ,',
  ' + ',
  ' - ',
  '،',
  ' ◦ ',
  ' * ',
  ' ¦ ',
  ',\n',
];
const actives = [
  ['Active ingredient: Zinc Pyrithione 1% ... Anti-dandruff\nInactive ingredients: ', 'ZINC PYRITHIONE'],
  ['Medicinal Ingredients: Salicylic Acid 2% w/w. Non-Medicinal Ingredients: ', 'SALICYLIC ACID'],
  ['Active Ingredients: Salicylic Acid 3.0% Purpose: Dandruff control. Inactive: ', 'SALICYLIC ACID'],
  ['Wirkstoff: Salicylsäure 20 mg/g. Sonstige Bestandteile: ', 'SALICYLIC ACID'],
  [
    'Drug Facts Active ingredient Purpose Pyrithione zinc 1%.....Antidandruff Inactive ingredients ',
    'ZINC PYRITHIONE',
  ],
  ['Principio activo: Ácido salicílico 2 %. Excipientes: ', 'SALICYLIC ACID'],
] as const;
const colours = ['CI 77491', 'CI 77492', 'CI 77499', 'CI 77891', 'CI 19140', 'CI 42090'];
const mayContain = [
  '+/- ',
  'May contain: ',
  '[+/- (may contain): ',
  'Peut contenir: ',
  '± ',
  'Kann enthalten: ',
  '[+/-: ',
  'Puede contener/may contain (+/-): ',
  'MAY CONTAIN (+/-) ',
  '(+/- ',
];
const allergens = [
  'LINALOOL',
  'LIMONENE',
  'GERANIOL',
  'CITRONELLOL',
  'COUMARIN',
  'CITRAL',
  'EUGENOL',
  'HEXYL CINNAMAL',
  'BENZYL SALICYLATE',
  'ISOEUGENOL',
];
const allergenWords = [
  '. Allergens: ',
  '. Fragrance allergens: ',
  '\nContains naturally occurring: ',
  '. Allergènes naturellement présents dans les huiles essentielles: ',
  '. *From essential oils: ',
  '. Enthält Duftstoffe: ',
  '\nAllergens (from fragrance): ',
  '. Parfum contains: ',
  '. Alérgenos: ',
  '. Composants naturels des huiles essentielles: ',
];
const explained = [
  'keeps hair soft and supple',
  'helps the product stay fresh',
  'gives slip so that combs glide',
  'thickens the mixture',
  'draws water into the strands',
  'gentle cleanser for the scalp',
  'leaves a light film',
  'balances the pH',
];
const roman = [
  'i',
  'ii',
  'iii',
  'iv',
  'v',
  'vi',
  'vii',
  'viii',
  'ix',
  'x',
  'xi',
  'xii',
  'xiii',
  'xiv',
  'xv',
  'xvi',
  'xvii',
  'xviii',
  'xix',
  'xx',
  'xxi',
  'xxii',
  'xxiii',
  'xxiv',
  'xxv',
];

export const listKinds: Kind[] = [
  whole('another mark between names', 'both', (label, draw, half) =>
    texts(label).join(pick(draw, ofHalf(separators, half as 'looked at'))),
  ),
  whole('numbered names', 'looked at', (label, draw) => {
    const form = pick(draw, ['1. ', '1) ', '01 - ', '1- ']);
    return texts(label)
      .map(
        (text, i) =>
          `${form.replace('01', String(i + 1).padStart(2, '0')).replace('1', String(i + 1))}${text}`,
      )
      .join(pick(draw, ['\n', ' ', ', ']));
  }),
  whole('lettered, roman or ringed names', 'kept aside', (label, draw) => {
    const form = pick(draw, ['a', 'i', '①', '(1)', '1/']);
    const at = (i: number) =>
      ({
        a: `${String.fromCharCode(97 + i)}) `,
        i: `${roman[i]}. `,
        '①': `${String.fromCodePoint(0x2460 + i)} `,
        '(1)': `(${i + 1}) `,
        '1/': `${i + 1}/ `,
      })[form]!;
    return texts(label)
      .map((text, i) => (i < 20 ? at(i) : '- ') + text)
      .join(pick(draw, ['\n', ' ']));
  }),
  whole('lines lost to spaces', 'looked at', (label) => texts(label).join(' '), true),
  whole(
    'items of a page grown together',
    'kept aside',
    (label) =>
      texts(label)
        .map((text) => text.replace(/^[a-z]/, (letter) => letter.toUpperCase()))
        .join(''),
    true,
  ),
  whole('names as a list in JSON', 'looked at', (label, draw) =>
    pick(draw, [
      `["${texts(label).join('","')}"]`,
      `{"ingredients": ["${texts(label).join('", "')}"]}`,
      `['${texts(label).join("', '")}']`,
    ]),
  ),
  whole('marks of Markdown and HTML', 'kept aside', (label, draw) => {
    const [before, behind] = pick(draw, [
      ['<li>', '</li>\n'],
      ['- ', '\n'],
      ['', '<br>'],
      ['* ', '\n'],
      ['<p>', '</p>'],
      ['[*]', '\n'],
      ['**', '**, '],
      ['<span class="ing">', '</span>, '],
    ]);
    return texts(label)
      .map((text) => before + text + behind)
      .join('')
      .replace(/, $/, '');
  }),
  whole('cells of a spreadsheet', 'looked at', (label, draw) =>
    pick(draw, [
      texts(label)
        .map((text) => `"${text}"`)
        .join(','),
      texts(label)
        .map((text) => `"${text}"`)
        .join(';'),
      texts(label).join('\t'),
      `"${texts(label).join(', ')}"`,
    ]),
  ),
  whole(
    'parts of web addresses and hash tags',
    'kept aside',
    (label, draw) => {
      const form = pick(draw, ['hash', 'slug', 'line']);
      return texts(label)
        .map((text) => {
          if (/[^A-Za-z ]/.test(text)) return form === 'hash' ? `#${text}` : text;
          return form === 'hash'
            ? `#${text.replace(/ /g, '')}`
            : text.toLowerCase().replace(/ /g, form === 'slug' ? '-' : '_');
        })
        .join(form === 'hash' ? ' ' : ', ');
    },
    true,
  ),
  whole(
    'groups by what they do',
    'looked at',
    grouped(['Base: ', 'Emulsifiers: ', 'Preservatives: ', 'Other: '], ', ', '. '),
  ),
  whole(
    'phases of a formula',
    'kept aside',
    grouped(['Phase A: ', 'Phase B: ', 'Phase C: ', 'Cool down phase: '], ', ', '\n'),
  ),
  whole(
    'groups by share',
    'looked at',
    grouped(['> 10 %: ', '1 - 10 %: ', '< 1 %: ', 'Traces: '], ', ', '; '),
  ),
  whole('two per cent or less', 'kept aside', (label, draw) => {
    const at = Math.ceil(label.items.length / 2);
    const words = pick(draw, [
      '. Contains 2% or less of: ',
      ', and less than 1% of each of the following: ',
      '. Contains less than 2% of the following: ',
      ', 1% or less: ',
      '. Present at under 1 %: ',
    ]);
    return texts(label).slice(0, at).join(', ') + words + texts(label).slice(at).join(', ');
  }),
  whole(
    'each 100 ml holds',
    'looked at',
    (label, draw) =>
      `${pick(draw, ['Each 100 ml contains: ', 'Each 10 g contains: ', 'Composition: Each ml contains - '])}${texts(
        label,
      )
        .slice(1)
        .map((text) => `${text} ${pick(draw, ['50 mg', '0.5% w/w', '2 g', '10mg', '1.0 % w/v', 'q.s.'])}`)
        .join(', ')}, ${texts(label)[0]} ${pick(draw, ['q.s.', 'q.s. to 100 ml', 'Q.S.'])}`,
  ),
  whole(
    'rows of a data sheet',
    'kept aside',
    (label, draw) =>
      `${pick(draw, ['Component | CAS | % ', 'Name\tCAS No.\tConc.'])}\n${texts(label)
        .map(
          (text) =>
            `${text} | ${['56-81-5', '77-92-9', '122-99-6', '532-32-1', '111-01-3'][Math.floor(draw() * 5)]} | ${pick(draw, ['1-5%', '<1', '10 - 25 %', '0.1-1%', '5'])}`,
        )
        .join('\n')}`,
  ),
  whole('names explained line by line', 'looked at', (label, draw) =>
    texts(label)
      .map((text) => `${text}${pick(draw, [' - ', ' – ', ': '])}${pick(draw, explained)}`)
      .join('\n'),
  ),
  whole(
    'a table of name, use and source',
    'kept aside',
    (label, draw) =>
      `INCI\tFunction\tOrigin\n${texts(label)
        .map(
          (text) =>
            `${text}\t${pick(draw, ['Emollient', 'Surfactant', 'Humectant', 'Preservative', 'Solvent'])}\t${pick(draw, ['Plant', 'Mineral', 'Synthetic', 'Biotech'])}`,
        )
        .join('\n')}`,
  ),
  {
    kind: 'an active and the other ingredients',
    half: 'both',
    stage: 'list',
    does: (label, draw, half) => {
      const [words, name] = pick(draw, ofHalf(actives, half));
      label.head = '';
      label.text = words + texts(label).join(', ');
      label.items.unshift({ text: words, names: [name] });
    },
  },
  {
    kind: 'colours that may be in it',
    half: 'both',
    stage: 'list',
    does: (label, draw, half) => {
      const words = pick(draw, ofHalf(mayContain, half));
      const some = colours.filter(() => draw() < 0.6).concat('CI 77007');
      const close = words.startsWith('[') ? ']' : words.startsWith('(') ? ')' : '';
      label.text = `${texts(label).join(', ')}${pick(draw, [', ', '. ', ' '])}${words}${some.join(', ')}${close}`;
      label.items.push(...some.map((name) => ({ text: name, names: [name] })));
    },
  },
  {
    kind: 'allergens apart',
    half: 'both',
    stage: 'list',
    does: (label, draw, half) => {
      const there = new Set(label.items.flatMap(({ names }) => names));
      const some = allergens.filter((name) => !there.has(name) && draw() < 0.5).concat('ANISE ALCOHOL');
      label.text = `${texts(label).join(', ')}${pick(draw, ofHalf(allergenWords, half))}${some.map((name) => name[0] + name.slice(1).toLowerCase()).join(', ')}`;
      label.items.push(...some.map((name) => ({ text: name, names: [name] })));
    },
  },
  whole(
    'two products in one set',
    'kept aside',
    grouped(['Cleanser: ', 'Hair Mask: ', 'Leave-In: ', 'Serum: '], ', ', '\n\n'),
  ),
  whole(
    'steps of a set',
    'looked at',
    grouped(['[Step 1] ', '[Step 2] ', '[Step 3] ', '[Step 4] '], ', ', ' '),
  ),
  whole(
    'said in a sentence',
    'looked at',
    (label, draw) =>
      `${pick(draw, ['Made with ', 'We use only ', 'A simple blend of ', 'Crafted from '])}${texts(label).slice(0, -1).join(', ')} and ${texts(label).at(-1)}.`,
  ),
  whole('notes that somebody typed', 'kept aside', (label, draw) =>
    texts(label)
      .map((text) => text.toLowerCase())
      .join(pick(draw, [' + ', ' & ', ' , ', '  ', ', '])),
  ),
  whole('the button of a page in the middle', 'looked at', (label, draw) => {
    const at = Math.ceil(label.items.length / 2);
    return `${texts(label).slice(0, at).join(', ')}${pick(draw, ['... Read more ', ', [see all] ', ', Show more ', '… (more) '])}${texts(label).slice(at).join(', ')}`;
  }),
  whole('a page that turns in the middle', 'kept aside', (label, draw) => {
    const at = Math.ceil(label.items.length / 2);
    return `${texts(label).slice(0, at).join(', ')},${pick(draw, ['\n- 2 -\n', '\nPage 2 of 3\n', '\n(continued)\n', '\n\nIngredients (cont.):\n'])}${texts(label).slice(at).join(', ')}`;
  }),
];
