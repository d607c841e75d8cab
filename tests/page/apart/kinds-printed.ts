// Shapes by their print: how one list is written, and what is glued to it.
import { formula, kitchen } from '../other/names.ts';
import type { Kind } from './kinds-marked.ts';
import { calledBy, escaped, type Shop, talk } from './shop.ts';

const of = (names: readonly string[], between = ', ') => escaped(names.join(between));
const head = ({ roll, tongue }: Shop) => roll.pick(tongue.heads);
const upper = (names: readonly string[]) => names.map((name) => name.toUpperCase());

export const printed: Record<string, Kind> = {
  'active and inactive': ({ roll, tongue }) => {
    const [active, ...names] = formula(roll, 10 + roll.below(12), 0);
    return {
      html: `<p>${tongue.active}: ${escaped(active!)} ${roll.pick(['0.5', '1', '2'])} %</p><p>${tongue.others}: ${of(names)}</p>`,
      lists: [names],
      woven: true,
    };
  },
  'may contain': (shop) => {
    const names = formula(shop.roll);
    const dyes = shop.roll.some(['CI 77491', 'CI 77492', 'CI 77891', 'Mica', 'CI 42090', 'CI 19140'], 3);
    const tail = shop.roll.pick([`[+/- ${dyes.join(', ')}]`, `${shop.tongue.may}: ${dyes.join(', ')}`]);
    return {
      html: `<p><strong>${head(shop)}:</strong> ${of(names)}, ${tail}</p>`,
      lists: [names],
      woven: true,
    };
  },
  'highlights that explain, then all': (shop) => {
    const names = formula(shop.roll);
    const { key, why, full } = shop.tongue;
    const told = names.slice(2, 5).map((name) => `<li><b>${escaped(name)}</b>: ${shop.roll.pick(why)}.</li>`);
    return {
      html: `<h3>${key}</h3><ul>${told.join('')}</ul><h3>${full}</h3><p>${of(names)}</p>`,
      lists: [names],
    };
  },
  'highlights in one paragraph, then all': (shop) => {
    const names = formula(shop.roll);
    const { key, why, full } = shop.tongue;
    const told = names.slice(2, 4).map((name) => `${escaped(name)} – ${shop.roll.pick(why)}.`);
    return {
      html: `<p>${key}: ${told.join(' ')} ${full}: ${of(names)}</p>`,
      lists: [names],
    };
  },
  'claims before, in the same paragraph': (shop) => {
    const names = formula(shop.roll);
    return {
      html: `<p>${talk(shop)} ${shop.tongue.free}. ${head(shop)}: ${of(names)}</p>`,
      lists: [names],
    };
  },
  'use and claims behind, in the same paragraph': (shop) => {
    const names = formula(shop.roll);
    const { use, how, free } = shop.tongue;
    return {
      html: `<div>${head(shop)}: ${of(names)}. ${use}: ${how[0]} ${free}.</div>`,
      lists: [names],
    };
  },
  'dates, codes and the law behind': (shop) => {
    const names = upper(formula(shop.roll));
    const code = shop.roll.pick([
      '(F.I.L. K70044/2)',
      'Rev. 03-2025',
      'LOT 25114B',
      'V4 12/2024',
      '[FORM. 2291-C]',
    ]);
    return {
      html: `<p>${head(shop)}</p><p>${of(names)}. ${code}</p><p><small>${shop.tongue.notes.join(' ')}</small></p>`,
      lists: [names],
    };
  },
  'a code before': (shop) => {
    const names = upper(formula(shop.roll));
    return {
      html: `<span>${1_000_000 + shop.roll.below(999_999)} ${shop.roll.below(90) + 10} - INGREDIENTS: ${of(names, shop.roll.pick([', ', ' • ']))}</span>`,
      lists: [names],
    };
  },
  'numbers before names': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(15));
    return {
      html: shop.roll.pick([
        `<h4>${head(shop)}</h4><ol>${names.map((name) => `<li>${escaped(name)}</li>`).join('')}</ol>`,
        `<h4>${head(shop)}</h4><p>${names.map((name, at) => `${at + 1}. ${escaped(name)}`).join(' ')}</p>`,
        `<h4>${head(shop)}</h4><p>${names.map((name, at) => `${at + 1}) ${escaped(name)}`).join('<br>')}</p>`,
      ]),
      lists: [names],
      woven: true,
    };
  },
  'escaped twice': (shop) => {
    const names = formula(shop.roll);
    const twice = escaped(`<p>${talk(shop)}</p><p><strong>${head(shop)}:</strong> ${names.join(', ')}</p>`);
    return { html: `<div class="desc">${twice}</div>`, lists: [names] };
  },
  'soft hyphens and spaces of no width': (shop) => {
    const names = formula(shop.roll);
    const hidden = names.map((name) =>
      name.replace(/(\p{L}{4})(\p{L}{4})/gu, `$1${shop.roll.pick(['\u00ad', '\u200b', '\u2060'])}$2`),
    );
    return {
      html: `<p>${head(shop)}\u00a0:\u00a0${of(hidden, ',\u00a0').replace(/ /g, '\u00a0')}</p>`,
      lists: [names],
    };
  },
  'capitals between bullets': (shop) => {
    const names = upper(formula(shop.roll, 8 + shop.roll.below(20)));
    return {
      html: `<p>${talk(shop)}</p><p>${of(names, shop.roll.pick([' • ', ' · ', ' | ', ' ● ', '•']))}</p>`,
      lists: [names],
    };
  },
  'between dashes or slashes': (shop) => {
    const names = formula(shop.roll, 8 + shop.roll.below(14), 0).map((name) => name.replace(/ ?\/ ?/g, ' '));
    return {
      html: `<h5>${head(shop)}</h5><p>${of(names, shop.roll.pick([' - ', ' / ', ' – ', ' // ']))}</p>`,
      lists: [names],
    };
  },
  'semicolons without a heading': (shop) => {
    const names = formula(shop.roll, 8 + shop.roll.below(20));
    return { html: `<p>${talk(shop, 3)}</p><p>${of(names, '; ')}</p>`, lists: [names] };
  },
  'the end of a description': (shop) => {
    const names = formula(shop.roll, 9 + shop.roll.below(20));
    return { html: `<div>${talk(shop, 3)}<br><br>${of(names)}</div>`, lists: [names] };
  },
  'small letters under a heading': (shop) => {
    const names = formula(shop.roll, 4 + shop.roll.below(20)).map((name) => name.toLowerCase());
    return { html: `<h3>${head(shop).toLowerCase()}</h3><p>${of(names)}</p>`, lists: [names] };
  },
  'small letters, alone': (shop) => {
    const names = formula(shop.roll, 10 + shop.roll.below(20)).map((name) => name.toLowerCase());
    return { html: `<p>${talk(shop)}</p><p>${of(names)}</p>`, lists: [names] };
  },
  'what the kitchen is made of': (shop) => {
    const names = shop.roll.some(kitchen, 4 + shop.roll.below(8));
    return { html: `<p>${shop.tongue.made}: ${of(names)}.</p><p>${talk(shop)}</p>`, lists: [names] };
  },
  'shares behind names': (shop) => {
    const names = formula(shop.roll, 6 + shop.roll.below(14));
    const share = () =>
      shop.roll.pick([
        ` (${shop.roll.below(30) + 1} %)`,
        ` ${shop.roll.below(9)}.${shop.roll.below(9)}%`,
        '',
        '',
      ]);
    return {
      html: `<p><b>${head(shop)}</b> ${names.map((name) => escaped(name) + share()).join(', ')}</p>`,
      lists: [names],
    };
  },
  'stars and their legend': (shop) => {
    const names = formula(shop.roll);
    const starred = names.map((name) => escaped(name) + (shop.roll.next() < 0.3 ? '*' : ''));
    return {
      html: `<p>${head(shop)}: ${starred.join(', ')}. ${shop.tongue.legend}</p>`,
      lists: [names],
    };
  },
  'a question and its answer': (shop) => {
    const names = formula(shop.roll);
    const { asks, answer, use, how } = shop.tongue;
    return {
      html: `<div class="faq"><h4>${use}?</h4><p>${how[0]}</p><h4>${asks}</h4><p>${answer} ${of(names)}.</p></div>`,
      lists: [names],
    };
  },
  'short, by the litre': (shop) => {
    const names = formula(shop.roll, 3 + shop.roll.below(5), 0);
    return {
      html: `<p>1 l / 14,90 €</p><p>${head(shop)}: ${of(names)}</p><p>${shop.tongue.notes[0]}</p>`,
      lists: [names],
    };
  },
  'all in one line': (shop) => {
    const names = formula(shop.roll);
    return {
      html: `<div>${escaped(calledBy(shop.roll, shop.tongue))}. ${talk(shop)} ${shop.tongue.use}: ${shop.tongue.how[0]} ${shop.tongue.notes[1]} ${head(shop)}: ${of(names)}. ${shop.tongue.notes[0]}</div>`,
      lists: [names],
    };
  },
  'heading glued to the first name': (shop) => {
    const names = formula(shop.roll);
    return { html: `<p><strong>${head(shop)}</strong>${of(names)}</p>`, lists: [names] };
  },
};
