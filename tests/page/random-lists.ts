// Lists drawn at random, in the shapes shops print them: cosmetic ones from the labels of the invented shop, and
// those of the larder, the medicine chest and the kennel, whose words were written from memory of such labels.
import { goods } from '../store/goods.ts';
import { dice } from './make-parts.ts';

const words = (all: string) => all.split('|');

const cosmetic = goods
  .flatMap(({ list }) => list.replace(/\.$/, '').split(/,\s(?![^(]*\))/))
  .filter((name) => !/\b(?:aqua|water|eau)\b|[*.:]|may contain/i.test(name));

export const silentLabelWords = {
  food: words(
    'wheat flour|enriched wheat flour|high fructose corn syrup|glucose syrup|cane sugar|sugar|salt|sea salt|modified food starch|corn starch|rice flour|almond flour|coconut sugar|coconut milk|almond butter|peanut oil|canola oil|soybean oil|olive oil|palm oil|coconut oil|hydrogenated palm kernel oil|cocoa butter|cocoa powder|skimmed milk powder|whey powder|butterfat|cream|cheddar cheese|yogurt|egg yolk powder|chicken|beef|salmon|rice bran|oat bran|barley malt|yeast|sodium bicarbonate|monosodium glutamate|natural flavors|vanilla extract|cinnamon|ginger|turmeric|paprika|garlic|onion|tomato paste|carrot|potato|apple juice concentrate|lemon juice concentrate|raisins|dates|apple cider vinegar|mustard seed|soy protein isolate|pea protein|wheat gluten|pectin|guar gum|xanthan gum|carrageenan|maltodextrin|dextrose|sucralose|erythritol|citric acid|ascorbic acid|malic acid|lactic acid|sorbic acid|potassium sorbate|sodium benzoate|calcium propionate|annatto|caramel color|beta carotene|red 40|yellow 5|blue 1|niacin|reduced iron|riboflavin|folic acid|zinc sulfate|potassium chloride|honey|molasses|green tea leaves|chamomile flowers|rose hips|water|glycerin|propylene glycol|sorbitol|mono- and diglycerides|polysorbate 60|polysorbate 80|sodium stearoyl lactylate|calcium disodium edta|bht|cellulose gum|microcrystalline cellulose|sodium citrate|disodium phosphate|mixed tocopherols|rosemary extract|glycerol ester of rosin|gum arabic|titanium dioxide|carnauba wax|beeswax|orange oil|peppermint oil|caffeine|niacinamide|inositol|taurine|ginseng extract|inulin|medium chain triglycerides',
  ),
  supplement: words(
    'vitamin c (as ascorbic acid)|biotin|zinc (as zinc gluconate)|zinc picolinate|hydrolyzed collagen peptides|hydrolyzed bovine collagen|hyaluronic acid|sodium hyaluronate|keratin|methylsulfonylmethane|hypromellose|vegetable capsule (hypromellose)|hydroxypropyl methylcellulose|rice flour|magnesium stearate|silicon dioxide|stearic acid|dicalcium phosphate|microcrystalline cellulose|croscarmellose sodium|gelatin|glycerin|purified water|beeswax|soybean oil|evening primrose oil|borage oil|fish oil|saw palmetto extract|horsetail extract|bamboo extract|silica|l-cysteine|l-methionine|folate|vitamin b12 (as methylcobalamin)|niacin|iron (as ferrous fumarate)|copper gluconate|ashwagandha root extract|turmeric extract|green tea extract|grape seed extract|maltodextrin|citric acid|sodium citrate|pectin|natural flavor|tapioca syrup|coconut oil|carnauba wax|steviol glycosides|sucralose|medium-chain triglycerides|sunflower lecithin|astaxanthin|coenzyme q10|probiotic blend|ceramides (wheat extract)|polyethylene glycol|titanium dioxide|polyvinyl alcohol|talc',
  ),
  medicine: words(
    'lactose monohydrate|magnesium stearate|microcrystalline cellulose|povidone|crospovidone|sodium starch glycolate|hypromellose|polyethylene glycol|polyethylene glycol 400|propylene glycol|glycerin|sorbitol|purified water|titanium dioxide|iron oxide red|carnauba wax|colloidal silicon dioxide|stearic acid|sodium lauryl sulfate|talc|gelatin|corn starch|triacetin|sodium benzoate|citric acid|sodium citrate|edetate disodium|sucralose|xanthan gum|flavors|butylparaben|methylparaben|propylparaben|benzyl alcohol|alcohol|polysorbate 80|mannitol|menthol|dibasic calcium phosphate|croscarmellose sodium|ethylcellulose|methacrylic acid copolymer|hydroxypropyl cellulose|simethicone|isopropyl alcohol|ammonium hydroxide|sodium chloride|sodium hydroxide|hydrochloric acid|benzalkonium chloride',
  ),
  'pet food': words(
    'deboned chicken|chicken meal|turkey meal|salmon|fish meal|brown rice|oatmeal|barley|peas|pea protein|pea starch|chicken fat (preserved with mixed tocopherols)|beet pulp|flaxseed|natural flavor|salt|potassium chloride|choline chloride|taurine|dl-methionine|glycerin|propylene glycol|guar gum|carrageenan|zinc proteinate|zinc oxide|ferrous sulfate|copper sulfate|sodium selenite|calcium iodate|vitamin e supplement|thiamine mononitrate|biotin|riboflavin supplement|folic acid|rosemary extract|yucca schidigera extract|citric acid|phosphoric acid|sorbic acid|titanium dioxide|red 40|caramel color|bht|animal fat|glucosamine hydrochloride|chondroitin sulfate|coconut oil|sunflower oil',
  ),
};
export const silentPools = Object.keys(silentLabelWords) as (keyof typeof silentLabelWords)[];

