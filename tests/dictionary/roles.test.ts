// What the routine rules ask of a name. Common practice unless another source stands beside the row.
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import type { Allergen, MoistureRole, Role } from '../../src/core/names/entry.ts';
import { createLookup } from '../../src/core/names/lookup.ts';

const lookup = createLookup(entries, patterns, limits);
const known = (name: string) => lookup.known(lookup.find(name));
const names = (list: string) => list.split(';').map((name) => name.trim());

const roles: [Role, string][] = [
  ['water', 'Aqua; Water; Eau; Wasser; Agua; Acqua; Água; Woda'],
  [
    'fatty-alcohol',
    'Cetyl Alcohol; Cetearyl Alcohol; Stearyl Alcohol; Behenyl Alcohol; Myristyl Alcohol; Lauryl Alcohol; Oleyl Alcohol; Arachidyl Alcohol; Octyldodecanol; Brassica Alcohol; Isostearyl Alcohol',
  ],
  [
    'drying-alcohol',
    'Alcohol; Alcohol Denat.; SD Alcohol 40-B; Isopropyl Alcohol; Propyl Alcohol; Ethanol; Denatured Alcohol; Isopropanol',
  ],
  [
    'cleansing-strong',
    'Sodium Laureth Sulfate; Sodium Lauryl Sulfate; Ammonium Lauryl Sulfate; Ammonium Laureth Sulfate; Sodium Coco-Sulfate; Sodium Myreth Sulfate; TEA-Lauryl Sulfate; Sodium C14-16 Olefin Sulfonate; TEA-Dodecylbenzenesulfonate; Sodium Cocoate; Sodium Palmate; Potassium Olivate',
  ],
  [
    'cleansing-mild',
    'Cocamidopropyl Betaine; Coco-Betaine; Cocamidopropyl Hydroxysultaine; Decyl Glucoside; Coco-Glucoside; Lauryl Glucoside; Sodium Cocoyl Isethionate; Sodium Lauroyl Methyl Isethionate; Sodium Methyl Cocoyl Taurate; Disodium Laureth Sulfosuccinate; Sodium Cocoamphoacetate; Disodium Cocoamphodiacetate; Sodium Lauryl Sulfoacetate; Caprylyl/Capryl Glucoside',
  ],
  [
    'cationic-conditioner',
    'Behentrimonium Chloride; Behentrimonium Methosulfate; Cetrimonium Chloride; Stearamidopropyl Dimethylamine; Guar Hydroxypropyltrimonium Chloride; Distearyldimonium Chloride; Quaternium-87; Steartrimonium Chloride; Polyquaternium-10; Brassicamidopropyl Dimethylamine',
  ],
  [
    'film-former',
    'Dimethicone; Dimethiconol; Amodimethicone; Phenyl Trimethicone; Cetyl Dimethicone; Bis-Aminopropyl Dimethicone; Trimethylsiloxysilicate; Polyquaternium-7; Polyquaternium-10; Polyquaternium-11; Cera Alba; Copernicia Cerifera Cera; Candelilla Cera; Petrolatum; Paraffinum Liquidum; Octylacrylamide/Acrylates/Butylaminoethyl Methacrylate Copolymer',
  ],
  [
    'water-liftable-film',
    'PEG-12 Dimethicone; PEG-8 Dimethicone; PEG/PPG-18/18 Dimethicone; PVP; VP/VA Copolymer; Hydroxyethylcellulose; Pullulan; Polyvinyl Alcohol',
  ],
  [
    'film-forming-humectant',
    'Aloe Barbadensis Leaf Juice; Aloe Barbadensis Leaf Extract; Linum Usitatissimum Seed Extract; Althaea Officinalis Root Extract; Carrageenan; Chondrus Crispus Extract; Hibiscus Esculentus Fruit Extract; Algin; Ulmus Fulva Bark Extract',
  ],
  [
    'bond-builder',
    'Bis-Aminopropyl Diglycol Dimaleate; Hydroxypropylgluconamide; Hydroxypropylammonium Gluconate; Maleic Acid',
  ],
  [
    'acid',
    'Citric Acid; Lactic Acid; Glycolic Acid; Malic Acid; Tartaric Acid; Acetic Acid; Salicylic Acid; Phosphoric Acid',
  ],
  [
    'alkali',
    'Sodium Hydroxide; Potassium Hydroxide; Ammonium Hydroxide; Ethanolamine; Triethanolamine; Aminomethyl Propanol; Calcium Hydroxide; Guanidine Carbonate; Sodium Bicarbonate',
  ],
  [
    'chelating',
    'Disodium EDTA; Tetrasodium EDTA; Sodium Phytate; Phytic Acid; Tetrasodium Glutamate Diacetate; Trisodium Ethylenediamine Disuccinate; Etidronic Acid',
  ],
  [
    'preservative',
    'Phenoxyethanol; Sodium Benzoate; Potassium Sorbate; Benzyl Alcohol; Methylparaben; DMDM Hydantoin; Caprylhydroxamic Acid; Methylisothiazolinone; Ethylhexylglycerin',
  ],
  [
    'uv-filter',
    'Ethylhexyl Methoxycinnamate; Octocrylene; Benzophenone-4; Avobenzone; Octisalate; Titanium Dioxide',
  ],
  ['propellant', 'Butane; Isobutane; Propane; Dimethyl Ether; Hydrofluorocarbon 152A'],
  [
    'colourant',
    'CI 42090; CI 77891; Blue 1; Yellow 5; FD&C Red No. 40; Basic Red 51; p-Phenylenediamine; Iron Oxides',
  ],
  ['fragrance', 'Parfum; Fragrance; Linalool; Lavandula Angustifolia Oil; Profumo; Duftstoffe'],
];

