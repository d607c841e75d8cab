// Pages in languages and shapes that no other set draws, written before the finder was asked. Kinds and languages are
// halved: `seen` may be looked at when it is missed, `kept` is only ever counted.
import { rolled } from '../other/roll.ts';
import { type Half, halved, type Page } from '../other/shop.ts';
import { kinds, type Shop } from './kinds.ts';
import { silent } from './silent.ts';
import { tongues } from './tongues.ts';

export type Drawn = Page & { kind: string; tongue: string };

const framed = ({ tongue, tag, roll }: Shop, main: string, title = tongue.titles[0]) =>
  `<head><title>${title}</title></head><body lang="${tag}"><div class="top"><a href="/">Selkie &amp; Thrift</a> <a href="/cart">0</a></div><div class="crumbs"><a href="/1">1</a> › <span>${title}</span></div><div class="col"><h1>${title}</h1><div>${roll.below(60) + 5},00</div><button>${tongue.buy}</button>${main}</div><div class="foot"><p>${tongue.after[0]}</p></div></body>`;

function shopOf(name: string, half: Half) {
  const roll = rolled([...name, half].reduce((sum, letter) => (sum * 33 + letter.charCodeAt(0)) | 0, 11));
  return (at: number): Shop => {
    const tags = halved(Object.keys(tongues), half);
    const tag = tags[at % tags.length]!;
    return { roll, tag, tongue: tongues[tag]! };
  };
}

/** `count` whole pages of each kind of one half. */
export const drawnPages = (half: Half, count: number): Drawn[] =>
  halved(Object.keys(kinds), half).flatMap((kind) => {
    const shop = shopOf(kind, half);
    return Array.from({ length: count }, (_, at) => {
      const one = shop(at);
      const page = kinds[kind]!(one);
      return {
        ...page,
        html: framed(one, `<p>${one.roll.pick(one.tongue.says)}</p>${page.html}`),
        kind,
        tongue: one.tag,
      };
    });
  });

/** The same of pages that hold no list. */
export const silentPages = (half: Half, count: number): Drawn[] =>
  halved(Object.keys(silent), half).flatMap((kind) => {
    const shop = shopOf(kind, half);
    return Array.from({ length: count }, (_, at) => {
      const one = shop(at);
      return { html: framed(one, silent[kind]!(one), 'No. 417'), lists: [], kind, tongue: one.tag };
    });
  });
