import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';

/**
 * Hard names with their truth, as facts. Names: CosIng inventory, European Commission, export of December 2020,
 * and spellings that labels print. Kinds: read from the names (INCI naming conventions). Sizes: common practice
 * (silk, keratin, collagen on the small side; wheat, rice, quinoa and most plants on the large), never chemistry.
 */
const truth: Record<string, string> = {
  'amino-acid free': `Glycine; Alanine; Serine; Proline; Valine; Threonine; Cysteine; Leucine; Isoleucine; Asparagine;
Aspartic Acid; Glutamine; Lysine; Glutamic Acid; Methionine; Histidine; Phenylalanine; Arginine; Tyrosine; Tryptophan;
Cystine; Hydroxyproline; Citrulline; Ornithine; L-Arginine; DL-Methionine; Lysine HCl; Arginine HCl; Cysteine HCl;
Histidine HCl; Arginine PCA; Lysine PCA; Arginine Glutamate; Lysine Aspartate; Acetyl Cysteine; Acetyl Tyrosine;
Acetyl Glutamic Acid; Magnesium Aspartate; Zinc Glycinate; Sodium Glutamate; Potassium Aspartate; Copper Glycinate;
Wheat Amino Acids; Silk Amino Acids; Keratin Amino Acids; Collagen Amino Acids; Rice Amino Acids; Oat Amino Acids;
Soy Amino Acids; Milk Amino Acids; Vegetable Amino Acids; Hair Keratin Amino Acids; Wool Cuticle Amino Acids;
Sesame Amino Acids; Corn Gluten Amino Acids; Jojoba Amino Acids; Amino Acids;
Sarcosine; Creatine; Ethyl Glutamate; Propionyl Collagen Amino Acids; Hydrolyzed Wheat Amino Acids`,
  'peptide small': `Palmitoyl Tripeptide-1; Palmitoyl Tetrapeptide-7; Acetyl Hexapeptide-8; Copper Tripeptide-1;
Tripeptide-1; Acetyl Tetrapeptide-3; Biotinoyl Tripeptide-1; Myristoyl Pentapeptide-17; Dipeptide-2; Decapeptide-12;
Nonapeptide-1; sh-Oligopeptide-1; Palmitoyl Oligopeptide; Acetyl Octapeptide-3; Dipeptide Diaminobutyroyl Benzylamide
Diacetate; Glutathione; Carnosine; Acetyl Carnosine; Alanyl Glutamine; Avena Sativa Peptide; Glycine Soja Peptide;
Arginine/Lysine Polypeptide; Collagen Peptides; Palmitoyl Dipeptide-5 Diaminobutyroyl Hydroxythreonine; Hexapeptide-11`,
  'peptide unknown':
    'sh-Polypeptide-1; sr-Spider Polypeptide-1; rh-Polypeptide-3; Tocopherol/Wheat Polypeptides',
  'hydrolyzed small': `Hydrolyzed Conchiolin Protein; Hydrolyzed Lactalbumin; Hydrolyzed Whey Protein; Hydrolyzed Casein; Sodium Hydrolyzed Casein; Hydrolyzed Milk Protein; Hydrolyzed Keratin; Hydrolysed Keratin; HYDROLYZED HAIR KERATIN; Hydrolyzed Wool;
Hydrolyzed Collagen; Hydrolyzed Silk; Hydrolyzed Silk Protein; Hydrolyzed Sericin;
Hydrolyzed Fibroin; Hydrolyzed Elastin; Hydrolyzed Gelatin; Hydrolyzed Reticulin; Calcium Hydrolyzed Collagen;
Ammonium Hydrolyzed Collagen; Zinc Hydrolyzed Collagen; MEA-Hydrolyzed Silk; PG-Hydrolyzed Keratin;
Ethyl Ester of Hydrolyzed Silk; Sodium Succinoyl Hydrolyzed Collagen; Amidinocysteinyl Hydrolyzed Keratin;
Cocamidopropyl Dimethylamine Hydrolyzed Collagen`,
  'hydrolyzed large': `Hydrolyzed Wheat Protein; Hydrolysed Wheat Protein; HYDROLYZED  WHEAT  PROTEIN*; Hydrolyzed Wheat
Gluten; Hydrolyzed Rice Protein; Hydrolyzed Rice Bran Protein; Hydrolyzed Quinoa Protein; Hydrolyzed Oat Protein;
Hydrolyzed Soy Protein; Hydrolyzed Pea Protein; Hydrolyzed Vegetable Protein; Hydrolyzed Corn Protein; Hydrolyzed Barley
Protein; Hydrolyzed Lupine Protein; Hydrolyzed Sweet Almond Protein; Hydrolyzed Brazil Nut Protein; Hydrolyzed Hazelnut
Protein; Hydrolyzed Potato Protein; Hydrolyzed Sesame Protein; Hydrolyzed Jojoba Protein; Hydrolyzed Cottonseed Protein;
Hydrolyzed Amaranth Protein; Hydrolyzed Hemp Seed Protein; Hydrolyzed Avocado Protein; Hydrolyzed Zein;
Hydrolyzed Wheat Protein PG-Propyl Silanetriol; Hydrolyzed Wheat Protein/PVP Crosspolymer; Hydrolyzed Vegetable Protein
PG-Propyl Silanetriol; Hydrolyzed Soy Protein/Dimethicone PEG-7 Acetate; Hydrolyzed Silk PG-Propyl Methylsilanediol
Crosspolymer; PG-Hydrolyzed Wheat Protein; Hydrolyzed Yeast Protein`,
  'hydrolyzed unknown': `Hydrolyzed Marine Collagen; Hydrolyzed Egg Protein;
Hydrolyzed Albumen; Hydrolyzed Actin; Hydrolyzed Fibronectin;
Hydrolyzed Gadidae Protein; Hydrolyzed Serum Protein`,
  'quaternized small': `Cocodimonium Hydroxypropyl Hydrolyzed Keratin; Hydroxypropyltrimonium Hydrolyzed Keratin;
Hydroxypropyltrimonium Hydrolyzed Silk; Laurdimonium Hydroxypropyl Hydrolyzed Collagen; Steardimonium Hydroxypropyl
Hydrolyzed Keratin; Quaternium-79 Hydrolyzed Keratin; Benzyltrimonium Hydrolyzed Collagen; Triethonium Hydrolyzed
Collagen Ethosulfate; Cocodimonium Hydroxypropyl Hydrolyzed Hair Keratin`,
  'quaternized large': `Hydroxypropyltrimonium Hydrolyzed Wheat Protein; Laurdimonium Hydroxypropyl Hydrolyzed Wheat
Protein; Cocodimonium Hydroxypropyl Hydrolyzed Rice Protein; Laurdimonium Hydroxypropyl Hydrolyzed Soy Protein;
Steardimonium Hydroxypropyl Hydrolyzed Vegetable Protein; Soydimonium Hydroxypropyl Hydrolyzed Wheat Protein;
Wheat Germamidopropyldimonium Hydroxypropyl Hydrolyzed Wheat Protein; Laurdimonium Hydroxypropyl Hydrolyzed Jojoba
Protein; Hydroxypropyltrimonium Hydrolyzed Oat Protein; Hydroxypropyltrimonium Gelatin; Propyltrimonium Hydrolyzed Wheat
Protein; Hydroxypropyltrimonium Hydrolyzed Wheat Protein/Siloxysilicate`,
  // Free amino acids enter; those with a cationic chain are held on the surface.
  'quaternized unknown': `Hydroxypropyltrimonium Hydrolyzed Casein; Cocodimonium Hydroxypropyl Hydrolyzed Milk Protein;
Cocodimonium Hydroxypropyl Silk Amino Acids; Laurdimonium Hydroxypropyl Wheat Amino Acids`,
  'whole large': `Keratin; Soluble Keratin; Collagen; Soluble Collagen; Atelocollagen; Elastin; Gelatin; Silk; Silk
Powder; Serica; Sericin; Fibroin; Casein; Sodium Caseinate; Milk Protein; Lactis Proteinum; Whey Protein; Wheat Protein;
Triticum Vulgare Gluten; Triticum Vulgare (Wheat) Protein; Glycine Soja (Soybean) Protein; Avena Sativa (Oat) Kernel
Protein; Oryza Sativa (Rice) Bran Protein; Pisum Sativum (Pea) Protein; Prunus Amygdalus Dulcis Protein; Lupinus Albus
Protein; Zein; Serum Albumin; Lactoferrin; Fibronectin; Lysozyme; Papain; Bromelain; Superoxide Dismutase; Subtilisin;
Methylsilanol Elastinate; Rice Protein; Quinoa Protein; Vegetable Protein; Egg Protein; Gelatin Crosspolymer`,
  'protein-bearing unknown': `Milk; Lac; Caprae Lac; Goat Milk; Whole Dry Milk; Yogurt; Egg; Ovum; Egg Yolk; Albumen; Royal
Jelly; Yeast Extract; Faex; Saccharomyces Cerevisiae Extract; Saccharomyces Ferment Filtrate; Galactomyces Ferment
Filtrate; Saccharomyces/Rice Ferment Filtrate; Lactobacillus/Milk Ferment Filtrate; Avena Sativa (Oat) Kernel Flour;
Colloidal Oatmeal; Glycine Soja Seed Extract; Soymilk; Triticum Vulgare Germ Extract; Oryza Sativa Bran Extract;
Chenopodium Quinoa Seed; Hydrolyzed Milk; Hydrolyzed Yeast; Hydrolyzed Oats; Hydrolyzed Soy Flour; Hydrolyzed Egg Shell
Membrane; Hydrolyzed Wheat Flour; Hydrolyzed Royal Jelly; Hydrolyzed Fish Cartilage; Caviar Extract`,
  'protein-surfactant unknown': `Sodium Cocoyl Glutamate; Disodium Cocoyl Glutamate; Sodium Lauroyl Sarcosinate; Sodium
Cocoyl Glycinate; Potassium Cocoyl Glycinate; TEA-Cocoyl Glutamate; Sodium Lauroyl Glutamate; Sodium Cocoyl Alaninate;
Sodium Myristoyl Sarcosinate; Sodium Lauroyl Methyl Beta-Alaninate; Lauroyl Lysine; Capryloyl Glycine; Undecylenoyl
Glycine; Sodium Cocoyl Hydrolyzed Wheat Protein; Potassium Cocoyl Hydrolyzed Collagen; TEA-Cocoyl Hydrolyzed Collagen;
Sodium Lauroyl Oat Amino Acids; Sodium Cocoyl Amino Acids; Palmitoyl Silk Amino Acids; Sodium Cocoyl Apple Amino Acids;
Potassium Olivoyl Hydrolyzed Oat Protein; Sodium Stearoyl Soy Protein; Phytosteryl/Octyldodecyl Lauroyl Glutamate;
Ethyl Lauroyl Arginate HCl; Isostearoyl Hydrolyzed Collagen; Brassicyl Isoleucinate Esylate; Sodium Dilauramidoglutamide
Lysine; Sodium Palmitoyl Proline`,
  none: `Hydrolyzed Starch; Hydrolyzed Corn Starch; Hydrolyzed Wheat Starch; Hydrogenated Starch Hydrolysate;
Hydroxypropyltrimonium Hydrolyzed Wheat Starch; Hydrolyzed Hyaluronic Acid; Hydrolyzed Sodium Hyaluronate; Hydrolyzed
Jojoba Esters; Hydrolyzed Algae Extract; Hydrolyzed Rhizobian Gum; Hydrolyzed Candelilla Wax; Hydrolyzed Lecithin
Extract; Hydrolyzed Chitosan; Hydrolyzed Pectin; Hydrolyzed Olive Fruit; Hydrolyzed Pearl; Hydrolyzed Ethylene/MA
Copolymer; Hydrolyzed DNA; Hydrolyzed Honey; Hydrolyzed Adansonia Digitata Extract; Hydrolyzed Cellulose; Hydrolyzed
Beta-Glucan; Hydroxypropyltrimonium Honey; Hydrolyzed Caesalpinia Spinosa Gum; Betaine; Panthenol; Sodium PCA; PCA;
Glycerin; Glycine Soja Oil; Glycine Soja (Soybean) Oil; Glycine Soja Sterols; Glycine Soja Lipids; Avena Sativa Kernel
Oil; Triticum Vulgare Germ Oil; Triticum Vulgare Starch; Oryza Sativa Bran Oil; Oryza Sativa Starch; Zea Mays Starch;
Zea Mays Silk Extract; Caesalpinia Spinosa Gum; Mica; Taurine; Sodium Methyl Cocoyl Taurate; Sodium Cocoyl Isethionate;
Carnosic Acid; Cysteamine HCl; Trehalose; Urea; Inositol; Biotin; Niacinamide; Collinsonia Canadensis Extract; Sodium
Hydroxymethylglycinate; Tetrasodium Glutamate Diacetate; Trisodium Dicarboxymethyl Alaninate; Cocamidopropyl Betaine;
Milk Lipids; Egg Oil; Milkamidopropyl Betaine; Shellac; Polyquaternium-10; Ammonium Acryloyldimethyltaurate/VP Copolymer;
Lactobacillus Ferment; Leuconostoc/Radish Root Ferment Filtrate; Myristyl Propionate; Asparagus Officinalis Extract;
Citrullus Lanatus Fruit Extract; Lactic Acid; Sodium Lactate; Cocos Nucifera Oil; Coconut Milk; Arginine Silicate
Wonder; Cetyl Alcohol; Phosphatidylserine; Sericite; Elastomer; Gelatinous`,
};

