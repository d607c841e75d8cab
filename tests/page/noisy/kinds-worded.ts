// Shapes by what is said before, between and after the names.
import { formula, kitchen } from '../other/names.ts';
import type { Kind } from './kinds-held.ts';
import { calledBy, escaped, type Shop, talk } from './shop.ts';

const of = (names: readonly string[], between = ', ') => escaped(names.join(between));
const head = ({ roll, tongue }: Shop) => roll.pick(tongue.heads);
const upper = (names: readonly string[]) => names.map((name) => name.toUpperCase());

export const worded: Record<string, Kind> = {
  'a heading for two things': (shop) => {
    const names = formula(shop.roll, 4 + shop.roll.below(20));
    const { roll, tongue } = shop;
    const second = roll.pick([tongue.use, tongue.about]);
    const title = `${head(shop)}${roll.pick([' | ', ' & ', ' / ', ' + ', ', '])}${second}`;
    return {
      html: `<h3>${escaped(title)}</h3><p>${of(names)}</p><p>${tongue.how}</p>`,
      lists: [names],
    };
  },
  'a heading for two things, turned': (shop) => {
    const names = formula(shop.roll, 4 + shop.roll.below(20));
    const { roll, tongue } = shop;
    return {
      html: `<button>${escaped(`${tongue.about} ${roll.pick(['|', '&', '/', tongue.and])} ${head(shop)}`)}</button><div><p>${talk(shop)}</p><p>${of(names)}</p></div>`,
      lists: [names],
    };
  },
  'a heading in dress': (shop) => {
    const names = formula(shop.roll, 4 + shop.roll.below(20));
    const title = head(shop);
    const dressed = shop.roll.pick([
      `+ ${title}`,
      `▾ ${title}`,
      `${title} (+)`,
      `[ ${title} ]`,
      `🌿 ${title} 🌿`,
      `${title} →`,
      `03. ${title}`,
      `${title} (${names.length})`,
      `— ${title} —`,
      `★${title}★`,
      `■ ${title}`,
      `${title} *`,
      `<${title}>`,
      `#${title}`,
    ]);
    return { html: `<div class="h">${escaped(dressed)}</div><div>${of(names)}</div>`, lists: [names] };
  },
  'a heading in spaced letters': ({ roll, tongue }) => {
    const names = formula(roll, 5 + roll.below(16));
    const title = [...tongue.heads[0]!.toUpperCase()].join(' ');
    return { html: `<p>${title}</p><p>${of(names)}</p>`, lists: [names] };
  },
  'a batch or a date as title': (shop) => {
    const names = formula(shop.roll);
    const title = shop.roll.pick([
      'LOT 2026:',
      'Batch 3412 –',
      'V.2:',
      '2025-03 →',
      'From 03/2025:',
      'EU:',
      '250 ml:',
      'New (2025):',
      'Rev. C |',
      'LOT 24/118 +:',
    ]);
    return { html: `<h4>${head(shop)}</h4><p>${escaped(title)} ${of(names)}</p>`, lists: [names] };
  },
  'two batches': (shop) => {
    const lists = [formula(shop.roll, 8 + shop.roll.below(12)), formula(shop.roll, 8 + shop.roll.below(12))];
    const [first, second] = shop.roll.pick([
      ['LOT 2025:', 'LOT 2026:'],
      ['Batch up to 3400:', 'Batch from 3401:'],
      ['< 03/2025:', '> 03/2025:'],
      ['V1 –', 'V2 –'],
    ]);
    return {
      html: `<p><b>${head(shop)}</b><br>${escaped(first!)} ${of(lists[0]!)}<br>${escaped(second!)} ${of(lists[1]!)}</p>`,
      lists,
    };
  },
  'the product before a colon': (shop) => {
    const names = formula(shop.roll);
    return {
      html: `<p>${escaped(calledBy(shop.roll, shop.tongue))} (250 ml): ${of(names)}</p>`,
      lists: [names],
    };
  },
  'few shared names': (shop) => {
    const names = shop.roll.some(kitchen, 3);
    return { html: `<h3>${head(shop)}</h3><p>${of(names)}</p><p>${talk(shop)}</p>`, lists: [names] };
  },
  'one oil alone': (shop) => {
    const names = [
      shop.roll.pick([
        'Argania Spinosa Kernel Oil',
        'Simmondsia Chinensis (Jojoba) Seed Oil',
        'Cocos Nucifera Oil',
        'Ricinus Communis Seed Oil',
      ]),
    ];
    return {
      html: `<h3>${head(shop)}</h3><p>${shop.roll.pick(['100% ', '100 % ', ''])}${names[0]}${shop.roll.pick(['', '*', '.'])}</p><p>${talk(shop)}</p>`,
      lists: [names],
    };
  },
  'a last one with “and”': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(14));
    return {
      html: `<h3>${head(shop)}</h3><p>${of(names.slice(0, -1))} ${shop.tongue.and} ${escaped(names.at(-1)!)}.</p>`,
      lists: [names],
      woven: true,
    };
  },
  'breaks lost in an export': (shop) => {
    const names = formula(shop.roll, 8 + shop.roll.below(16));
    const { about, use, how } = shop.tongue;
    return {
      html: `<div>${about}${talk(shop)}${head(shop)}${of(names)}${use}${how}</div>`,
      lists: [names],
      woven: true,
    };
  },
  'the tail runs on': (shop) => {
    const names = formula(shop.roll, 8 + shop.roll.below(16));
    const { use, how, note } = shop.tongue;
    return {
      html: `<p>${head(shop)}: ${of(names)} ${shop.roll.pick([`${use}: ${how}`, `${note}`, `250 ml e 8.4 fl.oz.`])}</p>`,
      lists: [names],
      woven: true,
    };
  },
  'odd marks between': (shop) => {
    const names = formula(shop.roll, 8 + shop.roll.below(14), 0).map((name) =>
      name.replace(/ ?[/+] ?/g, ' '),
    );
    const mark = shop.roll.pick([
      ' + ',
      ' ✓ ',
      ' ~ ',
      ' > ',
      ',',
      ' , ',
      ',, ',
      ' ▪ ',
      ' ‧ ',
      '، ',
      '、',
      ' ¦ ',
      ' * ',
    ]);
    return { html: `<h3>${head(shop)}</h3><p>${of(names, mark)}</p>`, lists: [names] };
  },
  'full stops between': (shop) => {
    const names = formula(shop.roll, 8 + shop.roll.below(14), 0);
    return { html: `<h3>${head(shop)}</h3><p>${of(names, '. ')}.</p>`, lists: [names] };
  },
  'marks of direction': (shop) => {
    const names = formula(shop.roll);
    return {
      html: `<h3>${head(shop)}</h3><p>\u200e${of(names, '\u200f, \u200e')}\u200e</p>`,
      lists: [names],
    };
  },
  'entities shown as letters': (shop) => {
    const names = formula(shop.roll);
    return {
      html: `<h3>${head(shop)}</h3><p>${of(names, ',&nbsp;').replace(/&nbsp;/g, '&amp;nbsp;')}</p>`.replace(
        /&amp;amp;nbsp;/g,
        '&amp;nbsp;',
      ),
      lists: [names],
    };
  },
  'dots up to a share': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(12));
    return {
      html: `<h3>${head(shop)}</h3>${names.map((name) => `<div>${escaped(name)} ........ ${1 + shop.roll.below(40)} %</div>`).join('')}`,
      lists: [names],
      woven: true,
    };
  },
  'groups by what they do': (shop) => {
    const names = formula(shop.roll, 9 + shop.roll.below(10));
    const third = Math.ceil(names.length / 3);
    const groups = ['A', 'B', 'C'].map((letter, at) => ({
      letter,
      part: names.slice(at * third, (at + 1) * third),
    }));
    return {
      html: `<h3>${head(shop)}</h3>${groups.map(({ letter, part }) => `<p><b>Phase ${letter}</b><br>${of(part)}</p>`).join('')}`,
      lists: [names],
      woven: true,
    };
  },
  'footnotes at names': (shop) => {
    const names = formula(shop.roll);
    return {
      html: `<h3>${head(shop)}</h3><p>${names.map((name) => escaped(name) + shop.roll.pick(['', '<sup>1</sup>', '¹', '<sup>2,3</sup>', '**', '°'])).join(', ')}</p><p><small>¹ bio ² natur</small></p>`,
      lists: [names],
    };
  },
  'a sentence leads': (shop) => {
    const names = formula(shop.roll, 5 + shop.roll.below(16));
    const lead = shop.roll.pick([
      'This bottle holds:',
      'All that goes in:',
      'The whole formula reads:',
      'Nothing but:',
      'In descending order:',
      'Per Regulation (EC) No 1223/2009:',
      'On the label you will read:',
    ]);
    return { html: `<p>${talk(shop)}</p><p>${lead} ${of(names)}.</p>`, lists: [names] };
  },
  'a heading of another matter': (shop) => {
    const names = formula(shop.roll, 7 + shop.roll.below(16));
    const title = shop.roll.pick([
      'Good to know',
      'Transparency',
      'The science',
      'Specs',
      'Label',
      shop.tongue.about,
    ]);
    return { html: `<h3>${title}</h3><p>${of(names)}</p>`, lists: [names] };
  },
  'capitals, glued to the heading': (shop) => {
    const names = upper(formula(shop.roll, 8 + shop.roll.below(16)));
    return { html: `<span>${head(shop).toUpperCase()}</span><span>${of(names)}</span>`, lists: [names] };
  },
  'each name with its plain word': (shop) => {
    const names = formula(shop.roll, 6 + shop.roll.below(12));
    const plain = ['thickener', 'rinsed sugar', 'plant wax', 'scent', 'keeps it fresh', 'slip'];
    return {
      html: `<h3>${head(shop)}</h3><p>${names.map((name) => `${escaped(name)} = ${shop.roll.pick(plain)}`).join('; ')}</p>`,
      lists: [names],
      woven: true,
    };
  },
  'after a denial': (shop) => {
    const names = formula(shop.roll);
    return {
      html: `<p>0% parabens, 0% silicones, 0% sulfates, 0% mineral oil</p><p>${head(shop)}: ${of(names)}</p>`,
      lists: [names],
    };
  },
};
