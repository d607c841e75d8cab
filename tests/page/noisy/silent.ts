// Pages that hold no list of a cosmetic and tempt by its names: forms, law, trade, kitchens and other goods.
import { formula } from '../other/names.ts';
import { calledBy, escaped, type Shop, talk } from './shop.ts';

type Silent = (shop: Shop) => { title?: string; html: string };
const few = ({ roll }: Shop, count: number) => formula(roll, count, 0).map(escaped);
const items = (rows: readonly string[], tag = 'ul') =>
  `<${tag}>${rows.map((row) => `<li>${row}</li>`).join('')}</${tag}>`;
const shared =
  'Glycerin|Citric Acid|Coconut Oil|Shea Butter|Honey|Aloe Vera|Olive Oil|Sea Salt|Xanthan Gum|Beeswax|Green Tea|Vitamin E|Lecithin|Sunflower Oil'.split(
    '|',
  );

export const silent: Record<string, Silent> = {
  'boxes of a filter': (shop) => ({
    html: `<aside><form><fieldset><legend>${shop.tongue.heads[0]}</legend>${few(shop, 12)
      .map(
        (name) =>
          `<label><input type="checkbox" name="f"> ${name}${shop.roll.pick(['', ` (${1 + shop.roll.below(40)})`])}</label>`,
      )
      .join(
        '',
      )}</fieldset><button>OK</button></form></aside><p>${calledBy(shop.roll, shop.tongue)}</p><p>${calledBy(shop.roll, shop.tongue)}</p>`,
  }),
  'questions of a quiz': (shop) => ({
    title: 'Find your routine',
    html: `<form><h2>Which of these does your scalp dislike?</h2>${few(shop, 8)
      .map((name) => `<label><input type="checkbox"> ${name}</label><br>`)
      .join('')}<button>Next</button></form>`,
  }),
  'a list to choose from': (shop) => ({
    html: `<label>${shop.tongue.heads[0]} <select multiple>${few(shop, 14)
      .map((name) => `<option>${name}</option>`)
      .join('')}</select></label>`,
  }),
  'state with facets': (shop) => ({
    html: `<p>${talk(shop)}</p><script id="__NEXT_DATA__" type="application/json">${JSON.stringify({
      facets: { ingredients: few(shop, 14) },
    })}</script>`,
  }),
  'state with what is left out': (shop) => ({
    html: `<p>${talk(shop)}</p><script id="__NEXT_DATA__" type="application/json">${JSON.stringify({
      product: { title: shop.title, freeFrom: few(shop, 9).join(', ') },
    })}</script>`,
  }),
  'sheet of safety': (shop) => ({
    title: 'Safety data sheet 1907/2006',
    html: `<h3>SECTION 3: Composition/information on ingredients</h3><table><tr><th>Substance</th><th>CAS</th><th>EC</th><th>H-phrases</th><th>w/w</th></tr>${[
      'Sodium Laureth Sulfate',
      'Cocamidopropyl Betaine',
      'Limonene',
      'Sodium Hydroxide',
    ]
      .map(
        (name) =>
          `<tr><td>${name}</td><td>68-${shop.roll.below(99)}-1</td><td>500-2</td><td>H318, H412</td><td>5 – 10 %</td></tr>`,
      )
      .join('')}</table><p>Multi-surface cleaner, concentrate.</p>`,
  }),
  'tea of leaves': ({ roll, tongue }) => ({
    title: 'Harbour Evening, loose leaf 80 g',
    html: `<h3>${tongue.heads[0]}</h3><p>${roll
      .some(
        [
          'Camellia Sinensis Leaf',
          'Mentha Piperita Leaf',
          'Hibiscus Sabdariffa Flower',
          'Chamomilla Recutita Flower',
          'Rosa Canina Fruit',
          'Melissa Officinalis Leaf',
          'Calendula Officinalis Flower',
          'natural flavouring',
        ],
        5,
      )
      .join(', ')}</p><p>Steep one bag in boiling water for five minutes. Organic tea.</p>`,
  }),
  'liquid to be smoked': ({ tongue }) => ({
    title: 'Fog Machine E-Liquid 10 ml, 6 mg',
    html: `<p>${tongue.heads[0]}: Propylene Glycol, Vegetable Glycerin, Water, Flavouring, Nicotine (0.6 %). 50 VG / 50 PG.</p><p>This product contains nicotine, which is addictive.</p>`,
  }),
  'a candle': ({ tongue }) => ({
    title: 'Boathouse Candle, 40 h',
    html: `<p>${tongue.heads[0]}: soy wax, coconut wax, fragrance oil, cotton wick. Burn time 40 hours. Contains Linalool, Limonene, Coumarin: may produce an allergic reaction.</p>`,
  }),
  'sweets and gum': ({ tongue }) => ({
    title: 'Pebble Gum, sugar-free',
    html: `<p>${tongue.heads[0]}: sorbitol, gum base, xylitol, glycerin, mannitol, flavouring, lecithin, citric acid, colour titanium dioxide, antioxidant BHT. Nutrition per 100 g: 640 kJ, carbohydrate 62 g.</p>`,
  }),
  'a drink': ({ tongue }) => ({
    title: 'Sparkling Hibiscus 330 ml',
    html: `<h4>${tongue.heads[0]}</h4><p>Water, Sugar, Citric Acid, Hibiscus Extract, Ascorbic Acid, Potassium Sorbate, Sodium Benzoate, Xanthan Gum</p><p>Energy 96 kJ / 23 kcal per 100 ml. Serve cold.</p>`,
  }),
  'capsules with a shell': ({ tongue }) => ({
    title: 'Sea Berry Capsules 60 pcs',
    html: `<p>${tongue.heads[0]}: Hippophae Rhamnoides Fruit Oil, Gelatin, Glycerin, Tocopherol, Water. Take two capsules a day with food. Dietary supplement.</p>`,
  }),
  'paint for walls': ({ tongue }) => ({
    title: 'Chalk Paint, Slate',
    html: `<p>${tongue.heads[0]}: Water, Calcium Carbonate, Titanium Dioxide, Kaolin, Xanthan Gum, CI 77499, Methylisothiazolinone. Covers 12 m² per litre. Two coats.</p>`,
  }),
  'cubes for the garden': ({ tongue }) => ({
    title: 'Seaweed feed for tomatoes 1 l',
    html: `<p>${tongue.heads[0]}: Ascophyllum Nodosum Extract, Urea, Citric Acid, Potassium Hydroxide, Magnesium Sulfate. NPK 4-2-6. Dilute 1:200 and water the soil.</p>`,
  }),
  'bowls for fish': () => ({
    title: 'Flakes for Cichlids 250 ml',
    html: '<p>Composition: fish meal, spirulina, wheat, lecithin, sodium alginate. Analytical constituents: crude protein 46 %, crude fat 8 %, crude ash 9 %.</p>',
  }),
  'law, annexes': (shop) => ({
    title: 'Annex II: list of substances prohibited',
    html: `<table>${few(shop, 14)
      .map(
        (name, at) =>
          `<tr><td>${300 + at}</td><td>${name}</td><td>${50 + shop.roll.below(900)}-11-${shop.roll.below(9)}</td></tr>`,
      )
      .join('')}</table>`,
  }),
  'claims of a patent': (shop) => ({
    title: 'Composition for keratin fibres',
    html: `<p>1. A composition comprising at least one agent chosen from ${few(shop, 6).join(', ')} and mixtures thereof, in an amount of from 0.1 to 10 % by weight.</p><p>2. The composition of claim 1, further comprising ${few(shop, 4).join(', ')} or a salt thereof.</p>`,
  }),
  'drums of a supplier': (shop) => ({
    title: 'Price list, raw materials',
    html: `<table><tr><th>Article</th><th>1 kg</th><th>25 kg</th></tr>${few(shop, 12)
      .map(
        (name) =>
          `<tr><td><a href="/rm">${name}</a></td><td>${4 + shop.roll.below(30)}.90</td><td>${90 + shop.roll.below(300)}.00</td></tr>`,
      )
      .join('')}</table>`,
  }),
  'bench of a laboratory': (shop) => ({
    title: 'Practical 4: emulsions',
    html: `<h3>Materials</h3>${items(few(shop, 7).map((name) => `${name}, ${1 + shop.roll.below(40)} g`))}<h3>Method</h3><p>Heat both beakers to 70 °C, pour and stir until cool. Record the viscosity.</p>`,
  }),
  'cards to learn': (shop) => ({
    title: 'Flash cards: hair chemistry',
    html: few(shop, 10)
      .map((name, at) => `<div class="card"><div>${at + 1}/10</div><div>${name}</div><div>?</div></div>`)
      .join(''),
  }),
  'what we never use': (shop) => ({
    title: 'Our promise',
    html: `<h2>The no list</h2><p>You will never find these in our jars:</p>${items(few(shop, 14))}`,
  }),
  'what to look out for': (shop) => ({
    title: 'Seven things to skip this winter',
    html: few(shop, 7)
      .map(
        (name, at) =>
          `<h3>${at + 1}. ${name}</h3><p>${talk(shop)} On the label it hides behind many names.</p>`,
      )
      .join(''),
  }),
  'tags of a blog': (shop) => ({
    title: 'Journal',
    html: `<p>${talk(shop)}</p><div class="tags">${few(shop, 16)
      .map((name) => `<a href="/t" rel="tag">${name}</a>`)
      .join(' ')}</div>`,
  }),
  'others searched for': (shop) => ({
    title: 'Search: gel',
    html: `<h4>Popular</h4>${items(few(shop, 8).map((name) => `<a href="/s?q">${name}</a>`))}<p>0</p>`,
  }),
  'goods called by what is in them': (shop) => ({
    title: 'All goods',
    html: shop.roll
      .some(shared, 9)
      .map(
        (name) =>
          `<div class="card"><a href="/p"><h3>${name} ${shop.tongue.goods[1]}</h3></a><b>9,90</b></div>`,
      )
      .join(''),
  }),
  'stars only': (shop) => ({
    html: `<h3>Star ingredients</h3>${few(shop, 3)
      .map((name) => `<div><img alt="" src="i.svg"><h4>${name}</h4><p>${talk(shop, 1)}</p></div>`)
      .join('')}`,
  }),
  'a kitchen’s card': ({ roll, tongue }) => ({
    title: 'Honey loaf of the harbour',
    html: `<h3>${tongue.heads[0]}</h3>${items(['500 g flour', '2 tbsp honey', '1 tsp sea salt', '3 tbsp olive oil', '1 tbsp coconut oil'].slice(0, 3 + roll.below(3)).map((row) => `<label><input type="checkbox"> ${row}</label>`))}<h3>Method</h3><p>Knead, let it rest and bake for 40 minutes.</p>`,
  }),
  'stir it yourself, with boxes': ({ tongue, roll }) => ({
    title: 'Whipped hair butter: do it yourself',
    html: `<h3>${tongue.heads[0]}</h3>${items(roll.some(shared, 5).map((name, at) => `<label><input type="checkbox"> ${at + 1} tbsp ${name}</label>`))}<p>Melt in a water bath, cool, whip.</p>`,
  }),
  'a menu with letters': ({ roll }) => ({
    title: 'Harbour Kitchen, today',
    html: `${items(['Fish soup (a, d, l)', 'Beetroot with honey and sea salt (g)', 'Olive oil cake (a, c)'])}<p>Additives: ${roll.some(['1 citric acid', '2 sodium benzoate', '3 lecithin', '4 xanthan gum', '5 potassium sorbate'], 5).join(', ')}.</p>`,
  }),
  wine: () => ({
    title: 'Quay White 2023',
    html: '<p>Ingredients: grapes, tartaric acid, citric acid, potassium metabisulphite, ascorbic acid, gum arabic. 12.5 % vol. Contains sulphites.</p>',
  }),
  'tablets, leaflet': ({ tongue }) => ({
    title: 'Marovex 20 mg film-coated tablets',
    html: `<h4>6. Contents of the pack</h4><p>The other ingredients are lactose monohydrate, magnesium stearate, titanium dioxide, talc, macrogol 3350, polyvinyl alcohol, iron oxide red. Take ${tongue.use ? 'one' : ''} tablet daily; ask your doctor.</p>`,
  }),
  'soap for dishes': ({ tongue }) => ({
    title: 'Dish Liquid Lemon 500 ml',
    html: `<p>${tongue.heads[0]}: Aqua, Sodium Laureth Sulfate, Lauryl Glucoside, Cocamidopropyl Betaine, Citric Acid, Parfum, Limonene. For plates, pots and glasses.</p>`,
  }),
};
