// Names as labels print them: by how often labels do where the public tables lie beside the project, else of the
// dictionary. Nothing here asks the lookup.
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { entries } from '../../../dictionary/index.ts';
import type { Roll } from './roll.ts';

// CosIng inventory, European Commission, export of December 2020, and counts of printed names.
const data = join(
  process.env.STRANDLINE_SHARED ?? resolve(import.meta.dirname, '../../../../shared'),
  'data',
);
const rowsOf = (file: string) =>
  existsSync(join(data, file))
    ? readFileSync(join(data, file), 'utf8')
        .trim()
        .split('\n')
        .slice(1)
        .map((line) => line.split('\t'))
    : undefined;

const sound = (name: string) => name.length > 3 && name.length < 70 && !/[:;?!*|\\]|^\d+$|^\W/.test(name);
const inventory = rowsOf('inci-inventory.tsv')
  ?.map(([name]) => name!)
  .filter(sound);
// From ten labels on, a printed name is hardly ever noise.
const printed = rowsOf('label-names.tsv')
  ?.map(([, all, name]) => [Number(all), name!] as const)
  .filter(([all, name]) => all >= 10 && sound(name));
const known = entries.map(({ name }) => name).filter(sound);

const upTo: number[] = [];
let sum = 0;
for (const [all] of printed ?? []) {
  sum += all;
  upTo.push(sum);
}

const common = (roll: Roll): string => {
  if (!printed) return roll.pick(known);
  const at = roll.next() * sum;
  let low = 0;
  let high = upTo.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (upTo[middle]! < at) low = middle + 1;
    else high = middle;
  }
  return printed[low]![1];
};

/** "SODIUM PCA" → "Sodium PCA": as most labels are set. */
export const titled = (name: string): string =>
  name
    .toLowerCase()
    .replace(/(^|[\s(/+-])(\p{L})/gu, (_, before: string, letter: string) => before + letter.toUpperCase())
    .replace(/\b(peg|ppg|pca|edta|ci|pvp|va|vp|bht|bha|dmdm|mea|dea|tea|peg\/ppg|amp|dna)\b/gi, (all) =>
      all.toUpperCase(),
    );

const water = ['Aqua', 'Water', 'Aqua (Water)', 'Water (Aqua)', 'Aqua/Water/Eau', 'Purified Water', 'Aqua'];

/** Names of one label: most by how often they are printed, a fifth from anywhere in the inventory. */
export function formula(roll: Roll, count = 6 + roll.below(24), odd = 0.2): string[] {
  const names = new Set<string>(roll.next() < 0.85 ? [roll.pick(water)] : []);
  while (names.size < count) {
    const name = inventory && roll.next() < odd ? roll.pick(inventory) : common(roll);
    if (!/^(aqua|water|eau)\b/i.test(name)) names.add(titled(name));
  }
  return [...names];
}

/** The name with one letter lost, doubled or changed for its neighbour. */
export function slip(roll: Roll, name: string): string {
  const at = 2 + roll.below(Math.max(1, name.length - 3));
  if (name.length < 7 || !/\p{Ll}/u.test(name[at] ?? '') || !/\p{Ll}/u.test(name[at + 1] ?? '')) return name;
  const rest = name.slice(at + 1);
  const way = roll.below(3);
  if (way === 0) return name.slice(0, at) + rest;
  if (way === 1) return name.slice(0, at) + name[at] + name[at] + rest;
  return name.slice(0, at) + rest[0] + name[at] + rest.slice(1);
}

// Names as makers of soaps and balms write them (from memory).
export const kitchen =
  'Saponified Olive Oil|Coconut Oil|Shea Butter|Castor Oil|Distilled Water|Goat Milk|Beeswax|Sweet Almond Oil|Cocoa Butter|Lavender Essential Oil|Peppermint Essential Oil|Kaolin Clay|Oatmeal|Honey|Jojoba Oil|Vitamin E|Rosemary Extract|Aloe Vera Juice|Argan Oil|Mango Butter|Avocado Oil|Hemp Seed Oil|Tea Tree Oil|Sea Salt|Vegetable Glycerin|Witch Hazel|Candelilla Wax|Arrowroot Powder|Bentonite Clay|Apricot Kernel Oil|Rice Bran Oil|Marshmallow Root|Slippery Elm Bark|Flaxseed Gel|Neem Oil|Raw Honey|Rosehip Seed Oil|Lye|Preservative|Fragrance|Citric Acid|Activated Charcoal|Turmeric|Spirulina|Baobab Oil|Black Castor Oil|Murumuru Butter|Hibiscus Powder|Rhassoul Clay|Sunflower Oil|Emulsifying Wax|Xanthan Gum|Rose Water|Calendula Petals|Babassu Oil|Sodium Lactate|Mica|Silk'.split(
    '|',
  );
