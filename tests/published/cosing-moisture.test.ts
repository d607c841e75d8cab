// Moisture roles against CosIng functions (European Commission, inventory export of December 2020; source
// `cosing`). The functions are facts of our own entries. Where our roles differ, the table says why.
import { expect, it } from 'vitest';
import type { MoistureRole } from '../../src/core/names/entry.ts';
import { readDictionary } from '../run/dictionary-problems.ts';

const named: Record<string, MoistureRole> = {
  humectant: 'humectant',
  'skin conditioning - humectant': 'humectant',
  emollient: 'emollient',
  'skin conditioning - emollient': 'emollient',
  'skin conditioning - occlusive': 'occlusive',
};

/** Where we say more (+) or less (−) than CosIng, by family: common practice unless another source is named. */
const deviations: Record<string, string> = {
  '+ butters emollient': 'a butter softens: CosIng often files it under skin conditioning alone',
  '+ butters occlusive': 'a butter seals: solid fat left on the hair',
  '+ oils emollient': 'a fixed oil softens, whichever conditioning function was registered',
  '+ waxes occlusive': 'a wax seals: a solid film',
  '+ fatty-acids emollient': 'free fatty acids soften as their oils do',
  '+ fatty-alcohols emollient': 'fatty alcohols are emollients, never drying',
  '+ esters emollient': 'fatty esters registered as conditioning without the word emollient',
  '+ lipids emollient': 'ceramides, sterols and phospholipids soften and fill the cuticle',
  '+ hydrocarbons emollient': 'oils of mineral or plant hydrocarbons soften',
  '+ hydrocarbons occlusive': 'petrolatum, paraffins and their waxes are the model of an occlusive',
  '+ silicones emollient': 'plain and amino silicones and the volatile ones soften',
  '+ silicones occlusive': 'dimethicone is a skin protectant film (21 CFR 347.10)',
  '+ humectants humectant': 'sugars, glycols, panthenol, PCA and hyaluronates draw water',
  '+ cationic-conditioners humectant': 'a quaternized sugar, starch or honey is still one',
  '+ algae-and-fungi humectant': 'film-forming humectants: carrageenan-bearing algae',
  '+ thickeners humectant': 'film-forming humectants: carrageenan, alginate, flax and tremella gums',
  '+ plants-fruits-and-seeds humectant':
    'film-forming humectants: aloe, flax, okra, chia, fenugreek, psyllium',
  '+ plants-leaves-and-flowers humectant': 'film-forming humectants: aloe, marshmallow, prickly pear',
  '+ plants-roots-and-barks humectant': 'film-forming humectants: marshmallow root, slippery elm',
  '+ plants-whole humectant': 'film-forming humectants: aloe, flax, okra, prickly pear',
  // Against chemistry, family by family: what is said of skin is no property on hair.
  '- acids-and-alkalis humectant': 'sea salt dries: a salt holds no water on hair',
  '- actives humectant': 'used in traces, for the skin',
  '- algae-and-fungi humectant': 'an extract without mucilage',
  '- algae-and-fungi emollient': 'an extract without oil',
  '- emulsifiers humectant': 'fatty esters of polyols: the fatty chains decide',
  '+ emulsifiers emollient': 'fatty esters of polyols: the fatty chains decide',
  '- esters humectant': 'two fatty ends, no free polyol',
  '- esters emollient': 'nucleotides are no fats',
  '- fatty-alcohols humectant': 'twelve carbons and more do not draw water',
  '- humectants humectant': 'clays, carbons, phenols, fats and an acid gas hold no water on hair',
  '+ humectants emollient': 'fatty amides and branched alkanes and ethers soften',
  '- humectants emollient': 'phenols and glycosides used in traces',
  '- lipids humectant': 'lipids soften; they do not draw water',
  '- minerals humectant': 'clay takes oil up',
  '+ oils occlusive': 'castor, jojoba, olive and argan stay as a film that seals',
  '- oils humectant': 'a pressed oil holds no water',
  '- plants-fruits-and-seeds emollient': 'a water extract holds little oil',
  '- plants-fruits-and-seeds humectant': 'only mucilages and juices hold water on hair',
  '- plants-leaves-and-flowers humectant': 'only mucilages and juices hold water on hair',
  '- plants-leaves-and-flowers emollient': 'a water extract holds little oil',
  '- plants-roots-and-barks humectant': 'only mucilages and juices hold water on hair',
  '- plants-roots-and-barks emollient': 'a water extract holds little oil',
  '- plants-whole humectant': 'only mucilages and juices hold water on hair',
  '- plants-whole emollient': 'an extract without oil',
  '- polymers humectant': 'film formers with fatty chains',
  '- silicones humectant': 'crosslinked or amino silicones soften',
  '- solvents humectant': 'sea water',
  '- thickeners humectant': 'fatty amides, an aluminum salt, a nucleic acid',
  '- thickeners emollient': 'an aluminum salt does not soften',
  '+ thickeners emollient': 'fatty amides soften',
  '- vitamins-and-antioxidants humectant': 'fatty esters of vitamins, used in traces',
  '- vitamins-and-antioxidants emollient': 'used in traces',
  '+ vitamins-and-antioxidants emollient': 'fatty esters of vitamins',
  '- waxes humectant': 'esters of beeswax seal',
  '+ waxes emollient': 'esters of beeswax soften',
  '- chelating humectant': 'used below one percent to bind metals',
  '- colourants emollient': 'used to colour',
  '- fragrance emollient': 'used as fragrance, in traces',
  '- colourants humectant': 'used to colour',
  '- essential-oils emollient': 'used as fragrance, in traces',
  '- essential-oils humectant': 'used as fragrance, in traces',
  '- fragrance humectant': 'used as fragrance, in traces',
  '- surfactants emollient': 'a cleanser is rinsed away with what it lifts',
  '- surfactants humectant': 'a cleanser is rinsed away with what it lifts',
};

const found = new Map<string, string[]>();
let same = 0;
for (const [family, entries] of Object.entries(readDictionary().families)) {
  if (family.startsWith('proteins')) continue; // protein takes precedence over humectant: CosIng files them under both
  for (const { name, functions = [], moisture = [] } of entries) {
    const theirs = new Set(functions.flatMap((each) => named[each] ?? []));
    for (const role of new Set([...theirs, ...moisture])) {
      const [ours, cosing] = [moisture.includes(role), theirs.has(role)];
      if (ours && cosing) same++;
      else {
        const key = `${ours ? '+' : '-'} ${family} ${role}`;
        found.set(key, [...(found.get(key) ?? []), name]);
      }
    }
  }
}

it('roles are as CosIng names them, but for the deviations in the table', () => {
  const unexplained = [...found].filter(([key]) => !deviations[key]);
  expect(unexplained).toEqual([]);
  expect(same).toBeGreaterThan(700);
});

it('no deviation in the table has outlived its entries', () => {
  expect(Object.keys(deviations).filter((key) => !found.has(key))).toEqual([]);
});