const after = '<h3>Shipping</h3><p>Two days, by boat.</p>';
const shapes = {
  'under a heading': (names: string[]) =>
    `<p>For every day.</p><h3>Ingredients</h3><p>${names.join(', ')}</p>${after}`,
  'in one paragraph': (names: string[]) => `<p>Ingredients: ${names.join(', ')}</p>${after}`,
  'in an accordion': (names: string[]) =>
    `<details><summary>Full ingredient list</summary><p>${names.join(', ')}</p></details>${after}`,
  'in Polish': (names: string[]) => `<h3>Składniki</h3><p>${names.join(', ')}</p>${after}`,
  'with bullets': (names: string[]) => `<h4>INCI</h4><div>${names.join(' • ')}</div>${after}`,
  'as items': (names: string[]) =>
    `<h3>Ingredients</h3><ul>${names.map((name) => `<li>${name}</li>`).join('')}</ul>${after}`,
  'in a table': (names: string[]) =>
    `<table><tr><td>Size</td><td>250 ml</td></tr><tr><td>Ingredients</td><td>${names.join(', ')}</td></tr></table>`,
  'between facts': (names: string[]) =>
    `<p>Size: 200 ml<br>Ingredients: ${names.join(', ')}<br>Made in the harbour</p>`,
  'below a teaser': (names: string[]) =>
    `<h3>Key Ingredients</h3><ul><li>Shea Butter: softens</li></ul><h3>Full Ingredients</h3><p>${names.join(', ')}</p>`,
  'before a warning': (names: string[]) =>
    `<p>Directions: Apply to hair. Ingredients: ${names.join(', ')}. Warning: Avoid contact with eyes.</p>`,
  'before what is left out': (names: string[]) =>
    `<h4>Ingredients</h4><p>${names.join(', ')}</p><p>Free from: parabens, sulfates, silicones, mineral oil</p>`,
  'in two paragraphs': (names: string[]) =>
    `<h3>Ingredients</h3><p>${names.slice(0, 6).join(', ')},</p><p>${names.slice(6).join(', ')}</p>${after}`,
  'each name a link': (names: string[]) =>
    `<h3>Ingredients</h3><p>${names.map((name) => `<a href="#">${name}</a>`).join(', ')}</p>${after}`,
  'each name a box': (names: string[]) =>
    `<h3>Ingredients</h3><div>${names.map((name) => `<span>${name}</span>`).join(' ')}</div>${after}`,
  'in German': (names: string[]) =>
    `<h3>Inhaltsstoffe (INCI)</h3><p>${names.join(', ')}</p><h3>Anwendung</h3><p>Ins nasse Haar geben.</p>`,
  'in French': (names: string[]) =>
    `<p>Composition : ${names.join(', ')}</p><p>Conseils : appliquer sur cheveux humides.</p>`,
  'in Japanese': (names: string[]) =>
    `<h4>全成分</h4><div>${names.join('、')}</div><h4>使用方法</h4><div>髪になじませます。</div>`,
  'without a heading': (names: string[]) => `<p>Softens and detangles.</p><p>${names.join(', ')}</p>${after}`,
  'in broken lines': (names: string[]) => `<h3>Ingredients</h3><p>${names.join('<br>')}</p>${after}`,
};
export const shapeNames = Object.keys(shapes) as (keyof typeof shapes)[];

const body = (shape: keyof typeof shapes, names: string[]) =>
  shapes[shape](names.map((name) => name.replace(/&/g, '&amp;')));

/** The bodies of `count` pages with one list of 8 to 30 names, and its letters without what parts the names. */
export function cosmeticPages(shape: keyof typeof shapes, count: number, seed = 1) {
  const roll = dice(seed);
  return Array.from({ length: count }, () => {
    const names = [...new Set(roll.some(cosmetic, roll.int(8, 30)))];
    const all = roll.next() < 0.8 ? ['Aqua (Water)', ...names] : names;
    return { body: body(shape, all), wanted: barely(all.join(' ')) };
  });
}

/** The bodies of `count` pages with one list that is none of a cosmetic. */
export function silentPages(
  pool: keyof typeof silentLabelWords,
  shape: keyof typeof shapes,
  count: number,
  seed = 1,
) {
  const roll = dice(seed);
  return Array.from({ length: count }, () =>
    body(
      shape,
      roll
        .some(silentLabelWords[pool], roll.int(4, 24))
        .map((name) => (roll.next() < 0.5 ? name : name.toUpperCase())),
    ),
  );
}

/** Letters without what parts names and ends the list. */
export const barely = (text: string) => text.replace(/[\s,•、]+|\.$/g, ' ').trim();
