// Pages on which nothing may show: they talk of ingredients and carry no list of a cosmetic product.
type Silent = { title: string; body: string };

const sheet = (inside: string) => `<section class="sheet">${inside}</section>`;

export const silentPages: Record<string, Silent> = {
  '/journal/flapjacks': {
    title: 'Flapjacks for a long crossing',
    body: `<h1>Flapjacks for a long crossing</h1>${sheet(
      '<h2>Ingredients</h2><ul><li>250 g rolled oats</li><li>150 g butter</li><li>100 g honey</li><li>1 tbsp coconut oil</li><li>a pinch of sea salt</li></ul><h2>Method</h2><p>Melt, stir, press, bake for 25 minutes at 180 °C.</p>',
    )}`,
  },
  '/journal/avocado-mash': {
    title: 'An avocado mash for toast',
    body: `<h1>An avocado mash for toast</h1>${sheet(
      '<p>Ingredients: avocado, olive oil, lemon juice, water, salt, citric acid, honey, sunflower seeds, aloe vera juice.</p>',
    )}`,
  },
  '/goods/ships-cat-dinner': {
    title: 'Ship’s Cat Dinner',
    body: `<h1>Ship’s Cat Dinner</h1><p class="maker">Tidewhit Bros.</p>${sheet(
      '<h2>Composition</h2><p>Chicken meal (32 %), maize, hydrolysed chicken protein, wheat gluten, beet pulp, salmon oil, minerals, yeast, glycerin, taurine.</p><h2>Analytical constituents</h2><p>Crude protein 34 %, crude fat 14 %, crude ash 7 %.</p>',
    )}`,
  },
  '/goods/harbour-biscuits': {
    title: 'Harbour Biscuits',
    body: `<h1>Harbour Biscuits</h1>${sheet(
      '<h2>Ingredients</h2><p>Wheat flour, sugar, butter (milk), whole egg, glucose syrup, raising agent (sodium bicarbonate), salt, emulsifier (soya lecithin), flavouring. May contain nuts.</p><h2>Nutrition</h2><p>Energy 1980 kJ, protein 6.1 g per 100 g.</p>',
    )}`,
  },
  '/goods/deckhand-whey-powder': {
    title: 'Deckhand Whey Powder',
    body: `<h1>Deckhand Whey Powder</h1>${sheet(
      '<h2>Supplement facts</h2><p>Serving size 30 g.</p><h2>Ingredients</h2><p>Whey protein concentrate, hydrolyzed whey protein, cocoa powder, xanthan gum, lecithin, sucralose, glycine, L-leucine.</p><p>Take with water. Do not exceed the daily dose.</p>',
    )}`,
  },
  '/goods/steadying-drops': {
    title: 'Steadying Drops',
    body: `<h1>Steadying Drops</h1>${sheet(
      '<h2>Active ingredient (in each tablet)</h2><p>Imaginarine hydrochloride 25 mg</p><h2>Inactive ingredients</h2><p>Colloidal silicon dioxide, corn starch, lactose monohydrate, magnesium stearate, microcrystalline cellulose.</p><h2>Directions</h2><p>Adults: one tablet, before the boat sails.</p>',
    )}`,
  },
  '/journal/fitting-a-wash-day': {
    title: 'Fitting a wash day into a working week',
    body: `<h1>Fitting a wash day into a working week</h1><article class="sheet"><p>People ask at the counter which ingredients matter. We tell them about hydrolyzed wheat protein, glycerin and fatty alcohols such as cetearyl alcohol, and then we ask when they last slept.</p><p>A conditioner with behentrimonium methosulfate gives slip; shea butter seals; panthenol draws water. None of that helps on a Tuesday at six in the morning.</p><h2>Ingredients we like</h2><p>There is no single list. Read the label, patch-test, and keep notes.</p></article>`,
  },
  '/goods/empty-jar': {
    title: 'Empty Jar',
    body: `<h1>Empty Jar</h1><p>Holds 100 ml of whatever you stir.</p>${sheet(
      '<h2>Formulated without</h2><p>Sodium Lauryl Sulfate, Methylparaben, Propylparaben, Mineral Oil, Dimethicone, Phthalates, Phenoxyethanol, Hydrolyzed Wheat Protein, Parfum, Methylisothiazolinone.</p>',
    )}`,
  },
  '/filter': {
    title: 'Find goods by ingredient',
    body: `<h1>Find goods by ingredient</h1><form class="filters"><h2>Ingredients</h2>${[
      'Glycerin',
      'Panthenol',
      'Hydrolyzed Keratin',
      'Hydrolyzed Silk',
      'Cetearyl Alcohol',
      'Shea Butter',
      'Argan Oil',
      'Aloe',
      'Betaine',
      'Squalane',
      'Dimethicone',
      'Citric Acid',
    ]
      .map((name) => `<label><input type="checkbox"> ${name} (${name.length})</label><br>`)
      .join('')}</form>`,
  },
  '/help': {
    title: 'Help',
    body: `<h1>Help</h1>${sheet('<h2>Where are the ingredients?</h2><p>On each page, and on the jar. If they differ, the jar is right.</p><h2>Carriage</h2><p>By cart on Tuesdays; by boat when there is one.</p>')}`,
  },
};
