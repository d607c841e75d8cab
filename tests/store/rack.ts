// A rack of the invented shop: as many cards as asked for, over goods of the shop, with faults among them.
import { goods } from './goods.ts';
import { plain } from './html.ts';
import { pageOf, productPage } from './layout.ts';

/** What a page of the rack does wrong, by the number of its card. */
export const faults = {
  3: 'gone',
  6: 'broken',
  9: 'off-site',
  12: 'large',
  15: 'no-list',
  18: 'by-script',
  21: 'login',
  23: 'robots',
} as const;

export type RackAnswer = {
  type: string;
  body: string;
  status?: number;
  headers?: Record<string, string>;
};

const goodAt = (n: number) => goods[n % goods.length]!;
const nameAt = (n: number) => `${goodAt(n).name} ${n}`;

/** What the card of a number shows. */
export const rackRow = (n: number) => ({
  link: `${faults[n as keyof typeof faults] === 'robots' ? `/rack/private/${n}` : `/rack/p/${n}`}?utm_source=rack`,
  picture: `/pictures/${goodAt(n).id}.svg`,
  name: nameAt(n),
  cost: `€${(goodAt(n).price + (n % 7)).toFixed(2)}`,
});

const cardAt = (n: number) => {
  const { link, picture, name, cost } = rackRow(n);
  return `<li class="card"><a href="${link}"><img src="${picture}" alt="" width="320" height="400"><b>${plain(name)}</b><br><span class="cost">${cost}</span></a></li>`;
};

/** `/rack?n=24`: the rack; `more` cards come when the reader scrolls, `sort` turns the order round. */
export function rackPage(url: URL): string {
  const n = Number(url.searchParams.get('n') ?? 24);
  const cards = Array.from({ length: n }, (_, i) => cardAt(i)).join('');
  return pageOf({
    title: 'The rack',
    body: `<h1>The rack</h1><p><button id="sort" type="button">Turn the order round</button> <button id="more" type="button">200 more</button></p><ul class="goods" id="rack">${cards}</ul>
      <template id="rest">${Array.from({ length: 200 }, (_, i) => cardAt(n + i)).join('')}</template>`,
  });
}

/** A page of the rack's products, or its fault. `elsewhere` is another shop's address. */
export function rackAnswer(path: string[], elsewhere: string): RackAnswer | undefined {
  const n = Number(path[1]);
  if (!Number.isInteger(n) || (path[0] !== 'p' && path[0] !== 'private')) return undefined;
  const html = (body: string): RackAnswer => ({ type: 'text/html', body });
  const fault = faults[n as keyof typeof faults];
  if (fault === 'gone') return { ...html('<h1>Gone</h1>'), status: 404 };
  if (fault === 'broken') return { ...html('<h1>Oh</h1>'), status: 500 };
  if (fault === 'off-site')
    return { ...html(''), status: 302, headers: { location: `${elsewhere}/goods/x` } };
  if (fault === 'large') return html(`<p>${'Aqua, Glycerin, '.repeat(320_000)}</p>`);
  if (fault === 'no-list')
    return html(
      pageOf({ title: nameAt(n), body: `<h1>${nameAt(n)}</h1><p>${'A comb of horn. '.repeat(120)}</p>` }),
    );
  if (fault === 'by-script') return html(pageOf({ title: nameAt(n), body: '<div id="app"></div>' }));
  if (fault === 'login')
    return html(pageOf({ title: 'Sign in', body: '<form><input type="password"></form>' }));
  const good = goodAt(n);
  return html(productPage({ ...good, name: nameAt(n) }, 'open'));
}
