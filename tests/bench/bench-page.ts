// One invented product page at any size: the list stands in the middle of what shops put around it.
import { label } from '../browser/bare-pages.ts';

const longLabel = `${label}, Sodium Benzoate, Potassium Sorbate, Behentrimonium Chloride, Isopropyl Alcohol, Stearyl Alcohol, Cetyl Alcohol, Butyrospermum Parkii Butter, Cocos Nucifera Oil, Argania Spinosa Kernel Oil, Ricinus Communis Seed Oil, Aloe Barbadensis Leaf Juice, Tocopherol, Tocopheryl Acetate, Guar Hydroxypropyltrimonium Chloride, Hydroxyethylcellulose, Xanthan Gum, Lactic Acid, Sodium Hydroxide, Disodium EDTA, Ethylhexylglycerin, Benzyl Alcohol, Limonene, Linalool, Hexyl Cinnamal`;

/** Forty names, as on a long conditioner label. */
export const fortyNames = longLabel.split(', ').slice(0, 40).join(', ');

const card = (i: number) =>
  `<li class="card"><a href="#${i}"><img alt="" width="40" height="40"><h4>Goods of the shelf ${i}</h4><p>Some words that a shop writes about goods, number ${i}.</p><span class="price">${i}.00</span></a></li>`; // 7 elements

/** A page of about `nodes` elements. */
export function benchPage(nodes: number): string {
  const cards = Math.floor((nodes - 30) / 7);
  const list = (from: number, to: number) =>
    `<ul>${Array.from({ length: to - from }, (_, i) => card(from + i)).join('')}</ul>`;
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Bench cream</title><style>body{font:14px/1.5 sans-serif;margin:0 24px}ul{display:grid;grid-template-columns:repeat(4,1fr)}.card{list-style:none}</style></head><body><h1>Bench cream</h1><p>These goods are invented.</p>${list(0, cards >> 1)}<section><h3>Ingredients</h3><p class="list">${fortyNames}</p></section>${list(cards >> 1, cards)}</body></html>`;
}
