// How storefronts mark up a product's text, and what stands around it. Shops and sentences are invented.
import type { dice } from '../make-parts.ts';

type Roll = ReturnType<typeof dice>;

/** Words of a set; the second set is for pages nobody tuned by. */
export type Wording = {
  title: string[];
  claims: string[];
  headings: string[];
  full: string[];
  after: string[];
  glued: string[];
  other: string[];
};

export const wordings: Record<'seen' | 'unseen', Wording> = {
  seen: {
    title: ['Meadow Curl Milk', 'Tansy Rinse', 'Lowtide Hair Wash', 'Fernlight Mask', 'Oatfield Balm'],
    claims: [
      'A light cream that leaves curls soft.',
      'Made by hand in small batches.',
      'Smells of cut grass and a little of rain.',
      'Rich in oat milk and free of nonsense.',
      'With argan oil, shea butter and panthenol.',
    ],
    headings: [
      'Ingredients',
      'INGREDIENTS',
      'Ingredients:',
      'Composición',
      'Componentes',
      'İçindekiler',
      'İçerik',
      'Inhalt',
      'Inhaltsstoffe',
      'Made with',
      'What’s inside',
      'INCI, in full',
      'Состав',
      'Ingrédients',
      'Skład',
      'Ingredienti',
      'Ingredientes',
      'Composition / Состав / Inhalt',
      'Full list of non-medicinal ingredients',
      'Samenstelling',
      'Ingredents',
      'Indregdients',
    ],
    full: [
      'Full list of ingredients',
      'Full ingredients list:',
      'Full Ingredients',
      'Complete ingredient list:',
      'All ingredients:',
    ],
    after: [
      '<h3>How to use</h3><p>Smooth through damp lengths.</p>',
      '<p>Size: 250 ml</p>',
      '<h4>Shipping</h4><p>Two days.</p>',
      '<p><strong>Directions</strong><br>Massage in, rinse.</p>',
    ],
    glued: [
      'May contain additional traces; the pack decides.',
      'Ingredients are subject to change.',
      'Please check the pack before use.',
      'This product is vegan and cruelty free.',
    ],
    other: [
      '<h2>You may also like</h2><ul><li>Tansy Oil</li><li>Reed Comb</li></ul>',
      '<footer>All rights reserved. Terms. Privacy.</footer>',
    ],
  },
  unseen: {
    title: [
      'Gorse & Honey Styling Cream',
      'Mallow Conditioner',
      'Peat Scalp Serum',
      'Birchwater Shampoo Bar',
      'Plum Body Butter',
    ],
    claims: [
      'Our most loved treatment for dry ends gives slip and shine.',
      'Crafted in our workshop on the coast from what grows there.',
      'Dermatologist tested, gentle enough for every day.',
      'Infused with sea buckthorn and marula to lock in moisture all day long.',
      'You will notice the difference from the first wash!',
    ],
    headings: [
      'Ingredients',
      'Ingredient List',
      'Product ingredients',
      'INCI',
      'Inci:',
      'Zusammensetzung',
      'Bestandteile',
      'Composition',
      'Liste INCI',
      'Ingrediënten',
      'Lista de ingredientes',
      'Composição',
      'Sastav',
      'Sastojci',
      'Съставки',
      'Ингредиенты',
      'Koostumus',
      'Ainesosat',
      'Indhold',
      'Innehåll',
      'Sestavine',
      'Zloženie',
      'Sudėtis',
      'Ingredientes (INCI)',
      'What goes in',
      'Ingrediants',
      'Ingridients:',
      'Ingrdients',
      'Hráefni',
      'Përbërësit',
      'Compoziție',
      'Lista składników',
      'مكونات',
      'Formula',
    ],
    full: [
      'Full Ingredient List',
      'Complete list of ingredients:',
      'Ingredients in full:',
      'Full INCI',
      'List of all ingredients',
      'See full ingredients',
    ],
    after: [
      '<h2>Usage</h2><p>Work a coin of it into wet hair and leave for five minutes.</p>',
      '<p>Net weight 8 oz / 236 ml</p>',
      '<h3>Reviews (14)</h3><p>Love this, my hair has never been softer.</p>',
      '<p><b>Storage:</b> Keep away from sunlight.</p>',
    ],
    glued: [
      'Formulas may vary, always refer to the packaging for the latest list.',
      'Certified organic by an independent body.',
      '*Denotes organic',
      'Made without parabens, sulfates or silicones.',
    ],
    other: [
      '<section><h3>Recently viewed</h3><p>Mallow Conditioner € 12</p></section>',
      '<footer><p>Subscribe to our letter for 10 % off your first order.</p></footer>',
    ],
  },
};

const tab = (i: number, title: string, text: string) =>
  `<div class="woocommerce-tabs"><ul class="tabs" role="tablist"><li class="d_tab"><a href="#tab-d" role="tab">Description</a></li><li class="i_tab"><a href="#tab-${i}" id="tt-${i}" role="tab">${title}</a></li></ul><div role="tabpanel" id="tab-d"><p>For every day.</p></div><div role="tabpanel" id="tab-${i}" aria-labelledby="tt-${i}">${text}</div></div>`;

/** Ways to put a headed text on a page: `title` is the heading, `text` the merchant's own markup. */
export const stores: ((title: string, text: string) => string)[] = [
  (title, text) =>
    `<div class="product__accordion accordion"><details><summary><div class="summary__title"><h2 class="accordion__title">${title}</h2></div></summary><div class="accordion__content rte">${text}</div></details></div>`,
  (title, text) => tab(3, title, text),
  (title, text) =>
    `<div role="tablist" class="product data items"><div class="data item title" data-role="collapsible"><a role="tab" id="tab-label-a">Details</a></div><div role="tabpanel" class="data item content"><p>For every day.</p></div><div class="data item title" data-role="collapsible"><a role="tab" id="tab-label-b">${title}</a></div><div role="tabpanel" class="data item content" id="b">${text}</div></div>`,
  (title, text) =>
    `<table class="shop_attributes"><tr><th>Weight</th><td><p>0.3 kg</p></td></tr><tr><th>${title}</th><td>${text}</td></tr></table>`,
  (title, text) =>
    `<dl class="productView-info"><dt class="productView-info-name">SKU:</dt><dd>41-2</dd><dt class="productView-info-name">${title}</dt><dd class="productView-info-value">${text}</dd></dl>`,
  (title, text) =>
    `<modal-dialog id="PopupModal-1"><div role="dialog" aria-label="${title.replace(/"/g, '')}"><h1 class="h2">${title}</h1>${text}</div></modal-dialog>`,
  (title, text) => `<div class="product__description rte"><h3>${title}</h3>${text}</div>`,
  (title, text) => `<div class="rte"><p><strong>${title}</strong></p>${text}</div>`,
  (title, text) => `<div class="row"><div class="k">${title}</div><div class="v">${text}</div></div>`,
  (title, text) => `<h6>${title}</h6>${text}`,
];

/** A whole page around a product's part. */
export const page = (roll: Roll, words: Wording, part: string, title = roll.pick(words.title)) =>
  `<header><nav><a href="/">Home</a></nav><ul><li><a href="/h">Hair</a></li><li><a href="/i">Ingredients</a></li></ul></header><main><h1>${title}</h1><p>€ ${roll.int(5, 40)}.00</p><p>${roll.pick(words.claims)} ${roll.pick(words.claims)}</p>${part}${roll.pick(words.after)}</main>${roll.pick(words.other)}`;
