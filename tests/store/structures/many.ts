import type { Good } from '../goods.ts';
import { plain, type Slots } from '../html.ts';

// More than one list on the page.
export const many = {
  // Off-screen in full, cut short, an "important information" block, and once more in the description.
  'four-times': (good: Good): Slots => ({
    beside: `<div class="away"><h2>Ingredients</h2><p>${plain(good.list)}</p></div>
      <div class="teaser"><h3>Ingredients</h3><p>${plain(good.list.slice(0, 90).replace(/,[^,]*$/, ''))}… <a href="#information">See all</a></p></div>`,
    below: `<section class="sheet rich"><h2>Description</h2><p>${plain(good.blurb)}</p><h3>Ingredients</h3><p>${plain(good.list)}</p></section>
      <section class="sheet" id="information"><h2>Important information</h2><h4>Ingredients</h4><p>${plain(good.list)}</p><h4>Legal notice</h4><p>Descriptions are not a promise.</p></section>`,
  }),

  kit: (good: Good): Slots => ({
    below: `<section class="sheet"><h2>In the box</h2><h3>Two-Berth Cleanser</h3><p>Ingredients: ${plain(good.list)}</p>
      <h3>${plain(good.alsoInBox?.name ?? 'The other one')}</h3><p>Ingredients: ${plain(good.alsoInBox?.list ?? good.list)}</p></section>`,
  }),
};
