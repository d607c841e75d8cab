import type { Good } from '../goods.ts';
import { plain, type Slots } from '../html.ts';

// Lists folded away, but in the document from the start.
export const tabs = {
  details: (good: Good): Slots => ({
    beside: `<div class="fold"><details><summary><h2>Directions</h2></summary><div class="fold-in"><p>On wet hair, in sections, from the ends up.</p></div></details></div>
      <div class="fold"><details><summary><h2>Ingredients</h2></summary><div class="fold-in"><p>${plain(good.list)}</p></div></details></div>
      <div class="fold"><details><summary><h2>Carriage</h2></summary><div class="fold-in"><p>By cart, Tuesdays.</p></div></details></div>`,
  }),

  // The tab and its panel share an id and nothing else; the panels stand after an unrelated block.
  tabs: (good: Good): Slots => ({
    beside: `<ul class="tabs" role="tablist"><li role="presentation"><a href="#tab-story" id="tab-title-story" role="tab" aria-controls="tab-story" aria-selected="true">Story</a></li>
      <li role="presentation"><a href="#tab-label" id="tab-title-label" role="tab" aria-controls="tab-label" aria-selected="false">Ingredients</a></li>
      <li role="presentation"><a href="#tab-words" id="tab-title-words" role="tab" aria-controls="tab-words" aria-selected="false">Letters (2)</a></li></ul>`,
    below: `<aside class="sheet"><h2>From the same shelf</h2><p>Nothing else today; the shelf was painted.</p></aside>
      <div class="panels"><div class="sheet" role="tabpanel" id="tab-story" aria-labelledby="tab-title-story"><p>${plain(good.blurb)}</p></div>
      <div class="sheet" role="tabpanel" id="tab-label" aria-labelledby="tab-title-label" hidden><p>${plain(good.list)}</p></div>
      <div class="sheet" role="tabpanel" id="tab-words" aria-labelledby="tab-title-words" hidden><p>“Came in a dry box.” “Smells of Sundays.”</p></div></div>`,
  }),

  'title-panels': (good: Good): Slots => ({
    below: `<div class="data items" role="tablist">
      <div class="item title" role="presentation"><a class="switch" role="tab" href="#p-details" id="t-details">Details</a></div>
      <div class="item content sheet" role="tabpanel" id="p-details"><p>${plain(good.blurb)}</p></div>
      <div class="item title" role="presentation"><a class="switch" role="tab" href="#p-inci" id="t-inci">Ingredients</a></div>
      <div class="item content sheet" role="tabpanel" id="p-inci"><div class="value">${plain(good.list)}</div></div>
      <div class="item title" role="presentation"><a class="switch" role="tab" href="#p-ask" id="t-ask">Ask us</a></div>
      <div class="item content sheet" role="tabpanel" id="p-ask"><p>At the counter, or by post.</p></div></div>`,
  }),
};
