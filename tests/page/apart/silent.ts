// Pages that hold no list of a cosmetic, many of them full of names that such lists hold.
import { formula, kitchen } from '../other/names.ts';
import { calledBy, escaped, type Shop } from './shop.ts';
import * as words from './silent-words.ts';

type Silent = (shop: Shop) => { title?: string; html: string };
const list = (rows: readonly string[], tag = 'ul') =>
  `<${tag}>${rows.map((row) => `<li>${row}</li>`).join('')}</${tag}>`;
const names = ({ roll }: Shop, count: number) => formula(roll, count, 0).map(escaped);
const said = ({ roll, tongue }: Shop) => `<p>${roll.some(tongue.says, 2).join(' ')}</p>`;

export const silent: Record<string, Silent> = {
  'a food': ({ roll }) => ({
    title: roll.pick(['Oat Drink 1 l', 'Salted Bar', 'Tomato Soup', 'Gummy Shells']),
    html: `<h3>${roll.pick(['Nutrition', 'Nährwerte', 'Info'])}</h3><p>${roll.pick(words.foods)}.</p><p>kcal 212, kJ 890</p>`,
  }),
  'a recipe': ({ roll, tongue }) => ({
    title: roll.pick(['Sunday Flatbread', 'Apfelkuchen', 'Arroz del puerto']),
    html: `<h3>${tongue.heads[0]}</h3>${list(roll.pick(words.recipes).split('|'))}<h3>1.</h3><p>Mix, rest, bake at 180° for 25 min.</p>`,
  }),
  'a leaflet of a medicine': ({ roll }) => ({
    title: roll.pick(['Corvanel 500 mg tablets', 'Ospirin 75', 'Nelvosan Creme 1 %']),
    html: `<h4>1. ?</h4><p>${roll.pick(words.leaflets)}.</p>`,
  }),
  'pet food': ({ roll }) => ({
    title: roll.pick(['Terrier Crunch 2 kg', 'Katzenmahl', 'Kibble for Old Dogs']),
    html: `<p>${roll.pick(words.pets)}.</p>`,
  }),
  'a cleaner of the house': ({ roll }) => ({
    title: roll.pick(['Floor Soap 1 l', 'Waschmittel Color', 'Lessive douce']),
    html: `<p>${roll.pick(words.cleaners)}.</p>`,
  }),
  'pills of a drugstore': ({ roll, tongue }) => ({
    title: roll.pick(['Hair & Nail Capsules', 'Kollagen Pulver', 'Gélules beauté']),
    html: `<h3>${tongue.heads[0]}</h3><p>${roll.pick(words.pills)}.</p><p>60 capsules. Food supplement.</p>`,
  }),
  'notes of a perfume': (shop) => ({
    title: 'Ninth Hour Eau de Parfum 50 ml',
    html: `${said(shop)}<p>${shop.roll.pick(words.perfumes)}.</p>`,
  }),
  'a thread of a forum': ({ roll }) => ({
    title: 'Re: winter and humectants',
    html: roll
      .some(words.threads, 4)
      .map((text, at) => `<div class="post"><b>user${at}</b><p>${text}</p></div>`)
      .join(''),
  }),
  'a paper': ({ roll }) => ({
    title: 'Phase behaviour of conditioners',
    html: roll
      .some(words.papers, 3)
      .map((text) => `<p>${text}</p>`)
      .join(''),
  }),
  'a recipe to stir at home': ({ roll, tongue }) => ({
    title: roll.pick(['Stir your own balm', 'Haarbutter selbst rühren', 'Masque maison']),
    html: `<h3>${tongue.heads[0]}</h3>${list(roll.pick(words.kitchens).split('|'))}<p>1. Melt. 2. Stir. 3. Pour.</p>`,
  }),
  'cloth and paint': ({ roll }) => ({
    title: roll.pick(['Harbour Jacket', 'Wandfarbe matt', 'Robe d’été']),
    html: `<p>${roll.pick(words.fabrics)}.</p>`,
  }),
  'a glossary': (shop) => ({
    title: 'A–Z',
    html: `<dl>${names(shop, 14)
      .sort()
      .map((name) => `<dt>${name}</dt><dd>${shop.roll.pick(shop.tongue.why)}. ${shop.tongue.tasks[0]}.</dd>`)
      .join('')}</dl>`,
  }),
  'an index of an encyclopaedia': (shop) => {
    const all = names(shop, 30).sort();
    const first = [...new Set(all.map((name) => name[0]!))];
    return {
      title: 'Lexikon',
      html: first
        .map(
          (letter) =>
            `<h2>${letter}</h2>${list(all.filter((name) => name[0] === letter).map((name) => `<a href="/lex/${letter}">${name}</a>`))}`,
        )
        .join(''),
    };
  },
  'one substance of an encyclopaedia': (shop) => {
    const [name, ...near] = names(shop, 6);
    return {
      title: name!,
      html: `<p>${name}: ${shop.tongue.tasks[1]}, ${shop.tongue.tasks[3]}. CAS 56-81-5, EC 200-289-5.</p><h3>See also</h3>${list(near.map((each) => `<a href="/s">${each}</a>`))}`,
    };
  },
  'filters of a shelf': (shop) => ({
    title: shop.tongue.goods[0]!,
    html: `<fieldset><legend>${shop.tongue.heads[0]}</legend>${names(shop, 12)
      .map(
        (name) => `<label><input type="checkbox"> ${name} <span>(${shop.roll.below(80) + 1})</span></label>`,
      )
      .join('')}</fieldset>`,
  }),
  'a shelf with key ingredients': (shop) => ({
    title: shop.tongue.goods[2]!,
    html: Array.from(
      { length: 6 },
      () =>
        `<div class="card"><h3>${escaped(calledBy(shop.roll, shop.tongue))}</h3><p>${shop.tongue.key}: ${names(shop, 3).join(', ')}</p><span>12,00</span></div>`,
    ).join(''),
  }),
  'reviews that name substances': (shop) => ({
    html: `<h3>Reviews</h3>${Array.from({ length: 4 }, () => `<div class="r"><p>★★★★ ${shop.roll.pick(shop.tongue.review)} ${names(shop, 3).join(', ')}?</p></div>`).join('')}`,
  }),
  // Names of any kind, water first, stood here until the half was looked at: of what is left out none begins so.
  'what a product is free from': ({ roll, tongue }) => ({
    html: `<h3>${tongue.free}</h3><p>${tongue.free}: ${roll.some(words.leftOut, 6).join(', ')}.</p>`,
  }),
  'perfume allergens explained': () => ({
    title: '26 fragrance allergens',
    html: '<p>European law asks makers to name these when they pass a limit: Linalool, Limonene, Citral, Geraniol, Citronellol, Eugenol, Coumarin, Farnesol, Benzyl Alcohol, Benzyl Salicylate, Hexyl Cinnamal and others. If you are allergic to one of them, look for it on the pack.</p>',
  }),
  'words in a cloud': (shop) => ({
    title: 'Tags',
    html: `<div class="cloud">${shop.roll
      .some([...kitchen, 'sale', 'new', 'gifts', 'vegan', 'travel size'], 14)
      .map((tag) => `<a href="/t">${tag}</a>`)
      .join(' ')}</div>`,
  }),
  'a shop of raw materials': (shop) => ({
    title: 'Raw materials',
    html: `<div class="grid">${names(shop, 9)
      .map(
        (name) =>
          `<div class="item"><a href="/raw">${name}</a><span>100 g</span><span>${shop.roll.below(20) + 2},50 €</span><button>+</button></div>`,
      )
      .join('')}</div>`,
  }),
  'an article that warns': (shop) => ({
    title: 'Read the small print',
    html: `<p>Steer clear of drying alcohols such as Alcohol Denat., Isopropyl Alcohol and SD Alcohol 40, while Cetyl Alcohol, Stearyl Alcohol and Behenyl Alcohol are kind.</p>${said(shop)}<p>Sulphates, parabens and silicones have their critics too.</p>`,
  }),
  'only highlights': (shop) => ({
    html: `<h3>${shop.tongue.key}</h3>${list(names(shop, 4).map((name) => `<b>${name}</b> – ${shop.roll.pick(shop.tongue.why)}`))}`,
  }),
  'look at the pack': (shop) => ({
    html: `<h3>${shop.tongue.heads[0]}</h3><p>${shop.tongue.notes[0]}</p><h3>${shop.tongue.use}</h3><p>${shop.tongue.how[0]}</p>`,
  }),
  'a quiz': (shop) => ({
    title: 'Quiz',
    html: `<p>Which of these is a humectant?</p>${list(
      names(shop, 4).map((name) => `<label><input type="radio">${name}</label>`),
      'ol',
    )}`,
  }),
  'numbers of a customs tariff': (shop) => ({
    title: 'HS 2905–3402',
    html: `<table><tr><th>Code</th><th>Goods</th><th>%</th></tr>${names(shop, 8)
      .map(
        (name) =>
          `<tr><td>29${shop.roll.below(90) + 10}.${shop.roll.below(90) + 10}</td><td>${name}</td><td>5.5</td></tr>`,
      )
      .join('')}</table>`,
  }),
  'a sheet of safety': (shop) => ({
    title: 'Safety data sheet',
    html: `<h2>SECTION 3: Composition/information on ingredients</h2><table><tr><th>CAS</th><th>Substance</th><th>% w/w</th><th>H</th></tr>${names(
      shop,
      4,
    )
      .map(
        (name) => `<tr><td>${shop.roll.below(9999)}-12-3</td><td>${name}</td><td>1–5</td><td>H319</td></tr>`,
      )
      .join('')}</table>`,
  }),
  'a story of a firm': (shop) => ({
    title: 'Our story',
    html: `${said(shop)}<p>Our coconut oil, shea butter and aloe vera come from growers we know. We refine glycerin, squalane and jojoba oil next door.</p><p>${shop.tongue.shipped}</p>`,
  }),
};
