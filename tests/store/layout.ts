import { productKinds } from '../../src/core/product/product.ts';
import { type Good, goods } from './goods.ts';
import { plain } from './html.ts';
import { productData } from './product-data.ts';
import { type StructureName, slotsOf } from './structures/index.ts';

const euro = (price: number) => `€${price.toFixed(2)}`;

const kindWords: Record<Good['kind'], string> = {
  'pre-wash': 'Pre-wash',
  'bond-treatment': 'Bond treatments',
  'protein-treatment': 'Protein treatments',
  cleanser: 'Cleansers',
  rinse: 'Rinses',
  conditioner: 'Conditioners',
  'deep-conditioner': 'Deep conditioners',
  'scalp-treatment': 'Scalp treatments',
  'leave-in': 'Leave-ins',
  cream: 'Creams',
  foam: 'Foams',
  gel: 'Gels',
  serum: 'Serums',
  oil: 'Oils',
  hairspray: 'Hairsprays',
  'refresh-spray': 'Refresh sprays',
  'dry-shampoo': 'Dry shampoos',
};

type Page = { title: string; body: string; head?: string; end?: string; hostile?: string | null };

/** A whole page in the shop's frame. `hostile` names a stylesheet of public/hostile. */
export function pageOf({ title, body, head = '', end = '', hostile }: Page): string {
  return `<!doctype html>
<html lang="en"${hostile === 'rtl' ? ' dir="rtl"' : ''}><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${plain(title)} · Dunnocksea Apothecary</title><link rel="stylesheet" href="/shop.css"><link rel="icon" href="/pictures/sign.svg">
${hostile ? `<link rel="stylesheet" href="/hostile/${hostile}.css">` : ''}${head}</head>
<body><p class="invented">An invented shop in an invented town: every product, maker, formula and price here is made up.</p>
<header class="sign"><div class="in"><a href="/"><strong>Dunnocksea Apothecary</strong></a><nav class="menu"><a href="/">All goods</a><a href="/shelf">The shelf</a><a href="/journal/fitting-a-wash-day">Journal</a><a href="/help">Help</a></nav></div></header>
<main>${body}</main><footer>Dunnocksea Apothecary, 9 Herring Steps, Dunnocksea. Open when the flag is up.</footer>${end}
<script src="/shop.js" defer></script></body></html>`;
}

const cardOf = (good: Good) =>
  `<li class="card"><a href="/goods/${good.id}"><img src="/pictures/${good.id}.svg" alt="" width="320" height="400"><span class="over">${kindWords[good.kind]}</span><b>${plain(good.name)}</b>
  <span class="small">${plain(good.maker)} · ${good.size} ${good.unit}</span><br><span class="cost">${euro(good.price)}</span></a></li>`;

/** The category page: everything, by kind. */
export function categoryPage(): string {
  const byKind = productKinds.flatMap((kind) => goods.filter((good) => good.kind === kind));
  return pageOf({
    title: 'All goods',
    body: `<h1>For hair that waves, curls and coils</h1><p>Stirred, bottled and labelled on the harbour.</p>
      <ul class="goods">${byKind.map((good) => cardOf(good)).join('')}</ul>`,
  });
}

// Pages that bring data of their own, or none: their facts stand in the page's words only.
const silentToMachines: StructureName[] = ['json-ld', 'microdata', 'no-heading', 'heading-runs', 'frame'];

/** A product page in a structure: the good's own unless another is asked for. */
export function productPage(good: Good, as?: StructureName, hostile?: string | null): string {
  const structure = as ?? good.structure;
  const slots = slotsOf(good, structure);
  const data = silentToMachines.includes(structure) ? '' : productData(good);
  return pageOf({
    title: good.name,
    hostile: hostile ?? null,
    head: `<link rel="canonical" href="/goods/${good.id}">${data}${slots.head ?? ''}`,
    body: `<nav class="crumbs" aria-label="Breadcrumb"><a href="/">All goods</a> › ${kindWords[good.kind]} › ${plain(good.name)}</nav>
      <article class="product"><img src="/pictures/${good.id}.svg" alt="${plain(good.name)}" width="320" height="400">
      <div><h1>${plain(good.name)}</h1><p class="maker">${plain(good.maker)}</p><p>${plain(good.blurb)}</p>
      <p><span class="cost">${euro(good.price)}</span> <span class="small">· ${good.size} ${good.unit} · ${euro((good.price / good.size) * 100)} per 100 ${good.unit}</span></p>
      <p><button type="button" class="buy">Put in the basket</button></p>${slots.beside ?? ''}</div></article>${slots.below ?? ''}`,
    end: slots.end ?? '',
  });
}
