// Families of allergens that a printed name brings up. The families follow Annex II of Regulation (EU) 1169/2011
// and the tree nuts of the US FDA's guidance (edition 5, January 2025); the forms are those that INCI names and
// labels in five languages take. Names written for this test; the families of each are common practice where the
// two lists do not name the derivative.
import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import type { Allergen } from '../../src/core/names/entry.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

const lookup = createLookup(entries, patterns, limits);
const split = (names: string) => names.split(';').map((name) => name.trim().replace(/\s+/g, ' '));
const of = (printed: string) => {
  const mentions = readLabel(`Aqua, ${printed}`, lookup).mentions.slice(1);
  return {
    says: mentions.flatMap(({ allergens }) => allergens),
    mayBe: mentions.flatMap(({ mayBe }) => mayBe),
  };
};

/** Forms that any food protein takes on a label, with the source word put in. */
const forms = (source: string) => [
  `Hydrolyzed ${source} Protein`,
  `HYDROLYSED ${source.toUpperCase()} PROTEIN`,
  `${source} Amino Acids`,
  `${source} Peptide`,
  `Hydroxypropyltrimonium Hydrolyzed ${source} Protein`,
  `Laurdimonium Hydroxypropyl Hydrolyzed ${source} Protein`,
  `Cocodimonium Hydroxypropyl Hydrolyzed Rice/${source} Protein`,
  `Hydrolyzed ${source} Protein PG-Propyl Silanetriol`,
  `Hydrolyzed ${source} Protein/PVP Crosspolymer`,
  `Sodium Lauroyl ${source} Amino Acids`,
  `Potassium Cocoyl Hydrolyzed ${source} Protein`,
  `Lactobacillus/${source} Ferment Filtrate`,
  `${source} Extract`,
  `Hydrolyzed Protein (${source})`,
];
const sources: [Allergen, string][] = [
  ['wheat', 'Wheat; Spelt; Wheat Germ; Wheat Bran; Durum; Kamut; Einkorn; Emmer'],
  ['gluten-cereal', 'Barley; Rye; Malt'],
  ['oat', 'Oat'],
  ['soy', 'Soy; Soybean; Soya; Soymilk'],
  ['milk', 'Milk; Goat Milk; Whey; Casein; Yogurt; Colostrum; Buttermilk'],
  ['egg', 'Egg; Egg White; Egg Yolk; Eggshell Membrane'],
  ['fish', 'Fish; Salmon; Cod; Sturgeon; Tuna; Caviar'],
  ['shellfish', 'Shrimp; Crab; Lobster; Krill; Oyster; Mussel; Scallop; Abalone; Snail; Squid'],
  ['peanut', 'Peanut'],
  [
    'nut',
    'Almond; Sweet Almond; Hazelnut; Walnut; Pecan; Cashew; Pistachio; Brazil Nut; Macadamia; Pine Nut',
  ],
  ['sesame', 'Sesame'],
  ['lupin', 'Lupin; Lupine'],
  ['mustard', 'Mustard; Yellow Mustard'],
  ['celery', 'Celery; Celery Seed'],
  ['bee-products', 'Honey; Royal Jelly; Propolis'],
];

describe('a source in every form', () => {
  it.each(sources.flatMap(([family, list]) => split(list).map((source) => [source, family] as const)))(
    '%s: %s',
    (source, family) => {
      expect(forms(source).filter((name) => !of(name).says.includes(family))).toEqual([]);
    },
  );
});

