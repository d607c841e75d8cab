// Names that labels print, in the words they print them, each with the name it leads to and where that stands.
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

const lookup = createLookup(entries, patterns, limits);

// CosIng: the European Commission's inventory, export of December 2020.
const cosing = 'CosIng';
// Ph. Eur. and the lists of excipients of medicines: "macrogol" is their word for PEG; from memory.
const pharmacopoeia = 'European Pharmacopoeia, from memory';
// Korean, Japanese and Chinese printed names: the national lists of ingredient names; from memory.
const national = 'national list of names, from memory';

it.each<[printed: string, name: string, source: string]>([
  [
    'Bis-Ethyl(Isostearylimidazoline) Isostearamide',
    'Bis-Ethyl(Isostearylimidazoline) Isostearamide',
    'labels',
  ],
  ['Behenyl/Stearyl Aminopropanediol Esters', 'Behenyl/Stearyl Aminopropanediol Esters', cosing],
  ['Polylysine', 'Polylysine', cosing],
  ['Sapphire Powder', 'Sapphire Powder', cosing],
  ['Amethyst Powder', 'Amethyst Powder', cosing],
  ['Pearl Extract', 'Pearl Extract', cosing],
  ['Scutellaria Baicalensis (Skullcap) Root Extract', 'Scutellaria Baicalensis Root Extract', cosing],
  ['Skullcap', 'Skullcap', 'common name of Scutellaria'],
  ['Goldenrod', 'Goldenrod', 'common name of Solidago'],
  ['Pataua Oil', 'Oenocarpus Bataua Fruit Oil', cosing],
  ['Citrus Bergamia Peel Oil Expressed', 'Citrus Aurantium Bergamia Peel Oil', cosing],
  ['Isotridecyl Alcohol', 'Isotridecyl Alcohol', cosing],
  ['Dodecylbenzene Sulfonic Acid', 'Dodecylbenzenesulfonic Acid', cosing],
  ['Estragole', 'Estragole', 'Regulation (EU) 2023/1545'],
  ['Trans-2-Hexenal', 'Trans-2-Hexenal', cosing],
  ['Glucose Pentaacetate', 'Glucose Pentaacetate', cosing],
  ['Sorghum Bran Extract', 'Sorghum Bran Extract', 'labels'],
  ['Macrogol 400', 'Macrogol 400', pharmacopoeia],
  ['Macrogol Cetostearyl Ether', 'Macrogol Cetostearyl Ether', pharmacopoeia],
  ['Cetomacrogol 1000', 'Ceteth-20', pharmacopoeia],
  ['Povidone', 'PVP', pharmacopoeia],
  ['Hypromellose', 'Hydroxypropyl Methylcellulose', pharmacopoeia],
  ['White Soft Paraffin', 'Petrolatum', pharmacopoeia],
  ['Edetate Disodium', 'Disodium EDTA', 'US Pharmacopeia, from memory'],
  ['정제수', 'Aqua', national],
  ['글리세린', 'Glycerin', national],
  ['1,3-부틸렌글라이콜', 'Butylene Glycol', national],
  ['향료', 'Parfum', national],
  ['水', 'Aqua', national],
  ['グリセリン', 'Glycerin', national],
  ['加水分解シルク', 'Hydrolyzed Silk', national],
  ['甘油', 'Glycerin', national],
  ['水解丝蛋白', 'Hydrolyzed Silk', national],
  ['水解小麦蛋白', 'Hydrolyzed Wheat Protein', national],
])('%s is %s (%s)', (printed, name) => {
  const { mentions } = readLabel(`Aqua, Glycerin, ${printed}, Parfum, Linalool`, lookup);
  expect(mentions.map(({ found }) => (found.how === 'none' ? '?' : found.name))).toEqual([
    'Aqua',
    'Glycerin',
    name,
    'Parfum',
    'Linalool',
  ]);
});