const lookup = createLookup(entries, patterns, limits);

for (const [is, names] of Object.entries(truth))
  describe(is, () => {
    it.each(names.split(/;\s+/).map((name) => name.replace(/\n/g, ' ')))('%s', (name) => {
      const { protein } = lookup.known(lookup.find(name));
      expect(protein ? `${protein.kind} ${protein.size}` : 'none').toBe(is);
    });
  });

it('a few hundred of them', () => {
  expect(Object.values(truth).join(';').split(';').length).toBeGreaterThan(300);
});

it('named peptides are below any dose (CIR 2018: typical use below 10 ppm); hydrolysates and amino acids are not', () => {
  const minute = (name: string) => lookup.known(lookup.find(name)).protein?.minute ?? false;
  for (const name of [
    'Palmitoyl Tripeptide-1',
    'Acetyl Hexapeptide-8',
    'sh-Polypeptide-1',
    'Palmitoyl Oligopeptide',
  ])
    expect(minute(name), name).toBe(true);
  for (const name of [
    'Hydrolyzed Keratin',
    'Silk Amino Acids',
    'Glycine Soja Peptide',
    'Glutathione',
    'Keratin',
  ])
    expect(minute(name), name).toBe(false);
});

it('wheat: at most 3,500 Da on average in the EU (Regulation (EU) 2017/2228), and the reader is told practice differs', () => {
  const { protein, allergens } = lookup.known(lookup.find('Hydrolyzed Wheat Protein'));
  expect(protein?.daltons?.max).toBe(3500);
  expect(protein?.disagreement).toBe('page.disagree.wheat');
  expect(protein?.sources).toContain('eu-2017-2228');
  expect(allergens).toContain('wheat');
});

