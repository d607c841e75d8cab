// Whole labels as shops and bottles print them, each with two kinds of damage or dress of its own and the names it
// holds. Drawn at random and seeded; every wording written from memory of labels, invented; knows nothing of how
// labels are read. Half of the wordings are kept aside: only counted, never looked at while reading is mended.
import { byWeight, type Draw, pick, small } from './draws.ts';
import { seeded } from './random-day.ts';

export type Dressed = { kinds: [string, string]; text: string; names: string[] };
export type Half = 'looked at' | 'kept aside';

const half = <T>(list: readonly T[], which: Half): T[] =>
  list.filter((_, i) => (i % 2 === 0) === (which === 'looked at'));

const origins = [
  'from organic farming',
  'certified organic ingredient',
  'organically grown',
  'ingredient from organic agriculture',
  'organic',
  'of natural origin',
  'natural constituents of essential oils',
  'from natural essential oils',
  'occurs naturally in essential oils',
  'fair trade ingredient',
  'kbA',
  'aus kontrolliert biologischem Anbau',
  'aus biologischer Landwirtschaft',
  'aus kontrolliert biologischer Landwirtschaft',
  'aus natürlichen ätherischen Ölen',
  'Bestandteil natürlicher ätherischer Öle',
  'natürlicher Bestandteil ätherischer Öle',
  'kontrolliert biologischer Anbau (kbA)',
  "issu de l'agriculture biologique",
  'ingrédients issus de l’agriculture biologique',
  'composants naturels des huiles essentielles',
  'naturellement présent dans les huiles essentielles',
  'issu du commerce équitable',
  "d'origine naturelle",
  'de cultivo ecológico',
  'procedente de agricultura ecológica',
  'ingredientes de cultivo biológico',
  'componentes naturales de los aceites esenciales',
  'de agricultura biológica certificada',
  'de comercio justo',
  'de agricultura biológica',
  'ingredientes de origem natural',
  'proveniente de cultivo orgânico',
  'componente natural dos óleos essenciais',
  'da agricoltura biologica',
  'ingrediente biologico',
  'da oli essenziali naturali',
  'proveniente da agricoltura biologica certificata',
  'z upraw ekologicznych',
  'składnik naturalnych olejków eterycznych',
  'pochodzenia naturalnego',
  'surowiec z certyfikowanych upraw ekologicznych',
  'van biologische teelt',
  'afkomstig uit biologische landbouw',
  'uit natuurlijke etherische oliën',
  'van natuurlijke oorsprong',
] as const;
const functions = [
  'emollient',
  'Feuchthaltemittel',
  'preservative / conservateur',
  'thickener',
  'Emulgator',
  'humectant',
  'agent nettoyant',
  'conditioning agent',
  'tensioactif / surfactant',
  'antioxidant',
  'espesante',
  'Verdicker',
  'emulsionante',
  'skin conditioner',
];
const sources = [
  'source: coconut',
  'from sunflower',
  'plant derived',
  'pflanzlich',
  "d'origine végétale",
  'vegetable',
  'de origen vegetal',
  'from sugar cane',
  'aus Raps',
  'de origem vegetal',
];
const last = [
  'Contains egg',
  'Made in Portugal',
  'Enthält Weizen',
  'Kann Spuren von Nüssen enthalten',
  'Nur zur äußerlichen Anwendung',
  'For external use only',
  'Évitez le contact avec les yeux',
  'Fabriqué en Belgique',
  'Ingredients may change: always check the pack',
  'Please refer to the packaging for the most up to date list',
  'Mantener fuera del alcance de los niños',
  'Evitar el contacto con los ojos',
  'Manter fora do alcance das crianças',
  'Uso externo',
  'Tenere fuori dalla portata dei bambini',
  'Lote y caducidad: ver envase',
  'Keep in a cool dry place',
  'Vor Sonnenlicht schützen',
];
const codes = [
  '(F.I.L. D98765/2)',
  'Lot 24B117',
  '[N2211/A]',
  'FIL C77120/1',
  'Batch: 0442-17',
  '(Code 305118)',
];
const headings = [
  'Ingredients: ',
  'INCI: ',
  'Inhaltsstoffe: ',
  'Ingrédients : ',
  'Ingredientes: ',
  'Składniki: ',
  '',
];
const marks = [
  ['*', '**'],
  ['¹', '²'],
  ['†', '‡'],
  ['*', '°'],
  ['(1)', '(2)'],
  ['+', '++'],
] as const;

/** A label in the making: printed names, how they are joined, and what stands after them. */
type Making = { printed: string[]; sign: string; tail: string };
type Way = (label: Making, draw: Draw, which: Half) => void;

const spot = (label: Making, draw: Draw, fits = (_: string) => true) => {
  const places = label.printed.flatMap((name, i) => (fits(name) ? [i] : []));
  return places.length === 0 ? -1 : pick(draw, places);
};
const change = (
  label: Making,
  draw: Draw,
  how: (name: string) => string,
  fits?: (name: string) => boolean,
) => {
  const at = spot(label, draw, fits);
  if (at >= 0) label.printed[at] = how(label.printed[at]!);
};
const marked = (name: string, mark: string, draw: Draw) =>
  draw() < 0.15 && mark !== '+' ? `${mark}${name}` : `${name}${draw() < 0.25 ? ' ' : ''}${mark}`;
const clean = (name: string) => /^[\p{L}\d][\p{L}\d -]+$/u.test(name);

