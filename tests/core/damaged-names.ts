// Names as printers, shops, copying and readers of pictures damage them, each with the name it was. Drawn at
// random and seeded; knows nothing of how names are mended.
import { type Draw, pick } from './draws.ts';
import { seeded } from './random-day.ts';

export type Damaged = {
  kind: string;
  /** As it would stand on a label between two commas. */
  printed: string;
  /** The names it was, in order. */
  truth: string[];
};

const letters = 'abcdefghijklmnopqrstuvwxyz';
const lookAlikes: Record<string, string> = {
  A: 'А', B: 'В', C: 'С', E: 'Е', H: 'Н', K: 'К', M: 'М', O: 'О', P: 'Р', T: 'Т', X: 'Х',
  a: 'а', c: 'с', e: 'е', o: 'о', p: 'р', x: 'х', y: 'у', i: 'і', v: 'ν', u: 'υ',
}; // biome-ignore format: pairs read best side by side
const misread: [RegExp, string][] = [
  [/rn/, 'm'],
  [/m/, 'rn'],
  [/l/, 'I'],
  [/l/, '1'],
  [/I/, 'l'],
  [/i/, 'l'],
  [/O/, '0'],
  [/o/, '0'],
  [/cl/, 'd'],
  [/d/, 'cl'],
  [/e/, 'c'],
  [/i/, 'ii'],
  [/w/, 'vv'],
  [/t/, 'f'],
  [/h/, 'b'],
  [/S/, '5'],
];
const remarks = [
  'emollient',
  'preservative',
  'Konservierungsmittel',
  'fragrance ingredient',
  'humectant, moisturiser',
];

const spaces = (name: string) =>
  [...name.matchAll(/(?<=[\p{L}\d)]) (?=[\p{L}\d(])/gu)].map(({ index }) => index);
const lettersAt = (name: string) =>
  [...name.matchAll(/(?<=\p{L}{2})\p{L}(?=\p{L})/gu)].map(({ index }) => index);

/** One slip of a typing hand inside a word of at least four letters. */
function slip(name: string, draw: Draw): string | undefined {
  const places = lettersAt(name);
  if (places.length === 0) return undefined;
  const at = pick(draw, places);
  const other = pick(draw, [...letters]);
  const rest = name.slice(at + 1);
  const way = Math.floor(draw() * 5);
  if (way === 0) return name.slice(0, at) + rest;
  if (way === 1) return name.slice(0, at) + name[at] + name[at] + rest;
  if (way === 2) return name.slice(0, at) + other + rest;
  if (way === 3) return name.slice(0, at) + name[at] + other + rest;
  return name.slice(0, at - 1) + name[at] + name[at - 1] + rest;
}

const cutAt = (name: string, draw: Draw, by: string) => {
  const places = spaces(name);
  if (places.length === 0) return undefined;
  const at = pick(draw, places);
  return name.slice(0, at) + by + name.slice(at + 1);
};

/** Each way a name is damaged; undefined where the name has no place for it. */
const ways: Record<string, (name: string, draw: Draw, other: string) => string | undefined> = {
  'cut by a comma': (name, draw) => cutAt(name, draw, ', '),
  'cut by a comma without a space': (name, draw) => cutAt(name, draw, ','),
  'cut by a line': (name, draw) => cutAt(name, draw, '\n'),
  'cut by a bullet': (name, draw) => cutAt(name, draw, ' • '),
  'cut before its number': (name) => (/\D-\d+$/.test(name) ? name.replace(/-(\d+)$/, ',-$1') : undefined),
  'cut at a locant': (name) => (/\d,\d/.test(name) ? name.replace(/(\d),(\d)/, '$1, $2') : undefined),
  'a word broken by a line': (name, draw) => {
    const places = lettersAt(name).filter((at) => /\p{L}{4}$/u.test(name.slice(0, at)));
    if (places.length === 0) return undefined;
    const at = pick(draw, places);
    return `${name.slice(0, at)}-\n${name.slice(at)}`;
  },
  'two names run together': (name, _, other) => `${name} ${other}`,
  'no space': (name, draw) => cutAt(name, draw, ''),
  'one letter off': slip,
  'two letters off': (name, draw) => (name.length >= 14 ? slip(slip(name, draw) ?? '', draw) : undefined),
  'one letter off in capitals': (name, draw) => slip(name, draw)?.toUpperCase(),
  'a look-alike letter': (name, draw) => {
    const places = [...name].flatMap((letter, at) => (lookAlikes[letter] ? [at] : []));
    if (places.length === 0) return undefined;
    const at = pick(draw, places);
    return name.slice(0, at) + lookAlikes[name[at]!] + name.slice(at + 1);
  },
  'a letter misread': (name, draw) => {
    const fits = misread.filter(([from]) => from.test(name));
    if (fits.length === 0) return undefined;
    const [from, to] = pick(draw, fits);
    const places = [...name.matchAll(new RegExp(from, 'g'))].map(({ index }) => index);
    const at = pick(draw, places);
    return name.slice(0, at) + name.slice(at).replace(from, to);
  },
  'spaced letters': (name, draw) => {
    const words = name.split(' ');
    const long = words.flatMap((word, i) => (/^\p{L}{6,}$/u.test(word) ? [i] : []));
    if (long.length === 0) return undefined;
    const i = pick(draw, long);
    const at = 3 + Math.floor(draw() * (words[i]!.length - 4));
    words[i] =
      `${words[i]!.slice(0, at)} ${[...words[i]!.slice(at, at + 2)].join(' ')} ${words[i]!.slice(at + 2)}`;
    return words.join(' ').trim();
  },
  'a footnote mark': (name, draw) =>
    `${name}${pick(draw, [' Ψ', '**', '¹', ' (1)', '°', ' ◊', ' ^', '²’³', ' #'])}`,
  'a percentage or weight': (name, draw) =>
    `${name} ${pick(draw, ['0.5%', '(2 %)', '500 mg', '<1%', '10 mg/g'])}`,
  'a source': (name, draw) =>
    `${name} ${pick(draw, ['(source: plant)', '(from coconut)', 'from organic farming', '(vegetable origin)', '- naturally derived'])}`,
  'a remark on its function': (name, draw) => `${name} (${pick(draw, remarks)})`,
  'a bare remark on its function': (name, draw) => `${name} - ${pick(draw, remarks)}`,
  'praise of its growing': (name, draw) =>
    `${pick(draw, ['Organic', 'Natural', 'Pure', 'Certified organic'])} ${name}`,
  'a trade mark sign': (name, draw) => `${name}${pick(draw, ['™', '®', ' (TM)', ' (R)'])}`,
};

export const damages = Object.keys(ways);

/** `count` rows, ways in turn, names at random. */
export function damagedNames(names: readonly string[], count: number, seed: number): Damaged[] {
  const draw = seeded(seed);
  const plain = names.filter((name) => /^[\p{L}\d][\p{L}\d /,'()-]{4,80}$/u.test(name));
  const rows: Damaged[] = [];
  for (let tries = 0; rows.length < count && tries < count * 50; tries++) {
    const kind = damages[tries % damages.length]!;
    const [name, other] = [pick(draw, plain), pick(draw, plain)];
    const printed = ways[kind]!(name, draw, other);
    if (!printed || printed === name) continue;
    const truth = kind === 'two names run together' ? [name, other] : [name];
    rows.push({ kind, printed, truth });
  }
  return rows;
}
