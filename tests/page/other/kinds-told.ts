// What the list itself looks like, and what is told around it.
import { formula, kitchen, slip } from './names.ts';
import { escaped, halved, type Page, type Shop, sentences } from './shop.ts';

type Kind = (shop: Shop) => Page;
const joined = (names: readonly string[], by = ', ') => escaped(names.join(by));
const under = (s: Shop, list: string) =>
  s.roll.pick([
    `<h3>${s.say('head')}</h3><p>${list}</p>`,
    `<p><b>${s.say('head')}:</b> ${list}</p>`,
    `<div class="acc"><button aria-expanded="false">${s.say('head')}</button><div class="acc__b">${list}</div></div>`,
  ]);
const described = (s: Shop, part: string) => `<div class="desc"><p>${sentences(s, 2)}</p>${part}</div>`;
const does =
  'keeps water in|softens|thickens|cleans gently|preserves|carries the scent|smooths|balances acidity'.split(
    '|',
  );
const roles =
  'Humectant|Emollient|Solvent|Surfactant|Preservative|Fragrance|Emulsifier|Viscosity controlling'.split('|');
const misspelt: Record<string, string[]> = {
  en: ['Ingrediants', 'Ingredents', 'Incredients', 'Ingridients', 'Ingreidents', 'Ingredeints'],
  de: ['Inhaltstoffe', 'Inhalststoffe', 'Ihnaltsstoffe', 'Inhaltsstofe'],
  fr: ['Ingredients', 'Ingrédiens', 'Ingrédents', 'Compostion'],
  es: ['Ingredinetes', 'Ingedientes', 'Igredientes', 'Composicion'],
  it: ['Ingredeinti', 'Igredienti', 'Ingedienti', 'Ingridienti'],
};