const ways: Record<string, Way> = {
  'one mark and its legend': (label, draw, which) => {
    const [mark] = pick(draw, marks);
    for (let n = 0; n < 3; n++) change(label, draw, (name) => marked(name, mark, draw), clean);
    label.tail += `${pick(draw, ['. ', ' ', '.\n', '\n', ', '])}${mark}${pick(draw, ['', ' ', ' = '])}${pick(draw, half(origins, which))}`;
  },
  'two marks and their legends': (label, draw, which) => {
    const [one, two] = pick(draw, marks);
    for (const mark of [one, one, two, two]) change(label, draw, (name) => marked(name, mark, draw), clean);
    const [a, b] = [pick(draw, half(origins, which)), pick(draw, half(origins, which))];
    const gap = pick(draw, ['', ' ']);
    label.tail += `${pick(draw, ['. ', ' ', '.\n', '\n'])}${one}${gap}${a}${pick(draw, [' ', '. ', ', ', '\n', '; '])}${two}${gap}${b}`;
  },
  'what names do': (label, draw, which) => {
    for (let n = 0; n < 3; n++)
      change(
        label,
        draw,
        (name) =>
          `${name} ${pick(draw, ['(F)', '- F', '[F]']).replace('F', pick(draw, half(functions, which)))}`,
        clean,
      );
  },
  'what names come from': (label, draw, which) => {
    for (let n = 0; n < 2; n++)
      change(label, draw, (name) => `${name} (${pick(draw, half(sources, which))})`, clean);
  },
  amounts: (label, draw) => {
    for (let n = 0; n < 3; n++)
      change(
        label,
        draw,
        (name) => `${name} ${pick(draw, ['0,3 %', '2%', '(1.5 %)', '150 mg', '[<0.5%]'])}`,
        clean,
      );
  },
  'a last sentence': (label, draw, which) => {
    label.tail += `. ${pick(draw, half(last, which))}${pick(draw, ['', '.'])}`;
  },
  'a code': (label, draw, which) => {
    label.tail += `${pick(draw, [' ', '. ', ', '])}${pick(draw, half(codes, which))}`;
  },
  'slashes with spaces': (label, draw) => {
    for (let n = 0; n < 2; n++)
      change(
        label,
        draw,
        (name) => name.replaceAll('/', ' / '),
        (name) => /\w\/\w/.test(name),
      );
  },
  'a comma inside a name': (label, draw) =>
    change(
      label,
      draw,
      (name) => name.replace(/(?<=[A-Za-z]{4}) (?=[A-Za-z]{4})/, ', '),
      (name) => /^[A-Za-z]{4,} [A-Za-z]{4,}$/.test(name),
    ),
  'a comma left out': (label, draw) => {
    const at = Math.floor(draw() * (label.printed.length - 2));
    label.printed.splice(at, 2, `${label.printed[at]} ${label.printed[at + 1]}`);
  },
  'a slip': (label, draw) =>
    change(
      label,
      draw,
      (name) => {
        const places = [...name.matchAll(/(?<=[A-Za-z]{3})[a-z](?=[a-z]{2})/g)].map(({ index }) => index);
        if (places.length === 0) return name;
        const at = pick(draw, places);
        return draw() < 0.5
          ? name.slice(0, at) + name.slice(at + 1)
          : name.slice(0, at) + name[at] + name.slice(at);
      },
      (name) => /^[A-Za-z]{9,}/.test(name),
    ),
  'broken lines': (label) => {
    label.sign = ',\n';
    label.printed = label.printed.map((name, i) => (i % 3 === 1 ? name.replace(' ', '\n') : name));
    label.printed = [
      label.printed.reduce((all, name, i) => `${all}${i === 0 ? '' : i % 4 === 0 ? ',\n' : ', '}${name}`, ''),
    ];
  },
  bullets: (label) => {
    label.sign = ' • ';
  },
  capitals: (label) => {
    label.printed = label.printed.map((name) => name.toUpperCase());
  },
  'trade marks': (label, draw) => {
    for (let n = 0; n < 2; n++)
      change(label, draw, (name) => `${name}${pick(draw, ['™', '®', ' (R)'])}`, clean);
  },
  'organic before': (label, draw) => {
    for (let n = 0; n < 2; n++)
      change(
        label,
        draw,
        (name) => `${pick(draw, ['Organic', 'Bio', 'Natural', 'Certified Organic'])} ${name}`,
        (name) => /(?:Oil|Extract|Butter|Juice)$/.test(name),
      );
  },
};
const kinds = Object.keys(ways);
// What changes the whole list is done after what changes one name.
const late = new Set(['broken lines', 'bullets', 'capitals']);

/** `count` labels of 10 to 18 of these names (INCI, capitals), one before another as often as labels print them. */
export function dressedLabels(
  names: readonly { name: string; weight: number }[],
  count: number,
  seed: number,
  which: Half,
): Dressed[] {
  const draw = seeded(seed);
  const drawn = byWeight(names, draw);
  return Array.from({ length: count }, () => {
    const own = new Set<string>();
    const size = 10 + Math.floor(draw() * 9);
    while (own.size < size) own.add(drawn());
    const list = [...own].map(small);
    const first = pick(draw, kinds);
    const second = pick(
      draw,
      kinds.filter((kind) => kind !== first),
    );
    const label: Making = { printed: [...list], sign: ', ', tail: '' };
    for (const kind of [first, second].toSorted((a, b) => Number(late.has(a)) - Number(late.has(b))))
      ways[kind]!(label, draw, which);
    return {
      kinds: [first, second],
      text: `${pick(draw, headings)}${label.printed.join(label.sign)}${label.tail}`,
      names: list,
    };
  });
}
