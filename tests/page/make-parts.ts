/** A small seeded generator (mulberry32), so that the same pages come out every time. */
export function dice(seed: number) {
  let state = seed;
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    next,
    pick: <T>(from: readonly T[]): T => from[Math.floor(next() * from.length)]!,
    int: (min: number, max: number) => min + Math.floor(next() * (max - min + 1)),
    some: <T>(from: readonly T[], count: number): T[] => {
      const left = [...from];
      return Array.from(
        { length: Math.min(count, left.length) },
        () => left.splice(Math.floor(next() * left.length), 1)[0]!,
      );
    },
  };
}

const bases = [
  [
    'Aqua',
    'Water',
    'Aqua (Water)',
    'Aqua/Water/Eau',
    'Water (Aqua)',
    'Eau',
    'Purified Water',
    'Aloe Barbadensis Leaf Juice*',
  ],
  [
    'Cetearyl Alcohol',
    'Sodium Laureth Sulfate',
    'Glycerin',
    'Cocamidopropyl Betaine',
    'Behentrimonium Methosulfate',
    'Sodium C14-16 Olefin Sulfonate',
    'Cetyl Alcohol',
    'Disodium Laureth Sulfosuccinate',
    'Cyclopentasiloxane',
    'Alcohol Denat.',
    'Decyl Glucoside',
    'Caprylic/Capric Triglyceride',
  ],
] as const;
const middles = [
  'Behentrimonium Chloride',
  'Glyceryl Stearate',
  'Butyrospermum Parkii (Shea) Butter',
  'Cocos Nucifera (Coconut) Oil',
  'Hydrolyzed Wheat Protein',
  'Hydrolyzed Keratin',
  'Silk Amino Acids',
  'Panthenol',
  'Propanediol',
  'Dimethicone',
  'Amodimethicone',
  'Isopropyl Palmitate',
  'Polyquaternium-10',
  'Guar Hydroxypropyltrimonium Chloride',
  'Sodium Chloride',
  'Coco-Glucoside',
  'Linum Usitatissimum (Linseed) Seed Extract',
  'Hydroxyethylcellulose',
  'Betaine',
  'Sodium PCA',
  'Trehalose',
  'Sorbitol',
  'Helianthus Annuus (Sunflower) Seed Oil',
  'Argania Spinosa Kernel Oil',
  'Urea',
  'Xanthan Gum',
  'Stearamidopropyl Dimethylamine',
  'Quaternium-87',
  'Brassicamidopropyl Dimethylamine',
  'Distearoylethyl Dimonium Chloride',
  'Cetrimonium Chloride',
  'PEG-40 Hydrogenated Castor Oil',
  'Acrylates/C10-30 Alkyl Acrylate Crosspolymer',
  'Hydrolyzed Rice Protein',
  'Acetyl Hexapeptide-8',
  'Babassuamidopropyl Betaine',
  'Mangifera Indica Seed Butter',
  'Honey',
  'Maltodextrin',
  'Inulin',
  'Oryza Sativa Bran Extract',
  'Agave Tequilana Leaf Extract',
  'Equisetum Arvense Extract',
  'Urtica Dioica (Nettle) Leaf Extract',
  'Zea Mays (Corn) Starch',
  'Myristyl Myristate',
  'Lauryl Glucoside',
  'Glycol Distearate',
  'Magnesium Sulfate',
  'Tocopherol',
  '1,2-Hexanediol',
  'Pentylene Glycol',
  'Caesalpinia Spinosa Gum',
  'Marrubium Vulgare Meristem Cell Culture',
  'Biotin',
];
const ends = [
  'Phenoxyethanol',
  'Ethylhexylglycerin',
  'Sodium Benzoate',
  'Potassium Sorbate',
  'Citric Acid',
  'Lactic Acid',
  'Disodium EDTA',
  'Tetrasodium Glutamate Diacetate',
  'Benzyl Alcohol',
  'Dehydroacetic Acid',
  'Sodium Hydroxide',
  'Caprylyl Glycol',
  'Methylisothiazolinone',
  'Sodium Phytate',
];
const scents = [
  'Parfum',
  'Parfum (Fragrance)',
  'Fragrance',
  'Linalool',
  'Limonene',
  'Hexyl Cinnamal',
  'Citronellol',
  'Geraniol',
  'Benzyl Salicylate',
  'Coumarin',
  'Alpha-Isomethyl Ionone',
  'Citral',
];
const colours = ['CI 77891', 'CI 19140 (Yellow 5)', 'CI 42090', 'Caramel', 'Mica'];

