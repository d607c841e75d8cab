// One invented shop of this set: what its pages say, and the frame around each of them.
import type { Roll } from '../other/roll.ts';
import type { Tongue } from './tongues-west.ts';

export type Shop = { roll: Roll; tag: string; tongue: Tongue; title: string; plain: boolean };

const worlds = ['Driftmoor', 'Saltlark', 'Fennel & Kelp', 'Ninth Wave', 'Halcyon Loft', 'Moorhen', 'Ebbwell'];
const ranges = [
  'Nebula',
  'Tern',
  'Brackish',
  'Quiet Dune',
  'Foxglove',
  'Sundial',
  'Lagoon',
  'Thrum',
  'Umbra',
];

export const calledBy = (roll: Roll, tongue: Tongue): string =>
  `${roll.pick(ranges)} ${roll.pick(tongue.goods)}${roll.next() < 0.4 ? ` ${roll.pick([50, 150, 250, 400])} ml` : ''}`;

export const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');

export const talk = ({ roll, tongue }: Shop, count = 2): string => roll.some(tongue.says, count).join(' ');

const cards = ({ roll, tongue }: Shop) =>
  Array.from(
    { length: 3 },
    () =>
      `<article class="tile"><a href="/p/${roll.below(999)}"><img alt="" src="x.jpg"><h4>${escaped(calledBy(roll, tongue))}</h4></a><span>${roll.below(40) + 4},90 €</span></article>`,
  ).join('');

/** Three builds: a theme's grid, a shop of custom elements, and plain old tables of layout. */
export function framed(shop: Shop, main: string): string {
  const { roll, tongue, title, tag, plain } = shop;
  const world = escaped(roll.pick(worlds));
  const name = escaped(title);
  const buy = plain ? '' : `<button type="submit">${tongue.buy}</button>`;
  const head = `<head><title>${name} – ${world}</title><meta name="description" content="${name}"></head>`;
  const way = roll.below(3);
  if (way === 0)
    return `${head}<body lang="${tag}"><header><nav><ul><li><a href="/">${world}</a></li><li><a href="/n">${tongue.goods[0]}</a></li><li><a href="/m">${tongue.goods[2]}</a></li></ul></nav></header><main id="MainContent"><div class="grid"><div class="media"><img alt="${name}" src="a.jpg"></div><div class="info"><h1>${name}</h1><div class="price">${roll.below(60) + 5},00 €</div>${buy}${main}</div></div></main><aside>${cards(shop)}</aside><footer><p>${tongue.shipped}</p></footer></body>`;
  if (way === 1)
    return `${head}<body lang="${tag}"><site-top><a href="/">${world}</a></site-top><main-stage><h1 class="t">${name}</h1><price-tag>${roll.below(60) + 5}.50</price-tag>${buy}<p>${roll.pick(tongue.says)}</p>${main}</main-stage><site-end><a href="/imprint">${world}</a></site-end></body>`;
  return `${head}<body lang="${tag}"><table width="960"><tr><td colspan="2"><b>${world}</b></td></tr><tr><td valign="top"><a href="/1">${tongue.goods[0]}</a><br><a href="/2">${tongue.goods[1]}</a></td><td><font size="5">${name}</font><br>${roll.below(60) + 5},- ${buy}<br>${main}</td></tr></table></body>`;
}
