// Shapes by their markup: where builders of shops put one list.
import { formula } from '../other/names.ts';
import type { Page } from '../other/shop.ts';
import { calledBy, escaped, type Shop, talk } from './shop.ts';

export type Kind = (shop: Shop) => Page;
const of = (names: readonly string[], between = ', ') => escaped(names.join(between));
const head = ({ roll, tongue }: Shop) => roll.pick(tongue.heads);
const one = (html: string, names: string[], woven?: true): Page =>
  woven ? { html, lists: [names], woven } : { html, lists: [names] };

export const marked: Record<string, Kind> = {
  'accordion of a theme': (shop) => {
    const names = formula(shop.roll);
    const fold = (title: string, inner: string) =>
      `<details class="fold"><summary><span>${title}</span><svg></svg></summary><div class="rte">${inner}</div></details>`;
    return one(
      fold(shop.tongue.about, `<p>${talk(shop)}</p>`) +
        fold(head(shop), `<p>${of(names)}</p>`) +
        fold(shop.tongue.use, `<p>${shop.tongue.how.join(' ')}</p>`) +
        fold(shop.tongue.ship, `<p>${shop.tongue.shipped}</p>`),
      names,
    );
  },
  'tabs with panels far away': (shop) => {
    const names = formula(shop.roll);
    const { about, use } = shop.tongue;
    return one(
      `<ul role="tablist"><li><a role="tab" href="#t1">${about}</a></li><li><a role="tab" href="#t2" id="lt2">${head(shop)}</a></li><li><a role="tab" href="#t3">${use}</a></li></ul><div>${talk(shop)}</div><div id="t1" role="tabpanel"><p>${talk(shop, 3)}</p></div><div id="t2" role="tabpanel" aria-labelledby="lt2" style="display:none"><p>${of(names)}.</p></div><div id="t3" role="tabpanel" hidden><p>${shop.tongue.how[0]}</p></div>`,
      names,
    );
  },
  'row of a table of facts': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<table class="specs"><tbody><tr><th>EAN</th><td>40${shop.roll.below(99999999)}</td></tr><tr><th>ml</th><td>250</td></tr><tr><th>${head(shop)}</th><td>${of(names)}</td></tr><tr><th>${shop.tongue.use}</th><td>${shop.tongue.how[0]}</td></tr></tbody></table>`,
      names,
    );
  },
  'list of definitions': (shop) => {
    const names = formula(shop.roll, 3 + shop.roll.below(30));
    return one(
      `<dl><dt>${shop.tongue.about}</dt><dd>${talk(shop)}</dd><dt>${head(shop)}:</dt><dd>${of(names)}</dd><dt>No.</dt><dd>A-${shop.roll.below(9999)}</dd></dl>`,
      names,
    );
  },
  'names as links': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<h3>${head(shop)}</h3><div class="inci">${names.map((name, at) => `<a href="/lexicon/${at}"><span>${escaped(name)}</span></a>`).join(', ')}</div>`,
      names,
    );
  },
  'names with a bubble each': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(14));
    return one(
      `<h2>${head(shop)}</h2><ul class="chips">${names.map((name, at) => `<li><button aria-describedby="b${at}">${escaped(name)}</button><div role="tooltip" id="b${at}" hidden>${shop.roll.pick(shop.tongue.why)}</div></li>`).join('')}</ul>`,
      names,
      true,
    );
  },
  'one name an item': (shop) => {
    const names = formula(shop.roll, 3 + shop.roll.below(25));
    return one(
      `<h3>${head(shop)}</h3><ul>${names.map((name) => `<li>${escaped(name)}</li>`).join('')}</ul><h3>${shop.tongue.use}</h3><ul>${shop.tongue.how.map((how) => `<li>${how}</li>`).join('')}</ul>`,
      names,
    );
  },
  'one name a line': (shop) => {
    const names = formula(shop.roll, 4 + shop.roll.below(25));
    return one(
      `<p><b>${head(shop)}</b><br>${names.map(escaped).join('<br>\n')}<br><br>${shop.tongue.notes[0]}</p>`,
      names,
    );
  },
  'cards with tasks': (shop) => {
    const names = formula(shop.roll, 6 + shop.roll.below(12));
    return one(
      `<section><h2>${head(shop)}</h2><div class="grid">${names.map((name) => `<div class="card"><img alt="" src="i.svg"><div class="n">${escaped(name)}</div><div class="f">${shop.roll.pick(shop.tongue.tasks)}</div></div>`).join('')}</div></section>`,
      names,
      true,
    );
  },
  'table of names and tasks': (shop) => {
    const names = formula(shop.roll, 6 + shop.roll.below(14));
    return one(
      `<h3>${shop.tongue.full}</h3><table><tbody>${names.map((name) => `<tr><td>${escaped(name)}</td><td>${shop.roll.pick(shop.tongue.tasks)}</td></tr>`).join('')}</tbody></table>`,
      names,
      true,
    );
  },
  'a dialog at the end of the page': (shop) => {
    const names = formula(shop.roll);
    const title = head(shop);
    return one(
      `<button aria-haspopup="dialog" data-open="#d7">${title}</button><p>${talk(shop)}</p><div class="more"><p>${shop.tongue.shipped}</p></div><pop-up id="d7" hidden><div role="dialog" aria-label="${title}"><button>×</button><p>${of(names)}</p></div></pop-up>`,
      names,
    );
  },
  'a region that only says its name': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(25));
    return one(
      `<div role="region" aria-label="${head(shop)}"><span>${of(names)}</span></div><div role="region" aria-label="${shop.tongue.use}"><span>${shop.tongue.how[0]}</span></div>`,
      names,
    );
  },
  'the state of the page in a script': (shop) => {
    const names = formula(shop.roll);
    const state = JSON.stringify({ product: { title: shop.title, inci: names.join(', ') } });
    return one(
      `<script type="application/json" id="__STATE__">${state.replace(/</g, '\\u003c')}</script><script type="application/ld+json">${state.replace(/</g, '\\u003c')}</script><div data-inci="${of(names).replace(/"/g, '')}"><h4>${head(shop)}</h4><div>${of(names)}</div></div>`,
      names,
    );
  },
  'cut short, and whole behind a button': (shop) => {
    const names = formula(shop.roll, 12 + shop.roll.below(20));
    return one(
      `<div><h3>${head(shop)}</h3><p class="short">${of(names.slice(0, 6))}… <a href="#">${shop.tongue.more}</a></p><p class="long" hidden>${of(names)}</p></div>`,
      names,
    );
  },
  'commas in elements of their own': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<div class="row"><strong class="l">${head(shop)}</strong><div>${names.map((name) => `<span>${escaped(name)}</span>`).join('<span class="sep">, </span>')}</div></div>`,
      names,
    );
  },
  'boxes in boxes': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(20));
    return one(
      `<div class="acc"><div class="acc__h"><div><div>${head(shop)}</div></div></div><div class="acc__b"><div><div>${names.map((name) => `<div class="ing"><div>${escaped(name)}</div></div>`).join('')}</div></div></div></div><div class="acc"><div class="acc__h"><div>${shop.tongue.ship}</div></div><div class="acc__b">${shop.tongue.shipped}</div></div>`,
      names,
    );
  },
  'important information of a market': (shop) => {
    const names = formula(shop.roll);
    const { use, how, notes } = shop.tongue;
    return one(
      `<div id="info"><h2>Info</h2><div><h4>${head(shop)}</h4><p></p><p>${of(names)}</p></div><div><h4>${use}</h4><p>${how.join(' ')}</p></div><div><h4>${notes[2]}</h4><p>${notes[0]}</p></div></div>`,
      names,
    );
  },
  'lines of eighty letters in pre': (shop) => {
    const names = formula(shop.roll);
    const lines = names
      .join(', ')
      .replace(/(.{40,76}) /g, '$1\n')
      .trim();
    return one(
      `<pre>${head(shop).toUpperCase()}\n\n${escaped(lines)}\n\n${shop.tongue.notes[2]}</pre>`,
      names,
    );
  },
  'in a shadow with a slotted title': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<fold-box> <template shadowrootmode="open"><div><slot name="title"></slot><div class="in"><slot></slot></div></div></template><h3 slot="title">${head(shop)}</h3> <p>${of(names)}</p> </fold-box>`,
      names,
    );
  },
  'two of the same product': (shop) => {
    const names = formula(shop.roll);
    return one(
      `<div class="mobile"><h3>${head(shop)}</h3><p>${of(names)}</p></div><p>${talk(shop)}</p><p>${escaped(calledBy(shop.roll, shop.tongue))}</p><div class="desktop"><h3>${head(shop)}</h3><p>${of(names)}</p></div>`,
      names,
    );
  },
};
