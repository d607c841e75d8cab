// Names to draw lists from that know nothing of the finder: those printed on real labels and the whole inventory
// where they lie beside the project, else the dictionary's own entries. Plain-English names are from memory.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { entries } from '../../../dictionary/index.ts';
import type { dice } from '../make-parts.ts';

type Roll = ReturnType<typeof dice>;

const root = join(import.meta.dirname, '..', '..', '..');
const shared = process.env.STRANDLINE_SHARED ?? join(root, '..', 'shared');
const printedFile = join(shared, 'data', 'label-names.tsv');
const inventoryFile = join(shared, 'data', 'inci-inventory.tsv');
export const hasPrintedNames = existsSync(printedFile) && existsSync(inventoryFile);

const rowsOf = (file: string) =>
  readFileSync(file, 'utf8')
    .split('\n')
    .slice(1)
    .filter(Boolean)
    .map((line) => line.split('\t'));

/** Rows of the counted names that are damaged or no names: told by what no ingredient name holds. */
const damaged = /[.:!?*<>"=]|\b(?:and|for|may|contains?|from|with|the|free)\b|%|^\W|\(\W*$|^\d+$|INGREDIENT/i;

const printed = hasPrintedNames
  ? rowsOf(printedFile)
      .map(([hair, all, name]) => ({ name: name!, weight: Number(hair) + Number(all) / 40 }))
      .filter(({ name }) => !damaged.test(name) && /^.{3,70}$/.test(name))
      .filter(({ name }) => (name.match(/\(/g)?.length ?? 0) === (name.match(/\)/g)?.length ?? 0))
  : entries.map(({ name }) => ({ name, weight: 1 }));
const inventory = hasPrintedNames
  ? rowsOf(inventoryFile)
      .map(([name]) => name!)
      .filter((name) => /^[A-Z0-9 /,()-]{4,60}$/.test(name) && !/^\(|,/.test(name))
  : entries.map(({ name }) => name);

const small = new Set(['and', 'of', 'de']);
const acronym = /^(?:peg|ppg|ci|edta|bht|bha|mea|dea|tea|hcl|pca|pg|va|vp|dmdm|mipa|pvp|[ivx]+)$/i;
/** "PEG-40 HYDROGENATED CASTOR OIL" → "PEG-40 Hydrogenated Castor Oil". */
export const titled = (name: string) =>
  name
    .toLowerCase()
    .replace(/[\p{L}]+/gu, (word) =>
      acronym.test(word)
        ? word.toUpperCase()
        : small.has(word)
          ? word
          : word[0]!.toUpperCase() + word.slice(1),
    );

const totals: number[] = [];
for (const { weight } of printed) totals.push((totals.at(-1) ?? 0) + weight);

const water = [
  'Aqua',
  'Water',
  'Aqua (Water)',
  'Water (Aqua)',
  'Aqua/Water/Eau',
  'Purified Water',
  'Water\\Aqua\\Eau',
];

/** `count` names as labels print them, most of them frequent, some from anywhere in the inventory. */
export function someNames(roll: Roll, count: number, { wet = roll.next() < 0.85 } = {}): string[] {
  const names = new Set<string>(wet ? [roll.pick(water)] : []);
  while (names.size < count) {
    let name: string;
    if (roll.next() < 0.08) name = roll.pick(inventory);
    else {
      const at = roll.next() * totals.at(-1)!;
      let low = 0;
      let high = totals.length - 1;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (totals[middle]! < at) low = middle + 1;
        else high = middle;
      }
      name = printed[low]!.name;
    }
    if (!/^(?:AQUA|WATER|EAU)\b/.test(name)) names.add(titled(name));
  }
  return [...names];
}

/** What small makers print, in plain English. Written from memory of such labels. */
export const plainNames = (
  'Shea Butter|Cocoa Butter|Mango Butter|Coconut Oil|Olive Oil|Castor Oil|Sweet Almond Oil|Jojoba Oil|Argan Oil|' +
  'Avocado Oil|Grapeseed Oil|Sunflower Oil|Hemp Seed Oil|Rosehip Oil|Babassu Oil|Apricot Kernel Oil|Beeswax|' +
  'Candelilla Wax|Emulsifying Wax|Vegetable Glycerin|Vitamin E|Aloe Vera Gel|Aloe Vera Juice|Witch Hazel|' +
  'Rose Water|Lavender Essential Oil|Peppermint Essential Oil|Tea Tree Oil|Rosemary Oil|Sweet Orange Oil|' +
  'Lemongrass Oil|Eucalyptus Oil|Cedarwood Oil|Frankincense|Essential Oil Blend|Fragrance Oil|Bentonite Clay|' +
  'Kaolin Clay|French Green Clay|Rhassoul Clay|Hibiscus Powder|Spirulina Powder|Activated Charcoal|Sea Salt|' +
  'Epsom Salt|Baking Soda|Citric Acid|Cornstarch|Arrowroot Powder|Oat Flour|Colloidal Oatmeal|Honey|' +
  'Apple Cider Vinegar|Distilled Water|Sodium Hydroxide|Calendula Flowers|Chamomile Extract|Nettle Extract|' +
  'Marshmallow Root|Silk Amino Acids|Rice Protein|Panthenol|Xanthan Gum|Guar Gum|Mica|Titanium Dioxide|' +
  'Sodium Cocoyl Isethionate|Sodium Lauryl Sulfoacetate|Cetyl Alcohol|Stearic Acid|Leucidal|Optiphen'
).split('|');

/** Lower-case Latin and common names. */
export const lowerNames = (
  'jojoba oil|juniperus communis (juniper)|clear quartz|lavandula angustifolia (lavender) oil|fractionated coconut oil|' +
  'rosa damascena (rose) flower oil|citrus bergamia (bergamot) peel oil|pelargonium graveolens (geranium) oil|' +
  'cananga odorata (ylang ylang)|santalum album (sandalwood)|boswellia carterii (frankincense)|witch hazel distillate|' +
  'helianthus annuus (sunflower) seed oil|vitamin e (tocopherol)|salvia sclarea (clary sage)|rose quartz|' +
  'mentha piperita (peppermint) oil|vegetable glycerin|aloe barbadensis (aloe) leaf juice|calendula officinalis extract|' +
  'cocos nucifera (coconut) oil|butyrospermum parkii (shea butter)|simmondsia chinensis (jojoba) seed oil|amethyst'
).split('|');

/** One slip in a word: a letter lost, doubled, swapped or put in another's place. */
export function slip(roll: Roll, name: string): string {
  const words = name.split(' ');
  const long = words.map((word, i) => [word, i] as const).filter(([word]) => /^[A-Za-z]{5,}$/.test(word));
  if (long.length === 0) return name;
  const [word, i] = roll.pick(long);
  const at = roll.int(1, word.length - 3);
  const slips = [
    word.slice(0, at) + word.slice(at + 1),
    word.slice(0, at) + word[at] + word.slice(at),
    word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2),
    word.slice(0, at) + 'aeiou'[roll.int(0, 4)] + word.slice(at + 1),
  ];
  words[i] = roll.pick(slips);
  return words.join(' ');
}
