// Shapes with more than one list: sets, shades, formulas and countries.
import { formula } from '../other/names.ts';
import type { Kind } from './kinds-marked.ts';
import { escaped, type Shop } from './shop.ts';

const of = (names: readonly string[]) => escaped(names.join(', '));
const head = ({ roll, tongue }: Shop) => roll.pick(tongue.heads);
const some = ({ roll }: Shop, most = 4) =>
  Array.from({ length: 2 + roll.below(most - 1) }, () => formula(roll, 6 + roll.below(14)));
const goods = ({ roll, tongue }: Shop, count: number) => roll.some(tongue.goods, count).map(escaped);

export const several: Record<string, Kind> = {
  'a set under bold names': (shop) => {
    const lists = some(shop, 5);
    const names = goods(shop, lists.length);
    return {
      html: `<h3>${head(shop)}</h3>${lists.map((list, at) => `<p><strong>${names[at]}</strong><br>${of(list)}</p>`).join('')}`,
      lists,
    };
  },
  'a set in one paragraph': (shop) => {
    const lists = some(shop, 3);
    const names = goods(shop, lists.length);
    return {
      html: `<p>${head(shop)} – ${lists.map((list, at) => `${names[at]!.toUpperCase()}: ${of(list)}.`).join(' ')}</p>`,
      lists,
    };
  },
  'a set with headings of its own': (shop) => {
    const lists = some(shop);
    const names = goods(shop, lists.length);
    const title = head(shop);
    return {
      html: `<div>${lists.map((list, at) => `${title} ${names[at]}:<br>${of(list)}`).join('<br><br>')}</div>`,
      lists,
    };
  },
  'numbered steps': (shop) => {
    const lists = some(shop);
    const names = goods(shop, lists.length);
    return {
      html: `<h3>${head(shop)}</h3><p>${lists.map((list, at) => `${shop.tongue.step} ${at + 1} – ${names[at]}: ${of(list)}`).join('<br>')}</p>`,
      lists,
    };
  },
  'a list for each shade': (shop) => {
    const base = formula(shop.roll, 10 + shop.roll.below(8));
    const shades = shop.roll.some(['Fern', 'Ink', 'Apricot', 'Ash', 'Plum', 'Rust'], 3);
    const lists = shades.map((_, at) => [...base.slice(0, 7), ...base.slice(7 + at), `CI 7749${at + 1}`]);
    return {
      html: `<h4>${head(shop)}</h4>${shades.map((shade, at) => `<div class="v"><b>0${at + 1} ${shade}:</b> ${of(lists[at]!)}</div>`).join('')}`,
      lists,
    };
  },
  'two formulas': (shop) => {
    const lists = some(shop, 2);
    return {
      html: `<h4>${head(shop)}</h4>${lists.map((list, at) => `<p><em>${shop.tongue.formulas[at]} (LOT 20${at + 25}):</em></p><p>${of(list)}</p>`).join('')}`,
      lists,
    };
  },
  'two countries': (shop) => {
    const lists = some(shop, 2);
    return {
      html: `<p><b>${head(shop)}</b></p><p>EU / UK: ${of(lists[0]!)}</p><p>US / CA: ${of(lists[1]!)}</p>`,
      lists,
    };
  },
  'columns of a table': (shop) => {
    const lists = some(shop, 2);
    const names = goods(shop, 2);
    return {
      html: `<h3>${head(shop)}</h3><table><thead><tr><th>${names[0]}</th><th>${names[1]}</th></tr></thead><tbody><tr><td>${of(lists[0]!)}</td><td>${of(lists[1]!)}</td></tr></tbody></table>`,
      lists,
    };
  },
};
