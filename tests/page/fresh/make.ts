// Pages of shops in ten languages, drawn at random: translated lists with and without a heading, several lists, tabs,
// tables, split letters, kits. Written before the finder was asked; it shares nothing with it.
import { dice } from '../make-parts.ts';
import { someNames } from '../shapes/names.ts';
import { type Tongue, tongues } from './tongues.ts';

type Roll = ReturnType<typeof dice>;
export type Drawn = { body: string; wanted: string[][]; also: number; tongue: string };
type Drawing = { part: string; wanted: string[][]; also?: number };
type Shape = (roll: Roll, tongue: Tongue) => Drawing;

const html = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

/** Ways a shop opens a part of its text under a title. */
const openers: ((title: string, text: string) => string)[] = [
  (title, text) =>
    `<div class="acc"><h3 class="acc-h"><button type="button" aria-expanded="false" aria-controls="acc-2">${title}</button></h3><div id="acc-2" role="region" hidden><p>${text}</p></div></div>`,
  (title, text) =>
    `<section class="info"><div class="info-toggle" onclick="x()">${title}<svg></svg></div><div class="info-body">${text}</div></section>`,
  (title, text) =>
    `<ul class="nav" role="tablist"><li><a href="#t1" role="tab">Info</a></li><li><a href="#t2" role="tab">${title}</a></li></ul><div id="t1" role="tabpanel"><p>250 ml</p></div><div id="t2" role="tabpanel"><p>${text}</p></div>`,
  (title, text) =>
    `<table><tbody><tr><td>EAN</td><td>0000</td></tr><tr><td><b>${title}</b></td><td>${text}</td></tr></tbody></table>`,
  (title, text) => `<dl><dt>ml</dt><dd>250</dd><dt>${title}</dt><dd>${text}</dd></dl>`,
  (title, text) => `<details><summary><span>${title}</span></summary><div>${text}</div></details>`,
  (title, text) => `<p><strong>${title}</strong><br>${text}</p>`,
  (title, text) => `<p><b>${title}${title.endsWith(':') ? '' : ':'}</b> ${text}</p>`,
  (title, text) => `<h4>${title.toUpperCase()}</h4><p>${text}</p>`,
];
const headed = (roll: Roll, tongue: Tongue, text: string) =>
  roll.pick(openers)(roll.pick(tongue.headings), text);

/** Plain names of one language: water first where the product is wet, then in no order. */
function plain(roll: Roll, { names: [water = '', ...others] }: Tongue, count = roll.int(7, 18)): string[] {
  const wet = roll.next() < 0.7;
  return [...(wet ? [water] : []), ...roll.some(others, count)];
}
const joined = (roll: Roll, names: string[]) => {
  const lower = roll.next() < 0.35 ? names.map((name, i) => (i ? name.toLowerCase() : name)) : names;
  return html(lower.join(', ')) + roll.pick(['', '.', '']);
};
const latin = (roll: Roll) => someNames(roll, roll.int(8, 26));

