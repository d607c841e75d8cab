// One invented shop: its language, its wordings, and the frame around every one of its pages.
import type { Roll } from './roll.ts';
import type { Talk } from './talk.ts';
import { talks } from './talk-more.ts';

export type Half = 'seen' | 'kept';
export type Shop = {
  roll: Roll;
  tongue: string;
  half: Half;
  /** A wording of this half. */
  say: (field: keyof Talk) => string;
  plain: string[];
  title: string;
};
/** A page and the lists it holds, names as printed. `woven`: other words stand between the names. */
export type Page = { html: string; lists: string[][]; woven?: true };

/** Every second one, the others for the other half. */
export const halved = <T>(of: readonly T[], half: Half): T[] =>
  of.filter((_, at) => at % 2 === (half === 'seen' ? 0 : 1));

export function openShop(roll: Roll, half: Half, only?: string): Shop {
  const tongue = only ?? (roll.next() < 0.3 ? 'en' : roll.pick(Object.keys(talks)));
  const talk = talks[tongue]!;
  const say = (field: keyof Talk) => roll.pick(halved(talk[field], half));
  return { roll, tongue, half, say, plain: talk.plain, title: say('title') };
}

const frames: ((shop: Shop, main: string) => string)[] = [
  ({ title, say }, main) =>
    `<header class="site-header"><a href="/" class="logo">Pebble &amp; Tern</a><nav><ul><li><a href="/c/1">Shampoo</a><li><a href="/c/2">Conditioner</a><li><a href="/c/3">Styling</a></ul></nav></header><main id="MainContent"><div class="product"><h1 class="product__title">${title}</h1><div class="price">€ 14,50</div><button type="submit">${say('buy')}</button>${main}</div></main><footer><p>© Pebble &amp; Tern. <a href="/privacy">Privacy</a></p></footer>`,
  ({ title, say }, main) =>
    `<div id="__next"><div class="sc-1a2b3c kQzXvT"><a class="sc-9f8e7d bRtYuI" href="/">Oarlock</a></div><div class="sc-4d5e6f hJkLmN"><h1 class="sc-7g8h9i aSdFgH">${title}</h1><span class="sc-0j1k2l qWeRtY">19,90</span><button class="sc-3m4n5o zXcVbN">${say('buy')}</button>${main}</div><div class="sc-6p7q8r">${say('say')}</div></div>`,
  ({ title, say }, main) =>
    `<div class="flex min-h-screen flex-col"><div class="mx-auto max-w-7xl px-4"><nav class="text-sm text-gray-500"><a href="/">Home</a> / <a href="/hair">Hair</a> / <span>${title}</span></nav><div class="grid grid-cols-1 lg:grid-cols-2 gap-8"><img alt="${title}" src="x.jpg"><section><h1 class="text-3xl font-bold">${title}</h1><p class="mt-2 text-gray-700">${say('say')}</p><button class="rounded-full bg-black">${say('buy')}</button></section></div>${main}</div></div>`,
  ({ title, say }, main) =>
    `<table width="900" align="center"><tr><td colspan="2"><font size="2"><a href="index.php">Start</a> &raquo; <a href="index.php?cPath=4">Hair</a></font></td></tr><tr><td valign="top" width="180"><b>Hair</b><br>Body<br>Face</td><td><h2>${title}</h2><b>12.00</b> <input type="submit" value="${say('buy')}"><br>${main}</td></tr></table>`,
];

/** The whole page around what a kind made. */
export const framed = (shop: Shop, main: string): string =>
  `<head><title>${shop.title}</title></head><body>${shop.roll.pick(frames)(shop, main)}</body>`;

/** Some sentences of the shop, one after the other. */
export const sentences = (shop: Shop, count: number): string =>
  Array.from({ length: count }, () => shop.say('say')).join(' ');

export const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
