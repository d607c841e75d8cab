import type { Made } from './make-pages.ts';
import { claim, dice, goodFor, price, shell } from './make-parts.ts';

type Roll = ReturnType<typeof dice>;
const page = (roll: Roll, title: string, rest: string) =>
  shell(roll, `<h1>${title}</h1>${price(roll)}<p>${claim(roll)}</p>${rest}`);

const foods = [
  'Wheat Flour (with Calcium, Iron, Niacin, Thiamin), Sugar, Palm Oil, Rapeseed Oil, Glucose-Fructose Syrup, Whey Powder (Milk), Salt, Raising Agents (Sodium Bicarbonate, Ammonium Bicarbonate), Emulsifier (Soya Lecithin), Flavouring',
  'Water, Tomato Purée, Sunflower Oil, Sugar, Modified Corn Starch, Salt, Citric Acid, Xanthan Gum, Potassium Sorbate, Sodium Benzoate, Natural Flavor, Disodium EDTA',
  'Carbonated Water, Sugar, Citric Acid, Sodium Citrate, Natural Flavors, Potassium Sorbate, Caffeine, Niacinamide, Sucralose, Taurine, Glucuronolactone, Inositol, Pyridoxine Hydrochloride, Yellow 5',
  'Zucker, Kakaobutter, Vollmilchpulver, Kakaomasse, Haselnüsse, Emulgator: Lecithine (Soja), Vanilleextrakt',
  'Sugar, Glucose Syrup, Gelatin, Citric Acid, Malic Acid, Coconut Oil, Carnauba Wax, Natural and Artificial Flavors, Red 40, Yellow 5, Blue 1, Titanium Dioxide, Mineral Oil',
  'Pain: farine de blé, eau, levure, sel, huile de tournesol, émulsifiant : E471, conservateur : propionate de calcium',
  'Coconut Oil, Honey, Almonds, Dates, Cocoa Butter, Sea Salt, Vanilla Extract, Sunflower Lecithin',
];
const pets = [
  'Deboned Chicken, Chicken Meal, Oatmeal, Barley, Menhaden Fish Meal, Chicken Fat (preserved with Mixed Tocopherols), Taurine, Glycerin, DL-Methionine, Choline Chloride, Zinc Amino Acid Chelate, Biotin, Calcium Pantothenate, Sodium Selenite, Rosemary Extract, Yucca Schidigera Extract, Dried Lactobacillus Acidophilus Fermentation Product',
  'Ground Yellow Corn, Meat and Bone Meal, Soybean Meal, Animal Fat preserved with BHT, Propylene Glycol, Salt, Potassium Chloride, Sorbic Acid, Titanium Dioxide, Niacin, Copper Sulfate, Vitamin E Supplement',
];
const pills = [
  'Microcrystalline Cellulose, Lactose Monohydrate, Croscarmellose Sodium, Hypromellose, Magnesium Stearate, Titanium Dioxide, Polyethylene Glycol, Polysorbate 80, Iron Oxide Red, Carnauba Wax, Colloidal Silicon Dioxide',
  'Citric acid, FD&C Red No. 40, flavors, glycerin, propylene glycol, purified water, sodium benzoate, sodium citrate, sorbitol, sucralose, xanthan gum',
  'Gelatin, Glycerin, Purified Water, Polyethylene Glycol 400, Povidone, Sorbitol, FD&C Blue #1, Pharmaceutical Ink',
];
const supplements = [
  'Vitamin C (as Ascorbic Acid), Biotin, Zinc (as Zinc Gluconate), Hydrolyzed Collagen Peptides (Bovine), Hyaluronic Acid, Vegetable Capsule (Hypromellose), Rice Flour, Magnesium Stearate, Silicon Dioxide',
  'Whey Protein Isolate, Cocoa Powder, Natural Flavors, Sunflower Lecithin, Xanthan Gum, Sucralose, Salt, L-Leucine, L-Glutamine, Taurine',
  'Ashwagandha Root Extract, Panax Ginseng Root Extract, Rhodiola Rosea Extract, Green Tea Leaf Extract, Vegetable Cellulose, Maltodextrin, Silica',
];