export const shapes: Record<string, Shape> = {
  'translated, under a heading': (roll, tongue) => {
    const names = plain(roll, tongue);
    return { part: headed(roll, tongue, joined(roll, names)), wanted: [names] };
  },
  'translated, no heading': (roll, tongue) => {
    const names = plain(roll, tongue);
    return { part: `<div class="text"><p>${joined(roll, names)}</p></div>`, wanted: [names] };
  },
  'translated, in one line with its heading': (roll, tongue) => {
    const names = plain(roll, tongue, roll.int(4, 12));
    return {
      part: `<p>${roll.pick(tongue.claims)} ${roll.pick(tongue.headings)}${roll.pick([': ', ' : '])}${joined(roll, names)}</p>`,
      wanted: [names],
    };
  },
  'translated, with stars and a legend': (roll, tongue) => {
    const names = plain(roll, tongue);
    const starred = names.map((name, i) => (i % 3 === 1 ? `${name}*` : name));
    return {
      part: headed(roll, tongue, `${html(starred.join(', '))}. <br>* bio`),
      wanted: [names],
    };
  },
  'translated, the Latin name in brackets': (roll, tongue) => {
    const pairs = [
      'Aqua',
      'Glycerin',
      'Butyrospermum Parkii Butter',
      'Cocos Nucifera Oil',
      'Olea Europaea Fruit Oil',
    ];
    const names = tongue.names.slice(0, 5).map((name, i) => `${name} (${pairs[i]})`);
    const all = [...names, ...roll.some(tongue.names.slice(5), roll.int(2, 9))];
    return { part: headed(roll, tongue, html(all.join(', '))), wanted: [all] };
  },
  'Latin, under a heading of the language': (roll, tongue) => {
    const names = latin(roll);
    return { part: headed(roll, tongue, html(names.join(', '))), wanted: [names] };
  },
  'several lists in tabs': (roll, tongue) => {
    const lists = [latin(roll), latin(roll), latin(roll)];
    const sorts = roll.some(['Lavendel', 'Mint', 'Citrus', 'Rosa', '01', '02'], 3);
    return {
      part: `<h3>${roll.pick(tongue.headings)}</h3><div role="tablist">${sorts.map((sort) => `<button role="tab">${sort}</button>`).join('')}</div>${lists.map((names, i) => `<div role="tabpanel" aria-label="${sorts[i]}"><p>${html(names.join(', '))}</p></div>`).join('')}`,
      wanted: lists,
    };
  },
  'a kit with a heading for each': (roll, tongue) => {
    const lists = [latin(roll), latin(roll)];
    const goods = roll.some(tongue.titles, 2);
    const tag = roll.pick(['h4', 'strong', 'u', 'b']);
    return {
      part: headed(
        roll,
        tongue,
        lists
          .map(
            (names, i) =>
              `<${tag}>${goods[i]}</${tag}>${tag === 'h4' ? '' : '<br>'}${html(names.join(', '))}<br><br>`,
          )
          .join(''),
      ),
      wanted: lists,
    };
  },
  'each name an element of its own': (roll, tongue) => {
    const names = latin(roll);
    const part = roll.pick([
      () => names.map((name) => `<a href="/i/x" class="ing">${html(name)}</a>`).join(', '),
      () => names.map((name) => `<span class="chip">${html(name)}</span>`).join(' '),
      () => names.map((name) => `<button type="button" class="tag">${html(name)}</button>`).join(''),
      () =>
        `<ul class="chips">${names.map((name) => `<li><a href="#">${html(name)}</a></li>`).join('')}</ul>`,
    ])();
    return { part: headed(roll, tongue, part), wanted: [names] };
  },
  'half of it behind “more”': (roll, tongue) => {
    const names = latin(roll);
    const at = roll.int(3, names.length - 3);
    const more = roll.pick(['<span class="dots">…</span>', '<span class="dots">...</span>', '']);
    return {
      part: headed(
        roll,
        tongue,
        `${html(names.slice(0, at).join(', '))}, ${more}<span class="rest" style="display:none">${html(names.slice(at).join(', '))}</span> <a href="#" class="more">+</a>`,
      ),
      wanted: [names],
    };
  },
  'a table of names and shares': (roll, tongue) => {
    const names = latin(roll);
    return {
      part: `<h3>${roll.pick(tongue.headings)}</h3><table><tbody>${names.map((name, i) => `<tr><td>${html(name)}</td><td>${Math.max(0.1, 60 / (i + 1) ** 2).toFixed(1)} %</td></tr>`).join('')}</tbody></table>`,
      wanted: [names],
    };
  },
  'numbered, slashed or piped': (roll, tongue) => {
    const names = latin(roll).filter((name) => !/[/|\\]/.test(name));
    const text = roll.pick([
      () => names.map((name, i) => `${i + 1}. ${name}`).join(' '),
      () => names.join(' / '),
      () => names.join(' | '),
      () => names.join(' · '),
      () => names.join(' - '),
    ])();
    return { part: headed(roll, tongue, html(text)), wanted: [names] };
  },
  'both, translated and Latin': (roll, tongue) => {
    const names = latin(roll);
    const own = plain(roll, tongue);
    return {
      part: `<h3>${roll.pick(tongue.headings)}</h3><p>${joined(roll, own)}</p><p>INCI: ${html(names.join(', '))}</p>`,
      wanted: [names],
      also: 1,
    };
  },
};
export const shapeNames = Object.keys(shapes);

/** A page around a part, in one language. */
export const around = (roll: Roll, tongue: Tongue, part: string, title = roll.pick(tongue.titles)): string =>
  `<header><a href="/">${roll.pick(tongue.titles)}</a></header><main><h1>${title}</h1><div>€ ${roll.int(5, 40)},90</div><p>${roll.pick(tongue.claims)}</p><p>${roll.pick(tongue.claims)}</p>${part}<p>${roll.pick(tongue.after)}</p></main><footer>© 2026</footer>`;

/** The languages that may be looked at while the finder is mended, and those that are only counted. */
export const sets = {
  seen: ['de', 'fr', 'es', 'pl', 'tr'],
  counted: ['pt', 'it', 'nl', 'sv', 'da', 'cs'],
} as const;
export type SetName = keyof typeof sets;

export function drawn(shape: string, count: number, set: SetName): Drawn[] {
  return Array.from({ length: count }, (_, i) => {
    const roll = dice((set === 'seen' ? 510_000 : 8_200_000) + i * 331 + shape.length * 17);
    const tongue = sets[set][i % sets[set].length]!;
    const { part, wanted, also = 0 } = shapes[shape]!(roll, tongues[tongue]!);
    return { body: around(roll, tongues[tongue]!, part), wanted, also, tongue };
  });
}
