import type { Good } from '../goods.ts';
import { plain, type Slots } from '../html.ts';

const facts = (good: Good): [string, string][] => [
  ['Contents', `${good.size} ${good.unit}`],
  ['Maker', good.maker],
  ['Ingredients', good.list],
  ['Kept', 'Twelve months once opened'],
];

// Lists that are one row among other facts.
export const rows = {
  table: (good: Good): Slots => ({
    below: `<section class="sheet"><h2>Additional information</h2><table class="facts"><tbody>${facts(good)
      .map(([name, value]) => `<tr><th scope="row">${name}</th><td><p>${plain(value)}</p></td></tr>`)
      .join('')}</tbody></table></section>`,
  }),

  'data-th': (good: Good): Slots => ({
    below: `<section class="sheet"><h2>More information</h2><table class="facts"><caption class="away">More information</caption><tbody>${facts(
      good,
    )
      .map(
        ([name, value]) =>
          `<tr><th class="col label" scope="row">${name}</th><td class="col data" data-th="${name}">${plain(value)}</td></tr>`,
      )
      .join('')}</tbody></table></section>`,
  }),

  'definition-list': (good: Good): Slots => ({
    below: `<section class="sheet"><dl class="facts">${facts(good)
      .map(([name, value]) => `<dt>${name}:</dt><dd>${plain(value)}</dd>`)
      .join('')}</dl></section>`,
  }),

  'grid-rows': (good: Good): Slots => ({
    below: `<section class="sheet"><div class="grid-facts">${facts(good)
      .map(([name, value]) => `<div><span>${name}</span><span>${plain(value)}</span></div>`)
      .join('')}</div></section>`,
  }),
};