const named: [Allergen, string][] = [
  [
    'wheat',
    `Triticum Vulgare (Wheat) Germ Oil; Triticum Aestivum Seed Extract; Triticum Spelta Seed Water; Triticum Durum
     Flour; Wheat Germamidopropyl Betaine; Sodium Wheat Germamphoacetate; Wheatgermamidopropyl Ethyldimonium
     Ethosulfate; Hydrolyzed Gluten; Gliadin; Wheatgerm Glycerides; Weizenprotein; Hydrolysiertes Weizenprotein;
     Weizenkeimöl; Protéines de blé hydrolysées; Huile de germe de blé; Proteína de trigo hidrolizada; Aceite de
     germen de trigo; Proteína hidrolisada de trigo; Óleo de gérmen de trigo; Proteine idrolizzate del grano;
     Hydroxypropyltrimonium Hydrolyzed Wheat Starch; PG-Hydroxyethylcellulose Hydrolyzed Wheat Protein; 小麦たん白`,
  ],
  [
    'gluten-cereal',
    'Hordeum Vulgare (Barley) Seed Flour; Secale Cereale Seed Extract; Hordeum Distichon Extract; Gerstenextrakt; Extrait d’orge; Extracto de cebada; Extrato de cevada; Roggenmehl; Seigle; Centeno; Centeio; Beer; Malt Extract',
  ],
  [
    'oat',
    'Avena Sativa (Oat) Kernel Flour; Colloidal Oatmeal; Avena Strigosa Seed Extract; Oatamidopropyl Betaine; Haferextrakt; Lait d’avoine; Leche de avena; Leite de aveia; Oat Milk; Avenanthramides',
  ],
  [
    'soy',
    'Glycine Soja Oil; Glycine Max (Soybean) Seed Extract; Soyamide DEA; Soytrimonium Chloride; PEG-5 Soy Sterol; Soyethyl Morpholinium Ethosulfate; Soja-Protein; Sojaöl; Huile de soja; Aceite de soja; Óleo de soja; Lecithin (Soy); Soy Lecithin; Sodium Soy Hydrolyzed Collagen; Dimethicone PEG-7 Avocadoate/Soyate',
  ],
  [
    'milk',
    `Lac; Caprae Lac; Lactis Proteinum; Sodium Caseinate; Lactose; Lactoferrin; Nonfat Dry Milk; Sine Adipe Lac;
     Hydrolyzed Lactalbumin; Milchprotein; Ziegenmilch; Molkenprotein; Lait de chèvre; Protéines de lait; Leche de
     cabra; Suero de leche; Leite de cabra; Proteína do leite; Latte di capra; Kefir; Milk Lipids; Butyrum`,
  ],
  [
    'egg',
    'Ovum; Vitellus Ovi; Albumen; Egg Oil; Lysozyme; Hydrolyzed Egg Shell Membrane; Eigelb; Eidotteröl; Jaune d’œuf; Huevo; Yema de huevo; Ovo; Gema de ovo; Ovalbumin; Tuorlo d’uovo',
  ],
  [
    'fish',
    `Gadi Iecur Oil; Piscum Ovum Extract; Caviar Extract; Hydrolyzed Marine Collagen; Marine Collagen; Collagen
     (Marine); Collagen (Fish); Collagène marin hydrolysé; Colágeno marino hidrolizado; Colágeno marinho hidrolisado;
     Meereskollagen; Lachsöl; Huile de saumon; Shark Liver Oil; Roe Extract; Salmon Egg Extract`,
  ],
  [
    'shellfish',
    `Hydrolyzed Conchiolin Protein; Snail Secretion Filtrate; Pearl Powder; Mother of Pearl; Ostrea Shell Extract;
     Euphausia Superba Oil; Brine Shrimp Extract; Artemia Extract; Schneckenschleim; Bave d’escargot; Baba de caracol;
     Austernschale; Margarita Powder; Hydrolyzed Oyster Extract; Perna Canaliculus Extract`,
  ],
  [
    'peanut',
    'Arachis Hypogaea (Peanut) Oil; Arachis Oil; Peanut Glycerides; Peanutamide MEA; Sodium Peanutate; Groundnut Oil; Erdnussöl; Huile d’arachide; Aceite de cacahuete; Óleo de amendoim; Olio di arachidi',
  ],
  [
    'nut',
    `Prunus Amygdalus Dulcis (Sweet Almond) Oil; Prunus Dulcis Oil; Prunus Amygdalus Amara Kernel Oil; Sweet Almond
     Oil; Almondamidopropyl Betaine; PEG-60 Almond Glycerides; Sodium Sweetalmondamphoacetate; Corylus Avellana
     (Hazelnut) Seed Oil; Corylus Americana Seed Oil; Juglans Regia (Walnut) Shell Powder; Juglans Nigra Seed Extract;
     Carya Illinoinensis Seed Oil; Anacardium Occidentale Seed Oil; Pistacia Vera Seed Oil; Bertholletia Excelsa Seed
     Oil; Macadamia Integrifolia Seed Oil; Phytosteryl Macadamiate; Macadamia Ternifolia Shell Powder; Pinus Pinea
     Kernel Oil; Pinus Koraiensis Seed Extract; Pinus Sibirica Seed Oil; Mandelöl; Haselnussöl; Walnussöl; Pistazienöl;
     Huile d’amande douce; Huile de noisette; Huile de noix; Lait d’amande; Aceite de almendras dulces; Aceite de
     avellana; Aceite de nuez; Óleo de amêndoas doces; Óleo de avelã; Óleo de castanha-do-pará; Olio di mandorle; Almond
     Milk`,
  ],
  [
    'sesame',
    'Sesamum Indicum Seed Oil; Sesamidopropyl Betaine; Sodium Sesameseedate; Sesamöl; Huile de sésame; Aceite de sésamo; Óleo de gergelim; Aceite de ajonjolí',
  ],
  [
    'lupin',
    'Lupinus Albus Seed Extract; Hydrolyzed Lupine Protein; Lupinus Albus Oil Unsaponifiables; Lupinenprotein; Altramuz',
  ],
  [
    'mustard',
    'Sinapis Alba Seed Extract; Brassica Nigra Seed Extract; Brassica Alba Sprout Extract; Brassica Juncea Seed Oil; Senföl; Huile de moutarde; Aceite de mostaza; Óleo de mostarda',
  ],
  [
    'celery',
    'Apium Graveolens (Celery) Extract; Apium Graveolens Seed Oil; Selleriesamenöl; Extrait de céleri; Extracto de apio; Extrato de aipo',
  ],
  [
    'bee-products',
    'Mel; Mel Extract; Cera Alba; Cera Flava; Beeswax; PEG-8 Beeswax; Propolis Cera; Apis Mellifera Pollen; Bee Venom; Bienenwachs; Honig; Cire d’abeille; Miel; Cera de abejas; Cera de abelha; Gelée Royale; Hydroxypropyltrimonium Honey',
  ],
  ['latex', 'Hevea Brasiliensis (Natural Rubber) Latex; Rubber Latex; Natural Rubber; Naturkautschuk'],
  [
    'sulphite',
    'Sodium Sulfite; Sodium Sulphite; Sodium Bisulfite; Sodium Metabisulphite; Ammonium Bisulfite; MEA-Sulfite; Potassium Metabisulfite; Sodium Hydrosulfite; Natriumsulfit; Sulfite de sodium; Metabisulfito de sodio',
  ],
  [
    'coconut',
    'Cocos Nucifera (Coconut) Oil; Coconut Milk; Cocos Nucifera Fruit Water; Kokosöl; Huile de coco; Aceite de coco; Óleo de coco; Coconut Oil',
  ],
  [
    'fragrance',
    'Parfum; Fragrance (Almond); Aroma; Duftstoff; Natural Fragrance; Essential Oils; 香料; 향료',
  ],
];

