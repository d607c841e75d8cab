// Pages that tempt and hold no list of a product for hair or skin.
import { formula } from './names.ts';
import { escaped, halved, type Shop, sentences } from './shop.ts';
import { eaten, type Goods, medicines, things } from './silent-goods.ts';

type Kind = (shop: Shop) => string;
const half = (s: Shop, of: Goods[]) => s.roll.pick(halved(of, s.half));
const inOneLine = (s: Shop, { title, head, names, more }: Goods) =>
  s.roll.pick([
    `<h2>${title}</h2><h3>${head}</h3><p>${names.join(', ')}.</p><p>${more ?? ''}</p>`,
    `<h2>${title}</h2><p><strong>${head}:</strong> ${names.join(', ')}. ${more ?? ''}</p>`,
    `<h2>${title}</h2><details><summary>${head}</summary><div>${names.join(', ')}</div></details><details><summary>Info</summary><div>${more ?? ''}</div></details>`,
    `<h2>${title}</h2><table><tr><th>${head}</th><td>${names.join(', ')}</td></tr><tr><th>Info</th><td>${more ?? ''}</td></tr></table>`,
    `<h2>${title}</h2><h4>${head}</h4><ul>${names.map((name) => `<li>${name}</li>`).join('')}</ul><p>${more ?? ''}</p>`,
  ]);
const amounts = ['2 cups', '1 tbsp', '200 g', '1 tsp', '3 drops', '½ cup', '50 ml', 'a pinch of'];
const kitchenware = [
  'coconut oil',
  'honey',
  'sea salt',
  'citric acid',
  'oats',
  'olive oil',
  'water',
  'lemon juice',
  'rice flour',
  'vanilla extract',
  'aloe vera gel',
  'shea butter',
  'almond oil',
  'cocoa butter',
  'beeswax',
  'lavender essential oil',
];
const terms: [string, string][] = [
  ['Glycerin', 'a humectant that draws water'],
  ['Cetearyl Alcohol', 'a fatty alcohol that softens'],
  ['Dimethicone', 'a silicone that lies over the strand'],
  ['Panthenol', 'a provitamin that holds moisture'],
  ['Sodium Laureth Sulfate', 'a strong cleanser'],
  ['Hydrolyzed Keratin', 'a protein cut small'],
  ['Citric Acid', 'sets the acidity'],
  ['Behentrimonium Chloride', 'a conditioner that clings'],
  ['Phenoxyethanol', 'keeps microbes away'],
  ['Tocopherol', 'keeps oils from going rancid'],
  ['Carbomer', 'thickens water'],
  ['Niacinamide', 'a form of vitamin B3'],
];
const actives = [
  'Niacinamide',
  'Retinol',
  'Hyaluronic Acid',
  'Panthenol',
  'Salicylic Acid',
  'Keratin',
  'Argan Oil',
  'Ceramides',
  'Biotin',
  'Caffeine',
  'Squalane',
  'Glycolic Acid',
  'Shea Butter',
  'Coconut Oil',
];
const denied = [
  'sulphates',
  'parabens',
  'silicones',
  'mineral oil',
  'phthalates',
  'alcohol',
  'fragrance',
  'PEG',
  'formaldehyde',
  'triclosan',
  'EDTA',
  'propylene glycol',
];
const plants = [
  'Lavandula angustifolia',
  'Rosmarinus officinalis',
  'Calendula officinalis',
  'Salvia officinalis',
  'Thymus vulgaris',
  'Aloe barbadensis',
  'Hibiscus sabdariffa',
  'Urtica dioica',
  'Melissa officinalis',
  'Mentha piperita',
  'Chamomilla recutita',
  'Camellia sinensis',
];
const notes = [
  'bergamot',
  'neroli',
  'jasmine',
  'sandalwood',
  'vetiver',
  'cedarwood',
  'amber',
  'musk',
  'patchouli',
  'rose',
  'lemon',
  'vanilla',
];
const price = (s: Shop) => `€ ${3 + s.roll.below(40)}.50`;

