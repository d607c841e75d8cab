import type { Good } from '../goods.ts';
import { plain, type Slots } from '../html.ts';
import { productData } from '../product-data.ts';

// Lists for machines only, or behind a boundary of the document.
export const machine = {
  'json-ld': (good: Good): Slots => ({
    head: productData(good, {
      additionalProperty: [{ '@type': 'PropertyValue', name: 'Ingredients', value: good.list }],
    }),
    below: `<section class="sheet"><h2>About</h2><p>${plain(good.blurb)}</p></section>`,
  }),

  microdata: (good: Good): Slots => ({
    below: `<section class="sheet" itemscope itemtype="https://schema.org/Product"><h2 itemprop="name">${plain(good.name)}</h2><meta itemprop="brand" content="${plain(good.maker)}">
      <div itemprop="additionalProperty" itemscope itemtype="https://schema.org/PropertyValue"><meta itemprop="name" content="Ingredients"><meta itemprop="value" content="${plain(good.list)}"></div>
      <p itemprop="description">${plain(good.blurb)}</p></section>`,
  }),

  'shadow-root': (good: Good): Slots => ({
    below: `<good-label><template shadowrootmode="open"><link rel="stylesheet" href="/shop.css"><section class="sheet"><h2>Ingredients</h2><p>${plain(good.list)}</p></section></template></good-label>`,
  }),

  frame: (good: Good): Slots => ({
    below: `<iframe class="label-frame" src="/parts/${good.id}/frame" title="Label of ${plain(good.name)}"></iframe>`,
  }),
};
