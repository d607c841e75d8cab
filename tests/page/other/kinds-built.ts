// How the page is built: where the heading stands, where the list does, what is hidden.
import { formula } from './names.ts';
import { escaped, type Page, type Shop, sentences } from './shop.ts';

type Kind = (shop: Shop) => Page;
const joined = (names: readonly string[], by = ', ') => escaped(names.join(by));
const one = (shop: Shop, html: (list: string) => string): Page => {
  const names = formula(shop.roll);
  return { html: html(joined(names) + shop.roll.pick(['', '.', ''])), lists: [names] };
};

export const built: Record<string, Kind> = {
  'tabs of a theme': (s) =>
    one(
      s,
      (list) =>
        `<div class="tabs-wrap"><ul class="tabs" role="tablist"><li class="active"><a href="#t1" role="tab">${s.say('tabs')}</a></li><li><a href="#t2" role="tab">${s.say('head')}</a></li><li><a href="#t3">${s.say('tabs')}</a></li></ul><div class="panel" id="t1" role="tabpanel"><p>${sentences(s, 3)}</p></div><div class="panel" id="t2" role="tabpanel" style="display:none"><p>${list}</p></div><div class="panel" id="t3" style="display:none"><p>${s.say('tail')}</p></div></div>`,
    ),
  'details and summary': (s) =>
    one(
      s,
      (list) =>
        `<details><summary><h3>${s.say('tabs')}</h3></summary><div class="rte"><p>${sentences(s, 2)}</p></div></details><details><summary><h3>${s.say('head')}</h3></summary><div class="rte"><p>${list}</p><p><em>${s.say('tail')}</em></p></div></details>`,
    ),
  'utility classes': (s) =>
    one(
      s,
      (list) =>
        `<div class="divide-y border-t"><div x-data="{o:false}"><button class="flex w-full justify-between py-4"><span class="font-medium">${s.say('tabs')}</span><svg></svg></button><div class="grid grid-rows-[0fr]"><div class="overflow-hidden text-sm">${sentences(s, 2)}</div></div></div><div x-data="{o:false}"><button class="flex w-full justify-between py-4"><span class="font-medium">${s.say('head')}</span><svg></svg></button><div class="grid grid-rows-[0fr]"><div class="overflow-hidden text-sm">${list}</div></div></div></div>`,
    ),
  'hashed classes': (s) =>
    one(
      s,
      (list) =>
        `<div class="css-1n8ibrx"><div class="css-70qvj9"><div class="css-0">${s.say('tabs')}</div></div><div class="css-1w1x9q"><span>${sentences(s, 2)}</span></div></div><div class="css-1n8ibrx"><div class="css-70qvj9"><div class="css-0">${s.say('head')}</div></div><div class="css-1w1x9q"><span><span>${list}</span></span></div></div>`,
    ),
  'shadow roots': (s) =>
    one(
      s,
      (list) =>
        `<pt-accordion><template shadowrootmode="open"><style>:host{display:block}</style><pt-item><template shadowrootmode="open"><button>${s.say('tabs')}</button><div>${sentences(s, 2)}</div></template></pt-item><pt-item><template shadowrootmode="open"><button part="title">${s.say('head')}</button><div part="body"><p>${list}</p></div></template></pt-item></template></pt-accordion>`,
    ),
  'heading in the light, list in the shadow': (s) =>
    one(
      s,
      (list) =>
        `<h3>${s.say('head')}</h3><pt-clamp lines="3"><template shadowrootmode="open"><div class="clamp"><p>${list}</p></div><button>+</button></template></pt-clamp><p>${s.say('say')}</p>`,
    ),
  'definition list': (s) =>
    one(
      s,
      (list) =>
        `<dl class="specs"><dt>EAN</dt><dd>4099999123456</dd><dt>Vol.</dt><dd>250 ml</dd><dt>${s.say('head')}</dt><dd>${list}</dd><dt>${s.say('tabs')}</dt><dd>${s.say('use')}</dd></dl>`,
    ),
  'table of two columns': (s) =>
    one(
      s,
      (list) =>
        `<p>${sentences(s, 2)}</p><table class="attributes"><tbody><tr><th scope="row">SKU</th><td>PT-0417</td></tr><tr><th scope="row">${s.say('tabs')}</th><td>${s.say('use')}</td></tr><tr><th scope="row">${s.say('head')}</th><td data-th="x">${list}</td></tr><tr><th scope="row">kg</th><td>0.28</td></tr></tbody></table>`,
    ),
  'pasted from an editor': (s) =>
    one(s, (list) => {
      const words = list
        .split(', ')
        .map(
          (name) =>
            `<span style="font-weight:400" data-mce-fragment="1">${name.replace(/ /g, '&nbsp;')}</span>`,
        );
      return `<div class="rte"><p><span style="font-size:11pt"><span style="font-family:Calibri">${sentences(s, 3)}</span></span></p><p>&nbsp;</p><p><strong><span style="font-size:11pt">${s.say('head')}&nbsp;</span></strong></p><p><span style="font-size:11pt"><span>${words.join(',&nbsp;')}</span></span></p><p>&nbsp;</p></div>`;
    }),
  'one paragraph of breaks': (s) =>
    one(
      s,
      (list) =>
        `<p>${sentences(s, 2)}<br><br>${s.say('use')}<br><br><b>${s.say('head')}:</b><br>${list}<br><br>${s.say('tail')}</p>`,
    ),
  'a bullet for each name': (s) => {
    const names = formula(s.roll);
    return {
      html: `<p>${sentences(s, 2)}</p><h4>${s.say('head')}</h4><ul>${names.map((name) => `<li>${escaped(name)}</li>`).join('')}</ul><h4>${s.say('tabs')}</h4><ul><li>${s.say('use')}</li><li>${s.say('tail')}</li></ul>`,
      lists: [names],
    };
  },
  'a number for each name': (s) => {
    const names = formula(s.roll);
    return {
      html: `<section><h2>${s.say('head')}</h2><ol class="ing">${names.map((name) => `<li class="ing__i"><span class="ing__n">${escaped(name)}</span></li>`).join('\n')}</ol></section><section><h2>${s.say('tabs')}</h2><p>${sentences(s, 2)}</p></section>`,
      lists: [names],
    };
  },
  'bold in the middle of a description': (s) =>
    one(
      s,
      (list) =>
        `<div class="description"><p>${sentences(s, 3)} <strong>${s.say('tabs')}:</strong> ${s.say('use')} <strong>${s.say('head')}:</strong> ${list} <strong>${s.say('tabs')}:</strong> ${sentences(s, 2)}</p></div>`,
    ),
  'no mark at all in a long description': (s) => {
    const names = formula(s.roll);
    return {
      html: `<div class="desc">${sentences(s, 4)} ${s.say('head')}: ${joined(names)}. ${s.say('tail')} ${sentences(s, 2)}</div>`,
      lists: [names],
    };
  },
  'data of a page that is not drawn yet': (s) => {
    const names = formula(s.roll);
    const data = {
      '@context': 'https://schema.org',
      '@type': 'Product',
      name: s.title,
      description: `${sentences(s, 2)} ${s.say('head')}: ${names.join(', ')}`,
    };
    return {
      html: `<p>${s.say('say')}</p><script type="application/ld+json">${JSON.stringify(data)}</script>`,
      lists: [names],
    };
  },
  'data of the framework': (s) => {
    const names = formula(s.roll);
    const data = {
      props: {
        pageProps: {
          product: {
            id: 81,
            title: s.title,
            tabs: [
              { title: s.say('tabs'), html: sentences(s, 2) },
              { title: s.say('head'), html: `<p>${names.join(', ')}</p>` },
            ],
            related: [{ id: 3, title: 'Tern Oil' }],
          },
        },
      },
      page: '/p/[slug]',
    };
    return {
      html: `<div class="skeleton"></div><script id="__NEXT_DATA__" type="application/json">${JSON.stringify(data)}</script>`,
      lists: [names],
    };
  },
  'read more': (s) => {
    const names = formula(s.roll, 14 + s.roll.below(14));
    return {
      html: `<h3>${s.say('head')}</h3><div class="short"><p>${joined(names.slice(0, 5))}… <a href="#more" class="toggle">+</a></p></div><div class="full" hidden><p>${joined(names)}</p></div>`,
      lists: [names],
    };
  },
  'dialog far away': (s) =>
    one(
      s,
      (list) =>
        `<button aria-haspopup="dialog" data-open="#dlg-2">${s.say('head')}</button><p>${sentences(s, 3)}</p><div class="related"><h3>${s.say('tabs')}</h3><a href="/p/2">Tern Oil</a></div><div id="dlg-2" role="dialog" aria-label="${s.say('head')}" hidden><button aria-label="x">×</button><div class="scroll"><p>${list}</p></div></div>`,
    ),
  'quick view': (s) =>
    one(
      s,
      (list) =>
        `<p>${sentences(s, 2)}</p><div class="quick" aria-modal="true" role="dialog"><h2>${s.title}</h2><form><button>${s.say('buy')}</button></form><div class="quick__txt"><h5>${s.say('head')}</h5>${list}<h5>${s.say('tabs')}</h5>${s.say('use')}</div></div>`,
    ),
  'a list as the last of many paragraphs': (s) =>
    one(
      s,
      (list) =>
        `<div itemprop="description"><p>${sentences(s, 2)}</p><p>${s.say('free')}</p><p>${s.say('use')}</p><p>${s.say('tail')}</p><p>${s.say('head')} ${list}</p></div>`,
    ),
  'label in an attribute': (s) =>
    one(
      s,
      (list) =>
        `<p>${sentences(s, 2)}</p><section aria-label="${s.say('head')}" class="blk"><div class="blk__in">${list}</div></section><section aria-label="${s.say('tabs')}"><div>${s.say('use')}</div></section>`,
    ),
  'a preformatted text': (s) =>
    one(s, (list) => {
      const lines = list.split(', ').reduce<string[]>((rows, name) => {
        const last = rows.at(-1);
        if (last !== undefined && last.length + name.length < 60) rows[rows.length - 1] = `${last}, ${name}`;
        else rows.push(name);
        return rows;
      }, []);
      return `<p>${sentences(s, 1)}</p><pre>${s.say('head').toUpperCase()}\n\n${lines.join(',\n')}\n</pre>`;
    }),
};
