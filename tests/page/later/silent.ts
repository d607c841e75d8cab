// Pages that hold no list of a product for hair, in words that lists share; written before the finder was asked.
import type { Shop } from './kinds.ts';

const head = ({ roll, tongue }: Shop) => roll.pick(tongue.heads);
const some = ({ roll }: Shop, of: string, count: number) => roll.some(of.split('|'), count).join(', ');

export const silent: Record<string, (shop: Shop) => string> = {
  'safety data sheet': (shop) =>
    `<h2>3. ${head(shop)}</h2><table><tr><th>CAS</th><th>EC</th><th>%</th></tr>${shop.roll
      .some(
        [
          'Sodium hydroxide</td><td>1310-73-2',
          'Propan-2-ol</td><td>67-63-0',
          'Phosphoric acid</td><td>7664-38-2',
          'Alcohols, C12-14, ethoxylated</td><td>68439-50-9',
          'Ethanol</td><td>64-17-5',
          'Limonene</td><td>5989-27-5',
        ],
        4,
      )
      .map((row) => `<tr><td>${row}</td><td>5–10</td></tr>`)
      .join('')}</table><p>H314, H318. P280, P305+P351+P338.</p>`,
  'cloth and filling': (shop) =>
    `<dl><dt>${head(shop)}</dt><dd>95 % cotton, 5 % elastane. Lining: polyester, viscose, silk.</dd></dl>`,
  'food in its own language': (shop) =>
    `<h3>${head(shop)}</h3><p>${some(
      shop,
      'cukar|glukózový sirup|lecitíny|E330|E415|citric acid|wheat flour|palm oil|salt|skimmed milk powder|cocoa mass|sodium bicarbonate|xanthan gum|maltodextrin|sunflower lecithin',
      9,
    )}.</p><table><tr><td>kcal</td><td>412</td></tr><tr><td>kJ</td><td>1725</td></tr><tr><td>g</td><td>12</td></tr></table>`,
  'liquid for vaping': (shop) =>
    `<h2>Nicotine salt 20 mg/ml, 10 ml</h2><p>${head(shop)}: propylene glycol, vegetable glycerin, nicotine, benzoic acid, flavourings.</p>`,
  'scented candle': (shop) =>
    `<h2>Soy wax candle, 40 h</h2><p>${head(shop)}: soy wax, coconut wax, limonene, linalool, cotton wick. Never leave a burning candle unattended.</p>`,
  'tariff of goods': (shop) =>
    `<h2>${shop.tongue.beside[4]}</h2><ul>${shop.roll
      .some(
        [
          '1520.00 Glycerol, crude',
          '1515.30 Castor oil and its fractions',
          '2905.45 Glycerol',
          '3401.11 Soap',
          '2915.70 Palmitic acid, stearic acid, their salts and esters',
          '3301.24 Peppermint oil',
          '3503.00 Gelatin',
        ],
        5,
      )
      .map((row) => `<li>${row} … 6.5 %</li>`)
      .join('')}</ul>`,
  'tablets with their leaflet': (shop) =>
    `<h2>Paracetamol 500 mg</h2><p>${head(shop)}: 1 tablet contains paracetamol 500 mg. Excipients: maize starch, povidone, magnesium stearate, stearic acid, talc, hypromellose, titanium dioxide.</p><p>Read the package leaflet. Ask your doctor or pharmacist.</p>`,
  'food for a dog': (shop) =>
    `<h2>Dog food, adult, 12 kg</h2><p>${head(shop)}: chicken meal, rice, beet pulp, fish oil, glycerin, biotin, zinc sulfate, vitamin E. Analytical constituents: crude protein 24 %, crude ash 7 %.</p>`,
  fertiliser: (shop) =>
    `<h2>NPK 7-3-6</h2><p>${head(shop)}: nitrogen 7 %, phosphate 3 %, potassium oxide 6 %, boron, copper, iron EDTA, manganese, zinc. For roses and hydrangeas.</p>`,
  'talk about what to look for': (shop) =>
    `<article><h2>${shop.tongue.says[0]}</h2><p>${shop.tongue.says.join(' ')} Glycerin ${shop.tongue.and} panthenol: ${shop.tongue.says[1]} Dimethicone, ${shop.tongue.says[0]}</p></article>`,
  'facets beside a shelf': (shop) =>
    `<aside><h3>${head(shop)}</h3>${shop.roll
      .some(
        [
          'Argan Oil',
          'Keratin',
          'Aloe Vera',
          'Shea Butter',
          'Panthenol',
          'Biotin',
          'Collagen',
          'Coconut Oil',
        ],
        6,
      )
      .map(
        (name) => `<label><input type="checkbox"> ${name} <span>(${shop.roll.below(40) + 1})</span></label>`,
      )
      .join('')}</aside><ul><li><a href="/1">${shop.tongue.titles[0]}</a> 12,00</li></ul>`,
  'a mix from the kitchen': (shop) =>
    `<h2>DIY</h2><p>${head(shop)}: 2 tbsp flaxseed, 1 cup water, 1 tsp honey, 5 drops lavender oil. Boil the seeds for ten minutes, stir and strain.</p>`,
  'heading that leads elsewhere': (shop) =>
    `<h3>${head(shop)}</h3><p><a href="/pdf">PDF</a></p><h3>${shop.tongue.beside[1]}</h3><p>${shop.tongue.use}</p>`,
  'what is not in it': (shop) =>
    `<ul class="badges"><li>0 % SLS</li><li>0 % silicones</li><li>0 % parabens</li><li>0 % mineral oil</li><li>0 % PEG</li></ul><p>${shop.tongue.says[0]}</p>`,
  'lenses and their water': (shop) =>
    `<h2>Contact lens solution, 360 ml</h2><p>${head(shop)}: purified water, sodium chloride, boric acid, poloxamer 407, polyaminopropyl biguanide, disodium EDTA. For soft contact lenses.</p>`,
  'wood glue and paint': (shop) =>
    `<h2>Acrylic paint, matt, 2.5 l</h2><p>${head(shop)}: water, titanium dioxide, kaolin, calcium carbonate, acrylic polymer, propylene glycol, methylisothiazolinone. Coverage 12 m² per litre on walls.</p>`,
};