describe('a source by every name', () => {
  it.each(named)('%s', (family, list) => {
    expect(split(list).filter((name) => !of(name).says.includes(family))).toEqual([]);
  });
});

const perhaps: [Allergen, string][] = [
  ['wheat', 'Hydrolyzed Vegetable Protein; Vegetable Amino Acids; Pflanzenprotein; Protéines végétales'],
  [
    'soy',
    'Hydrolyzed Vegetable Protein; Vegetable Amino Acids; Lecithin; Hydrogenated Lecithin; Phospholipids; Vegetable Oil; Phytosterols',
  ],
  ['egg', 'Lecithin; Phospholipids; Albumin'],
  ['fish', 'Collagen; Hydrolyzed Collagen; Soluble Collagen; Gelatin; Hydrolyzed Elastin; Kollagen'],
  ['shellfish', 'Chitosan; Carboxymethyl Chitosan; Glucosamine HCl; Acetyl Glucosamine'],
  [
    'nut',
    'Castanea Sativa (Chestnut) Seed Extract; Juglans Regia Leaf Extract; Corylus Avellana Bud Extract',
  ],
  ['peanut', 'Vegetable Oil; Huile végétale'],
  ['bee-products', 'Pollen Extract'],
];

describe('a source that is not named', () => {
  it.each(perhaps)('may be %s', (family, list) => {
    for (const name of split(list)) {
      expect(of(name).says, name).not.toContain(family);
      expect(of(name).mayBe, name).toContain(family);
    }
  });
});