it('keratin: the sizes studied in hair, 221 to 75,440 Da (Malinauskyte 2021)', () => {
  const { protein } = lookup.known(lookup.find('Hydrolyzed Keratin'));
  expect(protein?.daltons).toEqual({ min: 221, max: 75440 });
  expect(protein?.disagreement).toBe('page.disagree.keratin');
});

it.each([
  ['Hydrolyzed Wheat Protein', 'wheat'],
  ['Wheat Amino Acids', 'wheat'],
  ['Hydroxypropyltrimonium Hydrolyzed Wheat Protein', 'wheat'],
  ['Triticum Vulgare (Wheat) Germ Protein', 'wheat'],
  ['Cocodimonium Hydroxypropyl Hydrolyzed Wheat Protein', 'wheat'],
  ['Hydrolyzed Wheat Protein PG-Propyl Silanetriol', 'wheat'],
  ['Sodium Lauroyl Wheat Amino Acids', 'wheat'],
  ['Hydrolyzed Wheat Gluten', 'wheat'],
  ['Hydrolyzed Milk Protein', 'milk'],
  ['Sodium Caseinate', 'milk'],
  ['Lactis Proteinum', 'milk'],
  ['Hydrolyzed Soy Protein', 'soy'],
  ['Glycine Soja Protein', 'soy'],
  ['Hydrolyzed Egg Protein', 'egg'],
  ['Lysozyme', 'egg'],
  ['Hydrolyzed Oat Protein', 'oat'],
  ['Sodium Lauroyl Oat Amino Acids', 'oat'],
  ['Hydrolyzed Sweet Almond Protein', 'nut'],
  ['Hydrolyzed Sesame Protein', 'sesame'],
  ['Hydrolyzed Fish Protein', 'fish'],
] as const)('%s is on the avoid list under %s', (name, family) => {
  expect(lookup.known(lookup.find(name)).allergens).toContain(family);
});
