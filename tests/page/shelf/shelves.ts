// Shelves in the ways open storefront templates build them, shops and products invented; and what only looks
// like a shelf. Structures: a grid of list items, cards whose link is their title, two links a card, loops with a
// basket link, data without prices, custom elements, carousels, swatches, tables, links laid over cards.
export type Shelf = { what: string; html: string; shown: string[]; here?: string };

const names = [
  'Saltgrass Gel',
  'Oxbow Cleanser',
  'Lantern Cream',
  'Tern Foam',
  'Marl Deep Conditioner',
  'Reed Leave-in',
];
const slug = (name: string) => name.toLowerCase().replaceAll(' ', '-');
const each = (make: (name: string, i: number) => string, from = names) => from.map(make).join('\n');
const price = (i: number) => ['€12.00', '12,90 €', '$ 9', '£7.50', '19.90 EUR', 'Kč 240'][i % 6]!;

export const shelves: Shelf[] = [
  {
    what: 'list items, everything in one link',
    html: `<main><ul class="grid">${each((n, i) => `<li class="cell"><a href="/goods/${slug(n)}"><img src="/a.jpg" alt=""><b>${n}</b><span>${price(i)}</span></a></li>`)}</ul></main>`,
    shown: names.map((n) => `/goods/${slug(n)}`),
  },
  {
    what: 'the title is the link, the picture stands beside it, the address says the collection too',
    html: `<div id="grid"><ul>${each((n, i) => `<li class="grid-item"><div class="tile"><div class="media"><img src="/x.webp" srcset="/x.webp 1x" alt="${n}"></div><div class="info"><h3><a href="/collections/curls/products/${slug(n)}?_pos=${i}&_sid=ab">${n}</a></h3><div class="cost">${i === 2 ? 'Sold out' : price(i)}</div></div></div></li>`)}</ul></div>`,
    shown: names.map((n) => `/products/${slug(n)}`),
  },
  {
    what: 'picture and title are links of their own, variants and tracking differ, a basket link beside them',
    html: `<section>${each((n, i) => `<article class="p-card"><a href="/product/${slug(n)}/?variant=${i}1"><img data-src="x" src="y"></a><h2><a href="/product/${slug(n)}?variant=${i}2&utm_source=shelf">${n}</a></h2><span>${price(i)}</span><a class="btn" href="/basket/add?id=${i}">Add</a></article>`)}</section>`,
    shown: names.map((n) => `/product/${slug(n)}`),
  },
  {
    what: 'prices for members only, the products stand in the page’s data',
    html: `<script type="application/ld+json">${JSON.stringify({ '@context': 'https://schema.org', '@type': 'ItemList', itemListElement: names.map((n, i) => ({ '@type': 'ListItem', position: i + 1, url: `https://shop.example/x/${slug(n)}` })) })}</script><div>${each((n) => `<div class="unit"><a href="/x/${slug(n)}" title="${n}"><picture><img alt="${n}"></picture></a><p>Log in for prices</p></div>`)}</div>`,
    shown: names.map((n) => `/x/${slug(n)}`),
  },
  {
    what: 'a carousel on a product page: the product itself is no card',
    here: '/products/saltgrass-gel',
    html: `<main><h1>Saltgrass Gel</h1><a href="/products/saltgrass-gel"><img></a><div class="also">${each((n, i) => `<div class="slide"><a href="/products/${slug(n)}"><img alt="${n}"></a><a href="/products/${slug(n)}"><span class="title">${n}</span></a><span>${price(i)}</span></div>`)}</div></main>`,
    shown: names.slice(1).map((n) => `/products/${slug(n)}`),
  },
  {
    what: 'numbers instead of names in the address, background pictures',
    html: `<div class="list">${each((n, i) => `<div class="item"><a href="/item.html?id=${1000 + i}&ref=shelf"><div style="background-image:url(/p.jpg)"></div></a><a href="/item.html?id=${1000 + i}">${n}</a><em>${price(i)}</em></div>`)}</div>`,
    shown: names.map((_, i) => `/item.html?id=${1000 + i}`),
  },
  {
    what: 'two shelves on one page, a product on both',
    html: `<div class="a">${each((n, i) => `<div class="one"><a href="/p/${slug(n)}"><img><h4>${n}</h4></a>${price(i)}</div>`)}</div><div class="b">${each((n, i) => `<div class="two"><a href="/p/${slug(n)}"><img><h4>${n}</h4></a>${price(i)}</div>`, names.slice(0, 3))}</div>`,
    shown: [...names, ...names.slice(0, 3)].map((n) => `/p/${slug(n)}`),
  },
  {
    what: 'dots under the picture lead to other shades of the same product',
    html: `<ul class="rows">${each((n, i) => `<li class="tile"><a class="media" href="/products/${slug(n)}"><img alt="${n}"></a><ul class="dots">${['rose', 'mint', 'sand'].map((shade) => `<li><a href="/products/${slug(n)}-${shade}" aria-label="${shade}"><span style="background:${shade}"></span></a></li>`).join('')}</ul><h3><a href="/products/${slug(n)}">${n}</a></h3><p>${price(i)}</p></li>`)}</ul>`,
    shown: names.map((n) => `/products/${slug(n)}`),
  },
  {
    what: 'shades as little pictures, the first one is the card’s own product, names in a class of their own',
    html: `<section>${each((n, i) => `<div class="cell"><a href="/p/${slug(n)}"><img src="/a.jpg"></a><div class="row">${['', '-dark', '-pale'].map((shade) => `<a href="/p/${slug(n)}${shade}"><img src="/dot.jpg" alt=""></a>`).join('')}</div><div class="product-name"><a href="/p/${slug(n)}">${n}</a></div><div>${i === 1 ? '' : price(i)}</div></div>`)}</section>`,
    shown: names.map((n) => `/p/${slug(n)}`),
  },
  {
    what: 'sizes named under each card, one link each',
    html: `<div>${each((n, i) => `<article><a href="/goods/${slug(n)}"><img alt=""></a><h2><a href="/goods/${slug(n)}">${n}</a></h2><b>${price(i)}</b><p><a href="/goods/${slug(n)}-250-ml">250 ml</a> <a href="/goods/${slug(n)}-1000-ml">1 l</a></p></article>`)}</div>`,
    shown: names.map((n) => `/goods/${slug(n)}`),
  },
  {
    what: 'rows of two, with a title each: nobody is another’s shade',
    html: `<div class="list">${[0, 2, 4].map((i) => `<div class="pair">${each((n, k) => `<div class="unit"><a href="/products/${slug(n)}"><img></a><h4><a href="/products/${slug(n)}">${n}</a></h4>${price(k)}</div>`, names.slice(i, i + 2))}</div>`).join('')}</div>`,
    shown: names.map((n) => `/products/${slug(n)}`),
  },
  {
    what: 'pictures and names without any title, prices beside them: nobody is another’s shade',
    html: `<div class="list">${[0, 3].map((i) => `<div class="row">${each((n, k) => `<div class="unit"><a href="/products/${slug(n)}"><img alt="${n}"></a><a href="/products/${slug(n)}">${n}</a><i>${price(k)}</i></div>`, names.slice(i, i + 3))}</div>`).join('')}</div>`,
    shown: names.map((n) => `/products/${slug(n)}`),
  },
  {
    what: 'a table of products, a row each',
    html: `<table>${each((n, i) => `<tr><td><a href="/artikel/${slug(n)}"><img alt=""></a></td><td><a href="/artikel/${slug(n)}">${n}</a></td><td>${price(i)}</td></tr>`)}</table>`,
    shown: names.map((n) => `/artikel/${slug(n)}`),
  },
  {
    what: 'a link laid over the card, microdata, a heart and a quick look beside it',
    html: `<div class="grid">${each((n, i) => `<div class="c" itemscope itemtype="https://schema.org/Product"><a class="over" href="/shop/${slug(n)}" aria-label="${n}"></a><figure><img alt=""></figure><p itemprop="name">${n}</p><meta itemprop="priceCurrency" content="EUR"><span>${price(i)}</span><a href="/wishlist/add/${i}">♡</a><a href="/shop/${slug(n)}#quick">Quick look</a></div>`)}</div>`,
    shown: names.map((n) => `/shop/${slug(n)}`),
  },
  {
    what: 'hashed class names, divs only, the same product linked from picture, name and reviews',
    html: `<div class="_1a">${each((n, i) => `<div class="_x${i}f"><div class="_b"><a class="_c" href="/p/${slug(n)}?queryID=${i}ab&position=${i}"><picture><source srcset="/a.avif"><img alt="${n}"></picture></a></div><div class="_d"><a href="/p/${slug(n)}">${n}</a><a href="/p/${slug(n)}#reviews">4.5 (31)</a><div>${price(i)}</div></div></div>`)}</div>`,
    shown: names.map((n) => `/p/${slug(n)}`),
  },
];

