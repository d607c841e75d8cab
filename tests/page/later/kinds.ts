// Ways shops print a list that no other set of pages here draws; one line of thought each, written before the finder
// was asked.
import { formula } from '../other/names.ts';
import type { Roll } from '../other/roll.ts';
import { escaped, type Page } from '../other/shop.ts';
import type { Tongue } from './tongues.ts';

export type Shop = { roll: Roll; tongue: Tongue; tag: string };
export type Kind = (shop: Shop) => Page;

const plainly = (names: string[]) => names.filter((name) => !/[,;/()·、]/.test(name));
const names = ({ roll }: Shop, count?: number) => formula(roll, count);
const simple = (shop: Shop, count?: number) => plainly(names(shop, count));
const head = ({ roll, tongue }: Shop) => roll.pick(tongue.heads);
const line = (list: string[], between = ', ') => escaped(list.join(between));
const one = (list: string[], html: string): Page => ({ html, lists: [list] });

export const kinds: Record<string, Kind> = {
  'pairs in a grid': (shop) => {
    const list = names(shop);
    const [, use, volume, maker] = shop.tongue.beside;
    const pair = (label: string, value: string) =>
      `<div class="spec"><div class="spec__k">${label}</div><div class="spec__v">${value}</div></div>`;
    return one(
      list,
      `<div class="specs">${pair(volume!, '250 ml')}${pair(maker!, 'Oarlock')}${pair(head(shop), line(list))}${pair(use!, shop.tongue.use)}</div>`,
    );
  },
  'commas of the script': (shop) => {
    const list = simple(shop);
    const comma = ({ ja: '、', ko: ', ', ar: '، ' } as Record<string, string>)[shop.tag] ?? '，';
    return one(list, `<h4>${head(shop)}</h4><p>${line(list, comma)}</p>`);
  },
  'what each does, in brackets': (shop) => {
    const list = simple(shop);
    const does = ['solvent', 'humectant', 'emollient', 'preservative', 'surfactant', 'perfume'];
    const html = `<h3>${head(shop)}</h3><p>${line(list.map((name) => `${name} (${shop.roll.pick(does)})`))}</p>`;
    return { html, lists: [list], woven: true };
  },
  'broken by soft hyphens': (shop) => {
    const list = names(shop);
    const soft = list.map((name) => name.replace(/(\p{L}{5})(?=\p{L}{4})/gu, '$1\u00ad'));
    return one(list, `<h3>${head(shop)}</h3><div class="txt">${escaped(soft.join(',\u00a0'))}</div>`);
  },
  'closed dialog': (shop) => {
    const list = names(shop);
    return one(
      list,
      `<button type="button" commandfor="d3" command="show-modal">${head(shop)}</button><p>${shop.tongue.use}</p><dialog id="d3"><form method="dialog"><button>✕</button></form><h2>${shop.tongue.titles[0]}</h2><div>${line(list)}</div></dialog>`,
    );
  },
  'shadow root of a plain div': (shop) => {
    const list = names(shop);
    return one(
      list,
      `<div class="widget"><template shadowrootmode="open"><section><h3>${head(shop)}</h3><p>${line(list)}</p></section></template></div>`,
    );
  },
  'sticker of an importer': (shop) => {
    const list = names(shop);
    const [, use, volume, maker, country, until] = shop.tongue.beside;
    return one(
      list,
      `<p>${shop.tongue.titles[0]}. ${use}: ${shop.tongue.use} ${head(shop)}: ${line(list)}. ${maker}: Oarlock, ${country}: EU. ${volume}: 250 ml. ${until}: 12M. ${shop.tongue.after[1]}</p>`,
    );
  },
  semicolons: (shop) => {
    const list = names(shop).filter((name) => !name.includes(';'));
    return one(list, `<p><b>${head(shop)}:</b> ${line(list, '; ')}.</p>`);
  },
  'a paragraph for each name': (shop) => {
    const list = simple(shop);
    return one(
      list,
      `<h3>${head(shop)}</h3>${list.map((name, at) => `<p>${escaped(name)}${at < list.length - 1 ? ',' : '.'}</p>`).join('')}`,
    );
  },
  'widgets of a page builder': (shop) => {
    const list = names(shop);
    const widget = (kind: string, html: string) =>
      `<div class="pb-element pb-${kind}" data-id="${shop.roll.below(1e6)}"><div class="pb-container"><div class="pb-inner">${html}</div></div></div>`;
    return one(
      list,
      `${widget('heading', `<h2>${shop.tongue.beside[1]}</h2>`)}${widget('text', `<p>${shop.tongue.use}</p>`)}${widget('divider', '<span></span>')}${widget('heading', `<h2><span>${head(shop)}</span></h2>`)}${widget('spacer', '')}${widget('text', `<p><span style="font-weight:400">${line(list)}</span></p>`)}`,
    );
  },
  'heading is a picture': (shop) => {
    const list = names(shop);
    return one(
      list,
      `<img src="h1.png" alt="${shop.tongue.beside[0]}"><p>${shop.tongue.says[0]}</p><img src="h2.png" alt="${head(shop)}"><p>${line(list)}</p>`,
    );
  },
  'set, each with its volume': (shop) => {
    const lists = [names(shop), names(shop)];
    const titles = shop.tongue.titles;
    return {
      lists,
      html: `<h3>${head(shop)}</h3><p>${lists.map((list, at) => `<b>${titles[at % titles.length]} 250 ml</b><br>${line(list)}`).join('<br><br>')}</p>`,
    };
  },
  'a list for each size or scent': (shop) => {
    const lists = [names(shop), names(shop), names(shop)];
    return {
      lists,
      html: `<select><option>Rosa</option><option>Mint</option><option>Citrus</option></select>${lists.map((list, at) => `<div class="variant" data-variant="${at}"${at ? ' style="display:none"' : ''}><span class="label">${head(shop)}</span><span class="value">${line(list)}</span></div>`).join('')}`,
    };
  },
  '“and” before the last': (shop) => {
    const list = names(shop);
    return one(
      list,
      `<p>${shop.tongue.says[0]} <em>${head(shop)}</em>: ${line(list.slice(0, -1))} ${shop.tongue.and} ${escaped(list.at(-1)!)}.</p>`,
    );
  },
  'rows of a marketplace': (shop) => {
    const list = names(shop);
    const [, , volume, maker, country, until] = shop.tongue.beside;
    const row = (label: string, value: string) =>
      `<tr><th scope="row"><span>${label}</span></th><td><span dir="auto">${value}</span></td></tr>`;
    return one(
      list,
      `<table class="attrs"><tbody>${row(maker!, 'Oarlock')}${row(country!, 'Portugal')}${row(volume!, '250 ml')}${row(head(shop), line(list))}${row(until!, '36')}</tbody></table>`,
    );
  },
  'behind a manual, no heading': (shop) => {
    const list = names(shop);
    return one(
      list,
      `<div>${shop.tongue.says.join(' ')}<br><br>${shop.tongue.use}<br><br>${line(list)}<br><br>${shop.tongue.after[0]}</div>`,
    );
  },
  'numbers before names': (shop) => {
    const list = simple(shop, 8 + shop.roll.below(8));
    const mark = shop.roll.pick([
      (at: number) => `${at + 1}) `,
      (at: number) => `${String.fromCodePoint(0x2460 + at)} `,
      (at: number) => `${at + 1}. `,
    ]);
    return one(
      list,
      `<h3>${head(shop)}</h3><p>${list.map((name, at) => mark(at) + escaped(name)).join('<br>')}</p>`,
    );
  },
  'shares before names': (shop) => {
    const list = simple(shop);
    const shares = list.map((name, at) => `${Math.max(0.1, 60 / (at + 1) ** 2).toFixed(1)}% ${name}`);
    return one(list, `<h3>${head(shop)}</h3><p>${line(shares)}</p>`);
  },
  'a tooltip for each name': (shop) => {
    const list = simple(shop);
    const says = shop.tongue.says;
    const html = list
      .map(
        (name, at) =>
          `<li><span class="n">${escaped(name)}</span><span role="tooltip" hidden>${says[at % says.length]}</span></li>`,
      )
      .join('');
    return { html: `<h3>${head(shop)}</h3><ul>${html}</ul>`, lists: [list], woven: true };
  },
  'raised marks and notes': (shop) => {
    const list = names(shop);
    const html = list
      .map(
        (name, at) => escaped(name) + (at % 3 === 1 ? `<sup>${shop.roll.pick(['1', '*', '†'])}</sup>` : ''),
      )
      .join(', ');
    return one(list, `<h3>${head(shop)}</h3><p>${html}.</p><p><sup>1</sup> bio <sup>*</sup> eco</p>`);
  },
  'two states of the recipe': (shop) => {
    const lists = [names(shop), names(shop)];
    return {
      lists,
      html: `<h3>${head(shop)}</h3><p>LOT 2024:<br>${line(lists[0]!)}</p><p>LOT 2026:<br>${line(lists[1]!)}</p>`,
    };
  },
  'a few names of a powder or mist': (shop) => {
    const list = shop.roll.pick([
      ['Alcohol Denat.', 'Aqua', 'Parfum', 'Limonene', 'Linalool'],
      ['Tapioca Starch', 'Kaolin', 'Silica', 'Parfum'],
      ['Rosa Damascena Flower Water', 'Glycerin', 'Sodium Benzoate', 'Citric Acid'],
      ['Argania Spinosa Kernel Oil', 'Tocopherol', 'Parfum'],
      ['Aqua', 'Magnesium Sulfate', 'Panthenol', 'Maris Sal', 'Phenoxyethanol'],
    ]);
    return one(
      list,
      `<div class="accordion"><div class="accordion__title">${head(shop)}</div><div class="accordion__body">${line(list)}</div></div>`,
    );
  },
  'marks of direction between names': (shop) => {
    const list = names(shop);
    return one(
      list,
      `<div dir="rtl"><h3>${head(shop)}</h3><p dir="ltr">\u200e${escaped(list.join(',\u200e '))}\u200e</p></div>`,
    );
  },
  'colours that may be in it': (shop) => {
    const list = names(shop);
    return one(
      list,
      `<p>${head(shop)} 🌿 ${line(list)}, [+/- CI 77891, CI 77491, Mica]. ${shop.tongue.after[0]}</p>`,
    );
  },
};
