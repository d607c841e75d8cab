import type { Good } from '../goods.ts';
import { plain, type Slots } from '../html.ts';

// Lists that are not in the document when it has loaded.
export const late = {
  'after-click': (good: Good): Slots => ({
    beside: `<p><button type="button" class="quiet" data-loads="/parts/${good.id}/label" data-into="late">Show ingredients</button></p><div id="late"></div>`,
  }),

  // Title outside the trigger; the content is mounted when opened and removed when shut.
  accordion: (good: Good): Slots => ({
    beside: `<div class="accordion"><div class="accordion-head"><p>Ingredients</p><button type="button" class="quiet" aria-expanded="false" aria-controls="acc-in" data-mounts="acc-in"><span aria-hidden="true">+</span></button></div>
      <div id="acc-in" data-holds="${plain(good.list)}"></div></div>`,
  }),

  // The page of a product as the client-side router draws it: see public/shop.js and serve.ts.
  'client-router': (good: Good): Slots => ({
    below: `<section class="sheet"><h2>Ingredients</h2><p>${plain(good.list)}</p></section>`,
  }),

  stream: (good: Good): Slots => ({
    below: `<section class="sheet"><h2>Ingredients</h2><p>${plain(good.list)}</p></section>
      <h2 class="stream-title">More from the shelves</h2><div id="stream" data-stream="/parts/stream/"></div><p id="stream-end" class="small">More as you go down…</p>`,
  }),

  variants: (good: Good): Slots => ({
    beside: `<fieldset class="variants"><legend>Strength</legend><label><input type="radio" name="variant" value="label" checked data-swaps="/parts/${good.id}/label"> With protein</label>
      <label><input type="radio" name="variant" value="variant" data-swaps="/parts/${good.id}/variant"> ${plain(good.variant?.name ?? 'Other')}</label></fieldset>`,
    below: `<section class="sheet" id="swapped"><h2>Ingredients</h2><p>${plain(good.list)}</p></section>`,
  }),
};