export const noShelves: Shelf[] = [
  {
    what: 'a journal',
    html: `<main>${each((n, i) => `<article class="post"><a href="/journal/${i}-${slug(n)}"><img><h2>How we make ${n}</h2></a><p>From $0 to a business.</p></article>`)}</main>`,
    shown: [],
  },
  {
    what: 'teasers of posts whose address does not say so',
    html: `<main>${each((n, i) => `<article class="post"><a href="/2026/0${i + 1}/${slug(n)}"><img><h2>Thoughts on ${n}</h2></a><p>Read on</p></article>`)}</main>`,
    shown: [],
  },
  {
    what: 'tiles of departments',
    html: `<main>${each((n) => `<div class="tile"><a href="/collections/${slug(n)}"><img><span>${n}s</span></a></div>`)}</main>`,
    shown: [],
  },
  {
    what: 'a menu with pictures and prices',
    html: `<nav>${each((n, i) => `<li><a href="/products/${slug(n)}"><img>${n} ${price(i)}</a></li>`)}</nav>`,
    shown: [],
  },
  {
    what: 'products of another shop',
    html: `<main>${each((n, i) => `<li><a href="https://elsewhere.example/products/${slug(n)}"><img>${n} ${price(i)}</a></li>`)}</main>`,
    shown: [],
  },
  {
    what: 'two products are no shelf',
    html: `<main>${each((n, i) => `<li><a href="/products/${slug(n)}"><img>${n} ${price(i)}</a></li>`, names.slice(0, 2))}</main>`,
    shown: [],
  },
  {
    what: 'pages of one listing',
    html: `<main>${[1, 2, 3, 4, 5].map((n) => `<a href="/search?page=${n}"><img alt="page">${n}</a>`).join('')}</main>`,
    shown: [],
  },
];