/** Pages on which nothing may be shown. */
const makers: Record<string, (roll: Roll) => string> = {
  'recipe-list': (roll) =>
    page(
      roll,
      'Harbour pancakes',
      `<h2>Ingredients</h2><ul><li>2 cups flour</li><li>3 tbsp sugar</li><li>1 tsp baking powder</li><li>2 eggs</li><li>1 cup milk</li><li>Coconut oil, for frying</li><li>Honey</li></ul><h2>Method</h2><ol><li>Whisk.</li></ol>`,
    ),
  'recipe-home-cosmetic': (roll) =>
    shell(
      roll,
      `<article><h1>A flaxseed gel for the kitchen table</h1><h2>Ingredients</h2><ul><li>4 tbsp flax seeds</li><li>2 cups water</li><li>1 tsp argan oil</li><li>A few drops of lavender essential oil</li></ul><h2>Steps</h2><p>Simmer, strain, cool.</p></article>`,
    ),
  'food-paragraph': (roll) =>
    page(
      roll,
      'Larder goods',
      `<p><strong>Ingredients:</strong> ${roll.pick(foods)}.</p><p>Allergens in bold.</p>`,
    ),
  'food-accordion': (roll) =>
    page(
      roll,
      'Larder goods',
      `<details><summary><h2>Ingredients</h2></summary><div class="rte"><p>${roll.pick(foods)}</p></div></details>`,
    ),
  'food-table': (roll) =>
    page(
      roll,
      'Larder goods',
      `<table><tr><th>Zutaten</th><td data-th="Zutaten">${roll.pick(foods)}</td></tr></table>`,
    ),
  'pet-food': (roll) =>
    page(roll, 'Kennel supper', `<div class="tab"><h3>Ingredients</h3><p>${roll.pick(pets)}.</p></div>`),
  pills: (roll) =>
    page(
      roll,
      'Relief tablets',
      `<h3>Drug facts</h3><p>Active ingredient: Ibuprofen 200 mg</p><p>Inactive ingredients: ${roll.pick(pills)}</p>`,
    ),
  supplement: (roll) => page(roll, 'Daily strength', `<p>Other ingredients: ${roll.pick(supplements)}.</p>`),
  'article-about-names': (roll) =>
    shell(
      roll,
      `<article><h1>How to read a label</h1><p>Humectants such as glycerin, panthenol, propanediol, sodium PCA, betaine and honey draw water. Emollients include cetyl alcohol, isopropyl palmitate, shea butter and caprylic/capric triglyceride, while silicones like dimethicone, amodimethicone and cyclopentasiloxane smooth the strand.</p><h2>Ingredients worth knowing</h2><p>Phenoxyethanol keeps a product fresh. Hydrolyzed proteins, in our view, are best used with care.</p></article>`,
    ),
  'article-avoid': (roll) =>
    shell(
      roll,
      `<article><h1>Ingredients to avoid on low-porosity hair</h1><ul><li>Dimethicone</li><li>Mineral Oil</li><li>Petrolatum</li><li>Isopropyl Alcohol</li><li>Sodium Lauryl Sulfate</li><li>Cocamide DEA</li><li>Methylparaben</li><li>Propylparaben</li></ul><p>${claim(roll)}</p></article>`,
    ),
  'free-from': (roll) =>
    page(
      roll,
      goodFor(roll),
      `<h3>Formulated without</h3><p>Parabens, Sodium Lauryl Sulfate, Sodium Laureth Sulfate, Phthalates, Mineral Oil, Petrolatum, Formaldehyde, Triclosan, Dimethicone, Methylisothiazolinone</p>`,
    ),
  'free-from-sentence': (roll) =>
    page(
      roll,
      goodFor(roll),
      `<h3>Our ingredients</h3><p>We never use sodium lauryl sulfate, sodium laureth sulfate, parabens, mineral oil, petrolatum, dimethicone, cyclopentasiloxane, propylene glycol or phenoxyethanol.</p>`,
    ),
  'ohne-liste': (roll) =>
    page(
      roll,
      goodFor(roll),
      `<p><b>Frei von:</b> Parabene, Silikone, Mineral Oil, Sodium Laureth Sulfate, PEG-7, Phenoxyethanol, Dimethicone, Paraffinum Liquidum</p><p>Ohne Parfum, ohne Alcohol Denat., ohne CI 77891.</p>`,
    ),
  'key-ingredients': (roll) =>
    page(
      roll,
      goodFor(roll),
      `<h2>Key ingredients</h2><ul><li>Argan oil</li><li>Shea butter</li><li>Panthenol</li><li>Hydrolyzed Silk</li></ul>`,
    ),
  'key-cards': (roll) =>
    page(
      roll,
      goodFor(roll),
      `<h2>Hero ingredients</h2><div class="cards"><div><h3>Argania Spinosa Kernel Oil</h3><p>Softens the ends.</p></div><div><h3>Hydrolyzed Rice Protein</h3><p>Forms a light film.</p></div><div><h3>Panthenol</h3><p>Draws water.</p></div></div><p>Star ingredients: Hydrolyzed Keratin, Panthenol, Shea Butter, Betaine</p>`,
    ),
  filters: (roll) =>
    shell(
      roll,
      `<aside><h3>Ingredients</h3><form><ul>${['Argan Oil', 'Betaine', 'Coconut Oil', 'Hydrolyzed Keratin', 'Hydrolyzed Silk', 'Panthenol', 'Shea Butter', 'Tea Tree Oil', 'Hyaluronic Acid', 'Glycerin'].map((name) => `<li><label><input type="checkbox"> ${name} <span>(${roll.int(1, 90)})</span></label></li>`).join('')}</ul></form></aside><h1>Hair</h1><p>${claim(roll)}</p>`,
    ),
  glossary: (roll) =>
    shell(
      roll,
      `<h1>Ingredient glossary</h1><ul>${['Allantoin', 'Amodimethicone', 'Behentrimonium Chloride', 'Betaine', 'Bisabolol', 'Caprylyl Glycol', 'Cetearyl Alcohol', 'Cetrimonium Chloride', 'Coco-Glucoside', 'Decyl Glucoside', 'Dimethicone', 'Glycol Distearate', 'Panthenol', 'Polyquaternium-10', 'Squalane'].map((name) => `<li><a href="/i/${name}">${name}</a></li>`).join('')}</ul>`,
    ),
  'glossary-texts': (roll) =>
    shell(
      roll,
      `<h1>Our ingredients</h1><dl>${['Panthenol', 'Behentrimonium Chloride', 'Cetearyl Alcohol', 'Hydrolyzed Oat Protein'].map((name) => `<dt>${name}</dt><dd>${claim(roll)} It is found in many rinses.</dd>`).join('')}</dl>`,
    ),
  category: (roll) =>
    shell(
      roll,
      `<h1>Oils and butters</h1><ul>${Array.from({ length: 12 }, (_, i) => `<li><a href="/p/${i}"><h3>${roll.pick(['Argan Oil', 'Jojoba Oil', 'Shea Butter', 'Castor Oil', 'Rosehip Oil', 'Panthenol Mist'])}</h3></a><p>€ ${roll.int(4, 20)}.00</p><button>Add</button></li>`).join('')}</ul>`,
    ),
  fabric: (roll) =>
    page(
      roll,
      'Satin bonnet',
      `<table><tr><th>Composition</th><td>92% Polyester, 8% Elastane</td></tr><tr><th>Care</th><td>Wash by hand</td></tr></table>`,
    ),
  'safety-sheet': (roll) =>
    page(
      roll,
      'Boat varnish',
      `<h2>3. Composition / information on ingredients</h2><table><tr><th>Name</th><th>CAS</th><th>%</th></tr><tr><td>n-Butyl acetate</td><td>123-86-4</td><td>10-25</td></tr><tr><td>Xylene</td><td>1330-20-7</td><td>5-10</td></tr><tr><td>Isopropyl alcohol</td><td>67-63-0</td><td>1-5</td></tr><tr><td>2-Methoxy-1-methylethyl acetate</td><td>108-65-6</td><td>1-5</td></tr><tr><td>Methyl methacrylate</td><td>80-62-6</td><td>1-3</td></tr></table>`,
    ),
  'home-page': (roll) =>
    shell(
      roll,
      `<h1>Harrow Lane Sundries</h1><p>${claim(roll)}</p><h2>What’s inside</h2><p>Good ingredients, honest prices. Coconut, shea, argan, oats: we buy from small growers.</p><p>Ingredients matter: that is why every batch is tested.</p>`,
    ),
  'review-talk': (roll) =>
    shell(
      roll,
      `<h1>Questions</h1><p>Does it contain protein? I avoid hydrolyzed wheat protein, hydrolyzed keratin, silk amino acids.</p><p>No, but it has cetearyl alcohol, behentrimonium methosulfate, panthenol and glycerin, which my hair loves.</p>`,
    ),
  'link-only': (roll) =>
    page(
      roll,
      goodFor(roll),
      `<h3>Ingredients</h3><p><a href="/files/list.pdf">Click here for the full list of ingredients</a></p>`,
    ),
};

export function silentPages(): Made[] {
  const pages: Made[] = [];
  let seed = 1;
  for (const [name, make] of Object.entries(makers)) {
    const rolls = /food|pills|supplement|pet/.test(name) ? 7 : 1;
    for (let i = 1; i <= rolls; i++)
      pages.push({
        id: `silent-${name}-${i}`,
        why: `silent: ${name.replaceAll('-', ' ')}`,
        body: make(dice(9000 + seed++)),
        lists: [],
      });
  }
  return pages;
}
