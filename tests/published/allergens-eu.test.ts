// Fragrance allergens that EU labels name: Annex III of Regulation (EC) No 1223/2009 as amended by Regulation
// (EU) 2023/1545 (24 named before, 56 added, 80 in all; the count depends on grouping). The substances below were
// written from memory, not confirmed against the text, with one or more INCI names for each.
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';

const before = `Amyl Cinnamal; Benzyl Alcohol; Cinnamyl Alcohol; Citral; Eugenol; Hydroxycitronellal; Isoeugenol;
  Amylcinnamyl Alcohol; Benzyl Salicylate; Cinnamal; Coumarin; Geraniol; Anise Alcohol; Benzyl Cinnamate; Farnesol;
  Linalool; Benzyl Benzoate; Citronellol; Hexyl Cinnamal; Limonene; Methyl 2-Octynoate; Alpha-Isomethyl Ionone;
  Evernia Prunastri Extract; Evernia Furfuracea Extract`;
const added = `Acetyl Cedrene; Amyl Salicylate; Anethole; Benzaldehyde; Camphor; Beta-Caryophyllene; Carvone;
  Dimethyl Phenethyl Acetate; Hexadecanolactone; Hexamethylindanopyran; Linalyl Acetate; Menthol;
  Trimethylcyclopentenyl Methylisopentenol; Salicylaldehyde; Santalol; Sclareol; Terpineol;
  Tetramethyl Acetyloctahydronaphthalenes; Trimethylbenzenepropanol; Vanillin; Methyl Salicylate; Eugenyl Acetate;
  Geranyl Acetate; Isoeugenyl Acetate; Pinene; 3-Propylidenephthalide; Rose Ketone-4; Alpha-Terpinene; Terpinolene;
  Turpentine; Cananga Odorata Flower Oil; Cedrus Atlantica Bark Oil; Cinnamomum Cassia Leaf Oil;
  Cinnamomum Zeylanicum Bark Oil; Citrus Aurantium Amara Flower Oil; Citrus Aurantium Dulcis Peel Oil;
  Citrus Aurantium Bergamia Fruit Oil; Citrus Limon Peel Oil; Cymbopogon Schoenanthus Oil;
  Eucalyptus Globulus Leaf Oil; Eugenia Caryophyllus Bud Oil; Jasminum Officinale Oil; Juniperus Virginiana Oil;
  Laurus Nobilis Leaf Oil; Lavandula Angustifolia Oil; Mentha Piperita Oil; Mentha Viridis Leaf Oil;
  Narcissus Poeticus Flower Extract; Pelargonium Graveolens Flower Oil; Pinus Mugo Leaf Oil; Pinus Pumila Twig Leaf Oil;
  Pogostemon Cablin Leaf Oil; Rosa Damascena Flower Oil; Santalum Album Oil; Myroxylon Pereirae Resin`;
const split = (names: string) => names.split(';').map((name) => name.trim());
const lookup = createLookup(entries, patterns, limits);
const known = (name: string) => lookup.known(lookup.find(name));

it.each([...split(before), ...split(added)])('%s is a fragrance allergen', (name) => {
  expect(known(name).roles).toContain('fragrance-allergen');
  expect(known(name).allergens).toContain('fragrance');
});

it('24 named before 2023', () => {
  expect(split(before)).toHaveLength(24);
  expect(split(added).length).toBeGreaterThan(50);
});

// Named on older labels, prohibited since (Annex II): still shown as allergens.
it.each(['Butylphenyl Methylpropional', 'Hydroxyisohexyl 3-Cyclohexene Carboxaldehyde'])('%s', (name) => {
  expect(known(name).roles).toContain('fragrance-allergen');
});

it.each([
  'Cocos Nucifera Oil',
  'Lavandula Angustifolia',
  'Phenoxyethanol',
  'Cetyl Alcohol',
  'Sodium Benzoate',
])('%s is none', (name) => expect(known(name).roles).not.toContain('fragrance-allergen'));

// Collective label names of Annex III as amended by Regulation (EU) 2023/1545.
it.each(
  split(`Pinus Mugo; Pinus Pumila; Cedrus Atlantica Oil/Extract; Myroxylon Pereirae Oil/Extract; Rose Ketones; Lippia
    Citriodora Absolute; Cananga Odorata Oil/Extract; Citrus Aurantium Flower Oil; Citrus Aurantium Peel Oil; Citrus
    Aurantium Bergamia Peel Oil; Lemongrass Oil; Eucalyptus Globulus Oil; Eugenia Caryophyllus Oil; Jasmine Oil/Extract;
    Lavandula Oil/Extract; Mentha Viridis Leaf Oil; Narcissus Extract; Pogostemon Cablin Oil; Rose Flower Oil/Extract`).map(
    (name) => [name.replace(/\s+/g, ' ')],
  ),
)('%s is a fragrance allergen', (name) => expect(known(name!).roles).toContain('fragrance-allergen'));