// Look-alikes: nothing of a food at all.
const quiet =
  split(`Fagopyrum Esculentum (Buckwheat) Seed Extract; Buckwheat Protein; Blé noir; Trigo sarraceno; Zea Mays
  Gluten Protein; Corn Gluten Amino Acids; Rehmannia Glutinosa Root Extract; Sodium Glutamate; Glutamic Acid; Eleocharis
  Dulcis (Water Chestnut) Extract; Trapa Natans (Water Caltrop) Extract; Myristica Fragrans (Nutmeg) Kernel Powder;
  Aesculus Hippocastanum (Horse Chestnut) Seed Extract; Hamamelis Virginiana (Witch Hazel) Water; Butyrospermum Parkii
  (Shea) Butter; Shea Nut Butter; Aleurites Moluccanus (Kukui Nut) Seed Oil; Cyperus Esculentus (Tiger Nut) Root Oil;
  Sapindus Mukorossi (Soapnut) Fruit Extract; Areca Catechu (Betel Nut) Extract; Cola Acuminata (Kola Nut) Seed Extract;
  Terminalia Catappa (Indian Almond) Leaf Extract; Pinus Sylvestris Bark Extract; Pinus Pinaster Bark Extract; Mandelic
  Acid; Arachidyl Alcohol; Arachidic Acid; Arachidyl Glucoside; Glyceryl Arachidonate; Arachideth-20; Plukenetia
  Volubilis (Inca Peanut) Seed Oil; Silybum Marianum (Milk Thistle) Fruit Extract; Asclepias (Milkweed) Extract; Lactic
  Acid; Sodium Lactate; Ammonium Lactate; Lactobacillus Ferment; Lactococcus Ferment Lysate; Calcium Stearoyl Lactylate;
  Lactitol; Shellac; Butyl Lactate; Lactuca Sativa Leaf Extract; Bifida Ferment Lysate; Solanum Melongena (Eggplant) Fruit
  Extract; Santalum Album Wood Extract; Viscum Album Extract; Ovis Aries Fat; Glycine; Sodium Cocoyl Glycinate; Bovine
  Collagen; Hydrolyzed Keratin; Zostera Marina Extract; Sea Salt; Rosmarinus Officinalis Leaf Extract;
  Jellyfish Extract; Houttuynia Cordata (Fish Mint) Extract; Opuntia Tuna Fruit Extract; Microcitrus Australasica (Caviar
  Lime) Fruit Extract; Malus Sylvestris (Crab Apple) Fruit Extract; Pleurotus Ostreatus (Oyster Mushroom) Extract; Crabwood
  Oil; Lonicera Japonica (Honeysuckle) Flower Extract; Cyclopia Genistoides (Honeybush) Extract; Cucumis Melo (Honeydew)
  Fruit Extract; Monarda Didyma (Bee Balm) Extract; Synthetic Beeswax; Euphorbia Cerifera Cera; Copernicia Cerifera Cera;
  Cera Microcristallina; Melaleuca Viridiflora Extract; Brassica Oleracea Italica (Broccoli) Seed Oil; Brassica Campestris
  Seed Oil; Lecithin (Sunflower); Cetyl Alcohol (Coconut); Humulus Lupulus (Hops) Extract; Maltodextrin; Maltitol; Maltose; Sodium Thiosulfate; Sodium Sulfate;
  Selenium Sulfide; Lolium Perenne (Ryegrass) Extract; Sunflower Lecithin; Hydrolyzed Rice Protein; Hydrolyzed Protein
  (Rice); Hydrolyzed Quinoa; Hydrolyzed Pea Protein; Hydrolyzed Corn Protein; Acrylates Copolymer; Tocopherol; Cetearyl
  Alcohol; Glycerin; Gluten-Free Dextrin; Theobroma Cacao (Cocoa) Seed Butter; Cocamidopropyl Betaine; Coco-Glucoside;
  Sodium Cocoyl Isethionate; Poria Cocos Extract; Sucrose Cocoate; Yeast Extract; Squalane; Biotin`);
const foods = new Set<Allergen>(
  sources.map(([family]) => family).concat(['latex', 'sulphite', 'coconut'] as Allergen[]),
);
const notes = split(
  'Fragrance (Coconut); Parfum (Almond Milk); Vanilla Oat Fragrance; Honey Almond Fragrance Oil; Perfume (hazelnut type)',
);

it('look-alikes say nothing of a food', () => {
  const loud = [...quiet, ...notes].flatMap((name) => {
    const told = [...of(name).says, ...of(name).mayBe].filter((family) => foods.has(family));
    return told.length > 0 ? [`${name}: ${told.join()}`] : [];
  });
  expect(loud).toEqual([]);
});

it('no entry and no rule repeats what the words of sources say of every name', () => {
  const asked = new Set(limits.sourceWords?.map(({ family }) => family));
  const repeats = [...entries, ...patterns].filter(({ allergens = [] }) =>
    allergens.some((family) => asked.has(family) && family !== 'fragrance' && family !== 'sensitizer'),
  );
  expect(repeats.map((each) => ('id' in each ? each.id : each.name))).toEqual([]);
});