/** A plausible label: base, conditioning agents, preservatives, scent. Invented, in label order. */
export function label(roll: ReturnType<typeof dice>, count = roll.int(9, 34)): string[] {
  const names: string[] = [roll.pick(bases[0]), roll.pick(bases[1])];
  names.push(
    ...roll.some(
      middles.filter((name) => !names.includes(name)),
      Math.max(2, count - 8),
    ),
  );
  names.push(...roll.some(ends, 3), ...roll.some(scents, 3));
  if (roll.next() < 0.2) names.push(roll.pick(colours));
  return [...new Set(names)];
}

const shops = [
  'Moss & Tallow',
  'Quillwater Apothecary',
  'Harrow Lane Sundries',
  'Tidewick Stores',
  'Pennywhistle Larder',
  'Ostermark Waren',
  'Bellflower Yard',
];
const goods = [
  'Quench Curl Cream',
  'Lowtide Co-Wash',
  'Saltmarsh Gel',
  'Linden Rinse',
  'Barley Mask',
  'Fernbrook Leave-In',
  'Harebell Shampoo',
  'Dewpoint Foam',
  'Oatfield Conditioner',
  'Thistle Scalp Tonic',
];
export const goodFor = (roll: ReturnType<typeof dice>) => roll.pick(goods);
const claims = [
  'Leaves lengths soft and easy to detangle.',
  'Made in small batches by the harbour.',
  'Rinse with lukewarm water.',
  'A light hand is enough for shoulder-length hair.',
  'Dries without crunch.',
  'Our bottles are refilled at the counter.',
  'With coconut oil, shea butter and panthenol for a supple feel.',
  'Smells of linden after rain.',
  'Suitable for wavy, curly and coily hair.',
];
export const claim = (roll: ReturnType<typeof dice>) => roll.pick(claims);

/** Menu, decoys and footer around a page's own part. */
export function shell(roll: ReturnType<typeof dice>, main: string): string {
  const shop = roll.pick(shops);
  return `<a class="skip" href="#main">Skip to content</a>
<header class="top"><p class="logo">${shop}</p><nav><ul><li><a href="/hair">Hair</a></li><li><a href="/oils">Oils</a></li><li><a href="/ingredients">Ingredients</a></li><li><a href="/journal">Journal</a></li></ul></nav>
<details class="menu"><summary>Menu</summary><ul><li><a href="/c/shampoo">Shampoo</a></li><li><a href="/c/conditioner">Conditioner</a></li><li><a href="/c/argan-oil">Argan oil</a></li></ul></details></header>
<script>window.shop = { list: "Aqua, Glycerin, Parfum, Linalool, Phenoxyethanol, Panthenol" };</script>
<main id="main">
${main}
</main>
<section class="more"><h2>You may also like</h2><ul><li><a href="/p/1">${roll.pick(goods)}</a> <span>€ ${roll.int(6, 30)}.50</span></li><li><a href="/p/2">${roll.pick(goods)} with Hydrolyzed Silk</a> <span>€ ${roll.int(6, 30)}.00</span></li></ul></section>
<section class="reviews"><h2>Reviews</h2><p>I like that it has no silicones, no parabens, no sulfates.</p><p>${roll.pick(claims)}</p></section>
<footer><p>© ${shop}. All goods on these pages are invented.</p><form><label for="mail">Letters</label> <input id="mail" name="parentNode"> <button>Join</button></form></footer>`;
}

export const price = (roll: ReturnType<typeof dice>) =>
  `<p class="price">€ ${roll.int(7, 39)}.${roll.pick(['00', '50', '90'])}</p><p>${roll.pick([150, 200, 250, 300])} ml</p>`;