export const silent: Record<string, Kind> = {
  recipe: (s) =>
    `<article><h2>Lemon oat bars</h2><p>${sentences(s, 2)}</p><h3>Ingredients</h3><ul>${s.roll
      .some(kitchenware, 7)
      .map((name) => `<li>${s.roll.pick(amounts)} ${name}</li>`)
      .join(
        '',
      )}</ul><h3>Method</h3><ol><li>Heat the oven to 180 °C.</li><li>Stir and bake for 20 minutes.</li></ol></article>`,
  'mix it yourself': (s) =>
    `<article><h2>Make your own hair mask</h2><p>You will need: ${s.roll
      .some(kitchenware, 6)
      .map((name) => `${s.roll.pick(amounts)} ${name}`)
      .join(
        ', ',
      )}.</p><p>Melt the butter, stir in the rest, pour into a jar and leave overnight.</p></article>`,
  'recipe in data': (s) =>
    `<h2>Soda bread</h2><script type="application/ld+json">${JSON.stringify({ '@type': 'Recipe', name: 'Soda bread', recipeIngredient: s.roll.some(kitchenware, 7).map((name) => `${s.roll.pick(amounts)} ${name}`) })}</script><p>Bake for 40 minutes.</p>`,
  food: (s) => inOneLine(s, half(s, eaten)),
  medicine: (s) => inOneLine(s, half(s, medicines)),
  thing: (s) => inOneLine(s, half(s, things)),
  'glossary of ingredients': (s) =>
    `<h2>Ingredient glossary</h2><dl>${s.roll
      .some(terms, 9)
      .map(([name, text]) => `<dt>${name}</dt><dd>${text}.</dd>`)
      .join('')}</dl>`,
  'glossary in headings': (s) =>
    `<h2>What is what on a label</h2>${s.roll
      .some(terms, 8)
      .map(([name, text]) => `<h4>${name}</h4><p>${name} is ${text}. You meet it in many bottles.</p>`)
      .join('')}`,
  'journal article': (s) => {
    const names = s.roll.some(terms, 6).map(([name]) => name);
    return `<article><h2>Reading the back of the bottle</h2><p>If you see ${names.slice(0, 3).join(', ')} near the top, expect slip. Names such as ${names.slice(3).join(', ')} come later, and that is fine.</p><p>${sentences(s, 2)}</p><p>Ask your stylist whether ${names[0]} or ${names[1]} suits you better.</p></article>`;
  },
  'article on what to avoid': (s) =>
    `<article><h2>Seven things we leave out</h2><ol>${s.roll
      .some(terms, 6)
      .map(([name, text]) => `<li><strong>${name}.</strong> It is ${text}, yet not for us.</li>`)
      .join('')}</ol></article>`,
  'category page': (s) =>
    `<h2>Conditioners</h2><div class="grid">${Array.from({ length: 8 }, (_, at) => `<div class="card"><a href="/p/${at}">${s.roll.pick(actives)} ${s.roll.pick(['Mask', 'Cream', 'Serum', 'Wash'])}</a><p>With ${s.roll.some(actives, 2).join(' and ')}</p><span>${price(s)}</span></div>`).join('')}</div>`,
  'filter menu': (s) =>
    `<aside><h3>Filter</h3><fieldset><legend>Ingredient</legend>${s.roll
      .some(actives, 10)
      .map((name) => `<label><input type="checkbox"> ${name} (${s.roll.below(40)})</label>`)
      .join('')}</fieldset><fieldset><legend>Free from</legend>${s.roll
      .some(denied, 8)
      .map((name) => `<label><input type="checkbox"> ${name}</label>`)
      .join('')}</fieldset></aside>`,
  'shop by ingredient': (s) =>
    `<nav aria-label="Ingredients"><h3>Shop by ingredient</h3><ul>${s.roll
      .some(actives, 11)
      .map((name) => `<li><a href="/i/${name}">${name}</a></li>`)
      .join('')}</ul></nav>`,
  reviews: (s) =>
    `<h3>Reviews</h3>${Array.from(
      { length: 4 },
      () =>
        `<div class="review"><b>★★★★★</b><p>${sentences(s, 1)} I read the ingredients and saw ${s.roll
          .some(terms, 3)
          .map(([name]) => name.toLowerCase())
          .join(', ')}; my hair likes it.</p></div>`,
    ).join('')}`,
  'common questions': (s) =>
    `<h2>Questions</h2>${s.roll
      .some(terms, 4)
      .map(
        ([name]) =>
          `<details><summary>Does it contain ${name}?</summary><p>No. Nor does it hold ${s.roll.some(denied, 3).join(', ')}.</p></details>`,
      )
      .join('')}`,
  'free from': (s) =>
    `<h3>${s.title}</h3><p>${s.say('free')}</p><h4>Formulated without</h4><p>${s.roll.some(denied, 9).join(', ')}</p>`,
  'never list': (s) =>
    `<h2>Our never list</h2><p>We do not use any of these ingredients:</p><ul>${formula(s.roll, 12)
      .slice(1)
      .map((name) => `<li>${escaped(name)}</li>`)
      .join('')}</ul>`,
  'key ingredients only': (s) =>
    `<h3>${s.say('key')}</h3><p>${s.roll.some(s.plain, 3).join(', ')}</p><p>${sentences(s, 2)}</p>`,
  'cookie table': () =>
    `<h2>Cookies</h2><table><tr><th>Name</th><th>Purpose</th><th>Ends</th></tr>${['_ga', 'cart_sig', 'session', 'consent', 'lang'].map((name) => `<tr><td>${name}</td><td>Keeps the basket</td><td>1 year</td></tr>`).join('')}</table>`,
  'plant shop': (s) =>
    `<h2>Herbs in pots</h2><ul>${s.roll
      .some(plants, 9)
      .map((name) => `<li><i>${name}</i> – ${price(s)}</li>`)
      .join('')}</ul>`,
  'seeds in a sentence': (s) =>
    `<h2>Meadow mix</h2><p>Contains seeds of ${s.roll.some(plants, 7).join(', ')}. Sow in April, 2 g per m².</p>`,
  'paint colours': () =>
    `<h2>Pigments</h2><table>${['Titanium White PW6 CI 77891', 'Iron Oxide Red PR101 CI 77491', 'Ultramarine PB29 CI 77007', 'Yellow Ochre PY43 CI 77492', 'Chromium Oxide Green PG17 CI 77288', 'Mars Black PBk11 CI 77499'].map((name) => `<tr><td>${name}</td><td>37 ml</td><td>8.90</td></tr>`).join('')}</table>`,
  'chemistry glossary': () =>
    `<h2>Common salts and acids</h2><table><tr><th>Name</th><th>Formula</th><th>M</th></tr>${[
      'Sodium chloride|NaCl|58.44',
      'Citric acid|C6H8O7|192.12',
      'Sodium hydroxide|NaOH|40.00',
      'Potassium sorbate|C6H7KO2|150.22',
      'Lactic acid|C3H6O3|90.08',
      'Magnesium sulfate|MgSO4|120.37',
      'Sodium benzoate|C7H5NaO2|144.11',
    ]
      .map(
        (row) =>
          `<tr>${row
            .split('|')
            .map((cell) => `<td>${cell}</td>`)
            .join('')}</tr>`,
      )
      .join('')}</table>`,
  'supplier of raw materials': (s) =>
    `<h2>Raw materials</h2>${s.roll
      .some([...actives, ...terms.map(([name]) => name)], 10)
      .map(
        (name) =>
          `<div class="item"><h3>${name}</h3><span>${price(s)}</span><button>${s.say('buy')}</button></div>`,
      )
      .join('')}`,
  'notes of a scent': (s) =>
    `<h2>Eau de Quay</h2><p>Top notes: ${s.roll.some(notes, 3).join(', ')}. Heart notes: ${s.roll.some(notes, 3).join(', ')}. Base notes: ${s.roll.some(notes, 3).join(', ')}.</p>`,
  'oils and moods': (s) =>
    `<h2>Blend for sleep</h2><p>Ingredients: ${s.roll
      .some(notes, 4)
      .map(
        (name) =>
          `${name[0]!.toUpperCase()}${name.slice(1)} – ${s.roll.pick(['calming', 'lifting', 'grounding'])}`,
      )
      .join('. ')}.</p>`,
  'menu with allergens': () =>
    `<h2>Lunch</h2><p>Beetroot soup (celery, milk) 7.50</p><p>Rye bread with honey, sea salt, butter (wheat, rye, milk) 4.00</p><p>Allergens: 1 gluten, 2 eggs, 3 fish, 4 soy, 5 milk, 6 celery, 7 mustard, 8 sesame, 9 sulphites, 10 lupin</p>`,
  'see the pack': (s) => `<h3>${s.say('head')}</h3><p>${s.say('tail')}</p><p>${sentences(s, 2)}</p>`,
  'heading over nothing': (s) =>
    `<h3>${s.say('head')}</h3><div></div><h3>${s.say('tabs')}</h3><p>${s.say('use')}</p><p>${sentences(s, 2)}</p>`,
  'table of safety': () =>
    `<h2>Safety data</h2><table><tr><th>Substance</th><th>CAS</th><th>%</th><th>Hazard</th></tr>${[
      'Ethanol|64-17-5|10–20|H225',
      'Limonene|138-86-3|<1|H317',
      'Linalool|78-70-6|<1|H317',
      'Citral|5392-40-5|<0.1|H317',
    ]
      .map(
        (row) =>
          `<tr>${row
            .split('|')
            .map((cell) => `<td>${escaped(cell)}</td>`)
            .join('')}</tr>`,
      )
      .join('')}</table>`,
  'patch test advice': (s) =>
    `<h2>Allergies</h2><p>The scent allergens to be named by law are, among others, Linalool, Limonene, Citronellol, Geraniol, Coumarin, Citral, Eugenol and Benzyl Alcohol. ${sentences(s, 1)}</p>`,
  'rule on pictures of labels': (s) =>
    `<h2>How labels are ordered</h2><p>By law the names stand in falling order. An example in words: first water, then perhaps glycerin and cetearyl alcohol, last the perfume.</p><p>${sentences(s, 2)}</p>`,
};