const moisture: [MoistureRole, string][] = [
  [
    'humectant',
    'Glycerin; Propylene Glycol; Butylene Glycol; Propanediol; Sorbitol; Betaine; Panthenol; Sodium PCA; PCA; Hyaluronic Acid; Sodium Hyaluronate; Hydrolyzed Hyaluronic Acid; Hydrolyzed Starch; Hydrolyzed Wheat Starch; Hydrolyzed Corn Starch; Mel; Honey; Urea; Sodium Lactate; Xylitol; Trehalose; Glucose; Fructose; Inulin; Saccharide Isomerate; Pentylene Glycol; Hydroxyethyl Urea; Glycereth-26',
  ],
  [
    'emollient',
    'Cetyl Alcohol; Cetearyl Alcohol; Stearyl Alcohol; Cocos Nucifera Oil; Argania Spinosa Kernel Oil; Persea Gratissima Oil; Butyrospermum Parkii Butter; Isopropyl Myristate; Caprylic/Capric Triglyceride; Squalane; Dimethicone; Coco-Caprylate; Glyceryl Stearate; Ricinus Communis Seed Oil; Simmondsia Chinensis Seed Oil; Isododecane; Lecithin; Ceramide NP; Jojoba Esters; Hydrolyzed Jojoba Esters',
  ],
  [
    'occlusive',
    'Petrolatum; Paraffinum Liquidum; Cera Alba; Dimethicone; Butyrospermum Parkii Butter; Copernicia Cerifera Cera; Theobroma Cacao Seed Butter; Cera Microcristallina',
  ],
];

const allergens: [Allergen, string][] = [
  ['wheat', 'Triticum Vulgare Germ Oil; Hydrolyzed Wheat Starch; Weizenkeimöl'],
  [
    'nut',
    'Prunus Amygdalus Dulcis Oil; Macadamia Ternifolia Seed Oil; Juglans Regia Seed Oil; Corylus Avellana Seed Oil; Bertholletia Excelsa Seed Oil; Sweet Almond Oil; Mandelöl',
  ],
  ['peanut', 'Arachis Hypogaea Oil; Erdnussöl'],
  ['soy', 'Glycine Soja Oil; Soybean Oil'],
  ['oat', 'Avena Sativa Kernel Extract; Avena Sativa Kernel Oil'],
  ['sesame', 'Sesamum Indicum Seed Oil'],
  [
    'sensitizer',
    'Methylisothiazolinone; Methylchloroisothiazolinone; DMDM Hydantoin; Imidazolidinyl Urea; Diazolidinyl Urea; Quaternium-15; p-Phenylenediamine; Toluene-2,5-Diamine; Lanolin; Propolis Extract; Resorcinol; Ammonium Persulfate',
  ],
  ['fragrance', 'Parfum; Linalool; Limonene; Melaleuca Alternifolia Leaf Oil'],
];

it.each(roles.flatMap(([role, list]) => names(list).map((name) => [name, role] as const)))(
  '%s: %s',
  (name, role) => expect(known(name).roles).toContain(role),
);

it.each(moisture.flatMap(([role, list]) => names(list).map((name) => [name, role] as const)))(
  '%s is %s, never protein',
  (name, role) => {
    expect(known(name).moisture).toContain(role);
    expect(known(name).protein).toBeUndefined();
  },
);

it.each(allergens.flatMap(([family, list]) => names(list).map((name) => [name, family] as const)))(
  '%s may matter to who avoids %s',
  (name, family) =>
    expect([...known(name).allergens, ...lookup.sourcesOf(name, lookup.find(name)).says]).toContain(family),
);

// Traps: what a name must not be.
it.each([
  ['Cetearyl Alcohol', 'drying-alcohol'],
  ['Benzyl Alcohol', 'drying-alcohol'],
  ['Lanolin Alcohol', 'drying-alcohol'],
  ['Phenethyl Alcohol', 'drying-alcohol'],
  ['PEG-12 Dimethicone', 'film-former'],
  ['Cyclopentasiloxane', 'film-former'], // evaporates
  ['PVP', 'film-former'],
  ['Betaine', 'cleansing-mild'], // not cocamidopropyl betaine
  ['Cetearyl Glucoside', 'cleansing-mild'], // an emulsifier
  ['Sodium Isethionate', 'cleansing-mild'], // a salt, not its cocoyl ester
  ['Sodium Cetearyl Sulfate', 'cleansing-strong'], // an emulsifier
  ['Magnesium Sulfate', 'cleansing-strong'],
  ['Polysorbate 20', 'cleansing-strong'],
  ['Glyceryl Stearate', 'film-former'],
] as const)('%s is no %s', (name, role) => {
  expect(lookup.find(name).how).not.toBe('none');
  expect(known(name).roles).not.toContain(role);
});

it.each([
  'Cocos Nucifera Oil',
  'Butyrospermum Parkii Butter',
  'Argania Spinosa Kernel Oil',
  'Sclerocarya Birrea Seed Oil',
])(
  '%s is no tree nut of the avoid list', // coconut, shea, argan, marula
  (name) => expect(known(name).allergens).not.toContain('nut'),
);