export const told: Record<string, Kind> = {
  'set of products': (s) => {
    const lists = Array.from({ length: 2 + s.roll.below(2) }, () => formula(s.roll, 7 + s.roll.below(14)));
    const labels = s.roll.some(
      ['Tidewater Shampoo', 'Tidewater Conditioner', 'Tidewater Leave-in', 'Tidewater Mask'],
      lists.length,
    );
    const mark = s.roll.below(3);
    const parts = lists.map((names, at) =>
      mark === 0
        ? `<p><strong>${labels[at]}</strong><br>${joined(names)}</p>`
        : mark === 1
          ? `<p>${labels[at]}: ${joined(names)}</p>`
          : `<h4>${labels[at]}</h4><p>${joined(names)}</p>`,
    );
    return { html: `<p>${sentences(s, 2)}</p><h3>${s.say('head')}</h3><div>${parts.join('')}</div>`, lists };
  },
  'two languages': (s) => {
    const names = formula(s.roll);
    return {
      html: described(
        s,
        `<p><b>${s.say('head')} / Ingredients / Ingrédients:</b> ${joined(names)}</p><p>${s.say('use')}</p>`,
      ),
      lists: [names],
    };
  },
  'names of the language with the Latin after it': (s) => {
    const names = s.roll.some(s.plain, 8 + s.roll.below(8));
    const inci = formula(s.roll, 9);
    return {
      html: described(
        s,
        `<h4>${s.say('head')}</h4><p>${joined(names)}</p><h4>INCI</h4><p>${joined(inci)}</p>`,
      ),
      lists: [names, inci],
    };
  },
  'rows of a pharmacy': (s) => {
    const names = formula(s.roll);
    const row = (label: string, text: string) =>
      `<div class="row"><div class="col-4 lbl">${label}</div><div class="col-8">${text}</div></div>`;
    return {
      html: `${row('PZN', '01234567')}${row(s.say('tabs'), s.say('use'))}${row(s.say('head'), joined(names))}${row('kg', '0,2')}`,
      lists: [names],
    };
  },
  'highlights before the list': (s) => {
    const names = formula(s.roll);
    const key = s.roll.some(s.plain, 3);
    return {
      html: described(
        s,
        `<h3>${s.say('key')}</h3><ul>${key.map((name) => `<li><b>${name}</b> – ${s.say('say')}</li>`).join('')}</ul><h3>${s.say('head')}</h3><p>${joined(names)}</p>`,
      ),
      lists: [names],
    };
  },
  'highlights and list in one paragraph': (s) => {
    const names = formula(s.roll);
    const key = s.roll.some(s.plain, 2);
    return {
      html: described(
        s,
        `<h6>${s.say('head')}</h6><p>${s.say('key')}: ${key.map((name) => `${name}: ${s.say('say')}`).join(' ')} ${s.say('free')}<br>${s.say('head')}: ${joined(names)}</p>`,
      ),
      lists: [names],
    };
  },
  'each name explained': (s) => {
    const names = formula(s.roll, 6 + s.roll.below(12));
    return {
      html: `<h3>${s.say('head')}</h3><div class="gloss">${names.map((name) => `<p><strong>${escaped(name)}</strong> – ${s.roll.pick(does)}</p>`).join('')}</div>`,
      lists: [names],
      woven: true,
    };
  },
  'table of names and functions': (s) => {
    const names = formula(s.roll, 6 + s.roll.below(14));
    return {
      html: `<h3>${s.say('head')}</h3><table><thead><tr><th>INCI</th><th>Function</th></tr></thead><tbody>${names.map((name) => `<tr><td>${escaped(name)}</td><td>${s.roll.pick(roles)}</td></tr>`).join('')}</tbody></table><p>${s.say('tail')}</p>`,
      lists: [names],
      woven: true,
    };
  },
  'list, then a glossary of it': (s) => {
    const names = formula(s.roll);
    return {
      html: `${under(s, joined(names))}<h3>${s.say('key')}</h3>${names
        .slice(1, 4)
        .map((name) => `<p><b>${escaped(name)}</b>: ${s.say('say')}</p>`)
        .join('')}`,
      lists: [names],
    };
  },
  footnotes: (s) => {
    const names = formula(s.roll);
    const list = names.map((name, at) => name + (at % 4 === 2 ? s.roll.pick(['*', '**', '¹', ' *']) : ''));
    return {
      html: described(s, under(s, `${joined(list)}.<br>${s.say('tail')}<br>${s.say('tail')}`)),
      lists: [names],
    };
  },
  'slashes of several countries': (s) => {
    const plants = [
      'Butyrospermum Parkii (Shea) Butter/Beurre de karité',
      'Cocos Nucifera (Coconut) Oil/Huile de noix de coco',
      'Parfum/Fragrance',
      'Simmondsia Chinensis (Jojoba) Seed Oil',
      'Cera Alba/Beeswax/Cire d’abeille',
      'Sodium Chloride/Sea Salt',
      'Mel/Honey/Miel',
      'Olea Europaea (Olive) Fruit Oil [Bio]',
      'Aloe Barbadensis Leaf Juice/Jus de feuille d’aloès',
      'CI 77891/Titanium Dioxide',
      'Ricinus Communis (Castor) Seed Oil/Huile de ricin',
      'Lavandula Angustifolia (Lavender) Oil/Extract',
    ];
    const names = ['Aqua/Water/Eau', ...s.roll.some(plants, 5), ...formula(s.roll, 8).slice(1)];
    return { html: described(s, under(s, joined(names))), lists: [names] };
  },
  'shares beside names': (s) => {
    const names = formula(s.roll, 5 + s.roll.below(12));
    const list = names.map(
      (name) =>
        name +
        (s.roll.next() < 0.5
          ? s.roll.pick([' 2%', ' (0.5 %)', ' 10 %', ' (1,200 ppm)', ': 3%', ' [5%]'])
          : ''),
    );
    return { html: described(s, under(s, joined(list))), lists: [names] };
  },
  'maker of soaps': (s) => {
    const names = s.roll.some(kitchen, 4 + s.roll.below(8));
    return {
      html: described(
        s,
        s.roll.pick([
          `<p>${s.say('head')}: ${joined(names)}</p>`,
          `<p>${s.title}: ${joined(names)}.</p>`,
          `<p>${s.say('head')}</p><p>${joined(names.map((name) => name.toLowerCase()))}</p>`,
        ]),
      ),
      lists: [names],
    };
  },
  'names of the language alone': (s) => {
    const names = s.roll.some(s.plain, 5 + s.roll.below(9));
    return { html: described(s, under(s, joined(names))), lists: [names] };
  },
  capitals: (s) => {
    const names = formula(s.roll).map((name) => name.toUpperCase());
    return {
      html: described(s, under(s, `${joined(names)}${s.roll.pick(['', ' (B2110/3)', ' [F.I.L. 0041]'])}`)),
      lists: [names],
    };
  },
  'small letters': (s) => {
    const names = formula(s.roll).map((name) => name.toLowerCase());
    return { html: described(s, under(s, joined(names))), lists: [names] };
  },
  'misspelt heading': (s) => {
    const names = formula(s.roll);
    const heading = s.roll.pick(halved(misspelt[s.tongue] ?? misspelt.en!, s.half));
    return {
      html: described(
        s,
        s.roll.pick([`<h3>${heading}</h3><p>${joined(names)}</p>`, `<p>${heading}: ${joined(names)}</p>`]),
      ),
      lists: [names],
    };
  },
  'misspelt names': (s) => {
    const names = formula(s.roll).map((name) => (s.roll.next() < 0.35 ? slip(s.roll, name) : name));
    return { html: described(s, under(s, joined(names))), lists: [names] };
  },
  'no heading': (s) => {
    const names = formula(s.roll);
    return {
      html: `<p>${sentences(s, 2)}</p><p>${joined(names)}</p><p>${s.say('tail')}</p>`,
      lists: [names],
    };
  },
  'a heading for something else': (s) => {
    const names = formula(s.roll);
    return {
      html: `<h3>${s.say('tabs')}</h3><p>${joined(names)}</p><h3>${s.say('tabs')}</h3><p>${s.say('use')}</p>`,
      lists: [names],
    };
  },
  'bullets and pipes': (s) => {
    const names = formula(s.roll);
    return {
      html: described(
        s,
        under(s, joined(names, s.roll.pick([' • ', ' | ', '; ', ' · ', ' / ', ' - ', ' – ']))),
      ),
      lists: [names],
    };
  },
  'a line for each name': (s) => {
    const names = formula(s.roll);
    return {
      html: described(s, `<h4>${s.say('head')}</h4><div>${names.map(escaped).join('<br>\n')}</div>`),
      lists: [names],
    };
  },
  'a link for each name': (s) => {
    const names = formula(s.roll);
    return {
      html: described(
        s,
        under(
          s,
          names
            .map((name, at) => `<a href="/i/${at}" title="${s.roll.pick(does)}">${escaped(name)}</a>`)
            .join(', '),
        ),
      ),
      lists: [names],
    };
  },
  'a chip for each name': (s) => {
    const names = formula(s.roll);
    return {
      html: `<h3 class="font-bold">${s.say('head')}</h3><div class="flex flex-wrap gap-2">${names.map((name) => `<button class="chip rounded-full" type="button" data-tip="1">${escaped(name)}</button>`).join('')}</div><p>${s.say('say')}</p>`,
      lists: [names],
    };
  },
  'may contain': (s) => {
    const names = formula(s.roll, 10 + s.roll.below(8));
    const tints = s.roll.some(['CI 77891', 'CI 77491', 'CI 77492', 'CI 77499', 'Mica', 'CI 19140'], 3);
    return {
      html: described(
        s,
        under(
          s,
          `${joined(names)}. ${s.roll.pick(['[+/- ', '(+/-) ', 'May contain: ', '± '])}${joined(tints)}]`,
        ),
      ),
      lists: [[...names, ...tints]],
    };
  },
  'short list': (s) => {
    const names = formula(s.roll, 3 + s.roll.below(4), 0);
    return { html: described(s, under(s, joined(names))), lists: [names] };
  },
};
