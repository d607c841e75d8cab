// Shapes by what holds the names: builders, forms, components and leftovers of other systems.
import { formula } from '../other/names.ts';
import type { Page } from '../other/shop.ts';
import { calledBy, escaped, quoted, type Shop, talk } from './shop.ts';

export type Kind = (shop: Shop) => Page;
const of = (names: readonly string[], between = ', ') => escaped(names.join(between));
const head = ({ roll, tongue }: Shop) => roll.pick(tongue.heads);
const one = (html: string, names: string[], woven?: true): Page =>
  woven ? { html, lists: [names], woven } : { html, lists: [names] };

export const held: Record<string, Kind> = {
  'boxes to tick': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(16));
    return one(
      `<h3>${head(shop)}</h3><ul class="tick">${names.map((name, at) => `<li><label for="k${at}"><input type="checkbox" id="k${at}"> ${escaped(name)}</label></li>`).join('')}</ul><p>${talk(shop)}</p>`,
      names,
    );
  },
  'titles for phones beside panels': (shop) => {
    const names = formula(shop.roll);
    const title = head(shop);
    const tab = (at: number, called: string) =>
      `<div class="bt-title" data-tab="${at}" role="tab">${called}</div>`;
    const { about, use, how } = shop.tongue;
    return one(
      `<div class="bt"><div class="bt-bar">${tab(1, about)}${tab(2, title)}${tab(3, use)}</div><div class="bt-all">${tab(1, about)}<div class="bt-in"><p>${talk(shop)}</p></div>${tab(2, title)}<div class="bt-in"><p>${of(names)}</p></div>${tab(3, use)}<div class="bt-in"><p>${how}</p></div></div></div>`,
      names,
    );
  },
  'buttons first, panels without names': (shop) => {
    const names = formula(shop.roll);
    const { about, use, how } = shop.tongue;
    return one(
      `<div class="tabs"><button>${about}</button><button>${use}</button><button class="on">${head(shop)}</button></div><div class="panes"><div class="pane">${talk(shop)}</div><div class="pane">${how}</div><div class="pane on">${of(names)}</div></div>`,
      names,
    );
  },
  'title in the shadow, list in its slot': (shop) => {
    const names = formula(shop.roll, 4 + shop.roll.below(20));
    return one(
      `<info-fold><template shadowrootmode="open"><button>${head(shop)}</button><div class="in"><slot></slot></div></template><p>${of(names)}</p></info-fold>`,
      names,
    );
  },
  'names slotted one by one': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(16));
    return one(
      `<name-list><template shadowrootmode="open"><h4>${head(shop)}</h4><ul><slot></slot></ul></template>${names.map((name) => `<name-item><template shadowrootmode="open"><li><slot></slot></li></template>${escaped(name)}</name-item>`).join('')}</name-list>`,
      names,
    );
  },
  'slots in another order': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<two-part><template shadowrootmode="open"><section><slot name="t"></slot><slot name="b"></slot></section></template><div slot="b"><p>${of(names)}</p></div><span slot="t">${head(shop)}</span></two-part>`,
      names,
    );
  },
  'a field that cannot be written': (shop) => {
    const names = formula(shop.roll);
    return one(`<label>${head(shop)}<textarea readonly rows="6">${of(names)}</textarea></label>`, names);
  },
  'group with a legend': (shop) => {
    const names = formula(shop.roll, 4 + shop.roll.below(20));
    return one(
      `<fieldset><legend>${head(shop)}</legend>${of(names)}</fieldset><fieldset><legend>${shop.tongue.use}</legend>${shop.tongue.how}</fieldset>`,
      names,
    );
  },
  'caption of a table of shares': (shop) => {
    const names = formula(shop.roll, 6 + shop.roll.below(10));
    return one(
      `<table><caption>${head(shop)}</caption><thead><tr><th>INCI</th><th>CAS</th><th>%</th></tr></thead><tbody>${names.map((name) => `<tr><td>${escaped(name)}</td><td>${50 + shop.roll.below(900)}-${10 + shop.roll.below(80)}-${shop.roll.below(9)}</td><td>${shop.roll.pick(['1–5', '< 1', '0.1', '10–25'])}</td></tr>`).join('')}</tbody></table>`,
      names,
      true,
    );
  },
  'names in rows of three': (shop) => {
    const names = formula(shop.roll, 9 + 3 * shop.roll.below(4));
    const rows = Array.from({ length: names.length / 3 }, (_, at) => names.slice(at * 3, at * 3 + 3));
    return one(
      `<h4>${head(shop)}</h4><table class="layout">${rows.map((row) => `<tr>${row.map((name) => `<td>${escaped(name)}</td>`).join('')}</tr>`).join('')}</table>`,
      names,
    );
  },
  'marks of a search': (shop) => {
    const names = formula(shop.roll);
    const marked = names.map((name) => escaped(name).replace(/^(\w{3})/, '<mark>$1</mark>'));
    return one(`<h3>${head(shop)}</h3><p>${marked.join(', ')}</p>`, names);
  },
  'markup of another tongue': (shop) => {
    const names = formula(shop.roll);
    const title = head(shop);
    return one(
      shop.roll.pick([
        `<div>${talk(shop)} **${title}:** ${of(names)} **${shop.tongue.use}:** ${shop.tongue.how}</div>`,
        `<div>[b]${title}[/b] ${of(names)} [b]${shop.tongue.use}[/b] ${shop.tongue.how}</div>`,
        `<div>${talk(shop)} ## ${title} ${names.map((name) => `- ${escaped(name)}`).join(' ')} ## ${shop.tongue.use} ${shop.tongue.how}</div>`,
        `<div>[tab title="${title}"]${of(names)}[/tab][tab title="${shop.tongue.use}"]${shop.tongue.how}[/tab]</div>`,
      ]),
      names,
    );
  },
  'a field printed as its data': (shop) => {
    const names = formula(shop.roll);
    const text = (value: string) => ({ type: 'paragraph', children: [{ type: 'text', value }] });
    return one(
      `<h3>${head(shop)}</h3><div>${escaped(
        shop.roll.pick([
          JSON.stringify(names),
          JSON.stringify({ type: 'root', children: [text(names.join(', '))] }),
        ]),
      )}</div>`,
      names,
    );
  },
  'lines that only the style breaks': (shop) => {
    const names = formula(shop.roll, 6 + shop.roll.below(16));
    return one(
      `<h3>${head(shop)}</h3><div style="white-space:pre-line">${of(names, '\n')}</div><p>${talk(shop)}</p>`,
      names,
    );
  },
  'tags that are never closed': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<center><b>${head(shop)}<p>${of(names)}<p><b>${shop.tongue.use}<p>${shop.tongue.how}</center>`,
      names,
    );
  },
  'text of a picture': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<p>${talk(shop)}</p><img src="label.jpg" alt="${quoted(`${head(shop)}: ${names.join(', ')}`)}">`,
      names,
    );
  },
  'words of a bubble': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<p>${talk(shop)}</p><button class="info" data-bs-toggle="popover" data-bs-title="${head(shop)}" data-bs-content="${quoted(names.join(', '))}">i</button>`,
      names,
    );
  },
  'items of a component not yet drawn': (shop) => {
    const names = formula(shop.roll);
    const items = [
      { title: shop.tongue.about, body: `<p>${talk(shop)}</p>` },
      { title: head(shop), body: `<p>${escaped(names.join(', '))}</p>` },
    ];
    return one(`<fold-list :items="${quoted(JSON.stringify(items))}"></fold-list>`, names);
  },
  'a table to compare goods': (shop) => {
    const lists = [0, 1, 2].map(() => formula(shop.roll, 6 + shop.roll.below(14)));
    return {
      html: `<table><tr><th></th>${lists.map(() => `<th>${calledBy(shop.roll, shop.tongue)}</th>`).join('')}</tr><tr><th>ml</th><td>100</td><td>200</td><td>250</td></tr><tr><th>${head(shop)}</th>${lists.map((list) => `<td>${of(list)}</td>`).join('')}</tr></table>`,
      lists,
    };
  },
  'cards that turn round': (shop) => {
    const lists = [0, 1, 2].map(() => formula(shop.roll, 6 + shop.roll.below(14)));
    return {
      html: `<div class="flip">${lists.map((list) => `<div class="f"><div class="front"><h4>${calledBy(shop.roll, shop.tongue)}</h4><p>${talk(shop, 1)}</p></div><div class="back"><p>${head(shop)}</p><p>${of(list)}</p></div></div>`).join('')}</div>`,
      lists,
    };
  },
  'a choice shows one of them': (shop) => {
    const lists = [0, 1].map(() => formula(shop.roll, 8 + shop.roll.below(14)));
    return {
      html: `<h4>${head(shop)}</h4><select><option>Moss</option><option>Slate</option></select>${lists.map((list, at) => `<div data-variant="${at}"${at ? ' hidden' : ''}>${of(list)}</div>`).join('')}`,
      lists,
    };
  },
  'folds within a fold': (shop) => {
    const lists = [0, 1].map(() => formula(shop.roll, 8 + shop.roll.below(14)));
    return {
      html: `<details><summary>${head(shop)}</summary>${lists.map((list) => `<details><summary>${calledBy(shop.roll, shop.tongue)}</summary><div><p>${of(list)}</p></div></details>`).join('')}</details>`,
      lists,
    };
  },
  'a dialog with many goods': (shop) => {
    const lists = [0, 1, 2].map(() => formula(shop.roll, 8 + shop.roll.below(10)));
    return {
      html: `<dialog><h2>${head(shop)}</h2><ul>${lists.map((list) => `<li><b>${calledBy(shop.roll, shop.tongue)}</b><span>${of(list)}</span></li>`).join('')}</ul></dialog>`,
      lists,
    };
  },
  'a review that quotes some': (shop) => {
    const names = formula(shop.roll, 12 + shop.roll.below(12));
    return one(
      `<h3>${head(shop)}</h3><p>${of(names)}</p><div class="review"><b>R.</b><p>${talk(shop, 1)} ${of(names.slice(0, 3))}? ${talk(shop, 1)}</p></div>`,
      names,
    );
  },
};
