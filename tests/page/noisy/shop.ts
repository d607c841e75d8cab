// One invented shop of this set and the noise that real themes put around a product: menus, drawers, banners, reviews,
// other goods.
import type { Roll } from '../other/roll.ts';
import type { Tongue } from './tongues.ts';

export type Shop = { roll: Roll; tag: string; tongue: Tongue; title: string };

const ranges = ['Gannet', 'Low Tide', 'Marram', 'Skerry', 'Dulse', 'Wrack Line', 'Groyne', 'Samphire'];
const worlds = ['Skerry & Wool', 'Marramhouse', 'The Dulse Yard', 'Kittiwake Goods'];

export const calledBy = (roll: Roll, tongue: Tongue): string =>
  `${roll.pick(ranges)} ${roll.pick(tongue.goods)}`;

export const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');

export const quoted = (text: string): string => escaped(text).replace(/"/g, '&quot;');

export const talk = ({ roll, tongue }: Shop, count = 2): string => roll.some(tongue.says, count).join(' ');

const menu = ({ tongue }: Shop) =>
  `<div class="announce">${tongue.says[2]}</div><header role="banner"><button aria-expanded="false">☰</button><nav><ul><li><a href="/a">${tongue.goods[0]}</a><ul><li><a href="/b">${tongue.goods[1]}</a></li><li><a href="/c">${tongue.goods[2]}</a></li></ul></li></ul></nav></header><div class="drawer" hidden><form action="/cart"><p>0</p></form></div>`;

const others = ({ roll, tongue }: Shop) =>
  `<section class="related">${[1, 2, 3]
    .map(
      () =>
        `<div class="card"><a href="/p/${roll.below(999)}"><img alt="${quoted(calledBy(roll, tongue))}" loading="lazy" src="b.webp"></a><div class="card__info"><h3>${calledBy(roll, tongue)}</h3><s>18,00</s> <b>14,00</b></div></div>`,
    )
    .join('')}</section>`;

const reviews = ({ roll, tongue }: Shop) =>
  `<div id="reviews"><div class="stars" aria-label="4,6"></div>${[1, 2]
    .map(
      () =>
        `<div class="review"><b>M. ${roll.pick(['K', 'T', 'S', 'L'])}.</b> <time>2025-03-0${1 + roll.below(8)}</time><p>${roll.pick(tongue.says)}</p></div>`,
    )
    .join('')}</div>`;

const foot = ({ tongue }: Shop, world: string) =>
  `<footer><form><input type="email" placeholder="@"><button>OK</button></form><ul><li>${tongue.use}</li><li>© ${world}</li></ul></footer><div role="dialog" aria-label="Cookies"><button>OK</button></div>`;

/** Page builders, apps and templates: three ways to wrap the same product. */
export function framed(shop: Shop, main: string): string {
  const { roll, tongue, tag, title } = shop;
  const world = escaped(roll.pick(worlds));
  const name = escaped(title);
  const head = `<head><meta charset="utf-8"><title>${name} | ${world}</title></head>`;
  const dir = tag === 'ar' || tag === 'he' ? ' dir="rtl"' : '';
  const way = roll.below(3);
  if (way === 0)
    return `${head}<body lang="${tag}"${dir}>${menu(shop)}<main><div class="product-layout"><div class="gallery"><img alt="${quoted(title)}" src="a.webp"></div><div class="buybox"><h1>${name}</h1><span class="price">${12 + roll.below(30)},00</span><form><select><option>100 ml</option><option>250 ml</option></select><button>${tongue.buy}</button></form>${main}</div></div>${others(shop)}${reviews(shop)}</main>${foot(shop, world)}</body>`;
  if (way === 1)
    return `${head}<body lang="${tag}"${dir}><div id="app"><div><div>${menu(shop)}</div><div><div><div><h1>${name}</h1><div>${talk(shop)}</div><div role="button" tabindex="0">${tongue.buy}</div></div></div><div><div>${main}</div></div></div>${reviews(shop)}</div></div></body>`;
  return `${head}<body lang="${tag}"${dir} class="builder">${menu(shop)}<div class="bl-section"><div class="bl-col"><div class="bl-widget"><h2 class="bl-title">${name}</h2></div></div><div class="bl-col"><div class="bl-widget"><p>${talk(shop)}</p></div><div class="bl-widget">${main}</div><div class="bl-widget"><a class="bl-btn" href="#">${tongue.buy}</a></div></div></div>${others(shop)}${foot(shop, world)}</body>`;
}
